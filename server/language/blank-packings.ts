/**
 * The packing of each open text's blanks: looked for in the background, once a version, and broken off by a newer one. What
 * was found for an earlier version is taken over as long as nothing differs by which blanks are packed.
 */
import { type Analysis, repacked } from '../analyse.ts';
import { packDesign } from '../plan-design.ts';
import { packedLike } from '../shop/blanks/reuse-packing.ts';
import type { ProgressListener } from './design-plans.ts';
import { usualEffort } from '../machine/search-effort.ts';

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
  /** What was found last for each text. */
  private readonly found = new Map<string, Analysis>();
  /** What searches have found: nothing more is looked for in it. */
  private readonly packed = new WeakSet<Analysis>();
  private readonly listener: PackingListener;

  constructor(listener: PackingListener) {
    this.listener = listener;
  }

  /** `analysis`, a version of the text at `uri`, with its blanks packed as well as the time allows; the search is begun if it was not yet. */
  packedOf(uri: string, analysis: Analysis): Promise<Analysis> {
    const present = this.searches.get(uri);
    if (present?.first === analysis) return present.found;
    const known = this.known(uri, analysis);
    if (known) return Promise.resolve(known);
    this.overtake(uri);
    const stopper = new AbortController();
    const search: Search = { first: analysis, stopper, found: Promise.resolve(analysis) };
    this.searches.set(uri, search);
    search.found = this.search(uri, search);
    return search.found;
  }

  /** Begins the search for whoever will ask, and gives what is known at once. */
  begin(uri: string, analysis: Analysis): Analysis {
    const known = this.known(uri, analysis);
    if (!known) this.packedOf(uri, analysis).catch((error: unknown) => this.listener.onFailed(uri, error));
    return known ?? analysis;
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

  /** Forgets a text that is no longer open. */
  close(uri: string): void {
    this.overtake(uri);
    this.found.delete(uri);
  }

  /** Whether nothing better is looked for. */
  isDone(analysis: Analysis): boolean {
    return this.packed.has(analysis) || analysis.blanks.length === 0;
  }

  /** The packed analysis where no search is needed: there is nothing to pack, or it was found for an earlier version. */
  private known(uri: string, analysis: Analysis): Analysis | null {
    if (this.isDone(analysis)) return analysis;
    const before = this.found.get(uri)?.blanks ?? [];
    const alike = analysis.blanks.flatMap((nested, index) => {
      const found = before[index];
      return (found && packedLike(nested, found)) ?? [];
    });
    if (alike.length !== analysis.blanks.length) return null;
    this.overtake(uri);
    return this.take(uri, analysis, repacked(analysis, alike));
  }

  /** Puts `packed` in the place of `first`. */
  private take(uri: string, first: Analysis, packed: Analysis): Analysis {
    this.packed.add(packed);
    this.found.set(uri, packed);
    this.listener.onPacked(uri, first, packed);
    return packed;
  }

  private async search(uri: string, search: Search): Promise<Analysis> {
    const { first, stopper } = search;
    const isLatest = (): boolean => this.searches.get(uri) === search;
    const onProgress = (words: string): void => {
      if (isLatest()) this.listener.onProgress(uri, words);
    };
    try {
      const packed = await packDesign(first, usualEffort({ signal: stopper.signal, onProgress }));
      if (!isLatest()) return packed;
      this.searches.delete(uri);
      return this.take(uri, first, packed);
    } finally {
      if (isLatest()) this.searches.delete(uri);
      if (!this.searches.has(uri)) this.listener.onProgress(uri, null);
    }
  }
}
