/** The plans of the open texts: made once a packed design, watched, and broken off when nobody waits for them. */
import type { Analysis } from '../analyse.ts';
import { planPacked, type Planned } from '../plan-design.ts';
import { usualEffort } from '../machine/search-effort.ts';
import { documentName } from './workspace-files.ts';

/** Told what is being worked on, and null when it has ended. */
export type ProgressListener = (uri: string, doing: string | null) => void;

interface Search {
  readonly packed: Analysis;
  readonly stopper: AbortController;
  readonly found: Promise<Planned>;
}

export class DesignPlans {
  /** The latest search of each text. */
  private readonly searches = new Map<string, Search>();
  private readonly onProgress: ProgressListener;

  constructor(onProgress: ProgressListener) {
    this.onProgress = onProgress;
  }

  /** The plan of `packed`, a version of the text at `uri`; a search for an earlier version is broken off. */
  planOf(uri: string, packed: Analysis): Promise<Planned> {
    const present = this.searches.get(uri);
    if (present?.packed === packed) return present.found;
    this.stop(uri);
    const stopper = new AbortController();
    const search: Search = { packed, stopper, found: this.search(uri, packed, stopper.signal) };
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

  private async search(uri: string, packed: Analysis, signal: AbortSignal): Promise<Planned> {
    this.onProgress(uri, 'Planning the cuts');
    const onProgress = (words: string): void => this.onProgress(uri, `Planning the cuts: ${words}`);
    try {
      return await planPacked(packed, documentName(uri), usualEffort({ signal, onProgress }));
    } finally {
      if (this.searches.get(uri)?.packed === packed) this.onProgress(uri, null);
    }
  }
}
