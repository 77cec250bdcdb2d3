/** What fills the cells of a panel: fills and the map of the design. */
import type { FillPlaceSyntax, MotifUse, PanelFillProperty } from '../../../grammar/tree/fill-syntax.ts';
import type { TipProperty } from '../../../grammar/tree/motif-syntax.ts';
import type { Expression, Name } from '../../../grammar/tree/syntax-nodes.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import { otherShape } from './build-motif.ts';
import { cornersOf } from './build-place.ts';
import { buildTips } from './build-tips.ts';
import type { DesignContext } from '../design-context.ts';
import type { CellShape, FillCondition, Motif, Outline, PanelFill, StripStock } from '../design-model.ts';
import { leastCommonMultiple } from '../../geometry/numbers.ts';
import { readCount, readLength } from '../values/read-values.ts';

/** What fills are made of, by name. */
export interface FillParts {
  readonly strips: ReadonlyMap<string, StripStock>;
  readonly motifs: ReadonlyMap<string, Motif>;
  readonly outlines: ReadonlyMap<string, Outline>;
}

/** More rows, or more motifs and turns taking turns, than any panel needs are a slip of the keyboard. */
const mostRows = 100_000;
const mostTakingTurns = 1000;

/** The fills of a panel in order. One that leaves cells open takes them from those before it. */
export function buildFills(
  fills: readonly PanelFillProperty[],
  parts: FillParts,
  context: DesignContext,
): readonly PanelFill[] {
  return fills.reduce<readonly PanelFill[]>((before, fill) => {
    const where = fill.places.map((place) => buildPlace(place, parts, context));
    const conditions = where.filter((condition) => condition !== null);
    const uses = fill.use
      ? buildUse({ ...fill.use, range: fill.range }, fill.shape.shape, fill.tips, parts, context)
      : [];
    if (conditions.length < where.length) return before;
    if (fill.use) return [...before, ...uses.map((use) => ({ ...use, where: [...conditions, ...use.where] }))];
    return withoutCells(before, fill, conditions, context);
  }, []);
}

/** The fills of one phrase and later ones are told apart by where they stand: those before stay, less the open cells. */
function withoutCells(
  before: readonly PanelFill[],
  { shape: { shape }, tips, range }: PanelFillProperty,
  where: readonly FillCondition[],
  context: DesignContext,
): readonly PanelFill[] {
  for (const tip of tips) {
    const message = 'Open cells have no pieces, so no tips. Take it out.';
    context.report(problemAt('unexpectedWord', tip.range, message));
  }
  if (!before.some((fill) => fill.shape === shape)) {
    const message = `Every ${shape} is open here already: no fill for one stands before. Take this out, or put it behind the fill that it takes cells from.`;
    context.report(problemAt('nothingToFill', range, message));
  }
  return before.map((fill) =>
    fill.shape === shape ? { ...fill, where: [...fill.where, { kind: 'not open', where }] } : fill,
  );
}

/** The fills of a motif use for cells of `shape` (null: of the motif's own), without their place. */
export function buildUse(
  use: MotifUse & { readonly range: SourceRange },
  shape: CellShape | null,
  tips: readonly TipProperty[],
  { motifs, strips }: FillParts,
  context: DesignContext,
): PanelFill[] {
  const named = use.motifs.map((name) => motifOfShape(name, shape, motifs, context));
  const known = named.filter((motif) => motif !== null);
  const of = shape ?? known[0]?.shape;
  const turns = of ? use.turned.map((turn) => readTurn(turn, of, context)) : [];
  const stock = strips.get(use.stock.text);
  if (!of || !stock || known.length < named.length || turns.some((turn) => turn === null)) return [];
  const ofTips = buildTips(tips, of, context);
  const given = turns.length > 0 ? turns.filter((turn) => turn !== null) : [0];
  const count = leastCommonMultiple(known.length, given.length);
  if (count > mostTakingTurns) {
    const message = `The motifs and turns come round only after ${String(count)} cells. Let fewer take turns.`;
    context.report(problemAt('outOfRange', use.range, message));
    return [];
  }
  if (use.by && count === 1) context.report(nothingTakesTurns(use.by));
  const base = { shape: of, stock, mirrored: use.mirrored, tips: ofTips, range: use.range };
  return Array.from({ length: count }, (_, place) => {
    const motif = known[place % known.length];
    const turned = given[place % given.length] ?? 0;
    const share: FillCondition[] = count > 1 ? [{ kind: 'share', by: use.by?.what ?? 'cell', place, of: count }] : [];
    return motif ? { ...base, motif, turned, where: share } : null;
  }).filter((fill) => fill !== null);
}

/** `by row` behind one motif laid one way. */
function nothingTakesTurns({ what, range }: NonNullable<MotifUse['by']>): Problem {
  const message = `Nothing takes turns by ${what}: there is one motif, laid one way. Name a second motif or turn, as in \`turned 0, 1 by ${what}\`, or take this out.`;
  return problemAt('nothingTakesTurns', range, message);
}

function motifOfShape(
  name: Name,
  shape: CellShape | null,
  motifs: FillParts['motifs'],
  context: DesignContext,
): Motif | null {
  const motif = motifs.get(name.text);
  if (!motif) return null;
  if (shape === null || motif.shape === shape) return motif;
  context.report(otherShape(name, motif, shape));
  return null;
}

/** Corners by which the motif is turned; a rhombus comes to lie on itself by two corners only. */
function readTurn(turned: Expression, shape: CellShape, context: DesignContext): number | null {
  const corners = readCount(turned, 'turn', 0, cornersOf(shape) - 1, context);
  if (corners === null || shape !== 'rhombus' || corners % 2 === 0) return corners;
  const message = 'A rhombus turned by one corner does not fit its opening. Turn it by 2.';
  context.report(problemAt('outOfRange', turned.range, message));
  return null;
}

function buildPlace(place: FillPlaceSyntax, { outlines }: FillParts, context: DesignContext): FillCondition | null {
  switch (place.kind) {
    case 'rows':
    case 'columns':
    case 'rings': {
      const noun = place.kind.slice(0, -1);
      const first = readCount(place.first, `number of the ${noun}`, 1, mostRows, context);
      const last = place.last
        ? readCount(place.last, `number of the last ${noun}`, first ?? 1, mostRows, context)
        : first;
      if (first === null || last === null) return null;
      return place.kind === 'rings' ? { kind: 'rings', first, last } : { kind: place.kind, first, last, every: 1 };
    }
    case 'every': {
      const every = readCount(place.every, 'number after `every`', 1, mostRows, context);
      const first = place.from ? readCount(place.from, 'number after `from`', 1, mostRows, context) : 1;
      return every === null || first === null ? null : { kind: place.of, first, last: Infinity, every };
    }
    case 'region': {
      const outline = outlines.get(place.outline.text);
      return outline ? { kind: 'region', outline, inside: place.inside } : null;
    }
    case 'by distance': {
      const reach = readLength(place.reach, 'distance', 'positive', context);
      const of = place.of ? outlines.get(place.of.text) : null;
      return reach === null || of === undefined ? null : { kind: 'margin', of, reach, within: place.within };
    }
  }
}
