/** A watch on the real clock: the only place of the cutting plans with a clock in it, started by the doors. */
import type { SearchProgress, Watch } from '../shop/stock/watch.ts';

export interface WatchOptions {
  readonly seconds: number;
  readonly signal?: AbortSignal;
  readonly onProgress?: (progress: SearchProgress) => void;
}

/** Others have their turn at most this often, in ms. */
const restEvery = 20;

export function startWatch({ seconds, signal, onProgress }: WatchOptions): Watch {
  const end = performance.now() + seconds * 1000;
  let rested = performance.now();
  return {
    interruption() {
      if (signal?.aborted) return 'cancelled';
      return performance.now() >= end ? 'time' : null;
    },
    secondsLeft: () => Math.max(0, (end - performance.now()) / 1000),
    async rest() {
      if (performance.now() - rested < restEvery) return;
      await new Promise((resume) => setTimeout(resume));
      rested = performance.now();
    },
    report: (progress) => onProgress?.(progress),
  };
}
