/** Every place that a cut-out may take in a blank: the moves that keep the pattern, as far as they stay inside. */
import { maximum, minimum } from '../../geometry/numbers.ts';
import { add, cross, origin, type Point } from '../../geometry/point.ts';
import { type Bounds, boundsOf } from '../../geometry/polygons.ts';
import { placeTolerance, sameAngle, wholeNumbersBetween } from '../../geometry/tolerance.ts';
import { type GridMove, movesOnto } from '../../lattice/grid/grid-symmetries.ts';
import { movedByPeriods, type Period } from '../../lattice/grid/grid-period.ts';
import { movedRings } from './moved-rings.ts';
import type { BlankRoom, CutOut, Place } from './cut-out.ts';

/** Places of one cut-out; empty where it is too large, or no move keeps the pattern. */
export function candidatePlaces(cutOut: CutOut, room: BlankRoom): Place[] {
  const symmetries = movesOnto(cutOut.families, room.families, room.rules);
  if (!symmetries) return [];
  return symmetries.moves
    .filter(({ mirrored }) => room.fromBack || !mirrored)
    .filter(({ turn }) => room.turns === null || room.turns.some((allowed) => sameAngle(allowed, turn)))
    .flatMap((move) => placesByPeriods(cutOut, move, symmetries.period, room));
}

/** The translations of one move that keep the saw line inside the margins. */
function placesByPeriods(cutOut: CutOut, move: GridMove, period: Period, room: BlankRoom): Place[] {
  const resting = boundsOf(movedRings(cutOut.sawLine, move).flat());
  const reach = roomForShift(room, resting);
  if (reach.left > reach.right || reach.bottom > reach.top) return [];
  return [...periodsInto(reach, period)].map((by): Place => {
    const moved: GridMove = { ...move, shift: add(move.shift, by) };
    const rings = movedRings(cutOut.sawLine, moved);
    return { cutOut, move: moved, rings, bounds: boundsOf(rings.flat()) };
  });
}

/** The further shifts that keep something with these bounds inside the margins. */
function roomForShift({ width, height, margin }: BlankRoom, { left, bottom, right, top }: Bounds): Bounds {
  const [halfWidth, halfHeight] = [width / 2 - margin + placeTolerance, height / 2 - margin + placeTolerance];
  return { left: -halfWidth - left, right: halfWidth - right, bottom: -halfHeight - bottom, top: halfHeight - top };
}

/** Sums of whole periods inside `reach`. */
function* periodsInto(reach: Bounds, period: Period): Generator<Point> {
  const area = cross(period.first, period.second);
  const corners = [
    { x: reach.left, y: reach.bottom },
    { x: reach.right, y: reach.bottom },
    { x: reach.right, y: reach.top },
    { x: reach.left, y: reach.top },
  ];
  const along = corners.map((corner) => cross(corner, period.second) / area);
  const across = corners.map((corner) => cross(period.first, corner) / area);
  const [firsts, seconds] = [spanOf(along), spanOf(across)];
  for (let first = firsts.first; first <= firsts.last; first++)
    for (let second = seconds.first; second <= seconds.last; second++) {
      const by = movedByPeriods(origin, period, first, second);
      if (by.x >= reach.left && by.x <= reach.right && by.y >= reach.bottom && by.y <= reach.top) yield by;
    }
}

const spanOf = (values: readonly number[]): { first: number; last: number } =>
  wholeNumbersBetween(minimum(values), maximum(values));
