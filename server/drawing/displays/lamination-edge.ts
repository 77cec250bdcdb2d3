/** The ends of a band's laminations: in words, and as they look on edge. Lengths mm, angles degrees. */
import { radians } from '../../geometry/point.ts';
import type { MeasuredRun } from '../../shop/bands/measure-band.ts';
import { angleText } from '../../words/figures.ts';

export interface LaminationEdge {
  readonly thickness: number;
  /** Its axis along x from 0, the outer face above. */
  readonly outline: readonly number[];
}

/** "mitred 45° and 63.5°", "laps": each end once; a mitre by the angle between cut and face, half of what the corner leaves. */
export function endWords({ ends, run }: MeasuredRun): string {
  const angles = ends.flatMap((end, index) =>
    end === 'mitred' ? [angleText(90 - Math.abs(run.turns?.[index] ?? 0) / 2)] : [],
  );
  const mitred = angles.length > 0 ? [`mitred ${[...new Set(angles)].join(' and ')}`] : [];
  return [...mitred, ...new Set(ends.filter((end) => end !== 'mitred'))].join(', ');
}

/**
 * A mitre runs in by thickness · tan(turn/2) from the face that is longer: the outer one at a corner that stands out, the
 * inner one in a hollow corner. Null where no end is mitred.
 */
export function laminationEdge(length: number, thickness: number, { ends, run }: MeasuredRun): LaminationEdge | null {
  if (!ends.includes('mitred')) return null;
  const [first, second] = ends.map((end, index) =>
    end === 'mitred' ? thickness * Math.tan(radians(run.turns?.[index] ?? 0) / 2) : 0,
  );
  const [start, stop, half] = [first ?? 0, second ?? 0, thickness / 2];
  const inset = (by: number): number => Math.max(0, by);
  return {
    thickness,
    outline: [
      ...[inset(start), -half, length - inset(stop), -half],
      ...[length - inset(-stop), half, inset(-start), half],
    ],
  };
}
