/** The language in the editor: activation, diagnostics, hovers, names, colours. */
import { strict as assert } from 'node:assert';
import * as vscode from 'vscode';
import { windowPage } from './browser-window.ts';
import { it, until } from './case-list.ts';
import { LapEditor } from './lap-editor.ts';

export const editorCases = [
  it('activates on a .lap file', async () => {
    const { document } = await LapEditor.open('disc.lap');
    assert.equal(document.languageId, 'halflap');
    await until('the extension is active', () => vscode.extensions.getExtension('halflap.halflap')?.isActive ?? false);
  }),

  it('marks an unknown name at its words, and clears the mark when it is mended', async () => {
    const editor = await LapEditor.open('disc.lap');
    await editor.replace('with hemp of', 'with hempp of');
    const [problem] = await editor.diagnostics('one problem', ({ length }) => length === 1);
    assert.ok(problem);
    assert.deepEqual(problem.range, editor.rangeOf('hempp'));
    assert.equal(problem.severity, vscode.DiagnosticSeverity.Error);
    assert.equal(problem.source, 'halflap');
    await editor.restore();
    await editor.diagnostics('no problem', ({ length }) => length === 0);
  }),

  it('tells the counts of a panel in a hover', async () => {
    const editor = await LapEditor.open('disc.lap');
    const hover = await until('a hover', async () => {
      const hovers = await vscode.commands.executeCommand<vscode.Hover[]>(
        'vscode.executeHoverProvider',
        editor.uri,
        editor.rangeOf('window').start,
      );
      return hovers.length > 0 && hovers;
    });
    const parts = hover.flatMap(({ contents }) => contents).filter((part) => part instanceof vscode.MarkdownString);
    assert.match(parts.map(({ value }) => value).join('\n'), /\*\*342\*\* a copy \(276 whole, 66 trimmed\)/);
  }),

  it('leads from a use to the declaration, and lists the declarations', async () => {
    const editor = await LapEditor.open('disc.lap');
    const use = editor.rangeOf('hemp of bass').start;
    const [place] = await vscode.commands.executeCommand<vscode.Location[]>(
      'vscode.executeDefinitionProvider',
      editor.uri,
      use,
    );
    assert.deepEqual(place?.range.start, editor.rangeOf('hemp').start);
    const symbols = await vscode.commands.executeCommand<vscode.DocumentSymbol[]>(
      'vscode.executeDocumentSymbolProvider',
      editor.uri,
    );
    assert.deepEqual(symbols.map(({ name }) => name).slice(-2), ['window', 'tray']);
  }),

  it('colours names by what they name, and keeps the counts in the text out of sight until they are asked for', async () => {
    const editor = await LapEditor.open('disc.lap');
    const tokens = await vscode.commands.executeCommand<vscode.SemanticTokens>(
      'vscode.provideDocumentSemanticTokens',
      editor.uri,
    );
    assert.ok(tokens.data.length > 0 && tokens.data.length % 5 === 0);
    const whole = new vscode.Range(0, 0, editor.document.lineCount, 0);
    const hints = await vscode.commands.executeCommand<vscode.InlayHint[]>(
      'vscode.executeInlayHintProvider',
      editor.uri,
      whole,
    );
    assert.ok(hints.some(({ label }) => label === '138 cells'));
    const shown = vscode.workspace.getConfiguration('editor.inlayHints', editor.document).get('enabled');
    assert.equal(shown, 'offUnlessPressed');
    const found = await vscode.commands.executeCommand<vscode.SymbolInformation[]>(
      'vscode.executeWorkspaceSymbolProvider',
      'wdw',
    );
    assert.deepEqual(
      found.map(({ name }) => name),
      ['window'],
    );
  }),

  it('colours keywords, numbers and comments apart from plain names', async () => {
    await LapEditor.open('disc.lap');
    const page = await windowPage();
    const colourOf = (words: string): Promise<string | false> =>
      page.evaluate<string | false>(`(() => {
        const spans = [...document.querySelectorAll('.view-lines span span')];
        const span = spans.find(({ innerText }) => innerText.replaceAll('\\u00a0', ' ').trim() === ${JSON.stringify(words)});
        return span ? getComputedStyle(span).color : false;
      })()`);
    const colours = await until('coloured words', async () => {
      const found = await Promise.all(['motif', 'hub', '# A round panel'].map(colourOf));
      return found.every((colour) => colour !== false) && new Set(found).size === 3 && found;
    });
    assert.equal(colours.length, 3);
  }),
];
