/**
 * The strips of a panel worked out a second way, by school geometry and the words of the definitions alone: lines meet by
 * Cramer's rule, a body is cut from the outline by walking round what is left of it. Of the engine only the design's
 * own types are used. Lengths mm, angles in degrees.
 */
import type { Panel } from '../../server/design/design-model.ts';

interface Vector {
  readonly x: number;
  readonly y: number;
}

interface Line {
  readonly family: number;
  readonly through: Vector;
  readonly along: Vector;
}

export interface CutAgain {
  /** Centre of the crossing, from the strip's start. */
  readonly place: number;
  readonly angle: number;
  readonly width: number;
  readonly depth: number;
  readonly from: 'above' | 'below';
  /** How many lines of the grid meet here. */
  readonly lines: number;
}

export interface StripAgain {
  readonly family: number;
  readonly start: Vector;
  readonly length: number;
  readonly cuts: readonly CutAgain[];
}

/** A stretch of a line. */
interface Part {
  readonly line: Line;
  readonly from: number;
  readonly to: number;
}

/** What rounding decides is left out of the comparison. */
export class TooClose extends Error {}

function apart(a: number, b: number, least: number): void {
  if (Math.abs(a - b) < least) throw new TooClose();
}

/** Strips with no tail end just at a node, and are notched there. */
const exact = 1e-6;

function beside(place: number, end: number): void {
  if (Math.abs(place - end) > exact) apart(place, end, 0.01);
}

const times = (a: Vector, b: Vector): number => a.x * b.y - a.y * b.x;
const inner = (a: Vector, b: Vector): number => a.x * b.x + a.y * b.y;
const at = ({ through, along }: Line, place: number): Vector => ({
  x: through.x + place * along.x,
  y: through.y + place * along.y,
});
const heading = (degrees: number): Vector => ({
  x: Math.cos((degrees * Math.PI) / 180),
  y: Math.sin((degrees * Math.PI) / 180),
});

/** The strips of `panel`, of which the grid's origin lies at `origin` and the outline is `ring`, counter-clockwise. */
export function stripsAgain(panel: Panel, origin: Vector, ring: readonly Vector[]): StripAgain[] {
  const lines = linesNear(panel, origin, ring);
  const parts = lines.flatMap((line) => partsOf(panel, line, lines, ring));
  return parts.map((part) => ({
    family: part.line.family,
    start: at(part.line, part.from),
    length: part.to - part.from,
    cuts: cutsOf(panel, part, lines, parts),
  }));
}

/** Every line that may touch the outline or be the node beyond it. */
function linesNear({ grid }: Panel, origin: Vector, ring: readonly Vector[]): Line[] {
  const reach = Math.max(...ring.map(({ x, y }) => Math.hypot(x, y))) + 4 * grid.side;
  return grid.families.flatMap(({ direction, spacing, offset, positions }, family) => {
    const along = heading(direction);
    const normal = { x: -along.y, y: along.x };
    const shift = inner(normal, origin);
    const steps = spacing > 0 ? Math.ceil((reach + Math.abs(shift) + Math.abs(offset)) / spacing) : 0;
    const places = positions ?? Array.from({ length: 2 * steps + 1 }, (_, step) => offset + (step - steps) * spacing);
    return places.map((place) => ({
      family,
      along,
      through: { x: normal.x * (place + shift), y: normal.y * (place + shift) },
    }));
  });
}

/** Where `other` meets `line`, along `line`; null where they run the same way. */
function meeting(line: Line, other: Line): number | null {
  const across = times(line.along, other.along);
  if (Math.abs(across) < 1e-9) return null;
  const between = { x: other.through.x - line.through.x, y: other.through.y - line.through.y };
  return times(between, other.along) / across;
}

/** The strips of one line: an end each for what lies in the outline; sawn ones that would share wood are one. */
function partsOf(panel: Panel, line: Line, lines: readonly Line[], ring: readonly Vector[]): Part[] {
  const face = panel.grid.families[line.family]?.stock.face ?? 0;
  const nodes = lines.flatMap((other) => meeting(line, other) ?? []);
  const joined: Part[] = [];
  for (const [low, high] of stretchesOfBody(line, face / 2, ring)) {
    const [from, to] =
      panel.edge === 'framed' ? [low - panel.stub, high + panel.stub] : sawnEnds(panel, nodes, low, high);
    const before = joined.at(-1);
    if (before) apart(from, before.to, 1e-4);
    if (before && from < before.to)
      joined[joined.length - 1] = { line, from: before.from, to: Math.max(before.to, to) };
    else joined.push({ line, from, to });
  }
  return joined;
}

/** Each end lies a tail beyond the nearest node that makes the strip cover its part. */
function sawnEnds({ tail }: Panel, nodes: readonly number[], low: number, high: number): [number, number] {
  for (const node of nodes) {
    apart(node, low + tail, 1e-4);
    apart(node, high - tail, 1e-4);
  }
  const first = Math.max(...nodes.filter((node) => node - tail < low));
  const last = Math.min(...nodes.filter((node) => node + tail > high));
  return [Number.isFinite(first) ? first - tail : low, Number.isFinite(last) ? last + tail : high];
}

