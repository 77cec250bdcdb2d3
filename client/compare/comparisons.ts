/** Commands that compare the edited text with its last commit, another revision or another file; one view each. */
import { commands, type Event, type ExtensionContext, Uri, ViewColumn, window, workspace } from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';
import { compareWithCommitCommand, type EarlierVersion } from '../../server/language/compare-messages.ts';
import { fileName } from '../file-name.ts';
import { languageId } from '../language-client.ts';
import { tellCommittedTexts } from './committed-texts.ts';
import { CompareView } from './compare-view.ts';
import { gitApi, textInRevision } from './git-api.ts';

const viewType = 'halflap.compare';
const lastCommit = 'HEAD';

/** `onAnalysed` tells which text has been analysed anew. */
export function registerComparisons(context: ExtensionContext, client: LanguageClient, onAnalysed: Event<Uri>): void {
  const views = new Set<CompareView>();

  function open(uri: Uri, name: string, earlier: () => Promise<EarlierVersion | null>): void {
    const place = { viewColumn: ViewColumn.Beside, preserveFocus: true };
    const webviewPanel = window.createWebviewPanel(viewType, `${fileName(uri)} against ${name}`, place, {
      retainContextWhenHidden: true,
    });
    const view = new CompareView(webviewPanel, context.extensionUri, client, uri, earlier);
    views.add(view);
    webviewPanel.onDidDispose(() => views.delete(view));
  }

  /** The version of `uri` in `revision`, as git has it now. */
  async function inRevision(uri: Uri, revision: string, name: string): Promise<EarlierVersion | null> {
    const git = await gitApi();
    const text = git && (await textInRevision(git, uri, revision));
    if (!git || text === null) return null;
    return { name, uri: git.toGitUri(uri, revision).toString(), text };
  }

  async function withRevision(uri: Uri, revision: string, name: string): Promise<void> {
    if (await inRevision(uri, revision, name)) {
      open(uri, name, () => inRevision(uri, revision, name));
      return;
    }
    const choose = 'Choose a File';
    const answer = await window.showWarningMessage(
      `Git has no version of ${fileName(uri)} in ${name}. It can be compared with another file instead.`,
      choose,
    );
    if (answer === choose) await withFile(uri);
  }

  async function withFile(uri: Uri, chosen?: Uri): Promise<void> {
    const other = chosen ?? (await chooseFile(uri));
    if (!other) return;
    open(uri, fileName(other), async () => {
      const document = await workspace.openTextDocument(other);
      return { name: fileName(other), uri: other.toString(), text: document.getText() };
    });
  }

  async function askForRevision(uri: Uri): Promise<void> {
    const prompt = 'A branch, a tag or a commit to compare with';
    const revision = await window.showInputBox({ prompt, value: 'HEAD~1' });
    if (revision) await withRevision(uri, revision, revision);
  }

  context.subscriptions.push(
    commands.registerCommand(compareWithCommitCommand, (address?: unknown) =>
      aboutText(address, (uri) => withRevision(uri, lastCommit, 'the last commit')),
    ),
    commands.registerCommand('halflap.compareWithFile', (address?: unknown, other?: unknown) =>
      aboutText(address, (uri) => withFile(uri, other instanceof Uri ? other : undefined)),
    ),
    commands.registerCommand('halflap.compareWithRevision', (address?: unknown) => aboutText(address, askForRevision)),
    onAnalysed((uri) => {
      const changed = uri.toString();
      for (const view of views) if (view.uri.toString() === changed) void view.refresh();
    }),
  );
  void tellCommittedTexts(context, client, lastCommit);
}

/** Runs `action` on the text that a lens or a menu names, else on the one being edited. */
async function aboutText(address: unknown, action: (uri: Uri) => Promise<void>): Promise<void> {
  const named = typeof address === 'string' ? Uri.parse(address) : address instanceof Uri ? address : null;
  const edited = window.activeTextEditor?.document;
  const uri = named ?? (edited?.languageId === languageId ? edited.uri : null);
  if (uri) await action(uri);
  else void window.showInformationMessage('Open a .lap file first, then compare it.');
}

/** Another .lap file of the workspace, or any file by the dialogue. */
async function chooseFile(uri: Uri): Promise<Uri | undefined> {
  const files = await workspace.findFiles('**/*.lap', '**/node_modules/**');
  const others = files.filter((file) => file.toString() !== uri.toString());
  const elsewhere = { label: 'A file elsewhere …', file: null };
  const items = [...others.map((file) => ({ label: workspace.asRelativePath(file), file })), elsewhere];
  const picked = await window.showQuickPick<{ label: string; file: Uri | null }>(items, {
    placeHolder: `Compare ${fileName(uri)} with …`,
  });
  if (!picked) return undefined;
  if (picked.file) return picked.file;
  return (await window.showOpenDialog({ filters: { Halflap: ['lap'] } }))?.[0];
}
