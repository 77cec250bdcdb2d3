/** The region a panel's lattice fills, and where the grid lies under it. */
import { minimum } from '../../geometry/numbers.ts';
import { countedWay } from '../../design/values/counted-places.ts';
import type { Panel, PanelShape } from '../../design/design-model.ts';
import { flattenContour } from '../../geometry/flatten-path.ts';
import { contourArea, contourLength, ringLength } from '../../geometry/measure-path.ts';
import { add, dot, origin, type Point, scale, subtract, turned } from '../../geometry/point.ts';
import {
  areaOf,
  boundsOf,
  centroidOf,
  clipToHalfPlanes,
  type HalfPlane,
  middleOfBounds,
  withoutIdlePoints,
} from '../../geometry/polygons.ts';
import { type Region, regionOf } from '../../geometry/region.ts';
import { cellClasses } from '../cells/cell-classes.ts';
import {
  areParallel,
  boundsAboutOrigin,
  crossingPair,
  type LineFamily,
  lineFamilies,
  lineOffset,
  widestSpace,
} from './grid-lines.ts';
import { periodOf } from './grid-period.ts';
import { mainNode } from './lattice-nodes.ts';

export interface PanelRegion {
  readonly region: Region;
  readonly areaMm2: number;
  readonly perimeterMm: number;
  /** Where the panel's phase puts the grid's own origin, and the families laid there. */
  readonly gridOrigin: Point;
  readonly families: readonly LineFamily[];
}

export function panelRegion(panel: Panel): PanelRegion {
  const { shape } = panel;
  const resting = lineFamilies(panel.grid, { x: 0, y: 0 });
  if (shape.kind === 'cells' || shape.kind === 'hexagonOfCells') {
    const counted = ringOfCells(shape, panel.edge === 'sawn' ? 1 : -1, panel.grid.turn, resting);
    // cells, hexagons and sizes alike lie about the middle of their box
    const gridOrigin = counted.length > 0 ? scale(middleOfBounds(boundsOf(counted)), -1) : origin;
    const ring = counted.map((corner) => add(corner, gridOrigin));
    const region = regionOf(ring.length > 0 ? [ring] : []);
    return {
      region,
      areaMm2: areaOf(region.rings),
      perimeterMm: ringLength(ring),
      gridOrigin,
      families: lineFamilies(panel.grid, gridOrigin),
    };
  }
  if (shape.kind === 'rectangle') {
    const { width, height } = shape;
    const ring = rectangleRing(width, height);
    const gridOrigin = gridOriginUnder(panel, resting, [ring]);
    return {
      region: regionOf([ring]),
      areaMm2: width * height,
      perimeterMm: 2 * (width + height),
      gridOrigin,
      families: lineFamilies(panel.grid, gridOrigin),
    };
  }
  const rings = shape.outline.contours.map(flattenContour);
  const gridOrigin = gridOriginUnder(panel, resting, rings);
  return {
    region: regionOf(rings),
    areaMm2: shape.outline.contours.reduce((sum, contour) => sum + contourArea(contour), 0),
    perimeterMm: shape.outline.contours.reduce((sum, contour) => sum + contourLength(contour), 0),
    gridOrigin,
    families: lineFamilies(panel.grid, gridOrigin),
  };
}

/** A rectangle centred on the origin. */
function rectangleRing(width: number, height: number): Point[] {
  const [right, top] = [width / 2, height / 2];
  return [
    { x: -right, y: -top },
    { x: right, y: -top },
    { x: right, y: top },
    { x: -right, y: top },
  ];
}

/**
 * The region of whole cells: to the outer faces of its outer lines (`side` 1, they are strips) or to
 * their inner faces (`side` −1, the frame stands in their place).
 */
