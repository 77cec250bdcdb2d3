/** All that is looked for in the background for the open texts: packings of blanks, and the plans of what they make. */
import type { Analysis } from '../analyse.ts';
import { BlankPackings, type PackingListener } from './blank-packings.ts';
import { DesignPlans } from './design-plans.ts';
import type { DesignSearch } from './features/preview.ts';

export class DesignSearches {
  private readonly packings: BlankPackings;
  private readonly plans: DesignPlans;

  constructor(listener: PackingListener) {
    this.packings = new BlankPackings(listener);
    this.plans = new DesignPlans(listener.onProgress);
  }

  /** What is looked for in the text at `uri`. */
  of(uri: string): DesignSearch {
    return {
      begin: (analysis) => this.begin(uri, analysis),
      packed: (analysis) => this.packings.packedOf(uri, analysis),
      isPacking: (analysis) => !this.packings.isDone(analysis),
      planned: (packed) => this.plans.planOf(uri, packed),
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
    this.plans.stop(uri);
  }

  /** Forgets a text that is no longer open. */
  close(uri: string): void {
    this.packings.close(uri);
    this.plans.close(uri);
  }
}
