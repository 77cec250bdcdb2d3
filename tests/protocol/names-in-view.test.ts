/** Names as the editor shows them: coloured by what they name, with counts behind them, found over the whole workspace. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { InlayHint, Range, SemanticTokens, SymbolInformation } from 'vscode-languageserver/node';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { disc } from './disc.ts';
import { positionOf, rangeOf } from './places.ts';
import { ServerSession } from './server-session.ts';

const folder = mkdtempSync(join(tmpdir(), 'halflap-view-'));
const addressOf = (name: string): string => pathToFileURL(join(folder, name)).href;
const uri = addressOf('disc.lap');
const lid = 'use "motifs"\nstrip oak { section face 3 depth 10 }\noutline lid_line { circle radius 90 }\n';
let session: ServerSession;

beforeAll(async () => {
  writeFileSync(join(folder, 'lid.lap'), lid);
  session = await ServerSession.start('stdio', pathToFileURL(folder).href);
  await session.open(uri, disc);
});
afterAll(async () => {
  await session.stop();
  rmSync(folder, { recursive: true });
});

/** Tokens as words, each with its type and modifiers, decoded as the protocol says (3.17, textDocument/semanticTokens). */
async function colours(text: string, address: string): Promise<string[]> {
  const { data } = await session.ask<SemanticTokens>('textDocument/semanticTokens/full', {
    textDocument: { uri: address },
  });
  const legend = session.capabilities.semanticTokensProvider?.legend;
  const lines = text.split('\n');
  let [line, column] = [0, 0];
  return Array.from({ length: data.length / 5 }, (_, index) => {
    const [down = 0, along = 0, length = 0, type = 0, bits = 0] = data.slice(5 * index, 5 * index + 5);
    [line, column] = [line + down, down === 0 ? column + along : along];
    const modifiers = (legend?.tokenModifiers ?? []).filter((_, bit) => (bits & (2 ** bit)) !== 0);
    const word = lines[line]?.slice(column, column + length) ?? '';
    return [word, legend?.tokenTypes[type], ...modifiers].join(' ');
  });
}

describe('colours', () => {
  it('tell a motif from a strip and a grid where they are given and where they are used', async () => {
    const found = await colours(disc, uri);
    for (const words of ['hemp class declaration', 'hemp class', 'bass type declaration', 'bass type', 'mesh struct'])
      expect(found).toContain(words);
    expect(found).toContain('side_length variable declaration');
    expect(found).toContain('hub parameter');
    expect(found).toContain('window namespace declaration');
  });

  it('leave a name that means nothing without one', async () => {
    const address = addressOf('lost.lap');
    const text = 'grid squares { square  pitch 40  of nowhere }\n';
    await session.open(address, text);
    expect(await colours(text, address)).toEqual(['squares struct declaration']);
  });

  it('answer for a text that is not open with none', async () => {
    expect(await colours('', addressOf('closed.lap'))).toEqual([]);
  });
});

describe('counts in the text', () => {
  const hints = (range: Range): Promise<InlayHint[]> =>
    session.ask('textDocument/inlayHint', { textDocument: { uri }, range });
  const whole = { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } };

  it('stand behind a motif and a fill: 2 × 342 arms, 138 triangles of a copy', async () => {
    const found = await hints(whole);
    expect(found.map(({ label }) => label)).toEqual(['684 pieces', '138 cells']);
    expect(found[0]?.position).toEqual(rangeOf(disc, 'hemp').end);
    expect(found[1]?.position).toEqual(rangeOf(disc, 'fill triangle with hemp of bass').end);
  });

  it('come only for the lines that are seen', async () => {
    const found = await hints({ start: { line: 0, character: 0 }, end: positionOf(disc, 'outline') });
    expect(found.map(({ label }) => label)).toEqual(['684 pieces']);
  });
});

describe('symbols of the workspace', () => {
  const symbols = (query: string): Promise<SymbolInformation[]> => session.ask('workspace/symbol', { query });

  it('are found in open texts and in files on disk, by letters in their order', async () => {
    const found = await symbols('lidl');
    expect(found).toMatchObject([{ name: 'lid_line', containerName: 'lid.lap' }]);
    expect(found[0]?.location).toEqual({ uri: addressOf('lid.lap'), range: rangeOf(lid, 'lid_line') });
    expect((await symbols('wdw')).map(({ name, location }) => [name, location.uri])).toEqual([['window', uri]]);
    expect(await symbols('zzz')).toEqual([]);
  });

  it('leave out what a library gives, and keep what has an error', async () => {
    const names = (await symbols('')).map(({ name }) => name);
    expect(names.sort()).toEqual(
      ['ash', 'bass', 'hemp', 'lid_line', 'mesh', 'oak', 'round', 'squares', 'window'].sort(),
    );
  });
});
