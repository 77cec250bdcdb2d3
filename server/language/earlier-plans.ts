/** Other versions that open texts are compared with, each packed and cut once: they seldom change while the text does. */
import type { Analysis } from '../analyse.ts';
import type { StockCutting } from '../shop/stock/cut-every-stock.ts';
import { cuttingPlans, withPackedBlanks } from './cutting-plans.ts';

/** Seconds that a comparison waits for a better packing, and then for better cuts, of the other version. */
const patience = 8;

export interface PlannedVersion {
  readonly analysis: Analysis;
  readonly cuttings: readonly StockCutting[];
}

export class EarlierPlans {
  /** The latest of each text, with the state of its files. */
  private readonly plans = new Map<string, { readonly revision: string; readonly planned: Promise<PlannedVersion> }>();

  /** The plan of `analysis`, a version that the text at `uri` is compared with. */
  planOf(uri: string, analysis: Analysis): Promise<PlannedVersion> {
    const { revision } = analysis;
    const present = this.plans.get(uri);
    if (present?.revision === revision) return present.planned;
    const planned = plannedVersion(analysis);
    this.plans.set(uri, { revision, planned });
    planned.catch(() => this.plans.delete(uri));
    return planned;
  }
}

async function plannedVersion(read: Analysis): Promise<PlannedVersion> {
  const analysis = await withPackedBlanks(read, { seconds: patience });
  return { analysis, cuttings: await cuttingPlans(analysis, { seconds: patience }) };
}
