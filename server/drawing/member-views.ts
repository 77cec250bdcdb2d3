/** A notched strip or piece seen from the front and from its edge, on a sheet, broken where it is too long. */
import { maximum, minimum } from '../geometry/numbers.ts';
import { type Point, radians } from '../geometry/point.ts';
import { intersectionOf } from '../geometry/polygons.ts';
import { isZeroLength } from '../geometry/tolerance.ts';
import type { NotchRun, Polygon } from '../lattice/laid-panel.ts';
import { placesOfRun } from '../lattice/strips/notch-runs.ts';
import { type BrokenAxis, breakLines, type ShownPart } from './sheet/broken-axis.ts';
import type { PageItem } from './page/page-model.ts';
import { area, openLine } from './sheet/sheet-lines.ts';

/** Millimetres; axis along x from 0, left is +y, the front faces the viewer. */
export interface Member {
  readonly outline: Polygon;
  readonly length: number;
  readonly face: number;
  readonly depth: number;
  readonly notches: readonly NotchRun[];
}

/** One notch by itself. */
export interface SingleNotch extends NotchRun {
  readonly place: number;
}

/** Every notch in order from end 1. */
export const singleNotches = (runs: readonly NotchRun[]): SingleNotch[] =>
  runs.flatMap((run) => placesOfRun(run).map((place) => ({ ...run, place }))).sort((a, b) => a.place - b.place);

/** Wood kept on both sides of a notch where a view is broken. */
const besideNotch = 3;

/** Stretches along the member that a broken view must not cut: its notches, with some wood beside them. */
export const notchStretches = ({ notches, face }: Member): [number, number][] =>
  singleNotches(notches).map((notch) => {
    const along = notchOnFace(notch, face).map(({ x }) => x);
    return [minimum(along) - besideNotch, maximum(along) + besideNotch];
  });

/** The corners of a notch on the face, counter-clockwise from its lower start. `run` along the axis = width / sin(angle). */
export function notchOnFace({ place, width, angle }: SingleNotch, face: number): Point[] {
  const halfRun = width / Math.sin(radians(angle)) / 2;
  const lean = face / 2 / Math.tan(radians(angle));
  return [
    { x: place - lean - halfRun, y: -face / 2 },
    { x: place - lean + halfRun, y: -face / 2 },
    { x: place + lean + halfRun, y: face / 2 },
    { x: place + lean - halfRun, y: face / 2 },
  ];
}

/** From the front: notches cut from above open, those from below hidden. The axis lies at height `middle` of the page. */
export function faceView(member: Member, axis: BrokenAxis, middle: number): PageItem[] {
  const { outline, length, face } = member;
  const parts = axis.parts.flatMap((part) => {
    const place = ({ x, y }: Point): Point => ({
      x: part.left + (x - part.from) * axis.scale,
      y: middle - y * axis.scale,
    });
    const isBreak = (x: number): boolean =>
      (isZeroLength(x - part.from) && part.from > 0) || (isZeroLength(x - part.to) && part.to < length);
    const notches = singleNotches(member.notches).flatMap((notch) =>
      cutToPart(notchOnFace(notch, face), part, member).map((ring) => ({ ring, notch })),
    );
    return [
      ...cutToPart(outline, part, member).flatMap((ring) => [
        area('bare', ring.map(place)),
        ...edgesOf(ring)
          .filter(([from, to]) => !(isBreak(from.x) && isBreak(to.x)))
          .map((edge) => openLine('edge', edge.map(place))),
      ]),
      ...notches.map(({ ring, notch }) => area(notch.from === 'above' ? 'cut' : 'hidden', ring.map(place))),
    ];
  });
  const half = (face / 2) * axis.scale;
  return [...parts, ...breakLines(axis, middle - half, middle + half)];
}

const edgesOf = (ring: readonly Point[]): [Point, Point][] =>
  ring.map((point, index) => [point, ring[(index + 1) % ring.length] ?? point]);

function cutToPart(ring: Polygon, { from, to }: ShownPart, { face, length }: Member): Polygon[] {
  if (from === 0 && to === length) return [ring];
  const window = [
    { x: from, y: -face },
    { x: to, y: -face },
    { x: to, y: face },
    { x: from, y: face },
  ];
  return intersectionOf([ring], [window]);
}

/**
 * From the right-hand edge, the front face uppermost, its top at height `top` of the page: notches from above
 * open upwards, those from below downwards, drawn where they leave that edge.
 */
export function edgeView(member: Member, axis: BrokenAxis, top: number): PageItem[] {
  const { depth } = member;
  const bottom = top + depth * axis.scale;
  const parts = axis.parts.flatMap((part) => {
    const place = ({ x, y }: Point): Point => ({
      x: part.left + (x - part.from) * axis.scale,
      y: top + y * axis.scale,
    });
    const upper = profile(member, part, 'above').map(place);
    const lower = profile(member, part, 'below').map(({ x, y }) => place({ x, y: depth - y }));
    const ends = [
      ...(part.from === 0 ? [[upper[0], lower[0]]] : []),
      ...(part.to === member.length ? [[upper.at(-1), lower.at(-1)]] : []),
    ].map((ends) => ends.filter((point) => point !== undefined));
    const corners = member.outline
      .filter(({ x, y }) => y < 0 && x > part.from && x < part.to)
      .map(({ x }) => [place({ x, y: 0 }), place({ x, y: depth })]);
    return [
      area('bare', [...upper, ...[...lower].reverse()]),
      ...[upper, lower, ...ends, ...corners].map((points) => openLine('edge', points)),
    ];
  });
  return [...parts, ...breakLines(axis, top, bottom)];
}

/** How deep one side is cut along a part, as corners (place, depth) of its steps. */
function profile(member: Member, { from, to }: ShownPart, side: 'above' | 'below'): Point[] {
  const cuts = singleNotches(member.notches)
    .filter((notch) => notch.from === side)
    .map((notch) => {
      const [start, end] = notchOnFace(notch, member.face);
      return { start: start?.x ?? 0, end: end?.x ?? 0, depth: notch.depth };
    });
  const within = (place: number): boolean => place > from && place < to;
  const steps = [...new Set([from, ...cuts.flatMap(({ start, end }) => [start, end]).filter(within), to])].sort(
    (a, b) => a - b,
  );
  return steps.slice(1).flatMap((end, index) => {
    const start = steps[index] ?? end;
    const middle = (start + end) / 2;
    const y = Math.max(
      0,
      maximum(cuts.filter((cut) => cut.start < middle && cut.end > middle).map(({ depth }) => depth)),
    );
    return [
      { x: start, y },
      { x: end, y },
    ];
  });
}
