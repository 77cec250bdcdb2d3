/** A piece's own dimensions, on any page: bevels, lengths, places of its laps. */
import { maximum, minimum } from '../geometry/numbers.ts';
import { radians } from '../geometry/point.ts';
import { arithmeticTolerance, isZeroLength } from '../geometry/tolerance.ts';
import type { PieceShape, Polygon } from '../lattice/laid-panel.ts';
import { angleText, type LengthFigures } from '../words/figures.ts';
import { type Member, singleNotches } from './member-views.ts';
import type { PageItem } from './page/page-model.ts';
import { type BrokenAxis, onPage } from './sheet/broken-axis.ts';
import { angleDimension, heightDimension, lengthDimension } from './sheet/dimensions.ts';

export const pieceMember = ({ outline, length, stock, notches }: PieceShape): Member => ({
  outline,
  length,
  face: stock.face,
  depth: stock.depth,
  notches,
});

/** Paper millimetres that the dimensions take beyond the wood: over it, and under it. */
export const dimensionRoom = { over: 21, overLapped: 30, under: 30 };

/** All dimensions of a piece drawn along `axis`, its own axis at height `middle` of the page. */
export function pieceDimensions(
  shape: PieceShape,
  axis: BrokenAxis,
  middle: number,
  figures: LengthFigures,
): PageItem[] {
  const half = (shape.stock.face / 2) * axis.scale;
  return [
    ...bevelArcs(shape, axis, middle, half),
    ...lapPlaces(shape, axis, middle, half, figures),
    ...lengths(shape, axis, middle, half, figures),
  ];
}

/** Arcs this far from the node at least, and so far that the far ray leaves the wood. */
const smallestArc = 13;
const outOfWood = 3.5;

function bevelArcs({ ends, outline }: PieceShape, axis: BrokenAxis, middle: number, half: number): PageItem[] {
  const nodes = nodesOnAxis(outline);
  return ends.flatMap(({ bevels }, end) => {
    const node = onPage(axis, nodes[end] ?? 0);
    if (bevels === null || node === null) return [];
    const inward = end === 0 ? 0 : 180;
    return bevels.flatMap((bevel, side) => {
      const radius = Math.max(smallestArc, (half + outOfWood) / Math.sin(radians(bevel)));
      const sweep = (end === side ? 1 : -1) * bevel;
      return angleDimension({ x: node, y: middle }, inward, sweep, radius, angleText(bevel));
    });
  });
}

/** Where the outline crosses the axis, nearest end 1 and nearest end 2. */
function nodesOnAxis(outline: Polygon): [number, number] {
  const places = outline.flatMap((from, index) => {
    const to = outline[(index + 1) % outline.length] ?? from;
    if (Math.abs(from.y - to.y) <= arithmeticTolerance || from.y * to.y > 0) return [];
    return [from.x + ((to.x - from.x) * from.y) / (from.y - to.y)];
  });
  return [minimum(places), maximum(places)];
}

/** Dimension lines keep this far from the wood, one behind the other, clear of the figures of the angles. */
const firstLine = 16;
const secondLine = 25;

function lengths(
  { outline, length, edges, stock }: PieceShape,
  axis: BrokenAxis,
  middle: number,
  half: number,
  figures: LengthFigures,
): PageItem[] {
  const edge = (side: 1 | -1, edgeLength: number): PageItem[] => {
    const atEdge = outline.filter(({ y }) => isZeroLength(y - (side * stock.face) / 2));
    const start = minimum(atEdge.map(({ x }) => x));
    const [from, to] = [onPage(axis, start), onPage(axis, start + edgeLength)];
    if (edgeLength === 0 || from === null || to === null) return [];
    const y = middle - side * half;
    return lengthDimension({ x: from, y }, { x: to, y }, y - side * firstLine, figures.length(edgeLength));
  };
  const [tip, farTip] = [onPage(axis, 0), onPage(axis, length)];
  const ends = (place: number): number =>
    middle - (outline.find(({ x }) => Math.abs(x - place) <= arithmeticTolerance)?.y ?? 0) * axis.scale;
  const overall =
    tip === null || farTip === null
      ? []
      : lengthDimension(
          { x: tip, y: Math.max(ends(0), middle) },
          { x: farTip, y: Math.max(ends(length), middle) },
          middle + half + secondLine,
          `${figures.length(length)} tip to tip`,
        );
  const right = (farTip ?? 0) + 26;
  const face = heightDimension(right, middle - half, middle + half, right - 6, figures.fine(stock.face));
  return [...edge(1, edges[0]), ...edge(-1, edges[1]), ...overall, ...face];
}

/** Places of laps from the tip of end 1. */
function lapPlaces(
  { notches }: PieceShape,
  axis: BrokenAxis,
  middle: number,
  half: number,
  figures: LengthFigures,
): PageItem[] {
  const places = [...new Set(singleNotches(notches).map(({ place }) => place))];
  const tip = onPage(axis, 0);
  return places.flatMap((place) => {
    const x = onPage(axis, place);
    if (x === null || tip === null) return [];
    const y = middle - half;
    return lengthDimension({ x: tip, y }, { x, y }, y - secondLine, figures.length(place));
  });
}
