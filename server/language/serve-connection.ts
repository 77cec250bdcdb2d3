/** The language server on one connection: questions in, the engine asked, answers out. */
import {
  CodeActionKind,
  type Connection,
  type InitializeResult,
  TextDocuments,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { analyse, type Analysis } from '../analyse.ts';
import { answerQuestions } from './answer-questions.ts';
import { OpenDocuments } from './open-documents.ts';
import { type AnalysedNotice, analysedNotification } from './preview-messages.ts';
import { diagnosticOf } from './to-protocol.ts';

/** Typing rests this long, in milliseconds, before a text is analysed unasked; a question analyses at once. */
const restBeforeAnalysis = 30;

const initializeResult: InitializeResult = {
  serverInfo: { name: 'halflap' },
  capabilities: {
    textDocumentSync: TextDocumentSyncKind.Incremental,
    hoverProvider: true,
    documentSymbolProvider: true,
    definitionProvider: true,
    referencesProvider: true,
    documentHighlightProvider: true,
    renameProvider: { prepareProvider: true },
    foldingRangeProvider: true,
    documentFormattingProvider: true,
    completionProvider: {},
    codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix] },
  },
};

/** Serves `connection` until it closes. A failure is logged and answered with null; it never ends the server. */
export function serveConnection(connection: Connection, engine: (text: string) => Analysis = analyse): void {
  const texts = new TextDocuments(TextDocument);
  const documents = new OpenDocuments(engine);
  const resting = new Map<string, NodeJS.Timeout>();

  function announce(uri: string): void {
    resting.delete(uri);
    try {
      const document = documents.latest(uri);
      if (!document) return;
      const { version, lineStarts, analysis } = document;
      const diagnostics = analysis.problems.map((problem) => diagnosticOf(uri, lineStarts, problem));
      void connection.sendDiagnostics({ uri, version, diagnostics });
      void connection.sendNotification(analysedNotification, { uri, version } satisfies AnalysedNotice);
    } catch (error) {
      connection.console.error(`Analysis of ${uri} failed: ${describe(error)}`);
    }
  }

  connection.onInitialize(() => initializeResult);
  texts.onDidChangeContent(({ document }) => {
    const { uri } = document;
    documents.put(uri, document.version, document.getText());
    clearTimeout(resting.get(uri));
    resting.set(uri, setTimeout(announce, restBeforeAnalysis, uri));
  });
  texts.onDidClose(({ document }) => {
    const { uri } = document;
    clearTimeout(resting.get(uri));
    resting.delete(uri);
    documents.close(uri);
    void connection.sendDiagnostics({ uri, diagnostics: [] });
  });
  answerQuestions(connection, documents, (question, error) => {
    connection.console.error(`${question} failed: ${describe(error)}`);
  });
  texts.listen(connection);
  connection.listen();
}

const describe = (error: unknown): string => (error instanceof Error ? (error.stack ?? error.message) : String(error));