function ringOfCells(
  shape: Extract<PanelShape, { kind: 'cells' | 'hexagonOfCells' }>,
  side: 1 | -1,
  turn: number,
  families: readonly LineFamily[],
): Point[] {
  const spans: readonly (readonly [LineFamily, number, number])[] =
    shape.kind === 'cells'
      ? rowsAndColumns(shape.across, shape.up, turn, families)
      : families.map((lines) => [lines, -shape.cells, shape.cells] as const);
  const sides = spans.flatMap(([lines, low, high]): HalfPlane[] => [
    { normal: lines.normal, reach: lineOffset(lines, high) + (side * lines.face) / 2 },
    { normal: scale(lines.normal, -1), reach: -lineOffset(lines, low) + (side * lines.face) / 2 },
  ]);
  if (!sides.every(({ reach }) => Number.isFinite(reach))) return [];
  const reach = sides.reduce((sum, side) => sum + Math.abs(side.reach), 0) * 4;
  return withoutIdlePoints(clipToHalfPlanes(rectangleRing(reach, reach), sides));
}

/** The first two families bound m × n cells: rows from the lowest line, columns from the one at the left. */
function rowsAndColumns(
  across: number,
  up: number,
  turn: number,
  families: readonly LineFamily[],
): (readonly [LineFamily, number, number])[] {
  const pair = crossingPair(families);
  if (!pair) return [];
  const { base: rows, other: columns } = pair;
  return [
    [rows, ...firstLines(rows, up, turn, 1)],
    [columns, ...firstLines(columns, across, turn, dot(columns.normal, rows.along))],
  ];
}

/** First and last of the lines that bound `count` spaces: of single lines the first as they are counted, of others the first along the normal or (`way` < 0) against it. */
function firstLines({ family, places }: LineFamily, count: number, turn: number, way: number): [number, number] {
  if (places && countedWay(family.direction - turn) === -1) return [places.length - 1 - count, places.length - 1];
  return places || way > 0 ? [0, count] : [-count, 0];
}

/** Where the grid's own origin must lie so that the phase's feature meets its place. */
function gridOriginUnder(panel: Panel, resting: readonly LineFamily[], rings: readonly (readonly Point[])[]): Point {
  const { phase } = panel;
  const corners = rings.flat();
  if (phase.kind === 'corner') return cornerSeenFrom(panel.grid.turn, corners);
  return phase.kind === 'nodeAt'
    ? subtract(phase.at, featurePlace('node', panel, resting))
    : subtract(middleOfBounds(boundsOf(corners)), featurePlace(phase.on, panel, resting));
}

/** The lower left corner of the box round `points` that stands upright in a grid turned by `turn` degrees. */
function cornerSeenFrom(turn: number, points: readonly Point[]): Point {
  const { left, bottom } = boundsOf(points.map((point) => turned(point, -turn)));
  return turned({ x: left, y: bottom }, turn);
}

/** A node of the lattice where it lies under the panel: the one that a phase of `node at` speaks of. */
export const nodeOfPanel = (panel: Panel): Point =>
  add(panelRegion(panel).gridOrigin, featurePlace('node', panel, lineFamilies(panel.grid, origin)));

/** A node; the middle of an upward triangle, hexagon or square; the middle of a side along the first family. */
function featurePlace(feature: 'node' | 'cell' | 'edge', panel: Panel, resting: readonly LineFamily[]): Point {
  const [first] = resting;
  if (!first || !crossingPair(resting)) return { x: 0, y: 0 };
  const stretch = periodOf(resting) ?? boundsAboutOrigin(resting);
  const node = mainNode(resting, stretch, panel.grid.turn);
  if (feature === 'node') return node;
  if (feature === 'edge') return add(node, scale(first.along, nearestNodeAlong(first, resting) / 2));
  const upright = cellClasses(resting, stretch, panel.grid.turn)
    .classes.filter(({ frameTurn }) => frameTurn === -panel.grid.turn)
    .sort((a, b) => b.opening.length - a.opening.length);
  return upright[0] ? centroidOf(upright[0].opening) : node;
}

/** Distance between neighbouring nodes on a line of `lines`. */
function nearestNodeAlong(lines: LineFamily, families: readonly LineFamily[]): number {
  const steps = families
    .filter((other) => !areParallel(other, lines))
    .map((other) => widestSpace(other) / Math.abs(dot(other.normal, lines.along)));
  return minimum(steps);
}
