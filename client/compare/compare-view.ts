/** The editor side of one comparison: asks the server, hands the report to the page, follows rows to their words. */
import { Range, Uri, type WebviewPanel, workspace } from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';
import {
  type CompareAnswer,
  type CompareQuestion,
  compareRequest,
  type EarlierVersion,
} from '../../server/language/compare-messages.ts';
import { fillWebview } from '../fill-webview.ts';
import { compareContent } from './compare-markup.ts';
import { revealRange } from '../reveal-words.ts';
import type { MessageToEditor, ShowReport } from './webview-messages.ts';

export class CompareView {
  readonly uri: Uri;
  private readonly webviewPanel: WebviewPanel;
  private readonly client: LanguageClient;
  private readonly earlier: () => Promise<EarlierVersion | null>;
  private answer: CompareAnswer | null = null;
  private questions = 0;
  private pageIsReady = false;

  /** Fills `webviewPanel` with what changed from `earlier` to the text at `uri`; `extension` is our own folder. */
  constructor(
    webviewPanel: WebviewPanel,
    extension: Uri,
    client: LanguageClient,
    uri: Uri,
    earlier: () => Promise<EarlierVersion | null>,
  ) {
    this.webviewPanel = webviewPanel;
    this.client = client;
    this.uri = uri;
    this.earlier = earlier;
    webviewPanel.webview.onDidReceiveMessage((message: MessageToEditor) => void this.receive(message));
    fillWebview(webviewPanel, extension, 'compare', compareContent);
  }

  /** Compares the text as it is now. An answer that a later question has overtaken is dropped. */
  async refresh(): Promise<void> {
    if (!this.pageIsReady) return;
    const question = ++this.questions;
    try {
      const earlier = await this.earlier();
      if (!earlier || question !== this.questions) return;
      const answer = await this.client.sendRequest<CompareAnswer | null>(compareRequest, {
        uri: this.client.code2ProtocolConverter.asUri(this.uri),
        earlier,
      } satisfies CompareQuestion);
      if (!answer || question !== this.questions) return;
      this.answer = answer;
      const { body, places } = answer;
      const shown: ShowReport = { type: 'show', body, old: Object.keys(places.old), new: Object.keys(places.new) };
      void this.webviewPanel.webview.postMessage(shown);
    } catch (error) {
      this.client.error(`The comparison of ${this.uri.toString()} failed`, error, false);
    }
  }

  private async receive(message: MessageToEditor): Promise<void> {
    if (message.type === 'ready') {
      this.pageIsReady = true;
      await this.refresh();
    } else {
      await this.reveal(message.side, message.subject);
    }
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
