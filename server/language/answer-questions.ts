/** Every question the editor may ask of an open text, each answered by one feature. */
import type { Connection, Position, SemanticTokens } from 'vscode-languageserver';
import type { Drawing } from '../drawing/drawing.ts';
import { writePdf } from '../drawing/page/write-pdf.ts';
import { panelPage } from '../drawing/panel-page.ts';
import { writeSvg } from '../drawing/write-svg.ts';
import { documentOutline } from './features/document-outline.ts';
import { foldsOf } from './features/folds.ts';
import { formatting } from './features/formatting.ts';
import { formattingOnType, formattingWithin } from './features/range-formatting.ts';
import { hoverAt } from './features/hover.ts';
import { countHints } from './features/inlay-hints.ts';
import { nameTokens } from './features/semantic-tokens.ts';
import { definitionAt, isName, referencesAt, renamableAt } from './features/names.ts';
import { finalContent, previewOf } from './features/preview.ts';
import { proposalsAt } from './features/proposals.ts';
import { quickFixes } from './features/quick-fixes.ts';
import { fileProposals, usedPathAt } from './features/use-proposals.ts';
import { offsetAt, rangeFrom } from './from-protocol.ts';
import type { AnalysedDocument, OpenDocuments } from './open-documents.ts';
import { mentionsInWorkspace } from './workspace-names.ts';
import { declarationsInWorkspace } from './workspace-symbols.ts';
import {
  type DrawingForm,
  type DrawingQuestion,
  drawingRequest,
  type FileQuestion,
  fileRequest,
} from './preview-messages.ts';
import type { DesignSearches } from './design-searches.ts';
import { documentName } from './workspace-files.ts';
import {
  codeActionOf,
  completionOf,
  fileCompletionOf,
  foldOf,
  highlightOf,
  hoverOf,
  inlayHintOf,
  locationOf,
  rangeOf,
  renameOf,
  replacementOf,
  semanticTokensOf,
  symbolInFile,
  symbolOf,
} from './to-protocol.ts';
import { loadTypefaces } from '../machine/typefaces.ts';

interface DocumentQuestion {
  readonly textDocument: { readonly uri: string };
}

interface PlaceQuestion extends DocumentQuestion {
  readonly position: Position;
}

