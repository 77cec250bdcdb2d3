/** The language server on one connection: questions in, the engine asked, answers out. */
import {
  CodeActionKind,
  CodeLensRefreshRequest,
  type Connection,
  DidChangeWatchedFilesNotification,
  ErrorCodes,
  type InitializeResult,
  InlayHintRefreshRequest,
  ResponseError,
  TextDocuments,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { analyseByStages } from '../analyse.ts';
import { AnalysisRounds } from './announce-analyses.ts';
import { libraryAt, libraryText } from '../design/files/built-in-libraries.ts';
import { tokenModifiers, tokenTypes } from './features/semantic-tokens.ts';
import { answerComparisons } from './answer-comparisons.ts';
import { answerQuestions } from './answer-questions.ts';
import { DesignSearches } from './design-searches.ts';
import { type Engine, OpenDocuments } from './open-documents.ts';
import {
  type AnalysedNotice,
  analysedNotification,
  type LibraryQuestion,
  libraryTextRequest,
  packedNotification,
  type ProgressNotice,
  progressNotification,
  type StopNotice,
  stopNotification,
} from './preview-messages.ts';
import { diagnosticOf } from './to-protocol.ts';

const initializeResult: InitializeResult = {
  serverInfo: { name: 'halflap' },
  capabilities: {
    textDocumentSync: TextDocumentSyncKind.Incremental,
    hoverProvider: true,
    documentSymbolProvider: true,
    workspaceSymbolProvider: true,
    semanticTokensProvider: {
      legend: { tokenTypes: [...tokenTypes], tokenModifiers: [...tokenModifiers] },
      full: true,
    },
    inlayHintProvider: true,
    definitionProvider: true,
    referencesProvider: true,
    documentHighlightProvider: true,
    renameProvider: { prepareProvider: true },
    foldingRangeProvider: true,
    codeLensProvider: {},
    documentFormattingProvider: true,
    documentRangeFormattingProvider: true,
    documentOnTypeFormattingProvider: { firstTriggerCharacter: '}', moreTriggerCharacter: ['\n'] },
    completionProvider: { triggerCharacters: ['"', '/'] },
    codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix] },
  },
};

/** Serves `connection` until it closes. A failure is logged and answered with null; it never ends the server. */
export function serveConnection(connection: Connection, engine: Engine = analyseByStages): void {
  const texts = new TextDocuments(TextDocument);
  const documents = new OpenDocuments(engine);
  const progress = (uri: string, doing: string | null): void => {
    void connection.sendNotification(progressNotification, { uri, doing } satisfies ProgressNotice);
  };
  const report = (question: string, error: unknown): void => {
    connection.console.error(`${question} failed: ${describe(error)}`);
  };
  const searches = new DesignSearches({
    onProgress: progress,
    onPacked(uri, first, packed) {
      const document = documents.replace(uri, first, packed);
      if (!document) return;
      const { version } = document;
      void connection.sendNotification(packedNotification, { uri, version } satisfies AnalysedNotice);
      if (canRefreshHints) void connection.sendRequest(InlayHintRefreshRequest.type);
    },
    onFailed: (uri, error) => report(`Packing the blanks of ${uri}`, error),
  });
  let canWatch = false;
  let canRefreshLenses = false;
  let canRefreshHints = false;

  const rounds = new AnalysisRounds(documents, {
    analysed(document) {
      const { uri, version, analysis } = document;
      // first: what an earlier version found is taken over before anybody asks
      searches.begin(uri, document.lastSound ?? analysis);
      const diagnostics = analysis.problems.map((problem) => diagnosticOf(document, problem));
      void connection.sendDiagnostics({ uri, version, diagnostics });
      void connection.sendNotification(analysedNotification, { uri, version } satisfies AnalysedNotice);
    },
    progress,
    failed: (uri, error) => connection.console.error(`Analysis of ${uri} failed: ${describe(error)}`),
  });

  /** The file at `uri` is not what it was: open texts that use it are analysed anew. */
  const fileChanged = (uri: string): void => documents.fileChanged(uri).forEach((user) => rounds.beginSoon(user));

  let isInitialized = false;
  connection.onInitialize(({ workspaceFolders, capabilities }) => {
    if (isInitialized) return new ResponseError(ErrorCodes.InvalidRequest, 'The server is initialized already.');
    isInitialized = true;
    documents.workspace.openFolders(workspaceFolders?.map(({ uri }) => uri) ?? []);
    canWatch = capabilities.workspace?.didChangeWatchedFiles?.dynamicRegistration ?? false;
    canRefreshLenses = capabilities.workspace?.codeLens?.refreshSupport ?? false;
    canRefreshHints = capabilities.workspace?.inlayHint?.refreshSupport ?? false;
    return initializeResult;
  });
  connection.onInitialized(() => {
    if (!canWatch) return;
    void connection.client.register(DidChangeWatchedFilesNotification.type, {
      watchers: [{ globPattern: '**/*.{lap,svg}' }],
    });
  });
  connection.onDidChangeWatchedFiles(({ changes }) => changes.forEach(({ uri }) => fileChanged(uri)));
  connection.onRequest(libraryTextRequest, ({ uri }: LibraryQuestion) => libraryText(libraryAt(uri) ?? ''));
  texts.onDidChangeContent(({ document }) => {
    const { uri } = document;
    documents.put(uri, document.version, document.getText());
    searches.overtake(uri);
    rounds.beginSoon(uri);
    fileChanged(uri);
  });
  texts.onDidClose(({ document }) => {
    const { uri } = document;
    rounds.stop(uri);
    documents.close(uri);
    fileChanged(uri);
    searches.close(uri);
    void connection.sendDiagnostics({ uri, diagnostics: [] });
  });
  connection.onNotification(stopNotification, ({ uri }: StopNotice) => {
    rounds.stop(uri);
    searches.stop(uri);
  });
  answerQuestions(connection, documents, searches, report);
  answerComparisons(connection, documents, searches, report, () => {
    if (canRefreshLenses) void connection.sendRequest(CodeLensRefreshRequest.type);
  });
  texts.listen(connection);
  connection.listen();
}

const describe = (error: unknown): string => (error instanceof Error ? (error.stack ?? error.message) : String(error));
