/** In which order the runs of a band are fitted, and how their ends meet at the corners. Lengths mm, angles degrees. */
import { maximum, sum } from '../../geometry/numbers.ts';
import { radians } from '../../geometry/point.ts';
import { turningOf } from '../../geometry/sharpest-bends.ts';
import type { BandRun } from './band-runs.ts';

/** `laps` covers its neighbour's end, `butts` stops against its neighbour's face; a closed run is scarfed to itself. */
export type BandEnd = 'mitred' | 'laps' | 'butts' | 'scarfed';

/** A corner that turns further is not mitred, its points would be too thin: common practice. */
const mostMitred = 120;

/** At a corner that turns nearly back an end is cut to fit; it is not made longer than so many times the band's thickness. */
const longestLap = 10;

/** Number of every run in the order of fitting: hollows before bulges, then as they lie round the edge. */
export function fittingOrder(runs: readonly BandRun[]): number[] {
  const turning = runs.map(({ segments }) => sum(segments.map(turningOf)));
  const sorted = runs.map((_, index) => index).sort((a, b) => (turning[a] ?? 0) - (turning[b] ?? 0) || a - b);
  return runs.map((_, index) => sorted.indexOf(index));
}

/**
 * How a run's ends are made. In a hollow corner the run fitted first goes to the bottom and the other stops against it;
 * at a corner that stands out the run fitted last covers the end of the other.
 */
export function endsOf(
  run: BandRun,
  index: number,
  order: readonly number[],
  corners: 'mitred' | 'lapped',
): readonly [BandEnd, BandEnd] {
  if (!run.turns) return ['scarfed', 'scarfed'];
  const [start, end] = run.turns;
  const endAt = (turn: number, other: number, isLast: boolean): BandEnd => {
    if (corners === 'mitred' && Math.abs(turn) <= mostMitred) return 'mitred';
    const isFirst = other === index ? isLast : (order[index] ?? 0) < (order[other] ?? 0);
    return isFirst === turn < 0 ? 'laps' : 'butts';
  };
  return [endAt(start, run.neighbours[0], false), endAt(end, run.neighbours[1], true)];
}

/**
 * What an end is longer (shorter, negative) than the parallel curve between the square lines through its corners.
 * `distance` is the lamination's middle outward of the finished line, so negative; `thickness` its own, `band` that of all
 * together. Mitred: to the outer tip, half the turn. Lapped, with faces as straight lines at the corner: to the finished
 * or the sand line of the other, whichever the end stops at.
 */
export function endLength(
  end: BandEnd,
  turn: number,
  { distance, thickness, band }: { readonly distance: number; readonly thickness: number; readonly band: number },
): number {
  if (end === 'scarfed') return 0;
  if (end === 'mitred') {
    const slope = Math.tan(radians(turn) / 2);
    return distance * slope + (thickness / 2) * Math.abs(slope);
  }
  const stop = (end === 'laps') === turn > 0 ? 0 : -band;
  const reach = (face: number): number => (stop - face * Math.cos(radians(turn))) / Math.sin(radians(turn));
  const faces = [distance - thickness / 2, distance + thickness / 2].map(reach);
  return Math.min(maximum(faces), longestLap * band);
}
