/** The cutting plans that previews ask for: found once a design, watched, and broken off when nobody waits for them. */
import type { Analysis } from '../analyse.ts';
import type { StockCutting } from '../shop/stock/cut-every-stock.ts';
import { cuttingPlans } from './cutting-plans.ts';

/** Seconds that a preview waits for a better plan. */
const patience = 8;

/** Told what is being worked on, and null when it has ended. */
export type ProgressListener = (uri: string, doing: string | null) => void;

interface Search {
  readonly analysis: Analysis;
  readonly stopper: AbortController;
  readonly found: Promise<readonly StockCutting[]>;
}

export class StickSearches {
  /** The latest search of each text. */
  private readonly searches = new Map<string, Search>();
  private readonly onProgress: ProgressListener;

  constructor(onProgress: ProgressListener) {
    this.onProgress = onProgress;
  }

  /** The plans of `analysis`, a version of the text at `uri`; a search for an earlier version is broken off. */
  plansOf(uri: string, analysis: Analysis): Promise<readonly StockCutting[]> {
    const present = this.searches.get(uri);
    if (present?.analysis === analysis) return present.found;
    this.stop(uri);
    const stopper = new AbortController();
    const search: Search = { analysis, stopper, found: this.search(uri, analysis, stopper.signal) };
    this.searches.set(uri, search);
    return search.found;
  }

  /** Breaks off the search for the text at `uri`: what it has found by then is its answer. */
  stop(uri: string): void {
    this.searches.get(uri)?.stopper.abort();
  }

  /** Forgets a text that is no longer open. */
  close(uri: string): void {
    this.stop(uri);
    this.searches.delete(uri);
  }

  private async search(uri: string, analysis: Analysis, signal: AbortSignal): Promise<readonly StockCutting[]> {
    this.onProgress(uri, 'Planning the cuts');
    const onProgress = (words: string): void => this.onProgress(uri, `Planning the cuts: ${words}`);
    try {
      return await cuttingPlans(analysis, { seconds: patience, signal, onProgress });
    } finally {
      if (this.searches.get(uri)?.analysis === analysis) this.onProgress(uri, null);
    }
  }
}
