/** Commands that compare the edited text with its last commit, another revision or another file; one view each. */
import { commands, type Event, type ExtensionContext, Uri, ViewColumn, type WebviewPanel, window } from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';
import { compareWithCommitCommand } from '../../server/language/compare-messages.ts';
import { fileName } from '../file-name.ts';
import { languageId } from '../language-client.ts';
import { chooseFile } from './choose-file.ts';
import { tellCommittedTexts } from './committed-texts.ts';
import { CompareView } from './compare-view.ts';
import { type ComparisonState, type EarlierChoice, readComparison } from './comparison-state.ts';
import { earlierVersion } from './earlier-version.ts';

const viewType = 'halflap.compare';
const lastCommit: Extract<EarlierChoice, { kind: 'revision' }> = {
  kind: 'revision',
  revision: 'HEAD',
  name: 'the last commit',
};

/** `onAnalysed` tells which text has been analysed anew. */
export function registerComparisons(context: ExtensionContext, client: LanguageClient, onAnalysed: Event<Uri>): void {
  const views = new Set<CompareView>();

  function adopt(webviewPanel: WebviewPanel, state: ComparisonState): void {
    const view = new CompareView(webviewPanel, context.extensionUri, client, state);
    views.add(view);
    webviewPanel.onDidDispose(() => views.delete(view));
  }

  function open(state: ComparisonState): void {
    const place = { viewColumn: ViewColumn.Beside, preserveFocus: true };
    adopt(window.createWebviewPanel(viewType, 'What changed', place), state);
  }

  async function withRevision(uri: Uri, earlier: Extract<EarlierChoice, { kind: 'revision' }>): Promise<void> {
    const state: ComparisonState = { uri: uri.toString(), earlier, cut: 'nothing' };
    if (await earlierVersion(state)) {
      open(state);
      return;
    }
    const choose = 'Choose a File';
    const answer = await window.showWarningMessage(
      `Git has no version of ${fileName(uri)} in ${earlier.name}. It can be compared with another file instead.`,
      choose,
    );
    if (answer === choose) await withFile(uri);
  }

  async function withFile(uri: Uri, chosen?: Uri): Promise<void> {
    const other = chosen ?? (await chooseFile(`Compare ${fileName(uri)} with …`, ['lap'], uri));
    if (other) open({ uri: uri.toString(), earlier: { kind: 'file', uri: other.toString() }, cut: 'nothing' });
  }

  async function askForRevision(uri: Uri): Promise<void> {
    const prompt = 'A branch, a tag or a commit to compare with';
    const revision = await window.showInputBox({ prompt, value: 'HEAD~1' });
    if (revision) await withRevision(uri, { kind: 'revision', revision, name: revision });
  }

  context.subscriptions.push(
    commands.registerCommand(compareWithCommitCommand, (address?: unknown) =>
      aboutText(address, (uri) => withRevision(uri, lastCommit)),
    ),
    commands.registerCommand('halflap.compareWithFile', (address?: unknown, other?: unknown) =>
      aboutText(address, (uri) => withFile(uri, other instanceof Uri ? other : undefined)),
    ),
    commands.registerCommand('halflap.compareWithRevision', (address?: unknown) => aboutText(address, askForRevision)),
    window.registerWebviewPanelSerializer(viewType, {
      deserializeWebviewPanel: (webviewPanel: WebviewPanel, kept: unknown) => {
        const state = readComparison(kept);
        if (state) adopt(webviewPanel, state);
        else webviewPanel.dispose();
        return Promise.resolve();
      },
    }),
    onAnalysed((uri) => {
      const changed = uri.toString();
      for (const view of views) if (view.uri.toString() === changed) void view.refresh();
    }),
  );
  void tellCommittedTexts(context, client, lastCommit.revision, (uri) => {
    for (const view of views) if (view.uri.toString() === uri.toString()) void view.refresh();
  });
}

/** Runs `action` on the text that a lens or a menu names, else on the one being edited. */
async function aboutText(address: unknown, action: (uri: Uri) => Promise<void>): Promise<void> {
  const named = typeof address === 'string' ? Uri.parse(address) : address instanceof Uri ? address : null;
  const edited = window.activeTextEditor?.document;
  const uri = named ?? (edited?.languageId === languageId ? edited.uri : null);
  if (uri) await action(uri);
  else void window.showInformationMessage('Open a .lap file first, then compare it.');
}
