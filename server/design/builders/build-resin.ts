/** Resins of the design. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { PriceProperty, RecoatWindowProperty, ResinDeclaration } from '../../../grammar/tree/material-syntax.ts';
import type { DesignContext } from '../design-context.ts';
import { evaluateExpression } from '../values/evaluate-expression.ts';
import type { ResinStock } from '../material-model.ts';
import { propertyOf, reportMissing, reportRepeated } from './pick-properties.ts';
import { sameDimension, volumeDimension } from '../values/quantity.ts';
import { readMoney } from '../values/read-money.ts';
import {
  optional,
  readFigure,
  readFigureWithin,
  readLength,
  readMass,
  readTime,
  readVolume,
} from '../values/read-values.ts';

/** Outside these no casting resin lies, filled or not (from memory): a slip of the unit. */
const resinDensities = [0.5, 3] as const;

const gramsInKilogram = 1000;

/** The resin a declaration describes; null where its density or mix is missing or broken. */
export function buildResin(resin: ResinDeclaration, context: DesignContext): ResinStock | null {
  reportRepeated(resin, [], context);
  const dense = propertyOf(resin, 'density');
  if (!dense) reportMissing(resin, 'density', 'density 1.1', context);
  const density = dense ? readFigureWithin(dense.value, 'density', resinDensities, 'g/mL', context) : null;
  const mix = buildMix(resin, context);
  const partDensities = buildPartDensities(resin, context);
  const deepestPour = optional(propertyOf(resin, 'deepest')?.value, (value) =>
    readLength(value, 'deepest pour', 'positive', context),
  );
  const potLife = optional(propertyOf(resin, 'pot_life')?.value, (value) =>
    readTime(value, 'pot life', 'positive', context),
  );
  const recoat = buildRecoat(propertyOf(resin, 'recoat window'), context);
  const cure = optional(propertyOf(resin, 'cure')?.value, (value) =>
    readTime(value, 'time of curing', 'positive', context),
  );
  const mixSize = optional(propertyOf(resin, 'mix_size')?.value, (value) =>
    readVolume(value, 'size of a mix', 'positive', context),
  );
  const price = buildPrice(propertyOf(resin, 'price'), density, context);
  if (density === null || mix === null) return null;
  return {
    name: resin.name.text,
    range: resin.range,
    nameRange: resin.name.range,
    density,
    mix,
    partDensities,
    deepestPour,
    potLife,
    recoat,
    cure,
    mixSize,
    price,
  };
}

function buildMix(resin: ResinDeclaration, context: DesignContext): ResinStock['mix'] | null {
  const mix = propertyOf(resin, 'mix');
  if (!mix) {
    reportMissing(resin, 'mix', 'mix 2 to 1 by volume', context);
    return null;
  }
  const a = readFigure(mix.resin, 'part of resin', 'positive', '', context);
  const b = readFigure(mix.hardener, 'part of hardener', 'positive', '', context);
  return a === null || b === null ? null : { a, b, by: mix.by };
}

function buildPartDensities(resin: ResinDeclaration, context: DesignContext): ResinStock['partDensities'] {
  const property = propertyOf(resin, 'part densities');
  if (!property) return null;
  const [first, second, ...others] = property.values;
  if (!first || !second || others.length > 0) {
    const message =
      'A resin has two parts. Give the density of the resin, then of the hardener: `part densities 1.13, 0.98`.';
    context.report(problemAt('outOfRange', property.keyword, message));
    return null;
  }
  const a = readFigureWithin(first, 'density of the resin', resinDensities, 'g/mL', context);
  const b = readFigureWithin(second, 'density of the hardener', resinDensities, 'g/mL', context);
  return a === null || b === null ? null : { a, b };
}

function buildRecoat(recoat: RecoatWindowProperty | undefined, context: DesignContext): ResinStock['recoat'] {
  if (!recoat) return null;
  const earliest = readTime(recoat.earliest, 'earliest time', 'notNegative', context);
  const latest = readTime(recoat.latest, 'latest time', 'positive', context);
  if (earliest === null || latest === null) return null;
  if (earliest < latest) return { earliest, latest };
  const message =
    'The latest time for the next layer comes before the earliest. Write the earlier time first: `recoat 4h to 12h`.';
  context.report(
    problemAt('outOfRange', { start: recoat.earliest.range.start, end: recoat.latest.range.end }, message),
  );
  return null;
}

/** A price of so many g, or of a volume, which the density turns into g; of a kilogram where nothing is said. */
function buildPrice(
  price: PriceProperty | undefined,
  density: number | null,
  context: DesignContext,
): ResinStock['price'] {
  if (!price) return null;
  const money = readMoney(price.money, 'price', context);
  if (!price.per) return money && { money, per: gramsInKilogram };
  const measure = evaluateExpression(price.per, { ...context, report: () => undefined });
  const what = 'measure the price is for';
  if (!measure || !sameDimension(measure.dimension, volumeDimension)) {
    const per = readMass(price.per, what, 'positive', context);
    return money && per !== null ? { money, per } : null;
  }
  const volume = readVolume(price.per, what, 'positive', context);
  return money && volume !== null && density !== null ? { money, per: volume * density } : null;
}
