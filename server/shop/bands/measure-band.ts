/** A band measured along its edge: every lamination of every run, its bends and its ends. Lengths mm. */
import type { WoodDeclaration } from '../../design/material-model.ts';
import type { Band } from '../../design/work-model.ts';
import { segmentLength } from '../../geometry/curve-length.ts';
import { sum } from '../../geometry/numbers.ts';
import { radians } from '../../geometry/point.ts';
import { sharpestBends, turningOf } from '../../geometry/sharpest-bends.ts';
import { contoursOf } from '../lines/part-contours.ts';
import { type BandEnd, endLength, endsOf, fittingOrder } from './band-corners.ts';
import { type BandRun, bandRuns } from './band-runs.ts';
import { type BendLimit, bendLimit, type WorstBend, worstBend } from './bend-grade.ts';

/** One piece of band: lamination `lamination` of a run, both from 1. */
export interface BandPiece {
  readonly mark: string;
  readonly lamination: number;
  /** To its outer tips; round a closed run once. */
  readonly length: number;
  /** With the scarf of a closed run and the over-length. */
  readonly cutLength: number;
}

export interface MeasuredRun {
  readonly run: BandRun;
  /** From 1, in the order of fitting. */
  readonly order: number;
  readonly ends: readonly [BandEnd, BandEnd];
  readonly pieces: readonly BandPiece[];
  readonly worst: WorstBend | null;
}

export interface MeasuredBand {
  readonly band: Band;
  /** All laminations together. */
  readonly thickness: number;
  readonly runs: readonly MeasuredRun[];
  readonly limit: BendLimit | null;
  /** The worst of all runs. */
  readonly worst: WorstBend | null;
}

/** Slope of a scarf joint, length to thickness: common practice. */
const scarfSlope = 8;

export function measureBand(band: Band, woods: readonly WoodDeclaration[]): MeasuredBand {
  const runs = bandRuns(contoursOf(band.around));
  const order = fittingOrder(runs);
  const limit = bendLimit(band, woods);
  const measured = runs.map((run, index): MeasuredRun => {
    const ends = endsOf(run, index, order, band.corners);
    return {
      run,
      order: (order[index] ?? 0) + 1,
      ends,
      pieces: piecesOf(band, run, index, ends),
      worst: worstBend(sharpestBends(run.segments), distancesOf(band), limit, band.stock.face),
    };
  });
  const worst = measured.flatMap((run) => run.worst ?? []).sort((a, b) => a.radius - b.radius)[0] ?? null;
  return { band, thickness: thicknessOf(band), runs: measured, limit, worst };
}

const thicknessOf = ({ laminations, stock }: Band): number => laminations * stock.face;

/** Where the middle of each lamination runs, outward of the finished line: (i − ½)t from the sand line. */
const distancesOf = (band: Band): number[] =>
  Array.from({ length: band.laminations }, (_, index) => (index + 0.5) * band.stock.face - thicknessOf(band));

/**
 * The parallel of a curve of length L that turns by Θ is L + Θ·distance long, whatever the curve is, as long as it bends
 * nowhere tighter than the distance (Steiner's formula).
 */
function piecesOf(band: Band, { segments, turns }: BandRun, index: number, ends: MeasuredRun['ends']): BandPiece[] {
  const along = sum(segments.map(segmentLength));
  const turning = radians(sum(segments.map(turningOf)));
  const [thickness, all] = [band.stock.face, thicknessOf(band)];
  return distancesOf(band).map((distance, lamination) => {
    const place = { distance, thickness, band: all };
    const more = turns ? endLength(ends[0], turns[0], place) + endLength(ends[1], turns[1], place) : 0;
    const length = Math.max(0, along + turning * distance + more);
    const scarf = turns ? 0 : scarfSlope * thickness;
    return {
      mark: `${band.name} ${index + 1}.${lamination + 1}`,
      lamination: lamination + 1,
      length,
      cutLength: length + scarf + band.overLength,
    };
  });
}