/** Registers the handlers. One that fails answers null and calls `report` with its name and the error. */
export function answerQuestions(
  connection: Connection,
  documents: OpenDocuments,
  searches: DesignSearches,
  report: (question: string, error: unknown) => void,
): void {
  /** The latest document of `uri` given to `answer`; null when it isn't open, or when the answer fails. */
  function answered<Answer>(name: string, uri: string, answer: (document: AnalysedDocument) => Answer): Answer | null {
    try {
      const document = documents.latest(uri);
      return document ? answer(document) : null;
    } catch (error) {
      report(name, error);
      return null;
    }
  }

  const about =
    <Answer>(name: string, answer: (document: AnalysedDocument) => Answer) =>
    ({ textDocument }: DocumentQuestion): Answer | null =>
      answered(name, textDocument.uri, answer);

  const at =
    <Question extends PlaceQuestion, Answer>(
      name: string,
      answer: (document: AnalysedDocument, offset: number, question: Question) => Answer,
    ) =>
    (question: Question): Answer | null =>
      answered(name, question.textDocument.uri, (document) =>
        answer(document, offsetAt(document.text, document.lineStarts, question.position), question),
      );

  connection.onHover(
    at('Hover', ({ analysis, lineStarts }, offset) => {
      const hover = hoverAt(analysis, offset);
      return hover && hoverOf(lineStarts, hover);
    }),
  );
  connection.onDocumentSymbol(
    about('Document symbols', ({ analysis, lineStarts }) =>
      documentOutline(analysis).map((entry) => symbolOf(lineStarts, entry)),
    ),
  );
  connection.onWorkspaceSymbol(({ query }) => {
    try {
      return declarationsInWorkspace(query, documents).map(symbolInFile);
    } catch (error) {
      report('Workspace symbols', error);
      return null;
    }
  });
  const noTokens: SemanticTokens = { data: [] };
  connection.languages.semanticTokens.on(
    (question) =>
      about('Colours', ({ analysis, lineStarts }) => semanticTokensOf(lineStarts, nameTokens(analysis)))(question) ??
      noTokens,
  );
  connection.languages.inlayHint.on(({ textDocument: { uri }, range }) =>
    answered('Counts', uri, ({ text, analysis, lineStarts }) =>
      countHints(analysis, rangeFrom(text, lineStarts, range)).map((hint) => inlayHintOf(lineStarts, hint)),
    ),
  );
  connection.onDefinition(
    at('Definition', ({ analysis, locate }, offset) => {
      const range = definitionAt(analysis, offset);
      return range && locationOf(locate(range));
    }),
  );
  connection.onReferences(
    at('References', (document, offset) => mentionsInWorkspace(document, offset, documents).map(locationOf)),
  );
  connection.onDocumentHighlight(
    at('Highlights', ({ analysis, lineStarts }, offset) =>
      referencesAt(analysis, offset).map((range) => highlightOf(lineStarts, range)),
    ),
  );
  connection.onPrepareRename(
    at('Rename', ({ analysis, lineStarts }, offset) => {
      const range = renamableAt(analysis, offset);
      return range && rangeOf(lineStarts, range);
    }),
  );
  connection.onRenameRequest(
    at('Rename', (document, offset, { newName }: PlaceQuestion & { newName: string }) => {
      if (!isName(newName) || !renamableAt(document.analysis, offset)) return null;
      return renameOf(mentionsInWorkspace(document, offset, documents), newName);
    }),
  );
  connection.onFoldingRanges(
    about('Folding', ({ analysis, lineStarts }) =>
      foldsOf(analysis)
        .map((range) => foldOf(lineStarts, range))
        .filter((fold) => fold !== null),
    ),
  );
  connection.onDocumentFormatting(
    about('Formatting', ({ text, lineStarts }) => {
      const change = formatting(text);
      return change ? [replacementOf(lineStarts, change.range, change.newText)] : [];
    }),
  );
  connection.onDocumentRangeFormatting(({ textDocument: { uri }, range }) =>
    answered('Formatting', uri, ({ text, lineStarts }) =>
      formattingWithin(text, rangeFrom(text, lineStarts, range)).map((change) =>
        replacementOf(lineStarts, change.range, change.newText),
      ),
    ),
  );
  connection.onDocumentOnTypeFormatting(
    at('Formatting', ({ analysis, lineStarts }, offset, { ch }: PlaceQuestion & { ch: string }) =>
      formattingOnType(analysis, offset, ch).map((change) => replacementOf(lineStarts, change.range, change.newText)),
    ),
  );
  connection.onCompletion(
    at('Completion', ({ uri, text, analysis, lineStarts }, offset) => {
      const used = usedPathAt(text, offset);
      if (!used) return proposalsAt(analysis, offset).map(completionOf);
      const paths = documents.workspace.pathsBeside(uri);
      return fileProposals(paths, analysis.files[0].path, used).map((file) => fileCompletionOf(lineStarts, file));
    }),
  );
  connection.onCodeAction(({ textDocument: { uri }, range }) =>
    answered('Quick fixes', uri, (document) => {
      const { text, analysis, lineStarts } = document;
      return quickFixes(analysis, rangeFrom(text, lineStarts, range)).map((fix) => codeActionOf(document, fix));
    }),
  );
  /** As `answered`, for an answer that takes its time. */
  async function answeredLater<Answer>(
    name: string,
    uri: string,
    answer: (document: AnalysedDocument) => Promise<Answer>,
  ): Promise<Answer | null> {
    try {
      return await answered(name, uri, answer);
    } catch (error) {
      report(name, error);
      return null;
    }
  }

  connection.onRequest(drawingRequest, ({ uri, view }: DrawingQuestion) =>
    answeredLater('Drawing', uri, (document) => previewOf(document, view, searches.of(uri))),
  );
  connection.onRequest(fileRequest, ({ uri, view, as: form }: FileQuestion) =>
    answeredLater('File', uri, async (document) => {
      const content = await finalContent(document, view, searches.of(uri));
      const drawing = content?.sheet ?? content?.drawing ?? null;
      return drawing && fileOf(drawing, form, documentName(uri));
    }),
  );
}

/** The drawing as a file, in base 64; `source` names the design's file. */
async function fileOf(drawing: Drawing, form: DrawingForm, source: string): Promise<string> {
  if (form === 'svg') return Buffer.from(writeSvg(drawing, source)).toString('base64');
  const pdf = await writePdf(panelPage(drawing, source), await loadTypefaces());
  return Buffer.from(pdf).toString('base64');
}
