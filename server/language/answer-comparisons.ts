/** Questions about two versions of a text, and the lenses that tell what changed since the last commit. */
import type { CodeLens, CodeLensParams, Connection } from 'vscode-languageserver';
import { analyse, type Analysis } from '../analyse.ts';
import type { DesignSearches } from './design-searches.ts';
import { EarlierPlans } from './earlier-plans.ts';
import {
  type CommittedText,
  committedTextNotification,
  type CompareAnswer,
  type ComparePlace,
  type CompareQuestion,
  compareRequest,
  compareWithCommitCommand,
} from './compare-messages.ts';
import { compareLenses } from './features/compare-lenses.ts';
import { placesOf } from './features/compare-places.ts';
import { comparedMarkup } from './features/compare-versions.ts';
import type { AnalysedDocument, OpenDocuments, PlaceInFile } from './open-documents.ts';
import { solverAtHand } from '../machine/search-effort.ts';
import { rangeOf } from './to-protocol.ts';
import { plainAddress } from './workspace-files.ts';

/**
 * Registers the handlers. One that fails answers null and calls `report` with its name and the error; `refreshLenses`
 * lets the editor ask for its lenses again.
 */
export function answerComparisons(
  connection: Connection,
  documents: OpenDocuments,
  searches: DesignSearches,
  report: (question: string, error: unknown) => void,
  refreshLenses: () => void,
): void {
  /** What git keeps of the open texts, by their plain addresses. */
  const committed = new Map<string, Analysis>();
  const earlierPlans = new EarlierPlans();

  const analysisBeside = (uri: string, text: string): Analysis =>
    analyse(
      text,
      documents.workspace.placeOf(uri, () => undefined),
    );

  connection.onRequest(compareRequest, async (question: CompareQuestion): Promise<CompareAnswer | null> => {
    try {
      const document = documents.latest(question.uri);
      return document && (await compared(document, question));
    } catch (error) {
      report('Comparison', error);
      return null;
    }
  });

  async function compared(document: AnalysedDocument, { uri, earlier, cut }: CompareQuestion): Promise<CompareAnswer> {
    const search = searches.of(uri);
    const before = await earlierPlans.planOf(uri, analysisBeside(uri, earlier.text), earlier.name);
    const after = await search.planned(await search.packed(document.analysis));
    return {
      uri,
      version: document.version,
      ...(await comparedMarkup(before, after, cut, await solverAtHand())),
      places: {
        old: located(before, documents.locator(earlier.uri, before.files)),
        new: located(after, document.locate),
      },
    };
  }

  connection.onNotification(committedTextNotification, ({ uri, text }: CommittedText) => {
    if (text === null) committed.delete(plainAddress(uri));
    else committed.set(plainAddress(uri), analysisBeside(uri, text));
    refreshLenses();
  });

  connection.onCodeLens(({ textDocument: { uri } }: CodeLensParams): CodeLens[] | null => {
    try {
      const earlier = committed.get(plainAddress(uri));
      const document = documents.latest(uri);
      if (!earlier || !document) return null;
      return compareLenses(document.analysis, earlier).map(({ range, title }) => ({
        range: rangeOf(document.lineStarts, range),
        command: { title, command: compareWithCommitCommand, arguments: [uri] },
      }));
    } catch (error) {
      report('Lenses', error);
      return null;
    }
  });
}

function located(
  analysis: Analysis,
  locate: (range: PlaceInFile['range']) => PlaceInFile,
): Record<string, ComparePlace> {
  const places = [...placesOf(analysis)].map(([key, range]) => {
    const { uri, lineStarts, range: own } = locate(range);
    return [key, { uri, range: rangeOf(lineStarts, own) }];
  });
  return Object.fromEntries(places) as Record<string, ComparePlace>;
}
