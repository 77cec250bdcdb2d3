/** The families of a grid: of a kind that has its own by its size, or each as the grid declares it. */
import { measure, words } from '../../../grammar/words.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { FamilyProperty, GridDeclaration } from '../../../grammar/tree/grid-syntax.ts';
import type { Name } from '../../../grammar/tree/syntax-nodes.ts';
import { direction as directionOf, cross } from '../../geometry/point.ts';
import { directionTolerance, headingOf } from '../../geometry/tolerance.ts';
import type { DesignContext } from '../design-context.ts';
import type { GridFamily, StripStock } from '../design-model.ts';
import { reportMissing } from './pick-properties.ts';
import { readAngle, readCount, readLength } from '../values/read-values.ts';

export type StripsByName = ReadonlyMap<string, StripStock>;

/** A family whose strip and layer may still follow from the grid's. */
export interface OpenFamily extends Omit<GridFamily, 'stock' | 'layer'> {
  readonly stock: StripStock | null;
  readonly layer: number | null;
}

/** The families that a free grid declares; null where one of them is broken. */
export function freeFamilies(
  grid: GridDeclaration,
  strips: StripsByName,
  turn: number,
  context: DesignContext,
): OpenFamily[] | null {
  const declared = grid.properties.filter((property) => property.kind === 'family');
  if (declared.length === 0) reportMissing(grid, 'families', 'family 60deg spacing 40', context);
  const families = declared.map((family) => freeFamily(family, declared.length, strips, turn, context));
  return declared.length > 0 && families.every((family) => family !== null) ? families : null;
}

function freeFamily(
  family: FamilyProperty,
  count: number,
  strips: StripsByName,
  turn: number,
  context: DesignContext,
): OpenFamily | null {
  const direction = readAngle(family.direction, 'direction of the family', null, context);
  const spacing = family.spacing ? readLength(family.spacing, 'spacing', 'positive', context) : 0;
  const offset = family.offset ? readLength(family.offset, 'offset', 'any', context) : 0;
  const places = family.positions.map((position) => readLength(position, 'place of a strip', 'any', context));
  const layer = family.layer ? readCount(family.layer, 'layer', 1, count, context) : null;
  const stock = family.stock ? strips.get(family.stock.text) : null;
  if (direction === null || spacing === null || offset === null || stock === undefined) return null;
  if ((family.layer && layer === null) || !places.every((place) => place !== null)) return null;
  const again = places.findIndex((place, index) => places.indexOf(place) < index);
  if (again >= 0) {
    const message = words`A strip of this family lies at ${measure.given(places[again] ?? 0)} already. Take one of the two out.`;
    context.report(problemAt('outOfRange', family.positions[again]?.range ?? family.range, message));
    return null;
  }
  const placed = places
    .map((place, index) => ({ place, range: family.positions[index]?.range ?? family.range }))
    .sort((a, b) => a.place - b.place);
  const positions = placed.length > 0 ? placed.map(({ place }) => place) : null;
  const positionRanges = positions && placed.map(({ range }) => range);
  const lines = { direction: direction + turn, spacing, offset, positions, positionRanges };
  return { ...lines, stock, layer: layer === null ? null : layer - 1, range: family.range };
}

/** Numbers of families say nothing where one of the grid's phrases could not be read: it may be the family that is missed. */
const quietWhereUnread = ({ incomplete }: GridDeclaration, context: DesignContext): DesignContext =>
  incomplete ? { ...context, report: () => undefined } : context;

/** `except 2 of bass`: the families with the strips that are said for one by its number; null where that is broken. */
export function withExceptions(
  grid: GridDeclaration,
  families: readonly OpenFamily[],
  strips: StripsByName,
  context: DesignContext,
): OpenFamily[] | null {
  const changed: OpenFamily[] = [...families];
  const quiet = quietWhereUnread(grid, context);
  for (const exception of grid.properties.filter((property) => property.kind === 'except')) {
    const number = readCount(exception.family, 'number of the family', 1, families.length, quiet);
    const family = number === null ? undefined : changed[number - 1];
    const stock = strips.get(exception.stock.text);
    if (number === null || !family || !stock) return null;
    changed[number - 1] = { ...family, stock };
  }
  return changed;
}

