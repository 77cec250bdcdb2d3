/** All that is looked for in the background for the open texts: packings of blanks, and cuts of the sticks for what they make. */
import type { Analysis } from '../analyse.ts';
import { BlankPackings, type PackingListener } from './blank-packings.ts';
import type { DesignSearch } from './features/preview.ts';
import { StickSearches } from './stick-searches.ts';

export class DesignSearches {
  private readonly packings: BlankPackings;
  private readonly stickSearches: StickSearches;

  constructor(listener: PackingListener) {
    this.packings = new BlankPackings(listener);
    this.stickSearches = new StickSearches(listener.onProgress);
  }

  /** What is looked for in the text at `uri`. */
  of(uri: string): DesignSearch {
    return {
      begin: (analysis) => this.begin(uri, analysis),
      packed: (analysis) => this.packings.packedOf(uri, analysis),
      isPacking: (analysis) => !this.packings.isDone(analysis),
      cuttings: (packed) => this.stickSearches.plansOf(uri, packed),
    };
  }

  /** Begins what every view of the text at `uri` will need, and gives what is known of it at once. */
  begin(uri: string, analysis: Analysis): Analysis {
    return this.packings.begin(uri, analysis);
  }

  /** A newer version has come: nothing more is looked for in this one. */
  overtake(uri: string): void {
    this.packings.overtake(uri);
  }

  /** Ends the searches for the text at `uri`: what they have found by then are their answers. */
  stop(uri: string): void {
    this.packings.stop(uri);
    this.stickSearches.stop(uri);
  }

  /** Forgets a text that is no longer open. */
  close(uri: string): void {
    this.packings.close(uri);
    this.stickSearches.close(uri);
  }
}
