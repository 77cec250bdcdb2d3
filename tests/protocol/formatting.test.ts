/** Formatting by request: canonical, sound, done once, and never over a syntax error. */
import { type TextEdit } from 'vscode-languageserver/node';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { lineStartsOf } from '../../grammar/source-range.ts';
import { offsetAt } from '../../server/language/from-protocol.ts';
import { disc } from './disc.ts';
import { ServerSession } from './server-session.ts';

let session: ServerSession;

beforeAll(async () => {
  session = await ServerSession.start('stdio');
});
afterAll(async () => {
  await session.stop();
});

/** The text at `uri` after its formatting edits. */
async function formatted(uri: string, text: string): Promise<string> {
  const edits = await session.ask<TextEdit[]>('textDocument/formatting', {
    textDocument: { uri },
    options: { tabSize: 2, insertSpaces: true },
  });
  expect(edits.length).toBeLessThan(2);
  const starts = lineStartsOf(text);
  return edits.reduce(
    (whole, { range, newText }) =>
      whole.slice(0, offsetAt(text, starts, range.start)) + newText + whole.slice(offsetAt(text, starts, range.end)),
    text,
  );
}

describe('formatting', () => {
  it('gives a text its canonical layout, comments kept, and then leaves it alone', async () => {
    const uri = 'file:///untidy.lap';
    const untidy = disc
      .replace('  three_way\n', '\n\n\n      three_way   # 🪵 三方\n')
      .replace('copies 2', '   copies    2');
    await session.open(uri, untidy);
    const tidy = await formatted(uri, untidy);
    expect(tidy).toContain('# 🪵 三方');
    expect(tidy).toContain('\n  copies 2\n');
    expect(await session.change(uri, 2, tidy)).toEqual([]);
    expect(await formatted(uri, tidy)).toBe(tidy);
  });

  it('parts neither a letter of two halves nor a CR LF', async () => {
    const uri = 'file:///crlf.lap';
    const untidy = disc.replace('title "Disc"', '# 🪵 \ntitle "🪵"').replaceAll('\n', '\r\n').replace('\r\n', '\n');
    await session.open(uri, untidy);
    const tidy = await formatted(uri, untidy);
    expect(await session.change(uri, 2, tidy)).toEqual([]);
    expect(await formatted(uri, tidy)).toBe(tidy);
  });

  it('leaves a text with a syntax error alone', async () => {
    const uri = 'file:///broken.lap';
    const broken = disc.replace('copies 2', '   copies    )');
    await session.open(uri, broken);
    expect(await formatted(uri, broken)).toBe(broken);
  });
});
