/** Definitions, mentions, renaming, the outline of a file, folding and proposals. */
import {
  type CodeAction,
  type CompletionItem,
  type DocumentSymbol,
  type FoldingRange,
  type Location,
  type Range,
  type WorkspaceEdit,
} from 'vscode-languageserver/node';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { disc } from './disc.ts';
import { positionOf, rangeOf } from './places.ts';
import { ServerSession } from './server-session.ts';

const uri = 'file:///names.lap';
let session: ServerSession;

beforeAll(async () => {
  session = await ServerSession.start('stdio');
  await session.open(uri, disc);
});
afterAll(async () => {
  await session.stop();
});

const at = (words: string, occurrence = 1) => ({
  textDocument: { uri },
  position: positionOf(disc, words, occurrence),
});

describe('names', () => {
  it.each([
    ['hemp', 2, rangeOf(disc, 'hemp')],
    ['mesh', 2, rangeOf(disc, 'mesh')],
    ['bass', 3, rangeOf(disc, 'bass')],
    ['round', 2, rangeOf(disc, 'round')],
    ['hub', 2, rangeOf(disc, 'hub')],
    ['side_length', 2, rangeOf(disc, 'side_length')],
  ])('lead from %s to where it is given', async (words, occurrence, range) => {
    expect(await session.ask<Location>('textDocument/definition', at(words, occurrence))).toEqual({ uri, range });
  });

  it('lead nowhere from a word that is no name', async () => {
    expect(await session.ask('textDocument/definition', at('sawn'))).toBeNull();
  });

  it('are found at every mention', async () => {
    const context = { includeDeclaration: true };
    const found = await session.ask<Location[]>('textDocument/references', { ...at('hemp'), context });
    expect(found.map(({ range }) => range)).toEqual([rangeOf(disc, 'hemp', 1), rangeOf(disc, 'hemp', 2)]);
    const marked = await session.ask<{ range: Range }[]>('textDocument/documentHighlight', at('hub'));
    expect(marked.map(({ range }) => range)).toEqual([rangeOf(disc, 'hub', 1), rangeOf(disc, 'hub', 2)]);
  });

  it('are renamed at every mention, and the text stays sound', async () => {
    const edit = await session.ask<WorkspaceEdit>('textDocument/rename', { ...at('hemp'), newName: '麻の葉' });
    expect(edit.changes?.[uri]).toEqual([
      { range: rangeOf(disc, 'hemp', 1), newText: '麻の葉' },
      { range: rangeOf(disc, 'hemp', 2), newText: '麻の葉' },
    ]);
    expect(await session.open('file:///renamed.lap', disc.replaceAll('hemp', '麻の葉'))).toEqual([]);
  });

  it('are not renamed to what is no name', async () => {
    expect(await session.ask('textDocument/rename', { ...at('hemp'), newName: 'two words' })).toBeNull();
    expect(await session.ask('textDocument/prepareRename', at('sawn'))).toBeNull();
  });
});

describe('the structure of a file', () => {
  it('is told with the counts of its panels', async () => {
    const symbols = await session.ask<DocumentSymbol[]>('textDocument/documentSymbol', { textDocument: { uri } });
    expect(symbols.map(({ name }) => name)).toEqual(['ash', 'bass', 'mesh', 'hemp', 'round', 'window']);
    expect(symbols.at(-1)?.detail).toMatch(/^panel, 342 pieces, \d+ strips a copy$/);
    expect(symbols.at(-1)?.selectionRange).toEqual(rangeOf(disc, 'window'));
  });

  it('is folded block by block', async () => {
    const folds = await session.ask<FoldingRange[]>('textDocument/foldingRange', { textDocument: { uri } });
    expect(folds.map(({ startLine }) => disc.split('\n')[startLine])).toEqual([
      'grid mesh {',
      'motif hemp for triangle {',
      'panel window {',
    ]);
  });
});

describe('proposals', () => {
  const labelsAt = async (words: string, occurrence = 1): Promise<string[]> => {
    const items = await session.ask<CompletionItem[]>('textDocument/completion', at(words, occurrence));
    return items.map(({ label }) => label);
  };

  it('are declarations between blocks', async () => {
    expect(await labelsAt('grid mesh')).toEqual(expect.arrayContaining(['strip', 'grid', 'panel']));
  });

  it('are the properties of a block at the beginning of a phrase', async () => {
    expect(await labelsAt('edge sawn')).toEqual(expect.arrayContaining(['fill', 'shape', 'copies']));
    expect(await labelsAt('edge sawn')).not.toContain('piece');
  });

  it('are names of the kind a phrase asks for', async () => {
    expect(await labelsAt('bass', 3)).toEqual(['ash', 'bass']);
    expect(await labelsAt('hemp', 2)).toEqual(['hemp']);
    expect(await labelsAt('mesh', 2)).toEqual(['mesh']);
    expect(await labelsAt('round', 2)).toContain('round');
  });
});

describe('quick fixes', () => {
  /** The text after the one fix offered at `words`, and the title of that fix. */
  async function fixed(name: string, text: string, words: string): Promise<{ title: string; text: string }> {
    const uriOfText = `file:///${name}.lap`;
    await session.open(uriOfText, text);
    const range = rangeOf(text, words);
    const [action, ...others] = await session.ask<CodeAction[]>('textDocument/codeAction', {
      textDocument: { uri: uriOfText },
      range,
      context: { diagnostics: [] },
    });
    expect(others).toEqual([]);
    const [edit] = action?.edit?.changes?.[uriOfText] ?? [];
    expect(edit?.range).toEqual(range);
    return { title: action?.title ?? '', text: text.replace(words, edit?.newText ?? '') };
  }

  it.each([
    ['an arc', 'outline o { start 0, 0  arc to 9, 0 rise 2 left  line to start }', 'rise', 'bulge'],
    ['a grid', 'strip ash { section face 3 depth 9 }\ngrid g { kagome  side 40  of ash }', 'kagome', 'basket_weave'],
    ['a minute', 'work w { minutes 40 once for assemble }', 'once', 'per work'],
  ])('writes the new word of %s in the place of the old one', async (name, sound, now, old) => {
    const result = await fixed(name.replace(' ', '-'), sound.replace(now, old), old);
    expect(result).toEqual({ title: `Change to \`${now}\``, text: sound });
  });

  it.each([
    ['a motif', 'with hemp of', 'with hempp of', 'hempp'],
    ['a property', 'copies 2', 'copeis 2', 'copeis'],
    ['a declaration', 'outline round', 'outlien round', 'outlien'],
    ['a node', 'to hub, every', 'to hubb, every', 'hubb'],
  ])('put %s right that is spelt wrong', async (name, sound, wrong, words) => {
    const result = await fixed(name.replace(' ', '-'), disc.replace(sound, wrong), words);
    expect(result.text).toBe(disc);
    expect(result.title).toMatch(/^Change to `\w+`$/);
  });

  it('are none where nothing is near', async () => {
    const text = disc.replace('with hemp of', 'with chrysanthemum of');
    await session.open('file:///far.lap', text);
    const question = {
      textDocument: { uri: 'file:///far.lap' },
      range: rangeOf(text, 'chrysanthemum'),
      context: { diagnostics: [] },
    };
    expect(await session.ask('textDocument/codeAction', question)).toEqual([]);
  });
});
