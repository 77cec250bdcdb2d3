/** The live preview: opened beside the text, drawn, kept and followed, never in the way. */
import { strict as assert } from 'node:assert';
import * as vscode from 'vscode';
import { previewFrame, takePicture, windowPage } from './browser-window.ts';
import { it, until } from './case-list.ts';
import { LapEditor } from './lap-editor.ts';
import { ink, settledInk, summaryWith, textOf, zoomText } from './preview-page.ts';

/** The tab of a view, by its id. */
const tabOf = (view: string): string => `[role=tab][data-view="${view}"]`;

const infillOfDisc = '342 infill pieces';

export const previewCases = [
  it('opens the preview beside the text and leaves the focus in the text', async () => {
    const editor = await LapEditor.open('disc.lap');
    await vscode.commands.executeCommand('halflap.openPreview');
    await summaryWith(infillOfDisc);
    assert.equal(vscode.window.activeTextEditor?.document, editor.document);
    const page = await windowPage();
    await page.keyboard.type('# typed');
    await until('typed words in the text', () => editor.document.getText().includes('# typed'));
    await editor.restore();
  }),

  it('draws the panel, sharp at the density of the screen', async () => {
    const picture = await settledInk();
    assert.ok(picture.inked > 0.1 * picture.width * picture.height, `${picture.inked} pixels are inked`);
    const expected = await (
      await previewFrame()
    ).evaluate<number[]>(`(() => {
      const { clientWidth, clientHeight } = document.querySelector('#drawing');
      return [clientWidth, clientHeight].map((length) => Math.round(length * devicePixelRatio));
    })()`);
    assert.deepEqual([picture.width, picture.height], expected);
    await takePicture('preview-light');
  }),

  it('allows nothing from outside, no inline script and no inline style', async () => {
    const [policy, inline] = await (
      await previewFrame()
    ).evaluate<[string, string[]]>(`[
      document.querySelector('meta[http-equiv="Content-Security-Policy"]').content,
      // the editor leaves an empty style on fields
      [...document.querySelectorAll('body [style]:not([style=""]), body script:not([src])')].map(({ outerHTML }) => outerHTML),
    ]`);
    assert.match(policy, /^default-src 'none'; style-src \S+( \S+)*; script-src 'nonce-[\w-]+'$/);
    assert.deepEqual(inline, []);
  }),

  it('follows typing', async () => {
    const editor = await LapEditor.open('disc.lap');
    const before = await settledInk();
    await editor.replace('radius 150', 'radius 90');
    await until('another summary', async () => !(await textOf('summary')).includes(infillOfDisc));
    assert.notEqual((await settledInk()).sum, before.sum);
    await editor.restore();
    await summaryWith(infillOfDisc);
    assert.equal((await settledInk()).sum, before.sum);
  }),

  it('keeps the last good drawing over a syntax error, says so, and recovers', async () => {
    const editor = await LapEditor.open('disc.lap');
    const before = await settledInk();
    await editor.replace('with hemp of bass', 'with ) bass');
    const banner = await until('a banner', async () => (await textOf('stale')) || null);
    assert.match(banner, /^Last good drawing: the text has errors\. Line \d+: /);
    assert.ok((await textOf('summary')).includes(infillOfDisc));
    assert.ok((await settledInk()).inked > before.inked / 2);
    await takePicture('preview-stale');
    await editor.restore();
    await until('no banner', async () => (await textOf('stale')) === '');
    assert.equal((await settledInk()).sum, before.sum);
  }),

  it('keeps its zoom and place over edits, and fits at 0', async () => {
    const editor = await LapEditor.open('disc.lap');
    const fitted = await zoomText();
    const frame = await previewFrame();
    await frame.click('#zoom-in');
    await frame.click('#zoom-in');
    const zoomed = await until('a larger zoom', async () => {
      const text = await zoomText();
      return text !== fitted && text;
    });
    const before = await settledInk();
    for (let round = 0; round < 10; round++) {
      await editor.replace('copies 2', 'copies 3');
      await editor.replace('copies 3', 'copies 2');
    }
    await editor.replace('copies 2', 'copies 4');
    await summaryWith('4 copies');
    assert.equal(await zoomText(), zoomed);
    assert.equal((await settledInk()).sum, before.sum);
    await editor.restore();
    await frame.evaluate(`document.querySelector('#drawing').focus()`);
    await (await windowPage()).keyboard.press('0');
    await until('the fitted zoom', async () => (await zoomText()) === fitted);
  }),

  it('zooms with the wheel about the pointer', async () => {
    const fitted = await zoomText();
    const page = await windowPage();
    const { x, y } = await middleOfPreview();
    await page.mouse.move(x, y);
    await page.mouse.wheel(0, -300);
    await until('a larger zoom', async () => parseInt(await zoomText(), 10) > parseInt(fitted, 10));
    await (await previewFrame()).click('#fit');
    await until('the fitted zoom', async () => (await zoomText()) === fitted);
  }),

  it('shows the panel chosen, and keeps to it over edits', async () => {
    const editor = await LapEditor.open('disc.lap');
    await (await previewFrame()).click(tabOf('panel tray'));
    await summaryWith('Panel tray');
    await editor.replace('copies 2', 'copies 5');
    await editor.diagnostics('no problem', ({ length }) => length === 0);
    await summaryWith('Panel tray');
    await editor.restore();
    await (await previewFrame()).click(tabOf('panel window'));
    await summaryWith('Panel window');
  }),

  it('comes back with its panel and zoom after another tab hid it', async () => {
    const editor = await LapEditor.open('disc.lap');
    const frame = await previewFrame();
    await frame.click(tabOf('panel tray'));
    await summaryWith('Panel tray');
    const fitted = await zoomText();
    await frame.click('#zoom-in');
    const zoomed = await until('a larger zoom', async () => {
      const text = await zoomText();
      return text !== fitted && text;
    });
    const other = await vscode.workspace.openTextDocument({ content: 'another text' });
    await vscode.window.showTextDocument(other, { viewColumn: vscode.ViewColumn.Two, preserveFocus: true });
    await vscode.window.showTextDocument(editor.document, vscode.ViewColumn.One);
    await vscode.commands.executeCommand('halflap.openPreview');
    await summaryWith('Panel tray');
    await until('the same zoom', async () => (await zoomText()) === zoomed);
    assert.equal(vscode.window.activeTextEditor?.document, editor.document);
    await (await previewFrame()).click('#fit');
    await (await previewFrame()).click(tabOf('panel window'));
    await summaryWith(infillOfDisc);
  }),

  it('marks the pieces at the cursor, and selects the words of a piece chosen in the list', async () => {
    const editor = await LapEditor.open('disc.lap');
    const before = await settledInk();
    const text = await vscode.window.showTextDocument(editor.document, vscode.ViewColumn.One);
    const words = editor.rangeOf('piece arm');
    text.selection = new vscode.Selection(words.start, words.start);
    await until('marked pieces', async () => (await ink()).sum !== before.sum);
    text.selection = new vscode.Selection(new vscode.Position(0, 0), new vscode.Position(0, 0));
    await until('unmarked pieces', async () => (await ink()).sum === before.sum);
    await (await previewFrame()).click('#table button[data-mark^="A"]');
    await until('selected words', () => editor.document.getText(text.selection).startsWith('piece arm'));
  }),

  it('a click on a drawn piece moves the cursor of the editor to its words', async () => {
    const editor = await LapEditor.open('disc.lap');
    const text = await vscode.window.showTextDocument(editor.document, vscode.ViewColumn.One);
    text.selection = new vscode.Selection(new vscode.Position(0, 0), new vscode.Position(0, 0));
    const frame = await previewFrame();
    await frame.click('#fit');
    await settledInk();
    // the middle of the round panel is a node: the strips that cross there come from the grid's words
    await frame.click('#drawing');
    await until('a selection in the text', () => !text.selection.isEmpty);
    assert.match(editor.document.getText(text.selection), /mesh|ash/);
    assert.match(await textOf('card'), /^S\d* strip of mesh/);
    await frame.evaluate(`document.querySelector('#drawing').focus()`);
    await (await windowPage()).keyboard.press('Escape');
  }),

  it('follows the text that is edited; locked, it stays with its file while another preview shows the other', async () => {
    const disc = await LapEditor.open('disc.lap');
    const other = await vscode.workspace.openTextDocument({
      language: 'halflap',
      content: disc.original.replaceAll('window', 'porthole'),
    });
    await vscode.window.showTextDocument(other, vscode.ViewColumn.One);
    await summaryWith('Panel porthole');
    await vscode.window.showTextDocument(disc.document, vscode.ViewColumn.One);
    await summaryWith('Panel window');
    await (await previewFrame()).click('#lock');
    await until('a locked preview', () => tabLabels().includes('[Preview] disc.lap'));
    await vscode.window.showTextDocument(other, vscode.ViewColumn.One);
    await vscode.commands.executeCommand('halflap.openPreview');
    await summaryWith('Panel porthole');
    assert.ok(tabLabels().includes('[Preview] disc.lap'));
    const second = await until(
      'the second preview',
      () => tabs().find(({ label }) => label.startsWith('Preview Untitled')) ?? null,
    );
    await vscode.window.tabGroups.close(second);
    await vscode.window.showTextDocument(disc.document, vscode.ViewColumn.One);
    await summaryWith('Panel window');
    await (await previewFrame()).click('#lock');
    await until('an unlocked preview', () => tabLabels().includes('Preview disc.lap'));
  }),

  it('is readable in every theme', async () => {
    const editor = await LapEditor.open('disc.lap');
    const text = await vscode.window.showTextDocument(editor.document, vscode.ViewColumn.One);
    text.selection = new vscode.Selection(new vscode.Position(0, 0), new vscode.Position(0, 0));
    const page = await windowPage();
    for (const [bodyClass, theme] of Object.entries(themes)) {
      await useTheme(theme);
      await until(`the page in ${theme}`, async () => (await bodyClasses()).includes(bodyClass));
      await page.mouse.move(5, 5);
      const { plain, width, height } = await settledInk();
      await takePicture(bodyClass);
      assert.ok(plain > 0.02 * width * height, `${theme}: ${plain} pixels stand out from the paper`);
    }
    await useTheme(themes['vscode-light']);
  }),
];

const tabs = (): vscode.Tab[] => vscode.window.tabGroups.all.flatMap((group) => group.tabs);
const tabLabels = (): string[] => tabs().map(({ label }) => label);

/** Themes by the class that the preview's page gets under them. */
const themes = {
  'vscode-dark': 'Default Dark Modern',
  'vscode-high-contrast': 'Default High Contrast',
  'vscode-high-contrast-light': 'Default High Contrast Light',
  'vscode-light': 'Default Light Modern',
} as const;

async function useTheme(theme: string): Promise<void> {
  const settings = vscode.workspace.getConfiguration('workbench');
  await settings.update('colorTheme', theme, vscode.ConfigurationTarget.Global);
}

const bodyClasses = async (): Promise<string[]> =>
  (await previewFrame()).evaluate<string[]>(`[...document.body.classList]`);

/** The middle of the drawing, in pixels of the window. */
async function middleOfPreview(): Promise<{ x: number; y: number }> {
  const page = await windowPage();
  return page.evaluate(`(() => {
    const { left, top, width, height } = document.querySelector('iframe.webview.ready').getBoundingClientRect();
    return { x: left + width / 2, y: top + height / 3 };
  })()`);
}
