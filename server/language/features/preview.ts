/** Answers the preview: which views there are, and what one of them shows. */
import { lineColumnAt } from '../../../grammar/source-range.ts';
import type { Problem } from '../../../grammar/problem.ts';
import type { Analysis } from '../../analyse.ts';
import type { StockCutting } from '../../shop/stock/plan-stock.ts';
import type { AnalysedDocument } from '../open-documents.ts';
import type { DrawingAnswer, PreviewProblem } from '../preview-messages.ts';
import { earlierPlace } from './earlier-place.ts';
import { markCards } from './mark-cards.ts';
import { type DesignView, type ViewContent, viewsOf } from './preview-views.ts';

/** Finds the cutting plans of a design; they are asked for only by views that show them. */
export type StickPlanner = (analysis: Analysis) => Promise<readonly StockCutting[]>;

/**
 * The view called `wanted`, or the first one. A text with errors is drawn as it last was without, and said to be stale;
 * where there never was a view without, what can be laid out now is drawn, stale too.
 */
export async function previewOf(
  document: AnalysedDocument,
  wanted: string | null,
  planSticks: StickPlanner,
): Promise<DrawingAnswer> {
  const { uri, version, analysis } = document;
  const { source, view, views } = chosenView(document, wanted);
  const content = (await contentOf(source, view, planSticks)) ?? { drawing: null, table: null, summary: [] };
  return {
    uri,
    version,
    units: source.design.units,
    views: views.map(({ id, label, group }) => ({ id, label, group })),
    view: view?.id ?? null,
    ...content,
    cards: markCards(source.kinds, source.design.units, (range) => {
      const { uri: file, range: place } = document.locate(range);
      return { uri: file, ...place };
    }),
    stale: analysis.incomplete,
    problems: analysis.problems
      .filter(({ severity }) => severity === 'error' || severity === 'warning')
      .map((problem) => previewProblem(document, source, problem)),
  };
}

/** What `view` shows, its cutting plans found first where it shows them; null for no view. */
export async function contentOf(
  source: Analysis,
  view: DesignView | null,
  planSticks: StickPlanner,
): Promise<ViewContent | null> {
  const cuttings = view?.needsCuttings === true ? await planSticks(source) : [];
  return view?.content(cuttings) ?? null;
}

/** The view itself, and the analysis that it is of: the last one without an error, if that has anything to show. */
export function chosenView(
  { analysis, lastSound }: AnalysedDocument,
  wanted: string | null,
): { source: Analysis; view: DesignView | null; views: readonly DesignView[] } {
  const sound = lastSound === null ? [] : viewsOf(lastSound);
  const source = lastSound !== null && sound.length > 0 ? lastSound : analysis;
  const views = source === lastSound ? sound : viewsOf(analysis);
  return { source, views, view: views.find(({ id }) => id === wanted) ?? views[0] ?? null };
}

function previewProblem({ text, locate }: AnalysedDocument, source: Analysis, problem: Problem): PreviewProblem {
  const { range, message, severity } = problem;
  const place = locate(range);
  return {
    line: lineColumnAt(place.lineStarts, place.range.start).line,
    message,
    severity: severity === 'error' ? 'error' : 'warning',
    drawn: earlierPlace(source.text, text, range),
  };
}
