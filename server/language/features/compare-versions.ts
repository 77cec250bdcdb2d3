/** Another version against an open text as markup: the report, the overlay, and what serves of what is already cut. */
import { changeReport } from '../../compare/change-report.ts';
import { compareDesigns } from '../../compare/compare-designs.ts';
import type { ComparedDesign } from '../../compare/compared-design.ts';
import { writeOverlaySvg } from '../../compare/overlay-svg.ts';
import { changedOverlays, overlaysOf } from '../../compare/overlays-of.ts';
import { allCut, planReuse } from '../../compare/plan-reuse.ts';
import { type CutListReading, readCutList } from '../../compare/read-cut-list.ts';
import { changeBody } from '../../compare/write-change-html.ts';
import type { LinearSolver } from '../../shop/stock/linear-solver.ts';
import type { AlreadyCut, CompareAnswer } from '../compare-messages.ts';

/** The markup of what changed from `before` to `after`; a faulty list of what is cut is told, and left out. */
export async function comparedMarkup(
  before: ComparedDesign,
  after: ComparedDesign,
  cut: AlreadyCut,
  solver: LinearSolver,
): Promise<Pick<CompareAnswer, 'body' | 'cutFault'>> {
  const { counts, fault } = cutCounts(cut, before);
  const reuse = counts && (await planReuse(before, after, counts, solver));
  const report = changeReport(compareDesigns(before, after), reuse);
  const overlay = writeOverlaySvg(changedOverlays(overlaysOf(before, after)), report.versions);
  return { body: changeBody(report, overlay), cutFault: fault };
}

function cutCounts(cut: AlreadyCut, old: ComparedDesign): CutListReading | { counts: null; fault: null } {
  if (cut === 'nothing') return { counts: null, fault: null };
  const all = allCut(old);
  if (cut === 'all') return { counts: all, fault: null };
  const marks = all.map(({ mark }) => mark);
  const { counts, fault } = readCutList(cut.list, marks);
  return counts ? { counts, fault: null } : { counts: null, fault: `${cut.name}: ${fault}` };
}
