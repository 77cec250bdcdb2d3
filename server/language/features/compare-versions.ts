/** Another version against an open text: the report as markup, and where its rows are written in both. */
import type { Analysis } from '../../analyse.ts';
import { changeReport } from '../../compare/change-report.ts';
import { compareDesigns } from '../../compare/compare-designs.ts';
import type { ComparedDesign } from '../../compare/compared-design.ts';
import { writeOverlaySvg } from '../../compare/overlay-svg.ts';
import { changedOverlays, overlaysOf } from '../../compare/overlays-of.ts';
import { changeBody } from '../../compare/write-change-html.ts';
import { buildPlan } from '../../shop/build-plan.ts';
import type { StockCutting } from '../../shop/stock/plan-stock.ts';

/** One side of the comparison, with its name and its cutting plans. */
export interface NamedVersion {
  readonly name: string;
  readonly analysis: Analysis;
  readonly cuttings: readonly StockCutting[];
}

/** The markup of what changed from `old` to `now`. */
export function comparedMarkup(old: NamedVersion, now: NamedVersion): string {
  const [before, after] = [comparedDesign(old), comparedDesign(now)];
  const report = changeReport(compareDesigns(before, after));
  return changeBody(report, writeOverlaySvg(changedOverlays(overlaysOf(before, after)), report.versions));
}

const comparedDesign = ({ name, analysis, cuttings }: NamedVersion): ComparedDesign => ({
  ...analysis,
  plan: buildPlan(analysis, name, cuttings),
});
