/** All open previews, one a text: opened by command, restored after a reload, refreshed after each analysis. */
import { type ExtensionContext, Uri, ViewColumn, type WebviewPanel, commands, window } from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';
import { type AnalysedNotice, analysedNotification } from '../../server/language/preview-messages.ts';
import { languageId } from '../language-client.ts';
import { PreviewPanel } from './panel.ts';
import { readPageState } from './webview-messages.ts';

const viewType = 'halflap.preview';

export function registerPreviews(context: ExtensionContext, client: LanguageClient): void {
  const previews = new Map<string, PreviewPanel>();

  function adopt(webviewPanel: WebviewPanel, uri: Uri, panel: string | null): void {
    const key = uri.toString();
    const preview = new PreviewPanel(webviewPanel, context.extensionUri, client, uri, panel);
    previews.set(key, preview);
    webviewPanel.onDidDispose(() => previews.delete(key));
  }

  function open(): void {
    const document = window.activeTextEditor?.document;
    if (document?.languageId !== languageId) {
      void window.showInformationMessage('Open a .lap file first, then its preview.');
      return;
    }
    const present = previews.get(document.uri.toString());
    if (present) {
      present.webviewPanel.reveal(undefined, true);
      return;
    }
    const place = { viewColumn: ViewColumn.Beside, preserveFocus: true };
    adopt(window.createWebviewPanel(viewType, 'Preview', place), document.uri, null);
  }

  context.subscriptions.push(
    commands.registerCommand('halflap.openPreview', open),
    window.registerWebviewPanelSerializer(viewType, {
      deserializeWebviewPanel: (webviewPanel: WebviewPanel, kept: unknown) => {
        const state = readPageState(kept);
        if (state) adopt(webviewPanel, Uri.parse(state.uri), state.panel);
        else webviewPanel.dispose();
        return Promise.resolve();
      },
    }),
    window.onDidChangeTextEditorSelection(({ textEditor: { document }, selections }) => {
      const [selection] = selections;
      if (selection) previews.get(document.uri.toString())?.markCursor(document.offsetAt(selection.active));
    }),
    client.onNotification(analysedNotification, ({ uri }: AnalysedNotice) => {
      const preview = previews.get(client.protocol2CodeConverter.asUri(uri).toString());
      void preview?.refresh();
    }),
  );
}
