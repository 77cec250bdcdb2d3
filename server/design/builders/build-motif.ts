/** Motifs of the design, with the motifs that fill their parts. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import type {
  FitOrderProperty,
  HingeProperty,
  MotifDeclaration,
  PartFillProperty,
} from '../../../grammar/tree/motif-syntax.ts';
import type { Name } from '../../../grammar/tree/syntax-nodes.ts';
import { buildDivider, buildPieces, checkAbove } from './build-pieces.ts';
import { cornersOf, placeReader } from './build-place.ts';
import { buildTips } from './build-tips.ts';
import type { DesignContext } from '../design-context.ts';
import type { CellShape, Hinge, Motif, PartFill } from '../design-model.ts';
import { reportRepeated } from './pick-properties.ts';
import { readLength } from '../values/read-values.ts';

/** Finds another motif by the name it is used by; null where it is unknown, broken or contains this one. */
export type FindMotif = (name: Name) => Motif | null;

/** The motif a declaration describes. Pieces and fills that are broken are left out. */
export function buildMotif(motif: MotifDeclaration, findMotif: FindMotif, context: DesignContext): Motif {
  reportRepeated(motif, ['node', 'divider', 'piece', 'hinge', 'part fill', 'tip'], context);
  const { shape } = motif.shape;
  const { properties } = motif;
  const nodes = properties.filter((property) => property.kind === 'node');
  const dividers = properties.filter((property) => property.kind === 'divider');
  const readPlace = placeReader(shape, nodes, context);
  for (const node of nodes) readPlace({ kind: 'named', name: node.name, range: node.name.range }, null);
  const pieces = properties.filter((property) => property.kind === 'piece');
  const fills = properties.filter((property) => property.kind === 'part fill');
  const tips = properties.filter((property) => property.kind === 'tip');
  const order = properties.find((property) => property.kind === 'fit_order');
  checkAbove([...dividers, ...pieces], context);
  if (dividers.length === 0 && !motif.incomplete) fills.forEach((fill) => reportUndivided(fill, context));
  return {
    name: motif.name.text,
    range: motif.range,
    nameRange: motif.name.range,
    shape,
    pieces: pieces.flatMap((piece) => buildPieces(piece, cornersOf(shape), readPlace, context)),
    dividers: dividers.flatMap((divider) => buildDivider(divider, readPlace)),
    fills: fills.flatMap((fill) => buildPartFill(fill, findMotif, context) ?? []),
    tips: buildTips(tips, shape, context),
    hinges: buildHinges(
      properties.filter((property) => property.kind === 'hinge'),
      context,
    ),
    fitOrder: order ? buildFitOrder(order, context) : [],
  };
}

function buildPartFill(fill: PartFillProperty, findMotif: FindMotif, context: DesignContext): PartFill | null {
  const motif = findMotif(fill.motif);
  if (!motif) return null;
  const { parts } = fill;
  if (parts !== 'halves' && parts !== 'parts' && parts !== motif.shape) {
    context.report(otherShape(fill.motif, motif, parts));
    return null;
  }
  return {
    parts: parts === 'halves' || parts === 'parts' ? { kind: 'every' } : { kind: 'shape', shape: parts },
    motif,
    tips: buildTips(fill.tips, motif.shape, context),
    range: fill.range,
  };
}

/** A motif used in openings of another shape than its own. */
export function otherShape(used: Name, motif: Motif, shape: CellShape): Problem {
  const message = `The motif \`${motif.name}\` is for a ${motif.shape}, not for a ${shape}. Use a motif for a ${shape}.`;
  const related = [{ range: motif.nameRange, message: `\`${motif.name}\` is given here.` }];
  return problemAt('motifDoesNotFitCell', used.range, message, related);
}

function reportUndivided({ keyword }: PartFillProperty, context: DesignContext): void {
  const message = 'There are no parts to fill. Add a line like `divider diagonal from corner 1 to corner 3`.';
  context.report(problemAt('missingProperty', keyword, message));
}

/** A role that is in a hinge already is left out of further ones, and reported. */
function buildHinges(hinges: readonly HingeProperty[], context: DesignContext): Hinge[] {
  const taken = new Map<string, HingeProperty>();
  return hinges.flatMap((hinge) => {
    const roles = [hinge.first.text, hinge.second.text] as const;
    const repeated = [hinge.first, hinge.second].find(({ text }) => taken.has(text));
    const before = repeated && taken.get(repeated.text);
    if (repeated && before) {
      const related = [{ range: before.range, message: 'It is said here first.' }];
      const message = `\`${repeated.text}\` is part of a hinge already. Keep one of the two.`;
      context.report(problemAt('repeatedProperty', repeated.range, message, related));
      return [];
    }
    for (const role of roles) taken.set(role, hinge);
    return [{ roles, range: hinge.range }];
  });
}

function buildFitOrder({ roles }: FitOrderProperty, context: DesignContext): Motif['fitOrder'] {
  return roles.map(({ name, key }) => ({
    role: name.text,
    key: key && readLength(key, 'key', 'notNegative', context),
  }));
}
