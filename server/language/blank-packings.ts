/** The packing of each open text's blanks: looked for in the background, once a version, and broken off by a newer one. */
import type { Analysis } from '../analyse.ts';
import { blanksUsed } from '../shop/nesting/cut-out.ts';
import { withPackedBlanks } from './cutting-plans.ts';
import type { ProgressListener } from './stick-plans.ts';

export interface PackingListener {
  readonly onProgress: ProgressListener;
  /** `packed` takes the place of `first`, the same version of the text at `uri` with its blanks packed at first sight. */
  readonly onPacked: (uri: string, first: Analysis, packed: Analysis) => void;
  readonly onFailed: (uri: string, error: unknown) => void;
}

interface Search {
  readonly first: Analysis;
  readonly stopper: AbortController;
  found: Promise<Analysis>;
}

export class BlankPackings {
  /** The search that goes on for each text. */
  private readonly searches = new Map<string, Search>();
  /** What searches have found: nothing more is looked for in it. */
  private readonly packed = new WeakSet<Analysis>();
  private readonly listener: PackingListener;

  constructor(listener: PackingListener) {
    this.listener = listener;
  }

  /** `analysis`, a version of the text at `uri`, with its blanks packed as well as the time allows; the search is begun if it was not yet. */
  packedOf(uri: string, analysis: Analysis): Promise<Analysis> {
    if (this.isDone(analysis)) return Promise.resolve(analysis);
    const present = this.searches.get(uri);
    if (present?.first === analysis) return present.found;
    this.overtake(uri);
    const stopper = new AbortController();
    const search: Search = { first: analysis, stopper, found: Promise.resolve(analysis) };
    this.searches.set(uri, search);
    search.found = this.search(uri, search);
    return search.found;
  }

  /** Begins the search, for whoever will ask. */
  begin(uri: string, analysis: Analysis): void {
    this.packedOf(uri, analysis).catch((error: unknown) => this.listener.onFailed(uri, error));
  }

  /** Ends the search for the text at `uri`: what it has found by then is its answer. */
  stop(uri: string): void {
    this.searches.get(uri)?.stopper.abort();
  }

  /** Ends the search in favour of a newer version: nothing comes of it. */
  overtake(uri: string): void {
    this.stop(uri);
    if (this.searches.delete(uri)) this.listener.onProgress(uri, null);
  }

  /** Whether nothing better is looked for; a packing that meets its bound needs no search. */
  isDone(analysis: Analysis): boolean {
    return this.packed.has(analysis) || analysis.blanks.every(({ packing }) => blanksUsed(packing) <= packing.bound);
  }

  private async search(uri: string, search: Search): Promise<Analysis> {
    const { first, stopper } = search;
    const isLatest = (): boolean => this.searches.get(uri) === search;
    const onProgress = (words: string): void => {
      if (isLatest()) this.listener.onProgress(uri, words);
    };
    try {
      const packed = await withPackedBlanks(first, { signal: stopper.signal, onProgress });
      if (!isLatest()) return packed;
      this.packed.add(packed);
      this.searches.delete(uri);
      this.listener.onPacked(uri, first, packed);
      return packed;
    } finally {
      if (isLatest()) this.searches.delete(uri);
      if (!this.searches.has(uri)) this.listener.onProgress(uri, null);
    }
  }
}
