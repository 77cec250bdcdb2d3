/** Pours of the design. */
import { measure, words } from '../../../grammar/words.ts';
import type { InsertProperty, LayerProperty, PourDeclaration } from '../../../grammar/tree/object-syntax.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { DesignContext } from '../design-context.ts';
import type { Outline } from '../design-model.ts';
import type { ResinStock } from '../material-model.ts';
import { propertyOf, reportMissing, reportRepeated } from './pick-properties.ts';
import { optional, readCount, readFigure, readFigureWithin, readLength, readPercent } from '../values/read-values.ts';
import type { Blank, Pour, PourLayer } from '../work-model.ts';

export interface PourParts {
  readonly outlines: ReadonlyMap<string, Outline>;
  readonly blanks: ReadonlyMap<string, Blank>;
  readonly resins: ReadonlyMap<string, ResinStock>;
}

const mostCastings = 100_000;

/** Cork to steel, kg/m³: outside these it is a slip of the unit. */
const insertDensities = [40, 8000] as const;

/** The pour a declaration describes; null where its mould, resin or layers are missing or broken. */
export function buildPour(pour: PourDeclaration, parts: PourParts, context: DesignContext): Pour | null {
  reportRepeated(pour, ['layer', 'insert'], context);
  const mould = buildMould(pour, parts, context);
  const of = propertyOf(pour, 'of resin');
  if (!of) reportMissing(pour, 'resin', 'of casting_resin', context);
  const resin = of && parts.resins.get(of.name.text);
  const layerProperties = pour.properties.filter((property) => property.kind === 'layer');
  if (layerProperties.length === 0) reportMissing(pour, 'layer', 'layer clear 6', context);
  const layers = layerProperties.flatMap((layer) => buildLayer(layer, resin, context) ?? []);
  const inserts = pour.properties.flatMap((property) =>
    property.kind === 'insert' ? (buildInsert(property, parts, context) ?? []) : [],
  );
  const length = (kind: 'overfill' | 'surfaced'): number =>
    optional(propertyOf(pour, kind)?.value, (value) => readLength(value, kind, 'notNegative', context)) ?? 0;
  const [overfill, surfaced] = [length('overfill'), length('surfaced')];
  const sealCoat =
    optional(propertyOf(pour, 'seal')?.value, (value) =>
      readFigure(value, 'seal coat', 'notNegative', 'mL/m²', context),
    ) ?? 0;
  const waste = optional(propertyOf(pour, 'waste')?.value, (value) => readPercent(value, 'waste', 1, context)) ?? 0;
  const spareCastings =
    optional(propertyOf(pour, 'spare_castings')?.value, (value) =>
      readCount(value, 'number of spare castings', 0, mostCastings, context),
    ) ?? 0;
  const copies = optional(propertyOf(pour, 'copies')?.value, (value) =>
    readCount(value, 'number of copies', 1, mostCastings, context),
  );
  if (!mould || !resin || layers.length === 0 || layers.length < layerProperties.length) return null;
  return {
    name: pour.name.text,
    range: pour.range,
    nameRange: pour.name.range,
    mould,
    resin,
    layers,
    inserts,
    overfill,
    surfaced,
    sealCoat,
    waste,
    spareCastings,
    copies: copies ?? 1,
  };
}

function buildMould(pour: PourDeclaration, parts: PourParts, context: DesignContext): Pour['mould'] | null {
  const named = propertyOf(pour, 'mould');
  const sized = propertyOf(pour, 'mould size');
  if (named && sized) {
    const related = [{ range: named.keyword, message: 'It stands here.' }];
    const message = 'This pour already has its mould. Keep one of the two.';
    context.report(problemAt('repeatedProperty', sized.keyword, message, related));
  }
  if (named) {
    const outline = parts.outlines.get(named.name.text);
    if (outline) return { kind: 'outline', outline };
    const blank = parts.blanks.get(named.name.text);
    return blank ? { kind: 'blank', blank } : null;
  }
  if (!sized) {
    reportMissing(pour, 'mould', 'mould 80 x 400', context);
    return null;
  }
  const width = readLength(sized.width, 'width of the mould', 'positive', context);
  const height = readLength(sized.height, 'height of the mould', 'positive', context);
  return width === null || height === null ? null : { kind: 'rectangle', width, height };
}

/** A layer; one deeper than its resin may be poured is an error, since it can boil and crack. */
function buildLayer(
  { colour, depth }: LayerProperty,
  resin: ResinStock | undefined,
  context: DesignContext,
): PourLayer | null {
  const millimetres = readLength(depth, 'depth of a layer', 'positive', context);
  if (millimetres === null) return null;
  const deepest = resin?.deepestPour ?? null;
  if (resin && deepest !== null && millimetres > deepest) {
    const message = words`\`${resin.name}\` may be poured ${measure.given(deepest)} deep at once, and this is ${measure.given(millimetres)}. Pour it in more layers; deep resin heats up, so keep to its data sheet.`;
    context.report(problemAt('layerTooDeep', depth.range, message));
  }
  return { colour: colour?.text ?? null, depth: millimetres };
}

function buildInsert(
  insert: InsertProperty,
  { outlines }: PourParts,
  context: DesignContext,
): Pour['inserts'][number] | null {
  const outline = outlines.get(insert.outline.text);
  const from = readLength(insert.from, 'lower end of an insert', 'notNegative', context);
  const to = readLength(insert.to, 'upper end of an insert', 'positive', context);
  const density = optional(insert.density, (value) =>
    readFigureWithin(value, 'density', insertDensities, 'kg/m³', context),
  );
  if (!outline || from === null || to === null) return null;
  if (from < to) return { outline, from, to, density, range: insert.range };
  const message = 'The insert ends below where it begins. Write the lower height first: `from 0 to 6`.';
  const range = { start: insert.from.range.start, end: insert.to.range.end };
  context.report(problemAt('outOfRange', range, message));
  return null;
}
