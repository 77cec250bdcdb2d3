/** The editor side of one comparison: asks the server, hands the report to the page, follows rows to their words. */
import { Range, Uri, type WebviewPanel, workspace } from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';
import { type CompareAnswer, type CompareQuestion, compareRequest } from '../../server/language/compare-messages.ts';
import { fileName } from '../file-name.ts';
import { fillWebview } from '../fill-webview.ts';
import { revealRange } from '../reveal-words.ts';
import { chooseFile } from './choose-file.ts';
import { compareContent } from './compare-markup.ts';
import type { ComparisonState, CutChoice } from './comparison-state.ts';
import { alreadyCut, earlierName, earlierVersion } from './earlier-version.ts';
import type { MessageToEditor, MessageToPage } from './webview-messages.ts';

export class CompareView {
  readonly uri: Uri;
  private state: ComparisonState;
  private readonly webviewPanel: WebviewPanel;
  private readonly client: LanguageClient;
  private answer: CompareAnswer | null = null;
  private questions = 0;
  private pageIsReady = false;
  private isClosed = false;

  /** Fills `webviewPanel` with what `state` compares; `extension` is our own folder. */
  constructor(webviewPanel: WebviewPanel, extension: Uri, client: LanguageClient, state: ComparisonState) {
    this.webviewPanel = webviewPanel;
    this.client = client;
    this.state = state;
    this.uri = Uri.parse(state.uri);
    webviewPanel.title = `${fileName(this.uri)} against ${earlierName(state)}`;
    webviewPanel.onDidDispose(() => (this.isClosed = true));
    webviewPanel.webview.onDidReceiveMessage((message: MessageToEditor) => void this.receive(message));
    fillWebview(webviewPanel, extension, 'compare', compareContent);
  }

  /** Compares both sides as they are now. An answer that a later question has overtaken is dropped. */
  async refresh(): Promise<void> {
    if (!this.pageIsReady) return;
    const question = ++this.questions;
    try {
      const earlier = await earlierVersion(this.state);
      const cut = await alreadyCut(this.state.cut);
      if (question !== this.questions) return;
      if (!earlier) {
        this.post({
          type: 'fault',
          words: `There is no ${earlierName(this.state)} of ${fileName(this.uri)} to be had.`,
        });
        return;
      }
      const answer = await this.client.sendRequest<CompareAnswer | null>(compareRequest, {
        ...{ uri: this.client.code2ProtocolConverter.asUri(this.uri), earlier, cut },
      } satisfies CompareQuestion);
      if (answer && question === this.questions) this.show(answer);
    } catch (error) {
      this.client.error(`The comparison of ${this.uri.toString()} failed`, error, false);
    }
  }

  private show(answer: CompareAnswer): void {
    this.answer = answer;
    const { body, places, cutFault } = answer;
    this.post({ type: 'show', body, cutFault, old: Object.keys(places.old), new: Object.keys(places.new) });
  }

  private async receive(message: MessageToEditor): Promise<void> {
    switch (message.type) {
      case 'ready':
        await workspace.openTextDocument(this.uri); // after a reload no editor may hold it
        this.pageIsReady = true;
        this.tellState();
        await this.refresh();
        break;
      case 'cut':
        await this.takeAsCut(message.cut === 'list' ? await chosenList() : message.cut);
        break;
      case 'reveal':
        await this.reveal(message.side, message.subject);
        break;
    }
  }

  /** Counts that as cut from now on; null leaves all as it is. */
  private async takeAsCut(cut: CutChoice | null): Promise<void> {
    if (cut !== null) this.state = { ...this.state, cut };
    this.tellState();
    if (cut !== null) await this.refresh();
  }

  private tellState(): void {
    const { cut } = this.state;
    const cutName = typeof cut === 'string' ? null : fileName(Uri.parse(cut.uri));
    this.post({ type: 'state', state: this.state, cutName });
  }

  private post(message: MessageToPage): void {
    if (!this.isClosed) void this.webviewPanel.webview.postMessage(message);
  }

  /** Selects the words of a row's subject in one of the two texts, without taking the focus. */
  private async reveal(side: 'old' | 'new', subject: string): Promise<void> {
    const place = this.answer?.places[side][subject];
    if (!place) return;
    const document = await workspace.openTextDocument(Uri.parse(place.uri));
    const { start, end } = place.range;
    await revealRange(document, new Range(start.line, start.character, end.line, end.character));
  }
}

async function chosenList(): Promise<CutChoice | null> {
  const file = await chooseFile('A list of what is already cut: CSV with mark,count, or JSON', ['csv', 'json']);
  return file ? { uri: file.toString() } : null;
}
