/** The server over both transports: it starts, answers, survives nonsense, and ends when told. */
import { describe, expect, it } from 'vitest';
import { disc } from './disc.ts';
import { positionOf } from './places.ts';
import { ServerSession, type Transport } from './server-session.ts';

const transports: Transport[] = ['stdio', 'node-ipc'];

describe.each(transports)('over %s the server', (transport) => {
  it('tells what it can do, answers, and ends with code 0', async () => {
    const session = await ServerSession.start(transport);
    expect(session.capabilities).toMatchObject({ textDocumentSync: 2, hoverProvider: true, definitionProvider: true });
    expect(await session.open('file:///a.lap', disc)).toEqual([]);
    expect(await session.hover('file:///a.lap', positionOf(disc, 'window'))).toContain('342');
    expect(await session.stop()).toBe(0);
  });
});

describe('the server survives', () => {
  it('questions about texts that are not open', async () => {
    const session = await ServerSession.start('stdio');
    expect(await session.hover('file:///nowhere.lap', { line: 0, character: 0 })).toBe('');
    expect(await session.ask('halflap/drawing', { uri: 'file:///nowhere.lap', panel: null })).toBeNull();
    expect(await session.stop()).toBe(0);
  });

  it('every cut of a text, and places beyond its end', async () => {
    const session = await ServerSession.start('stdio');
    const uri = 'file:///cut.lap';
    await session.open(uri, disc);
    let version = 1;
    for (let length = disc.length; length >= 0; length -= 17) {
      await session.notifyChange(uri, ++version, disc.slice(0, length));
      await session.hover(uri, { line: 999, character: 999 });
      await session.ask('halflap/drawing', { uri, panel: 'window' });
      await session.ask('textDocument/completion', { textDocument: { uri }, position: { line: 99, character: 9 } });
    }
    expect(session.logged).toEqual([]);
    expect(await session.change(uri, ++version, disc)).toEqual([]);
    expect(await session.stop()).toBe(0);
  });

  it('an empty text and one of nothing but noise', async () => {
    const session = await ServerSession.start('stdio');
    expect(await session.open('file:///empty.lap', '')).toEqual([]);
    expect(await session.open('file:///noise.lap', '}}} \u0000 "\n🪵 == ((( 12 12')).not.toEqual([]);
    expect(await session.stop()).toBe(0);
  });
});
