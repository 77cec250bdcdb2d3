/** Grids of the design. */
import { measure, words } from '../../../grammar/words.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import type { GridDeclaration, GridKindProperty } from '../../../grammar/tree/grid-syntax.ts';
import {
  freeFamilies,
  freeSide,
  type OpenFamily,
  settledFamilies,
  type StripsByName,
  withExceptions,
} from './build-families.ts';
import type { DesignContext } from '../design-context.ts';
import type { Grid, GridKind, MeasuredLattice } from '../design-model.ts';
import { gridPresets } from './grid-presets.ts';
import { propertyOf, reportMissing, reportRepeated } from './pick-properties.ts';
import { readAngle, readCount, readLength } from '../values/read-values.ts';

/** The grid a declaration describes; null where its kind, size or strip is missing or broken. */
export function buildGrid(grid: GridDeclaration, strips: StripsByName, context: DesignContext): Grid | null {
  reportRepeated(grid, ['family', 'except'], context);
  const kindProperty = propertyOf(grid, 'grid kind');
  if (!kindProperty) reportMissing(grid, 'kind', 'three_way', context);
  const of = propertyOf(grid, 'of strip');
  const common = of ? { name: of.name, stock: strips.get(of.name.text) } : null;
  const fit = propertyOf(grid, 'fit');
  const fitLength = fit ? readLength(fit.value, 'fit', 'any', context) : 0;
  const wallProperty = propertyOf(grid, 'wall');
  const wall = wallProperty ? readLength(wallProperty.value, 'wall', 'positive', context) : null;
  const turnProperty = propertyOf(grid, 'turn');
  const turn = turnProperty ? readAngle(turnProperty.value, 'turn', null, context) : 0;
  const sized =
    kindProperty?.gridKind === 'free'
      ? freeGrid(grid, kindProperty, strips, turn ?? 0, context)
      : presetGrid(grid, kindProperty, turn ?? 0, context);
  if (!of && !sized) reportMissing(grid, 'strip', 'of ash', context);
  const open = sized && withExceptions(grid, sized.families, strips, context);
  const families = open && settledFamilies(grid, open, common, turn ?? 0, context);
  const side = sized && families ? (sized.side ?? freeSide(families)) : null;
  const measured = side ? measuredLattice(grid, side, context) : null;
  if (!sized || !families || side === null || fitLength === null || turn === null) return null;
  return {
    name: grid.name.text,
    range: grid.range,
    nameRange: grid.name.range,
    kind: sized.kind,
    families,
    turn,
    sideRange: sized.sideRange,
    side,
    measured,
    fit: fitLength,
    wall,
    bothSlants: propertyOf(grid, 'both slants') !== undefined,
  };
}

interface SizedGrid {
  readonly kind: GridKind;
  readonly families: readonly OpenFamily[];
  /** Null where it follows from the families. */
  readonly side: number | null;
  readonly sideRange: SourceRange;
}

function presetGrid(
  grid: GridDeclaration,
  kindProperty: GridKindProperty | undefined,
  turn: number,
  context: DesignContext,
): SizedGrid | null {
  for (const family of grid.properties.filter((property) => property.kind === 'family')) {
    if (!kindProperty) break;
    const message = `A ${kindProperty.gridKind} grid has its families by itself. Take this out, or make the grid \`free\`.`;
    context.report(problemAt('unknownProperty', family.keyword, message));
  }
  const angle = kindProperty?.angle ? readAngle(kindProperty.angle, 'angle of a diamond', [0, 180], context) : 90;
  const size = sizeOf(grid, context);
  const side = size && readLength(size.value, size.kind, 'positive', context);
  if (!kindProperty || kindProperty.gridKind === 'free' || !size || !side || angle === null) return null;
  const families = gridPresets[kindProperty.gridKind]
    .families(angle)
    .map(({ direction, spacing, offset }, layer): OpenFamily => ({
      direction: direction + turn,
      spacing: spacing * side,
      offset: offset * side,
      positions: null,
      stock: null,
      layer,
      range: kindProperty.range,
    }));
  return { kind: kindProperty.gridKind, families, side, sideRange: size.value.range };
}

function freeGrid(
  grid: GridDeclaration,
  kindProperty: GridKindProperty,
  strips: StripsByName,
  turn: number,
  context: DesignContext,
): SizedGrid | null {
  for (const size of [propertyOf(grid, 'side'), propertyOf(grid, 'pitch')]) {
    const message = 'A free grid has its size in the spacing of its families. Take this out.';
    if (size) context.report(problemAt('unknownProperty', size.keyword, message));
  }
  const families = freeFamilies(grid, strips, turn, context);
  return families && { kind: 'free', families, side: null, sideRange: kindProperty.range };
}

/** Further than this from the drawing is no measurement of this grid, but a slip. */
const likelyError = 0.1;
const mostMeasuredCells = 1000;

/** What was measured after assembly; null where nothing was, or where it can't be right. */
function measuredLattice(grid: GridDeclaration, side: number, context: DesignContext): MeasuredLattice | null {
  const property = propertyOf(grid, 'measured');
  if (!property) return null;
  const cells = readCount(property.cells, 'number of cells', 1, mostMeasuredCells, context);
  const over = readLength(property.over, 'measured length', 'positive', context);
  const face = property.face ? readLength(property.face, 'measured face', 'positive', context) : null;
  if (cells === null || over === null || (property.face && face === null)) return null;
  const measuredSide = over / cells;
  if (Math.abs(measuredSide / side - 1) <= likelyError) return { side: measuredSide, face };
  const message = words`${cells} cells should measure about ${measure.given(cells * side)}, and this is ${measure.given(over)}. Measure from node to node, and count the cells between.`;
  context.report(problemAt('outOfRange', property.over.range, message));
  return null;
}

/** The property that gives the grid's size: `side`, or `pitch` on a square grid, whose side is its pitch. */
function sizeOf(grid: GridDeclaration, context: DesignContext) {
  const side = propertyOf(grid, 'side');
  const pitch = propertyOf(grid, 'pitch');
  const kind = propertyOf(grid, 'grid kind')?.gridKind;
  if (side && pitch) {
    const message = 'The grid already has its size in `side`. Keep one of the two.';
    const related = [{ range: side.keyword, message: 'Its side is given here.' }];
    context.report(problemAt('repeatedProperty', pitch.keyword, message, related));
    return side;
  }
  if (pitch && kind && kind !== 'square') {
    const message =
      'This kind of grid is sized by the side of its openings, from node to node. Write `side` instead of `pitch`.';
    context.report(problemAt('unknownProperty', pitch.keyword, message));
    return undefined;
  }
  if (!side && !pitch && kind && kind !== 'free') {
    const { size } = gridPresets[kind];
    reportMissing(grid, size, `${size} 40`, context);
  }
  return side ?? pitch;
}
