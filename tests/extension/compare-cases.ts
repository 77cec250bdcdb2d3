/** Comparing in the editor: against the last commit by way of VS Code's git, and against a file without it. */
import { strict as assert } from 'node:assert';
import * as vscode from 'vscode';
import { previewFrame, takePicture, windowPage } from './browser-window.ts';
import { it, until } from './case-list.ts';
import { LapEditor } from './lap-editor.ts';

interface Repository {
  setConfig(key: string, value: string): Promise<unknown>;
  add(paths: string[]): Promise<void>;
  commit(message: string): Promise<void>;
}

interface Git {
  init(folder: vscode.Uri): Promise<Repository | null>;
}

/** The report, once `wanted` is pleased with its text. */
const reportWith = (wanted: RegExp): Promise<string> =>
  until(`a report with ${String(wanted)}`, async () => {
    const text = await inPage<string>(`document.getElementById('report')?.innerText ?? ''`);
    return wanted.test(text) && text;
  });

const inPage = async <Value>(expression: string): Promise<Value> => (await previewFrame()).evaluate<Value>(expression);

/** A text of our own, so that what other cases left in theirs does not matter. */
async function openCompared(): Promise<LapEditor> {
  const folder = vscode.workspace.workspaceFolders?.[0]?.uri;
  if (!folder) throw new Error('The tests run in a folder');
  await vscode.workspace.fs.copy(vscode.Uri.joinPath(folder, 'disc.lap'), vscode.Uri.joinPath(folder, 'compared.lap'), {
    overwrite: true,
  });
  return LapEditor.open('compared.lap');
}

const closeAll = (): Thenable<unknown> => vscode.commands.executeCommand('workbench.action.closeAllEditors');

/** How many of the overlay's shapes of one version show. */
const shown = (look: string, copy: number): Promise<number> =>
  inPage<number>(`[...(document.querySelectorAll('figure svg')[${copy}]?.querySelectorAll('g.${look} path') ?? [])]
    .filter((path) => path.getClientRects().length > 0).length`);

const titlesOfLenses = async (uri: vscode.Uri): Promise<string[]> => {
  const lenses = await vscode.commands.executeCommand<vscode.CodeLens[]>('vscode.executeCodeLensProvider', uri, 10);
  return lenses.flatMap(({ command }) => (command ? [command.title] : []));
};

/** The editor that shows a text of this scheme. */
const visible = (scheme: string): vscode.TextEditor | undefined =>
  vscode.window.visibleTextEditors.find(({ document }) => document.uri.scheme === scheme);

export const compareCases = [
  it('compares with a file where there is no git', async () => {
    await closeAll();
    const editor = await openCompared();
    const other = vscode.Uri.joinPath(editor.uri, '../other.lap');
    await vscode.workspace.fs.writeFile(other, Buffer.from(editor.original.replace('side 40', 'side 38')));
    await vscode.commands.executeCommand('halflap.compareWithFile', editor.uri, other);
    await reportWith(/infill pieces change their length: A1? 1\.15 longer/);
    await vscode.workspace.fs.delete(other);
  }),

  it('compares with the last commit, follows typing, and tells the changed counts in the text', async () => {
    await closeAll();
    const editor = await openCompared();
    const folder = vscode.workspace.workspaceFolders?.[0]?.uri;
    const extension = vscode.extensions.getExtension<{ getAPI(version: 1): Git }>('vscode.git');
    assert.ok(folder && extension);
    const repository = await (await extension.activate()).getAPI(1).init(folder);
    assert.ok(repository);
    await repository.setConfig('user.name', 'A maker');
    await repository.setConfig('user.email', 'maker@halflap.invalid');
    await repository.add([editor.uri.fsPath]);
    await repository.commit('begun');
    await vscode.commands.executeCommand('halflap.compareWithLastCommit');
    await reportWith(/Nothing changed/);
    await editor.replace('radius 150', 'radius 140');
    await reportWith(/Counts of infill pieces: A1 −\d+/);
    const titles = await until('lenses', async () => {
      const found = await titlesOfLenses(editor.uri);
      return found.length > 0 && found;
    });
    assert.ok(
      titles.every((title) => /since the last commit$/.test(title)),
      titles.join('; '),
    );
    await takePicture('compare-overlay');
  }),

  it('shows one version, the other, or both halves of a swipe', async () => {
    const frame = await previewFrame();
    assert.ok((await shown('old', 0)) > 0 && (await shown('new', 0)) > 0);
    await frame.click('#flip');
    assert.deepEqual([(await shown('old', 0)) > 0, await shown('new', 0)], [true, 0]);
    await frame.click('#flip');
    assert.deepEqual([await shown('old', 0), (await shown('new', 0)) > 0], [0, true]);
    await frame.click('input[value=swipe]');
    assert.deepEqual([(await shown('old', 0)) > 0, await shown('new', 0)], [true, 0]);
    assert.deepEqual([await shown('old', 1), (await shown('new', 1)) > 0], [0, true]);
    const hatched = await inPage<string>(
      `getComputedStyle(document.querySelector('figure g.old path')).strokeDasharray`,
    );
    assert.notEqual(hatched, 'none');
    await takePicture('compare-swipe');
  }),

  it('counts what is already cut: all of the old version, or what a list says', async () => {
    const choose = (value: string): Promise<void> =>
      inPage(
        `(() => { const cut = document.getElementById('cut'); cut.value = '${value}'; cut.dispatchEvent(new Event('change', { bubbles: true })); })()`,
      );
    assert.ok(!(await inPage<string>(`document.getElementById('report').innerText`)).includes('still to cut'));
    await choose('all');
    await reportWith(/What is still to cut/);
    const folder = vscode.workspace.workspaceFolders?.[0]?.uri;
    assert.ok(folder);
    const list = vscode.Uri.joinPath(folder, 'cut.csv');
    await vscode.workspace.fs.writeFile(list, Buffer.from('mark,count\nA1,36\n'));
    await choose('list');
    const page = await windowPage();
    await until('the list among the files', () =>
      page.evaluate<boolean>(`(document.querySelector('.quick-input-list')?.innerText ?? '').includes('cut.csv')`),
    );
    await page.keyboard.type('cut.csv');
    await page.keyboard.press('Enter');
    await reportWith(/From pieces already cut: 36;/);
    assert.equal(
      await inPage<string>(`document.getElementById('cut').selectedOptions[0].textContent`),
      'what cut.csv says',
    );
    await takePicture('compare-already-cut');
    await vscode.workspace.fs.delete(list);
  }),

  it('leads from a row to its words in the old text and in the new', async () => {
    const frame = await previewFrame();
    await frame.click('button[data-side=old][data-subject="panel window"]');
    await until('the committed text', () => visible('git') !== undefined);
    await frame.click('button[data-side=new][data-subject="panel window"]');
    const editor = await until('the text itself', () => visible('file') ?? null);
    assert.equal(editor.document.getText(editor.selection), 'window');
    await (await LapEditor.open('compared.lap')).replace('radius 140', 'radius 150');
    await reportWith(/Nothing changed/);
    await closeAll();
  }),
];