/** The families with strip and layer settled; null where something keeps them from being lapped. */
export function settledFamilies(
  grid: GridDeclaration,
  families: readonly OpenFamily[],
  common: { readonly name: Name; readonly stock: StripStock | undefined } | null,
  turn: number,
  context: DesignContext,
): GridFamily[] | null {
  if (!common && families.some(({ stock }) => stock === null)) {
    reportMissing(grid, 'strip', 'of ash', context);
    return null;
  }
  const layers = layersOf(grid, families, turn, context);
  const settled = families.flatMap((family, index): GridFamily[] => {
    const stock = family.stock ?? common?.stock;
    return stock && layers ? [{ ...family, stock, layer: layers[index] ?? 0 }] : [];
  });
  if (settled.length < families.length) return null;
  return haveOneDepth(grid, settled, context) && crossInOrder(settled, context) ? settled : null;
}

/** Layers by family: as `layers` orders them, as each says, else the smaller direction lower, however the grid is turned. */
function layersOf(
  grid: GridDeclaration,
  families: readonly OpenFamily[],
  turn: number,
  context: DesignContext,
): number[] | null {
  const order = grid.properties.find((property) => property.kind === 'layers');
  if (order) {
    const isWhole = order.values.length === families.length;
    const numbers = isWhole
      ? order.values.map((value) => readCount(value, 'number of a family', 1, families.length, context))
      : [];
    if (numbers.some((number) => number === null)) return null;
    if (new Set(numbers).size === families.length) return families.map((_, index) => numbers.indexOf(index + 1));
    const message = `The grid has ${families.length} families. Name each once, from the back to the front.`;
    quietWhereUnread(grid, context).report(problemAt('outOfRange', order.range, message));
    return null;
  }
  const taken = new Set(families.map(({ layer }) => layer));
  const free = families.map((_, layer) => layer).filter((layer) => !taken.has(layer));
  const heading = (index: number): number => headingOf((families[index]?.direction ?? 0) - turn);
  const open = families.flatMap(({ layer }, index) => (layer === null ? [index] : []));
  open.sort((a, b) => heading(a) - heading(b));
  return families.map(({ layer }, index) => layer ?? free[open.indexOf(index)] ?? 0);
}

function haveOneDepth(grid: GridDeclaration, families: readonly GridFamily[], context: DesignContext): boolean {
  const [first] = families;
  const other = families.find(({ stock }) => stock.depth !== first?.stock.depth);
  if (!first || !other) return true;
  const depths = words`\`${first.stock.name}\` is ${measure.given(first.stock.depth)} deep and \`${other.stock.name}\` ${measure.given(other.stock.depth)}`;
  const message = words`All strips of a grid need one depth, for their laps to come flush: ${depths}. Mill them to one depth.`;
  context.report(problemAt('unequalDepths', grid.name.range, message));
  return false;
}

/** Of two families that cross, one must lie lower. */
function crossInOrder(families: readonly GridFamily[], context: DesignContext): boolean {
  for (const [index, family] of families.entries()) {
    const clash = families
      .slice(0, index)
      .find((other) => other.layer === family.layer && !runsAlike(other.direction, family.direction));
    if (!clash) continue;
    const message = words`This family and the one at ${measure.fineAngle(clash.direction)} cross in layer ${family.layer + 1}; of two strips that cross, one lies lower. Give each a layer of its own.`;
    const related = [{ range: clash.range, message: 'The other is declared here.' }];
    context.report(problemAt('outOfRange', family.range, message, related));
    return false;
  }
  return true;
}

const runsAlike = (a: number, b: number): boolean =>
  Math.abs(cross(directionOf(a), directionOf(b))) <= directionTolerance;

/**
 * What stands for the side of a free grid: the distance at which lines of the first family that crosses the first
 * pass along its strips; 0 where none crosses.
 */
export function freeSide(families: readonly GridFamily[]): number {
  const [base] = families;
  const other = families.find((family) => base && !runsAlike(base.direction, family.direction));
  if (!base || !other) return 0;
  const [low = 0, high = low] = other.positions ?? [0, other.spacing];
  return (high - low) / Math.abs(cross(directionOf(base.direction), directionOf(other.direction)));
}