/** From where to where along the line each connected part of body ∩ outline reaches, in order. */
function stretchesOfBody(line: Line, half: number, ring: readonly Vector[]): [number, number][] {
  const normal = { x: -line.along.y, y: line.along.x };
  const level = inner(normal, line.through);
  const local = ring.map((point) => ({ x: inner(line.along, point), y: inner(normal, point) - level }));
  const sides = [...outlineWithin(local, half), ...facesWithin(local, -half), ...facesWithin(local, half)];
  return loopsOf(sides)
    .filter((loop) => {
      const area = Math.abs(loop.reduce((sum, [from, to]) => sum + times(from, to) / 2, 0));
      if (area > 0.005 && area < 0.02) throw new TooClose();
      return area > 0.01;
    })
    .map((loop): [number, number] => {
      const reaches = loop.flat().map(({ x }) => x);
      return [Math.min(...reaches), Math.max(...reaches)];
    })
    .sort(([a], [b]) => a - b);
}

type Side = readonly [Vector, Vector];

/** What of the outline lies between the two faces. */
const outlineWithin = (ring: readonly Vector[], half: number): Side[] =>
  ring.flatMap((from, index): Side[] => {
    const to = ring[(index + 1) % ring.length] ?? from;
    const rise = to.y - from.y;
    if (Math.abs(rise) < 1e-9) return Math.abs(from.y) < half ? [[from, to]] : [];
    const ends = [(-half - from.y) / rise, (half - from.y) / rise].sort((a, b) => a - b);
    const [enter, leave] = [Math.max(0, ends[0] ?? 0), Math.min(1, ends[1] ?? 1)];
    const on = (share: number): Vector => ({ x: from.x + share * (to.x - from.x), y: from.y + share * rise });
    if (enter >= leave) return [];
    // Where a side leaves through a face almost along it, a thousandth of the clipping is a tenth along the strip.
    if ((enter > 0 || leave < 1) && Math.abs(rise / (to.x - from.x)) < 0.06) throw new TooClose();
    return [[on(enter), on(leave)]];
  });

/** What of a face lies within the outline: between every odd crossing and the next, the inside on the left. */
function facesWithin(ring: readonly Vector[], level: number): Side[] {
  const crossings = ring
    .flatMap((from, index) => {
      const to = ring[(index + 1) % ring.length] ?? from;
      if (from.y < level === to.y < level) return [];
      return [from.x + ((level - from.y) / (to.y - from.y)) * (to.x - from.x)];
    })
    .sort((a, b) => a - b);
  return crossings.flatMap((x, index): Side[] => {
    const next = crossings[index + 1];
    if (index % 2 === 1 || next === undefined) return [];
    const [left, right] = [
      { x, y: level },
      { x: next, y: level },
    ];
    return [level < 0 ? [left, right] : [right, left]];
  });
}

/** Sides that follow one another round one part. */
function loopsOf(sides: readonly Side[]): Side[][] {
  const rest = [...sides];
  const loops: Side[][] = [];
  for (let first = rest.pop(); first; first = rest.pop()) {
    const loop = [first];
    for (let end = first[1]; ;) {
      const next = rest.findIndex(([from]) => Math.hypot(from.x - end.x, from.y - end.y) < 1e-6);
      const [side] = next < 0 ? [] : rest.splice(next, 1);
      if (!side) break;
      loop.push(side);
      end = side[1];
    }
    loops.push(loop);
  }
  return loops;
}

function cutsOf(panel: Panel, part: Part, lines: readonly Line[], parts: readonly Part[]): CutAgain[] {
  const { line, from, to } = part;
  return lines.flatMap((other): CutAgain[] => {
    const place = meeting(line, other);
    if (place === null || place < from - 1 || place > to + 1) return [];
    [from, to].forEach((end) => beside(place, end));
    const node = at(line, place);
    const onOther = inner({ x: node.x - other.through.x, y: node.y - other.through.y }, other.along);
    const isMet = parts.some((each) => {
      if (each.line !== other) return false;
      [each.from, each.to].forEach((end) => beside(onOther, end));
      return onOther > each.from - exact && onOther < each.to + exact;
    });
    return isMet && place > from - exact && place < to + exact
      ? cutsAt(panel, line, other, place - from, familiesAt(node, lines))
      : [];
  });
}

/** Families with a line through a node. */
function familiesAt(node: Vector, lines: readonly Line[]): number[] {
  const near = lines.filter(({ through, along }) => {
    const away = Math.abs(times({ x: node.x - through.x, y: node.y - through.y }, along));
    if (away > 1e-6 && away < 0.01) throw new TooClose();
    return away <= 1e-6;
  });
  return near.map(({ family }) => family);
}

/** Two lap by half. Of three, the lowest and the highest are cut two thirds deep for each other one, the middle a third. */
function cutsAt({ grid }: Panel, line: Line, other: Line, place: number, met: readonly number[]): CutAgain[] {
  const [own, crossing] = [grid.families[line.family], grid.families[other.family]];
  if (!own || !crossing) return [];
  const turn = crossing.direction - own.direction;
  const ranks = met.map((family) => grid.families[family]?.layer ?? 0).sort((a, b) => a - b);
  const isMiddle = met.length === 3 && own.layer === ranks[1];
  const share = met.length === 2 ? 1 / 2 : isMiddle ? 1 / 3 : 2 / 3;
  const cut: CutAgain = {
    place,
    angle: ((turn % 180) + 180) % 180,
    width: crossing.stock.face + grid.fit,
    depth: share * own.stock.depth,
    from: own.layer < crossing.layer ? 'above' : 'below',
    lines: met.length,
  };
  return isMiddle && grid.bothSlants ? [cut, { ...cut, from: cut.from === 'above' ? 'below' : 'above' }] : [cut];
}
