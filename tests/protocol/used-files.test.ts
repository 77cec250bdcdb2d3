/** Texts that use other files: problems, names, renaming and proposals over the borders of files. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { CompletionItem, Diagnostic, Location, WorkspaceEdit } from 'vscode-languageserver/node';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { positionOf, rangeOf } from './places.ts';
import { ServerSession } from './server-session.ts';

const strips = 'strip ash { section face 3 depth 10 }\nlet step = 40mm\n';
const grids = 'use "strips.lap"\ngrid mesh { three_way  side step  of ash }\n';
const design = `use "parts/grids.lap"
use motifs
panel window {
  grid mesh
  shape hexagon 2 cells
  edge sawn
  fill triangle with hemp_leaf of ash
}
`;

const folder = mkdtempSync(join(tmpdir(), 'halflap-use-'));
const address = (path: string): string => pathToFileURL(join(folder, path)).href;
const [stripsUri, gridsUri, designUri] = [
  address('parts/strips.lap'),
  address('parts/grids.lap'),
  address('window.lap'),
];
let session: ServerSession;

beforeAll(async () => {
  mkdirSync(join(folder, 'parts'));
  writeFileSync(join(folder, 'parts/strips.lap'), strips);
  writeFileSync(join(folder, 'parts/grids.lap'), grids);
  writeFileSync(join(folder, 'window.lap'), design);
  session = await ServerSession.start('stdio', address(''));
});
afterAll(async () => {
  await session.stop();
  rmSync(folder, { recursive: true });
});

const inDesign = (words: string, occurrence = 1) => ({
  textDocument: { uri: designUri },
  position: positionOf(design, words, occurrence),
});

it('a text is sound with what its files give, and counted', async () => {
  expect(await session.open(designUri, design)).toEqual([]);
  expect(await session.hover(designUri, positionOf(design, 'window'))).toContain('Infill to make: **72**');
  expect(await session.hover(designUri, positionOf(design, 'mesh'))).toContain('Side 40 mm');
});

describe('names', () => {
  it('lead into the file that gives them, and `use` to its beginning', async () => {
    const definition = (words: string, occurrence = 1) =>
      session.ask<Location>('textDocument/definition', inDesign(words, occurrence));
    expect(await definition('mesh')).toEqual({ uri: gridsUri, range: rangeOf(grids, 'mesh') });
    expect(await definition('ash')).toEqual({ uri: stripsUri, range: rangeOf(strips, 'ash') });
    expect(await definition('parts/grids')).toMatchObject({ uri: gridsUri, range: { start: { line: 0 } } });
  });

  it('lead into the library, whose text the server hands out', async () => {
    const { uri, range } = await session.ask<Location>('textDocument/definition', inDesign('hemp_leaf'));
    const library = await session.ask<string>('halflap/libraryText', { uri });
    expect(range).toEqual(rangeOf(library, 'hemp_leaf'));
    expect(await session.ask('textDocument/prepareRename', inDesign('hemp_leaf'))).toBeNull();
  });

  it('are found and renamed in every file, open or not', async () => {
    const question = { ...inDesign('ash'), context: { includeDeclaration: true } };
    const found = await session.ask<Location[]>('textDocument/references', question);
    expect(found.map(({ uri }) => uri).sort()).toEqual([gridsUri, stripsUri, designUri].sort());
    const edit = await session.ask<WorkspaceEdit>('textDocument/rename', { ...inDesign('ash'), newName: 'oak' });
    expect(edit.changes).toEqual({
      [stripsUri]: [{ range: rangeOf(strips, 'ash'), newText: 'oak' }],
      [gridsUri]: [{ range: rangeOf(grids, 'ash'), newText: 'oak' }],
      [designUri]: [{ range: rangeOf(design, 'ash'), newText: 'oak' }],
    });
  });
});

describe('a change of a used file', () => {
  const told = (uri: string, version: number): Promise<Diagnostic[]> => session.diagnosticsOf(uri, version);

  it('checks its open users again, whether it is typed or saved elsewhere', async () => {
    const afterOpening = told(designUri, 1);
    await session.open(stripsUri, strips);
    expect(await afterOpening).toEqual([]);
    const afterTyping = told(designUri, 1);
    const own = await session.change(stripsUri, 2, strips.replace('3', '0'));
    expect(own).toMatchObject([{ code: 'LAP0302' }]);
    const [problem] = await afterTyping;
    expect(problem).toMatchObject({ code: 'LAP0207', range: rangeOf(design, '"parts/grids.lap"') });
    expect(problem?.relatedInformation?.[0]?.location.uri).toBe(gridsUri);
    const afterClosing = told(designUri, 1);
    await session.notify('textDocument/didClose', { textDocument: { uri: stripsUri } });
    expect(await afterClosing).toEqual([]);
    writeFileSync(join(folder, 'parts/strips.lap'), strips.replace('ash', 'elm'));
    const afterSaving = told(designUri, 1);
    await session.notify('workspace/didChangeWatchedFiles', { changes: [{ uri: stripsUri, type: 2 }] });
    expect(await afterSaving).toMatchObject([{ code: 'LAP0207' }, { code: 'LAP0201' }]);
    writeFileSync(join(folder, 'parts/strips.lap'), strips);
    const afterMending = told(designUri, 1);
    await session.notify('workspace/didChangeWatchedFiles', { changes: [{ uri: stripsUri, type: 2 }] });
    expect(await afterMending).toEqual([]);
  });
});

describe('behind `use`', () => {
  const proposals = async (uri: string, text: string, words: string): Promise<CompletionItem[]> => {
    await session.open(uri, text);
    const { line, character } = positionOf(text, words);
    const position = { line, character: character + words.length };
    return session.ask<CompletionItem[]>('textDocument/completion', { textDocument: { uri }, position });
  };

  it('the files of the workspace are proposed as they are written from here', async () => {
    const items = await proposals(address('parts/new.lap'), 'use "', 'use "');
    expect(items.map(({ label }) => label)).toEqual(['../window.lap', 'grids.lap', 'strips.lap']);
    const [closed] = await proposals(address('other.lap'), 'use "par"\n', 'par');
    expect(closed?.textEdit).toEqual({ range: rangeOf('use "par"', 'par'), newText: 'parts/grids.lap' });
  });

  it('the libraries are proposed without quotes', async () => {
    const items = await proposals(address('third.lap'), 'use ', 'use ');
    expect(items.map(({ label }) => label)).toContain('motifs');
  });
});
