/** The language server on one connection: questions in, the engine asked, answers out. */
import {
  CodeActionKind,
  CodeLensRefreshRequest,
  type Connection,
  DidChangeWatchedFilesNotification,
  type InitializeResult,
  TextDocuments,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { analyseByStages } from '../analyse.ts';
import { AnalysisRounds } from './announce-analyses.ts';
import { libraryAt, libraryText } from '../design/built-in-libraries.ts';
import { tokenModifiers, tokenTypes } from './features/semantic-tokens.ts';
import { answerComparisons } from './answer-comparisons.ts';
import { answerQuestions } from './answer-questions.ts';
import { type Engine, OpenDocuments } from './open-documents.ts';
import {
  type AnalysedNotice,
  analysedNotification,
  type LibraryQuestion,
  libraryTextRequest,
  type ProgressNotice,
  progressNotification,
  type StopNotice,
  stopNotification,
} from './preview-messages.ts';
import { StickPlans } from './stick-plans.ts';
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
  const stickPlans = new StickPlans(progress);
  let canWatch = false;
  let canRefreshLenses = false;

  const rounds = new AnalysisRounds(documents, {
    analysed(document) {
      const { uri, version, analysis } = document;
      const diagnostics = analysis.problems.map((problem) => diagnosticOf(document, problem));
      void connection.sendDiagnostics({ uri, version, diagnostics });
      void connection.sendNotification(analysedNotification, { uri, version } satisfies AnalysedNotice);
    },
    progress,
    failed: (uri, error) => connection.console.error(`Analysis of ${uri} failed: ${describe(error)}`),
  });

  /** The file at `uri` is not what it was: open texts that use it are analysed anew. */
  const fileChanged = (uri: string): void => documents.fileChanged(uri).forEach((user) => rounds.beginSoon(user));

  connection.onInitialize(({ workspaceFolders, capabilities }) => {
    documents.workspace.openFolders(workspaceFolders?.map(({ uri }) => uri) ?? []);
    canWatch = capabilities.workspace?.didChangeWatchedFiles?.dynamicRegistration ?? false;
    canRefreshLenses = capabilities.workspace?.codeLens?.refreshSupport ?? false;
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
    rounds.beginSoon(uri);
    fileChanged(uri);
  });
  texts.onDidClose(({ document }) => {
    const { uri } = document;
    rounds.stop(uri);
    documents.close(uri);
    fileChanged(uri);
    stickPlans.close(uri);
    void connection.sendDiagnostics({ uri, diagnostics: [] });
  });
  connection.onNotification(stopNotification, ({ uri }: StopNotice) => {
    rounds.stop(uri);
    stickPlans.stop(uri);
  });
  const report = (question: string, error: unknown): void => {
    connection.console.error(`${question} failed: ${describe(error)}`);
  };
  answerQuestions(connection, documents, stickPlans, report);
  answerComparisons(connection, documents, stickPlans, report, () => {
    if (canRefreshLenses) void connection.sendRequest(CodeLensRefreshRequest.type);
  });
  texts.listen(connection);
  connection.listen();
}

const describe = (error: unknown): string => (error instanceof Error ? (error.stack ?? error.message) : String(error));
