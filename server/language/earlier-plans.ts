/** Other versions that open texts are compared with, each planned once: they seldom change while the text does. */
import type { Analysis } from '../analyse.ts';
import { planDesign, type Planned } from '../plan-design.ts';
import { usualEffort } from '../machine/search-effort.ts';

interface EarlierPlan {
  readonly revision: string;
  readonly source: string;
  readonly planned: Promise<Planned>;
}

export class EarlierPlans {
  /** The latest of each text, with the state of its files. */
  private readonly plans = new Map<string, EarlierPlan>();

  /** The plan of `analysis`, a version called `source` that the text at `uri` is compared with. */
  planOf(uri: string, analysis: Analysis, source: string): Promise<Planned> {
    const { revision } = analysis;
    const present = this.plans.get(uri);
    if (present?.revision === revision && present.source === source) return present.planned;
    const planned = planDesign(analysis, source, usualEffort());
    this.plans.set(uri, { revision, source, planned });
    planned.catch(() => this.plans.delete(uri));
    return planned;
  }
}
