/** Whether a piece or strip that is already cut can become another one: as it is, or trimmed at its blunt end. */
import type { StripStock } from '../design/design-model.ts';
import { sum } from '../geometry/numbers.ts';
import { areaOf, intersectionOf } from '../geometry/polygons.ts';
import { radians } from '../geometry/point.ts';
import { areaTolerance, kindLengthTolerance, sameAngle, sameLength } from '../geometry/tolerance.ts';
import type { NotchRun, PieceEnd, PieceShape } from '../lattice/laid-panel.ts';
import { byPlace, placesOfRun, sameRuns } from '../lattice/strips/notch-runs.ts';
import { laidOtherwise, lies } from '../lattice/motif/piece-shape.ts';
import { type NotchedStrip, positionsOf, turnedStrip } from '../lattice/strips/strip-kinds.ts';

/** How one becomes the other; `off` is the length in mm that goes. */
export interface ReuseFit {
  readonly how: 'as is' | 'trim';
  readonly off: number;
}

/** One wood in one section; where no wood is named, one stock. */
const sameWood = (a: StripStock, b: StripStock): boolean =>
  sameLength(a.face, b.face) &&
  sameLength(a.depth, b.depth) &&
  (a.wood === null || b.wood === null ? a.name === b.name : a.wood === b.wood);

/**
 * How `old` becomes `now`, or null. One end is kept as it is cut, and it is the sharper one, since a point is work; what
 * is trimmed is the blunt one (its bevels add up to as much or more). The new outline must lie in the old wood, and
 * the notches of the stretch that is kept must be the new piece's.
 */
export function pieceFit(old: PieceShape, now: PieceShape): ReuseFit | null {
  if (!sameWood(old.stock, now.stock) || now.length > old.length + kindLengthTolerance) return null;
  const laid = lies.map((lie) => laidOtherwise(old, lie));
  if (laid.some((each) => isSameShape(each, now))) return { how: 'as is', off: 0 };
  const ways = [now, laidOtherwise(now, { turned: true, flipped: false })];
  const canTrim = laid.some((from) => ways.some((to) => isTrimmedFrom(from, to)));
  return canTrim ? { how: 'trim', off: Math.max(0, old.length - now.length) } : null;
}

const isSameShape = (a: PieceShape, b: PieceShape): boolean =>
  a.outline.length === b.outline.length &&
  a.outline.every(({ x, y }, index) => {
    const other = b.outline[index];
    return other !== undefined && sameLength(x, other.x) && sameLength(y, other.y);
  }) &&
  sameRuns(a.notches, b.notches);

/** Whether `to` is left when `from`, both begun at the kept end 1, is cut at end 2. */
function isTrimmedFrom(from: PieceShape, to: PieceShape): boolean {
  const [kept, cut] = from.ends;
  if (!sameBevels(kept, to.ends[0]) || bluntness(cut) < bluntness(kept)) return false;
  const common = areaOf(intersectionOf([from.outline], [to.outline]));
  return areaOf([to.outline]) - common <= areaTolerance && keepsNotches(from.notches, to.notches, to.length);
}

/** Fitted ends have no bevels that could be kept. */
const sameBevels = ({ bevels: a }: PieceEnd, { bevels: b }: PieceEnd): boolean =>
  a !== null && b !== null && sameAngle(a[0], b[0]) && sameAngle(a[1], b[1]);

const bluntness = ({ bevels }: PieceEnd): number => (bevels ? sum(bevels) : Infinity);

/** How a strip that is already cut becomes another: it is square at both ends, so either may be trimmed, one of them only. */
export function stripFit(old: NotchedStrip, now: NotchedStrip): ReuseFit | null {
  if (!sameWood(old.stock, now.stock) || now.length > old.length + kindLengthTolerance) return null;
  const off = Math.max(0, old.length - now.length);
  const ways = [now, turnedStrip(now)];
  const fits = positionsOf(old).some((from) => ways.some((to) => keepsNotches(from.notches, to.notches, to.length)));
  if (!fits) return null;
  return sameLength(old.length, now.length) ? { how: 'as is', off: 0 } : { how: 'trim', off };
}

/** Whether the notches of the first `length` mm are `wanted`, and none is cut through by the new end. */
function keepsNotches(runs: readonly NotchRun[], wanted: readonly NotchRun[], length: number): boolean {
  const cuts = oneByOne(runs);
  const reach = ({ width, angle }: NotchRun): number => width / Math.sin(radians(angle)) / 2;
  const kept = cuts.filter((cut) => cut.first - reach(cut) < length - kindLengthTolerance);
  return sameRuns(kept, oneByOne(wanted));
}

const oneByOne = (runs: readonly NotchRun[]): NotchRun[] =>
  runs.flatMap((run) => placesOfRun(run).map((first) => ({ ...run, first, step: 0, count: 1 }))).sort(byPlace);
