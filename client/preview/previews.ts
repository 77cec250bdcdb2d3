/** All open previews: opened by command, restored after a reload, refreshed after each analysis, locked or following. */
import {
  type Event,
  type ExtensionContext,
  type TextEditor,
  Uri,
  ViewColumn,
  type WebviewPanel,
  commands,
  window,
} from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';
import {
  type AnalysedNotice,
  packedNotification,
  type ProgressNotice,
  progressNotification,
} from '../../server/language/preview-messages.ts';
import { languageId } from '../language-client.ts';
import { type Beginning, PreviewPanel } from './panel.ts';
import { readPageState } from './webview-messages.ts';

const viewType = 'halflap.preview';

/** `onAnalysed` tells which text has been analysed anew. */
export function registerPreviews(context: ExtensionContext, client: LanguageClient, onAnalysed: Event<Uri>): void {
  const previews = new Set<PreviewPanel>();
  const of = (uri: Uri): PreviewPanel[] => [...previews].filter((preview) => preview.shows(uri));

  function adopt(webviewPanel: WebviewPanel, beginning: Beginning): void {
    const preview = new PreviewPanel(webviewPanel, context.extensionUri, client, beginning);
    previews.add(preview);
    webviewPanel.onDidDispose(() => previews.delete(preview));
  }

  /** A new preview of the text being edited. */
  function create(uri: Uri, locked: boolean): void {
    const place = { viewColumn: ViewColumn.Beside, preserveFocus: true };
    const webviewPanel = window.createWebviewPanel(viewType, 'Preview', place);
    adopt(webviewPanel, { uri: uri.toString(), view: null, locked });
  }

  function withEditedText(action: (uri: Uri) => void): void {
    const document = window.activeTextEditor?.document;
    if (document?.languageId === languageId) action(document.uri);
    else void window.showInformationMessage('Open a .lap file first, then its preview.');
  }

  function open(uri: Uri): void {
    const [present] = of(uri);
    if (present) present.webviewPanel.reveal(undefined, true);
    else create(uri, false);
  }

  /** Previews that are not locked turn to the text that is edited, unless another preview shows it already. */
  function follow(editor: TextEditor | undefined): void {
    if (editor?.document.languageId !== languageId || of(editor.document.uri).length > 0) return;
    const follower = [...previews].find(({ isLocked }) => !isLocked);
    void follower?.turnTo(editor.document.uri);
  }

  function toggleLock(): void {
    const active = [...previews].find(({ webviewPanel }) => webviewPanel.active);
    active?.lock(!active.isLocked);
  }

  context.subscriptions.push(
    commands.registerCommand('halflap.openPreview', () => withEditedText(open)),
    commands.registerCommand('halflap.openAnotherPreview', () => withEditedText((uri) => create(uri, true))),
    commands.registerCommand('halflap.lockPreview', toggleLock),
    window.registerWebviewPanelSerializer(viewType, {
      deserializeWebviewPanel: (webviewPanel: WebviewPanel, kept: unknown) => {
        const state = readPageState(kept);
        if (state) adopt(webviewPanel, state);
        else webviewPanel.dispose();
        return Promise.resolve();
      },
    }),
    window.onDidChangeActiveTextEditor(follow),
    window.onDidChangeTextEditorSelection(({ textEditor: { document }, selections: [selection] }) => {
      if (selection) for (const preview of of(document.uri)) preview.markCursor(document.offsetAt(selection.active));
    }),
    onAnalysed((uri) => {
      for (const preview of of(uri)) void preview.refresh();
    }),
    client.onNotification(packedNotification, ({ uri }: AnalysedNotice) => {
      for (const preview of of(client.protocol2CodeConverter.asUri(uri))) void preview.refresh();
    }),
    client.onNotification(progressNotification, ({ uri, doing }: ProgressNotice) => {
      for (const preview of of(client.protocol2CodeConverter.asUri(uri))) preview.tellProgress(doing);
    }),
  );
}
