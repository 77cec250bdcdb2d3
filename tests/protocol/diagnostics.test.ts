/** Diagnostics stand at the right words, come and go with the text, and never fall behind it. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { disc } from './disc.ts';
import { positionOf, rangeOf } from './places.ts';
import { ServerSession } from './server-session.ts';

let session: ServerSession;

beforeAll(async () => {
  session = await ServerSession.start('stdio');
});
afterAll(async () => {
  await session.stop();
});

describe('diagnostics', () => {
  it('are none on a sound text', async () => {
    expect(await session.open('file:///sound.lap', disc)).toEqual([]);
  });

  it('cover an unknown name exactly and carry code, source and severity', async () => {
    const text = disc.replace('with hemp of', 'with hempp of');
    const [problem, ...others] = await session.open('file:///unknown.lap', text);
    expect(others).toEqual([]);
    expect(problem).toMatchObject({
      range: rangeOf(text, 'hempp'),
      code: 'LAP0201',
      source: 'halflap',
      severity: 1,
    });
  });

  it('come with a syntax error and go when it is mended', async () => {
    const uri = 'file:///mended.lap';
    await session.open(uri, disc);
    const here = rangeOf(disc, 'copies 2');
    expect(await session.change(uri, 2, 'copies )', here)).not.toEqual([]);
    expect(await session.change(uri, 3, 'copies 2', here)).toEqual([]);
  });

  it('count columns in UTF-16 units, past Japanese letters and emoji', async () => {
    const text = disc
      .replaceAll('hemp', '麻の葉')
      .replace('title "Disc"', 'title "丸窓 🪵🍃"')
      .replace('fill triangle with 麻の葉 of bass', 'fill triangle with 麻の葉 of bass # 🍃🪵');
    const uri = 'file:///wide.lap';
    expect(await session.open(uri, text)).toEqual([]);
    const broken = text.replace('let side_length = 40', 'title "🪵🪵" let side_length = 𝒂𝒃 * 40');
    const problems = await session.change(uri, 2, broken);
    expect(problems.map(({ range }) => range)).toContainEqual(rangeOf(broken, '𝒂𝒃'));
  });

  it('follow edits after emoji on the same line', async () => {
    const text = disc.replace('title "Disc"', 'title "🪵🍃 Disc"');
    const uri = 'file:///after-emoji.lap';
    await session.open(uri, text);
    await session.change(uri, 2, 'Window', rangeOf(text, 'Disc'));
    const answer = await session.ask<{ drawing: { title: string } }>('halflap/drawing', { uri, panel: null });
    expect(answer.drawing.title).toBe('🪵🍃 Window');
  });

  it('are only of the latest of many quick changes, and of no version before one already told', async () => {
    const uri = 'file:///quick.lap';
    await session.open(uri, disc);
    const last = session.diagnosticsOf(uri, 40);
    for (let version = 2; version <= 40; version++) {
      await session.notifyChange(
        uri,
        version,
        `copies ${version}`,
        rangeOf(versionText(version - 1), copiesWords(version - 1)),
      );
    }
    expect(await last).toEqual([]);
    const versions = session.received.filter((received) => received.uri === uri).map(({ version }) => version ?? 0);
    expect(versions).toEqual([...versions].sort((first, second) => first - second));
    expect(await session.hover(uri, positionOf(versionText(40), 'window'))).toContain('sawn, 40 copies');
  });

  it('go when the text is closed', async () => {
    const uri = 'file:///closed.lap';
    await session.open(uri, disc.replace('of ash', 'of ashh'));
    await session.notify('textDocument/didClose', { textDocument: { uri } });
    expect(await session.ask('halflap/drawing', { uri, panel: null })).toBeNull();
    expect(session.received.filter((received) => received.uri === uri).at(-1)?.diagnostics).toEqual([]);
  });
});

const copiesWords = (version: number): string => (version === 1 ? 'copies 2' : `copies ${version}`);
const versionText = (version: number): string => disc.replace('copies 2', copiesWords(version));
