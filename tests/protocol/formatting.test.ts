/** Formatting by request: canonical, sound, done once, and never over a syntax error. */
import { type TextEdit } from 'vscode-languageserver/node';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { lineStartsOf } from '../../grammar/tree/source-range.ts';
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
  return applied(text, edits);
}

/** The text after its edits, the last of them first. */
function applied(text: string, edits: readonly TextEdit[]): string {
  const starts = lineStartsOf(text);
  return edits.reduceRight(
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

  it('of a selection leaves every other line alone', async () => {
    const uri = 'file:///selection.lap';
    const untidy = 'let   a = 1\nlet   b = 2\npanel p {\nshape   5x4\n      copies   2 }\n';
    await session.open(uri, untidy);
    const within = async (from: [number, number], to: [number, number]): Promise<string> =>
      applied(
        untidy,
        await session.ask<TextEdit[]>('textDocument/rangeFormatting', {
          textDocument: { uri },
          range: { start: { line: from[0], character: from[1] }, end: { line: to[0], character: to[1] } },
          options: { tabSize: 2, insertSpaces: true },
        }),
      );
    expect(await within([1, 0], [1, 11])).toBe(untidy.replace('let   b', 'let b'));
    expect(await within([3, 0], [3, 11])).toBe(untidy.replace('shape   5x4', '  shape 5 x 4'));
    expect(await within([0, 0], [5, 0])).toBe('let a = 1\nlet b = 2\n\npanel p {\n  shape 5 x 4\n  copies 2\n}\n');
  });

  it('follows a closing brace and a line end as they are typed', async () => {
    const typed = async (uri: string, text: string, ch: string, line: number, character: number): Promise<string> => {
      await session.open(uri, text);
      const edits = await session.ask<TextEdit[]>('textDocument/onTypeFormatting', {
        textDocument: { uri },
        position: { line, character },
        ch,
        options: { tabSize: 2, insertSpaces: true },
      });
      return applied(text, edits);
    };
    const closed = 'let   a=1\npanel p {\nshape   5x4\n    copies 2\n   }\n';
    expect(await typed('file:///brace.lap', closed, '}', 4, 4)).toBe(
      'let   a=1\npanel p {\n  shape 5 x 4\n  copies 2\n}\n',
    );
    const line = 'let   a = 1\n\nlet   b = 2\n';
    expect(await typed('file:///line.lap', line, '\n', 1, 0)).toBe('let a = 1\n\nlet   b = 2\n');
  });

  it('leaves a text with a syntax error alone', async () => {
    const uri = 'file:///broken.lap';
    const broken = disc.replace('copies 2', '   copies    )');
    await session.open(uri, broken);
    expect(await formatted(uri, broken)).toBe(broken);
  });
});
