/** Woods, sheets, resins and finishes of the design. */
import type {
  FinishDeclaration,
  PriceProperty,
  SheetDeclaration,
  WoodDeclaration as WoodSyntax,
} from '../../../grammar/tree/material-syntax.ts';
import type { Expression } from '../../../grammar/tree/syntax-nodes.ts';
import { sheetKerf } from '../values/defaults.ts';
import type { DesignContext } from '../design-context.ts';
import type { FinishStock, Money, SheetStock, WoodDeclaration } from '../material-model.ts';
import { propertyOf, reportMissing, reportRepeated } from './pick-properties.ts';
import { readMoney } from '../values/read-money.ts';
import {
  optional,
  readAngle,
  readCount,
  readFigure,
  readFigureWithin,
  readLength,
  readPercent,
  readTime,
  readVolume,
} from '../values/read-values.ts';

/** Outside these no wood was ever measured (from memory: balsa to lignum vitae): a slip of the unit. */
const woodDensities = [40, 1500] as const;
const ruptures = [5, 400] as const;
const elasticities = [0.5, 50] as const;

/** Foam board to sheet metal. */
const sheetDensities = [10, 10_000] as const;

const mostCoats = 100;
const millilitresInLitre = 1000;

/** The figures a wood states; what is broken is left to the built-in table. */
export function buildWood(wood: WoodSyntax, context: DesignContext): WoodDeclaration {
  reportRepeated(wood, [], context);
  const shrinkage = propertyOf(wood, 'shrinkage');
  const pores = propertyOf(wood, 'pores');
  const figure = (value: Expression | undefined, what: string, limits: readonly [number, number], unit: string) =>
    optional(value, (expression) => readFigureWithin(expression, what, limits, unit, context));
  const share = (value: Expression | null | undefined): number | null =>
    optional(value, (expression) => readPercent(expression, 'shrinkage', 1, context));
  return {
    name: wood.name.text,
    range: wood.range,
    nameRange: wood.name.range,
    density: figure(propertyOf(wood, 'density')?.value, 'density', woodDensities, 'kg/m³'),
    rupture: figure(propertyOf(wood, 'rupture')?.value, 'modulus of rupture', ruptures, 'MPa'),
    elasticity: figure(propertyOf(wood, 'elasticity')?.value, 'modulus of elasticity', elasticities, 'GPa'),
    radialShrinkage: share(shrinkage?.radial),
    tangentialShrinkage: share(shrinkage?.tangential),
    porous: pores ? pores.choice === 'porous' : null,
  };
}

/** Turns that keep the grain of a sheet's face running along its board. */
const alongGrain = [0, 180];

/** The sheet a declaration describes; null where its thickness is missing or broken. */
export function buildSheet(sheet: SheetDeclaration, context: DesignContext): SheetStock | null {
  reportRepeated(sheet, [], context);
  const thick = propertyOf(sheet, 'thick');
  if (!thick) reportMissing(sheet, 'thickness', 'thick 6', context);
  const thickness = thick ? readLength(thick.value, 'thickness', 'positive', context) : null;
  const sizes = (propertyOf(sheet, 'size')?.sizes ?? []).flatMap(({ width, height, price }) => {
    const across = readLength(width, 'width of a sheet', 'positive', context);
    const up = readLength(height, 'height of a sheet', 'positive', context);
    const money = price && readMoney(price, 'price', context);
    return across === null || up === null ? [] : [{ width: across, height: up, price: money }];
  });
  const density = optional(propertyOf(sheet, 'density')?.value, (value) =>
    readFigureWithin(value, 'density', sheetDensities, 'kg/m³', context),
  );
  const kerf = optional(propertyOf(sheet, 'kerf')?.value, (value) => readLength(value, 'kerf', 'positive', context));
  const margin = optional(propertyOf(sheet, 'margin')?.value, (value) =>
    readLength(value, 'margin', 'notNegative', context),
  );
  const turns = (propertyOf(sheet, 'turns')?.values ?? []).flatMap(
    (value) => readAngle(value, 'turn', null, context) ?? [],
  );
  if (thickness === null) return null;
  return {
    name: sheet.name.text,
    range: sheet.range,
    nameRange: sheet.name.range,
    thickness,
    sizes,
    density,
    kerf: kerf ?? sheetKerf,
    margin: margin ?? 0,
    turns: turns.length > 0 ? [...new Set(turns.map((turn) => ((turn % 360) + 360) % 360))] : alongGrain,
  };
}

/** The finish a declaration describes; null where its coverage is missing or broken. */
export function buildFinish(finish: FinishDeclaration, context: DesignContext): FinishStock | null {
  reportRepeated(finish, [], context);
  const covers = propertyOf(finish, 'coverage');
  if (!covers) reportMissing(finish, 'coverage', 'coverage 12', context);
  const coverage = covers ? readFigure(covers.value, 'coverage', 'positive', 'm² a litre', context) : null;
  const coats = optional(propertyOf(finish, 'coats')?.value, (value) =>
    readCount(value, 'number of coats', 1, mostCoats, context),
  );
  const loss = optional(propertyOf(finish, 'loss')?.value, (value) => readPercent(value, 'loss', 1, context));
  const recoat = optional(propertyOf(finish, 'recoat')?.value, (value) =>
    readTime(value, 'time before the next coat', 'notNegative', context),
  );
  const price = pricePerLitre(propertyOf(finish, 'price'), context);
  if (coverage === null) return null;
  return {
    name: finish.name.text,
    range: finish.range,
    nameRange: finish.name.range,
    coverage,
    coats: coats ?? 1,
    loss: loss ?? 0,
    recoat,
    price,
  };
}

function pricePerLitre(price: PriceProperty | undefined, context: DesignContext): Money | null {
  if (!price) return null;
  const money = readMoney(price.money, 'price', context);
  const per = price.per ? readVolume(price.per, 'measure the price is for', 'positive', context) : millilitresInLitre;
  if (money === null || per === null) return null;
  return { ...money, amount: (money.amount * millilitresInLitre) / per };
}
