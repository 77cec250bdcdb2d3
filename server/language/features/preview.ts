/** Answers the preview: which views there are, and what one of them shows. */
import { lineColumnAt } from '../../../grammar/tree/source-range.ts';
import type { WrittenProblem } from '../../words/write-words.ts';
import type { Analysis } from '../../analyse.ts';
import type { Planned } from '../../plan-design.ts';
import type { AnalysedDocument } from '../open-documents.ts';
import type { DrawingAnswer, PreviewProblem } from '../preview-messages.ts';
import { earlierPlace } from './earlier-place.ts';
import { markCards, memberCards, type WordsFinder } from './mark-cards.ts';
import { type DesignView, type ViewContent, viewsOf } from './preview-views.ts';

/** What takes its time to be found in a design. */
export interface DesignSearch {
  /** Begins to look for a better packing of the blanks, where one may be found; the design as it is known by now. */
  readonly begin: (analysis: Analysis) => Analysis;
  /** The design with its blanks packed as well as can be. */
  readonly packed: (analysis: Analysis) => Promise<Analysis>;
  /** Whether a better packing may yet be found. */
  readonly isPacking: (analysis: Analysis) => boolean;
  /** A packed design with its plan. */
  readonly planned: (packed: Analysis) => Promise<Planned>;
}

const packingWords = 'Blanks are still being packed: their number, places and counts may change';

/**
 * The view called `wanted`, or the first one. A text with errors is drawn as it last was without, and said to be stale;
 * where there never was a view without, what can be laid out now is drawn, stale too. While its blanks are being packed it
 * is drawn with them as they are at first sight, and says so; only what is told of the plan, as its sticks, waits for that.
 */
export async function previewOf(
  document: AnalysedDocument,
  wanted: string | null,
  search: DesignSearch,
): Promise<DrawingAnswer> {
  const { uri, version, analysis } = document;
  const { source, view, views, content } = await shownView(search.begin(shownIn(document)), wanted, search);
  const { units } = source.design;
  const wordsAt: WordsFinder = (range) => {
    const { uri: file, range: place } = document.locate(range);
    return { uri: file, ...place };
  };
  const { drawing, table, summary } = content ?? { drawing: null, table: null, summary: [] };
  return {
    uri,
    version,
    units,
    views: views.map(({ id, label, group }) => ({ id, label, group })),
    view: view?.id ?? null,
    ...{ drawing, table, summary: search.isPacking(source) ? [...summary, packingWords] : summary },
    cards: [...markCards(source.kinds, units, wordsAt), ...memberCards(content?.members ?? [], units, wordsAt)],
    stale: analysis.incomplete,
    problems: analysis.problems
      .filter(({ severity }) => severity === 'error' || severity === 'warning')
      .map((problem) => previewProblem(document, source, problem)),
  };
}

/** What the view shows when all that it is drawn from has been found; null for no view. */
export async function finalContent(
  document: AnalysedDocument,
  wanted: string | null,
  search: DesignSearch,
): Promise<ViewContent | null> {
  const packed = await search.packed(shownIn(document));
  return contentOf(packed, viewIn(viewsOf(packed), wanted), search);
}

interface ShownView {
  readonly source: Analysis;
  readonly views: readonly DesignView[];
  readonly view: DesignView | null;
  readonly content: ViewContent | null;
}

async function shownView(first: Analysis, wanted: string | null, search: DesignSearch): Promise<ShownView> {
  const needsPlan = viewIn(viewsOf(first), wanted)?.needsPlan === true;
  const source = needsPlan ? await search.packed(first) : first;
  const views = viewsOf(source);
  const view = viewIn(views, wanted);
  return { source, views, view, content: await contentOf(source, view, search) };
}

async function contentOf(
  source: Analysis,
  view: DesignView | null,
  { planned }: DesignSearch,
): Promise<ViewContent | null> {
  if (view?.needsPlan !== true) return view?.content() ?? null;
  return view.content((await planned(source)).plan);
}

/** The last analysis without an error, if that has anything to show. */
const shownIn = ({ analysis, lastSound }: AnalysedDocument): Analysis =>
  lastSound !== null && viewsOf(lastSound).length > 0 ? lastSound : analysis;

const viewIn = (views: readonly DesignView[], wanted: string | null): DesignView | null =>
  views.find(({ id }) => id === wanted) ?? views[0] ?? null;

function previewProblem({ text, locate }: AnalysedDocument, source: Analysis, problem: WrittenProblem): PreviewProblem {
  const { range, message, severity } = problem;
  const place = locate(range);
  return {
    line: lineColumnAt(place.lineStarts, place.range.start).line,
    message,
    severity: severity === 'error' ? 'error' : 'warning',
    drawn: earlierPlace(source.text, text, range),
  };
}
