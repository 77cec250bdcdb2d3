/** The editor side of one preview: asks the server for views, latest wins, and hands them to the page. */
import { Uri, type WebviewPanel, window, workspace } from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';
import {
  type DrawingAnswer,
  type DrawingQuestion,
  drawingRequest,
  type MarkCard,
  type StopNotice,
  stopNotification,
} from '../../server/language/preview-messages.ts';
import { fillWebview } from '../fill-webview.ts';
import { previewContent } from './preview-markup.ts';
import { fileName } from '../file-name.ts';
import { revealWords } from '../reveal-words.ts';
import { saveDrawing, savePicture } from './save-view.ts';
import type { MessageToEditor, MessageToPage, PageState } from './webview-messages.ts';

/** What a preview begins with. */
export type Beginning = Pick<PageState, 'uri' | 'view' | 'locked'>;

export class PreviewPanel {
  readonly webviewPanel: WebviewPanel;
  private uri: Uri;
  private locked: boolean;
  private wantedView: string | null;
  private readonly client: LanguageClient;
  private questions = 0;
  private pageIsReady = false;
  private isClosed = false;
  private shown: DrawingAnswer | null = null;

  /** Fills `webviewPanel` with the preview of the text it begins with; `extension` is our own folder. */
  constructor(webviewPanel: WebviewPanel, extension: Uri, client: LanguageClient, { uri, view, locked }: Beginning) {
    this.webviewPanel = webviewPanel;
    this.client = client;
    this.uri = Uri.parse(uri);
    this.wantedView = view;
    this.locked = locked;
    webviewPanel.webview.onDidReceiveMessage((message: MessageToEditor) => this.logged(this.receive(message)));
    fillWebview(webviewPanel, extension, 'preview', previewContent);
    webviewPanel.onDidDispose(() => (this.isClosed = true));
    this.writeTitle();
  }

  /** Whether it shows the text at `uri`. */
  shows(uri: Uri): boolean {
    return this.uri.toString() === uri.toString();
  }

  get isLocked(): boolean {
    return this.locked;
  }

  /** Stays with its file from now on, or goes with the file that is edited. */
  lock(locked: boolean): void {
    this.locked = locked;
    this.writeTitle();
    this.post({ type: 'locked', locked });
  }

  /** Turns to another text. */
  async turnTo(uri: Uri): Promise<void> {
    this.uri = uri;
    this.wantedView = null;
    this.writeTitle();
    await this.refresh();
  }

  /** Shows the text as it is now. A failure is logged, and what is shown stays. */
  refresh(): Promise<void> {
    return this.pageIsReady ? this.logged(this.ask()) : Promise.resolve();
  }

  /** Lets the page light the pieces whose words hold `offset`. */
  markCursor(offset: number): void {
    if (this.pageIsReady) this.post({ type: 'cursor', offset });
  }

  /** Says what is being worked on, null when it has ended. */
  tellProgress(doing: string | null): void {
    if (this.pageIsReady) this.post({ type: 'progress', doing });
  }

  /** Asks for the view of the text as it is now. An answer that a later question has overtaken is dropped. */
  private async ask(): Promise<void> {
    const question = ++this.questions;
    const answer = await this.client.sendRequest<DrawingAnswer | null>(drawingRequest, this.question());
    if (question !== this.questions || answer === null || this.isClosed) return;
    this.shown = answer;
    this.post({ type: 'show', answer });
  }

  private question(): DrawingQuestion {
    return { uri: this.client.code2ProtocolConverter.asUri(this.uri), view: this.wantedView };
  }

  /** Words of an older text are left alone: they may stand elsewhere by now. */
  private async reveal({ uri, ...place }: MarkCard['words']): Promise<void> {
    if (this.shown?.stale !== false) return;
    const file = this.client.protocol2CodeConverter.asUri(uri);
    await revealWords(file, this.shows(file) ? this.shown.version : null, place);
  }

  private writeTitle(): void {
    const name = fileName(this.uri);
    this.webviewPanel.title = this.locked ? `[Preview] ${name}` : `Preview ${name}`;
  }

  private async logged(work: Promise<void>): Promise<void> {
    try {
      await work;
    } catch (error) {
      this.client.error(`The preview of ${this.uri.toString()} failed`, error, false);
    }
  }

  private post(message: MessageToPage): void {
    if (!this.isClosed) void this.webviewPanel.webview.postMessage(message);
  }

  private async receive(message: MessageToEditor): Promise<void> {
    switch (message.type) {
      case 'ready':
        await workspace.openTextDocument(this.uri); // after a reload no editor may hold it
        this.pageIsReady = true;
        this.post({ type: 'locked', locked: this.locked });
        await this.ask();
        break;
      case 'chooseView':
        this.wantedView = message.view;
        await this.ask();
        break;
      case 'reveal':
        await this.reveal(message.words);
        break;
      case 'stop':
        await this.client.sendNotification(stopNotification, { uri: this.question().uri } satisfies StopNotice);
        break;
      case 'lock':
        this.lock(message.locked);
        break;
      case 'save':
        await saveDrawing(this.client, this.uri, { ...this.question(), as: message.as });
        break;
      case 'savePicture':
        await savePicture(this.uri, this.shown?.view ?? null, message.png);
        break;
      case 'tell':
        void window.showInformationMessage(message.words);
        break;
    }
  }
}
