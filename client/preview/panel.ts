/** The editor side of one preview: asks the server for drawings, latest wins, and hands them to the page. */
import { Range, Selection, TextEditorRevealType, Uri, ViewColumn, type WebviewPanel, window, workspace } from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';
import { type DrawingAnswer, type DrawingQuestion, drawingRequest } from '../../server/language/preview-messages.ts';
import { previewPage } from './preview-page.ts';
import type { MessageToEditor, MessageToPage } from './webview-messages.ts';

export class PreviewPanel {
  readonly uri: Uri;
  readonly webviewPanel: WebviewPanel;
  private readonly client: LanguageClient;
  private wantedPanel: string | null;
  private questions = 0;
  private pageIsReady = false;
  private isClosed = false;
  private shown: DrawingAnswer | null = null;

  /**
   * Fills `webviewPanel` with the preview of the text at `uri`, beginning with `wantedPanel` or the first panel;
   * `extension` is our own folder.
   */
  constructor(
    webviewPanel: WebviewPanel,
    extension: Uri,
    client: LanguageClient,
    uri: Uri,
    wantedPanel: string | null,
  ) {
    this.webviewPanel = webviewPanel;
    this.client = client;
    this.uri = uri;
    this.wantedPanel = wantedPanel;
    const icons = Uri.joinPath(extension, 'client/icons');
    const bundleFolder = Uri.joinPath(extension, 'dist');
    webviewPanel.iconPath = { light: Uri.joinPath(icons, 'lap-light.svg'), dark: Uri.joinPath(icons, 'lap-dark.svg') };
    const { webview } = webviewPanel;
    webview.options = { enableScripts: true, localResourceRoots: [bundleFolder] };
    webview.onDidReceiveMessage((message: MessageToEditor) => this.logged(this.receive(message)));
    webview.html = previewPage(webview, bundleFolder, uri);
    webviewPanel.onDidDispose(() => (this.isClosed = true));
    webviewPanel.title = `Preview ${uri.path.slice(uri.path.lastIndexOf('/') + 1)}`;
  }

  /** Shows the text as it is now. A failure is logged, and what is shown stays. */
  refresh(): Promise<void> {
    return this.pageIsReady ? this.logged(this.ask()) : Promise.resolve();
  }

  /** Asks for the drawing of the text as it is now. An answer that a later question has overtaken is dropped. */
  private async ask(): Promise<void> {
    const question = ++this.questions;
    const answer = await this.client.sendRequest<DrawingAnswer | null>(drawingRequest, {
      uri: this.client.code2ProtocolConverter.asUri(this.uri),
      panel: this.wantedPanel,
    } satisfies DrawingQuestion);
    if (question !== this.questions || answer === null || this.isClosed) return;
    this.shown = answer;
    this.post({ type: 'show', answer });
  }

  /** Lets the page mark the pieces whose words hold `offset`. */
  markCursor(offset: number): void {
    if (this.pageIsReady) this.post({ type: 'cursor', offset });
  }

  private async logged(work: Promise<void>): Promise<void> {
    try {
      await work;
    } catch (error) {
      this.client.error(`The preview of ${this.uri.toString()} failed`, error, false);
    }
  }

  private post(message: MessageToPage): void {
    void this.webviewPanel.webview.postMessage(message);
  }

  private async receive(message: MessageToEditor): Promise<void> {
    switch (message.type) {
      case 'ready':
        await workspace.openTextDocument(this.uri); // after a reload no editor may hold it
        this.pageIsReady = true;
        await this.ask();
        break;
      case 'choosePanel':
        this.wantedPanel = message.panel;
        await this.ask();
        break;
      case 'reveal':
        await this.reveal(message.start, message.end);
        break;
    }
  }

  /** Selects words in the text's editor without taking the focus; words of an older text are left alone. */
  private async reveal(start: number, end: number): Promise<void> {
    const document = await workspace.openTextDocument(this.uri);
    if (this.shown?.stale !== false || this.shown.version !== document.version) return;
    const range = new Range(document.positionAt(start), document.positionAt(end));
    const visible = window.visibleTextEditors.find((editor) => editor.document === document);
    const viewColumn = visible?.viewColumn ?? ViewColumn.One;
    const editor = await window.showTextDocument(document, { viewColumn, preserveFocus: true });
    editor.selection = new Selection(range.start, range.end);
    editor.revealRange(range, TextEditorRevealType.InCenterIfOutsideViewport);
  }
}
