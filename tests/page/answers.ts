/** What the language server would answer the page, for designs kept beside the cases: samples may change, pictures stay. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { analyseByStages } from '../../server/analyse.ts';
import { type DesignSearch, previewOf } from '../../server/language/features/preview.ts';
import { OpenDocuments } from '../../server/language/open-documents.ts';
import type { DrawingAnswer } from '../../server/language/preview-messages.ts';
import { usualEffort } from '../../server/machine/search-effort.ts';
import { packDesign, planPacked } from '../../server/plan-design.ts';

export const designText = (root: string, name: string): string =>
  readFileSync(join(root, 'tests/page/designs', name), 'utf8');

/** Nothing is looked for in the background: pictures are of what has been found. */
const search: DesignSearch = {
  begin: (analysis) => analysis,
  packed: (analysis) => packDesign(analysis, usualEffort()),
  isPacking: () => false,
  planned: (packed) => planPacked(packed, 'design.lap', usualEffort()),
};

/** The answer after the texts given, one version after the other. */
export async function answerFor(texts: readonly string[], view: string | null): Promise<DrawingAnswer> {
  const documents = new OpenDocuments(analyseByStages);
  const uri = 'file:///design.lap';
  let answer: DrawingAnswer | null = null;
  for (const [version, text] of texts.entries()) {
    documents.put(uri, version, text);
    const document = documents.latest(uri);
    if (document) answer = await previewOf(document, view, search);
  }
  if (!answer) throw new Error('there is no text');
  return answer;
}
