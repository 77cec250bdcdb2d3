/** Jig and stop for every end of every infill piece, in the order with the fewest changes. */
import { append } from '../../geometry/numbers.ts';
import { sameAngle, sameLength } from '../../geometry/tolerance.ts';
import type { PieceShape } from '../../lattice/laid-panel.ts';
import { kindsOfValues } from './distinct-values.ts';
import { cutsOfEnds, type EndCuts } from './end-cuts.ts';
import { fewestChanges } from './fewest-changes.ts';

/** Equal pieces to cut. */
export interface PieceBatch {
  readonly mark: string;
  readonly shape: PieceShape;
  readonly pieces: number;
  /** Cut this much longer than drawn, to be shaved in fitting: a key. */
  readonly longer: number;
}

/** Which end of a piece is cut, and on which side of it, seen from end 1 to end 2. */
export interface CutEnd {
  readonly mark: string;
  readonly end: 1 | 2;
  readonly side: EndCuts['cuts'][number]['side'];
}

/** One jig and stop, and what is cut there. */
export interface InfillSetting {
  readonly jig: number;
  readonly stop: number;
  readonly caliper: number;
  readonly flip: boolean;
  readonly marks: readonly string[];
  readonly ends: readonly CutEnd[];
  readonly pieces: number;
}

export interface InfillOrder {
  readonly settings: readonly InfillSetting[];
  /** A change of jig and a change of stop count one each. */
  readonly changes: number;
  readonly bound: number;
  readonly proven: boolean;
  /** Marks of pieces with an end to be fitted by hand. */
  readonly byHand: readonly string[];
}

/** One end of one batch at one setting. */
interface EndJob {
  readonly batch: PieceBatch;
  readonly cut: InfillSetting;
  readonly after: readonly number[];
}

/**
 * Settings for `batches`, whose rough pieces are cut square and longer than the piece by `trim` mm at each end, to be taken
 * off by the first cuts. The blunt end is cut first, against the rough piece’s square end; then the sharp one against the
 * blunt. Minimal for this model: one bench, jig and stop set apart from each other, every change as dear as any other.
 */
export function infillSettings(batches: readonly PieceBatch[], trim: number): InfillOrder {
  const jobs: EndJob[] = [];
  const byHand: string[] = [];
  for (const batch of [...batches].sort((a, b) => b.shape.length - a.shape.length)) {
    const ends = cutsOfEnds(batch.shape);
    if (ends) append(jobs, jobsOf(batch, ends, trim, jobs.length));
    else byHand.push(batch.mark);
  }
  const jigs = kindsOfValues(
    jobs.map(({ cut }) => cut.jig),
    sameAngle,
  );
  const stops = kindsOfValues(
    jobs.map(({ cut }) => cut.stop),
    sameLength,
  );
  const { order, cost, bound, proven } = fewestChanges(
    jobs.map(({ after }, index) => ({ settings: [jigs[index] ?? 0, stops[index] ?? 0], after })),
    [1, 1],
  );
  return { settings: joined(order.flatMap((job) => jobs[job]?.cut ?? [])), changes: cost, bound, proven, byHand };
}

function jobsOf(batch: PieceBatch, ends: readonly [EndCuts, EndCuts], trim: number, firstJob: number): EndJob[] {
  const [blunt, sharp] = ends;
  const { mark } = batch;
  const job = (end: 1 | 2, cut: EndCuts['cuts'][number], more: number, after: number[]): EndJob => ({
    batch,
    cut: {
      jig: cut.jig,
      stop: cut.toe + more,
      caliper: batch.shape.length + more,
      flip: cut.side === 'both',
      marks: [mark],
      ends: [{ mark, end, side: cut.side }],
      pieces: batch.pieces,
    },
    after,
  });
  const bluntJobs = blunt.cuts.map((cut) => job(blunt.end, cut, batch.longer + trim, []));
  const numbers = bluntJobs.map((_, index) => firstJob + index);
  return [...bluntJobs, ...sharp.cuts.map((cut) => job(sharp.end, cut, batch.longer, numbers))];
}

/** Neighbours at one setting as one; a mark that comes twice has both ends cut there, and is counted once. */
function joined(cuts: readonly InfillSetting[]): InfillSetting[] {
  const settings: InfillSetting[] = [];
  for (const cut of cuts) {
    const last = settings.at(-1);
    if (!last || !sameSetting(last, cut)) {
      settings.push(cut);
      continue;
    }
    const isNew = cut.marks.some((mark) => !last.marks.includes(mark));
    settings[settings.length - 1] = {
      ...last,
      marks: [...new Set([...last.marks, ...cut.marks])],
      ends: [...last.ends, ...cut.ends],
      pieces: last.pieces + (isNew ? cut.pieces : 0),
    };
  }
  return settings;
}

const sameSetting = (a: InfillSetting, b: InfillSetting): boolean =>
  sameAngle(a.jig, b.jig) && sameLength(a.stop, b.stop) && sameLength(a.caliper, b.caliper) && a.flip === b.flip;
