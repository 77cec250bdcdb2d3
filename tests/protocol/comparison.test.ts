/** What the view of a comparison is told: the report as markup, places in both texts; and lenses on what changed since the last commit. */
import type { CodeLens } from 'vscode-languageserver';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AlreadyCut, CompareAnswer } from '../../server/language/compare-messages.ts';
import { disc } from './disc.ts';
import { rangeOf } from './places.ts';
import { ServerSession } from './server-session.ts';

const uri = 'file:///disc.lap';
const earlier = { name: 'the last commit', uri: 'git:/disc.lap', text: disc };
/** 15 mm less in the radius; the words before it stay where they are. */
const smaller = disc.replace('radius 150mm', 'radius 135mm');
let session: ServerSession;

beforeAll(async () => {
  session = await ServerSession.start('stdio');
  await session.open(uri, smaller);
});
afterAll(async () => {
  await session.stop();
});

const compare = (text: string, cut: AlreadyCut = 'nothing'): Promise<CompareAnswer | null> =>
  session.ask('halflap/compare', { uri, earlier: { ...earlier, text }, cut });
const lenses = (): Promise<CodeLens[] | null> => session.ask('textDocument/codeLens', { textDocument: { uri } });

describe('a comparison', () => {
  it('is a report with an overlay, without scripts', async () => {
    const answer = await compare(disc);
    expect(answer?.version).toBe(1);
    expect(answer?.body).toContain('Counts of infill pieces: A −');
    expect(answer?.body).toMatch(/<figure><svg [^]*<g class="old">[^]*<g class="new">/);
    expect(answer?.body).not.toContain('<script');
  });

  it('tells where every row is written, in either text', async () => {
    const answer = await compare(disc);
    const panel = { uri: 'git:/disc.lap', range: rangeOf(disc, 'window') };
    expect(answer?.places.old['panel window']).toEqual(panel);
    expect(answer?.places.new['panel window']).toEqual({ uri, range: rangeOf(smaller, 'window') });
    expect(answer?.places.new['piece A']?.range.start.line).toBe(rangeOf(disc, 'piece arm').start.line);
    const rows = [...(answer?.body ?? '').matchAll(/<tr data-sort="(\w+)" data-old="([^"]*)"/g)];
    expect(rows.length).toBeGreaterThan(2);
    for (const [, sort = '', name = ''] of rows.filter(([, , name]) => name !== '')) {
      expect(answer?.places.old).toHaveProperty([`${sort} ${name}`]);
    }
  });

  it('compares what can be, with an earlier text that does not parse', async () => {
    const answer = await compare('panel {');
    expect(answer?.body).toContain('The old version: panel window is missing here');
  });

  it('escapes what the person wrote', async () => {
    const answer = await compare(disc.replace('"Disc"', '"<img src=x onerror=alert(1)>"'));
    expect(answer?.body).toContain('&#60;img');
    expect(answer?.body).not.toContain('<img');
  });

  it('of a text that is not open is null', async () => {
    const question = { uri: 'file:///closed.lap', earlier, cut: 'nothing' };
    expect(await session.ask('halflap/compare', question)).toBeNull();
  });
});

describe('what is already cut', () => {
  /** The rows of a table of the report, by its title: the texts of their cells. */
  const rowsOf = (body: string, title: string): string[][] => {
    const table = new RegExp(`<h2>${title}</h2>\\n<table>[^]*?</table>`).exec(body)?.[0] ?? '';
    return [...table.matchAll(/<tr[^>]*>(<td[^]*?)<\/tr>/g)].map(([, row = '']) =>
      [...row.matchAll(/<td[^>]*>([^<]*)<\/td>/g)].map(([, cell = '']) => cell),
    );
  };
  const row = (answer: CompareAnswer | null, mark: string): string[] =>
    rowsOf(answer?.body ?? '', 'What is still to cut').find(([first]) => first === mark) ?? [];

  it('counts only where it is asked for', async () => {
    const answer = await compare(disc);
    expect(answer?.cutFault).toBeNull();
    expect(answer?.body).not.toContain('still to cut');
  });

  it('all of it: a smaller disc has every arm from the larger one, as it is', async () => {
    const answer = await compare(disc, 'all');
    const [, all, asIs, trimmed, still] = row(answer, 'A');
    expect(Number(all)).toBeGreaterThan(0);
    expect([asIs, trimmed, still]).toEqual([all, '0', '0']);
  });

  it('a list: what it does not name is still to cut', async () => {
    const [, all] = row(await compare(disc, 'all'), 'A');
    const answer = await compare(disc, { name: 'cut.csv', list: 'mark,count\nA,36\n' });
    expect(row(answer, 'A')).toEqual(['A', all, '36', '0', String(Number(all) - 36)]);
  });

  it('a list with a fault is told, line and all, and the comparison comes without it', async () => {
    const answer = await compare(disc, { name: 'cut.csv', list: 'A,some' });
    expect(answer?.cutFault).toBe('cut.csv: line 1: expected a whole number of pieces of A, found “some”');
    expect(answer?.body).toContain('Counts of infill pieces');
    expect(answer?.body).not.toContain('still to cut');
  });
});

describe('the lenses', () => {
  it('say what changed since the last commit, at the panel and at the motif, and lead to the comparison', async () => {
    expect(await lenses()).toBeNull();
    await session.notify('halflap/committedText', { uri, text: disc });
    const found = await lenses();
    expect(found?.map(({ range }) => range)).toEqual([rangeOf(smaller, 'window'), rangeOf(smaller, 'hemp')]);
    expect(found?.[0]?.command?.title).toMatch(/^infill −\d+(, strips [+−]\d+)? since the last commit$/);
    expect(found?.[1]?.command).toMatchObject({ command: 'halflap.compareWithLastCommit', arguments: [uri] });
  });

  it('are none where nothing changed, and none without a commit', async () => {
    await session.notify('halflap/committedText', { uri, text: smaller });
    expect(await lenses()).toEqual([]);
    await session.notify('halflap/committedText', { uri, text: null });
    expect(await lenses()).toBeNull();
  });

  it('call a panel new that the commit does not have', async () => {
    await session.notify('halflap/committedText', { uri, text: disc.replace('panel window', 'panel door') });
    expect((await lenses())?.map(({ command }) => command?.title)).toContain('new since the last commit');
  });
});
