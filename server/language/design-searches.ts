/** All that is looked for in the background for the open texts: packings of blanks, and cuts of the sticks for what they make. */
import type { Analysis } from '../analyse.ts';
import { BlankPackings, type PackingListener } from './blank-packings.ts';
import type { DesignSearch } from './features/preview.ts';
import { StickPlans } from './stick-plans.ts';

export class DesignSearches {
  private readonly packings: BlankPackings;
  private readonly stickPlans: StickPlans;

  constructor(listener: PackingListener) {
    this.packings = new BlankPackings(listener);
    this.stickPlans = new StickPlans(listener.onProgress);
  }

  /** What is looked for in the text at `uri`. */
  of(uri: string): DesignSearch {
    return {
      begin: (analysis) => this.begin(uri, analysis),
      packed: (analysis) => this.packings.packedOf(uri, analysis),
      isPacking: (analysis) => !this.packings.isDone(analysis),
      cuttings: (packed) => this.stickPlans.plansOf(uri, packed),
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
    this.stickPlans.stop(uri);
  }

  /** Forgets a text that is no longer open. */
  close(uri: string): void {
    this.packings.close(uri);
    this.stickPlans.close(uri);
  }
}
