/** Printing keeps every word and comment, and printing again changes nothing. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { printDocument } from '../../grammar/writing/print-document.ts';
import { tokenize } from '../../grammar/vocabulary/tokens.ts';
import { referenceText } from './reference-text.ts';

const samples = fileURLToPath(new URL('../../samples', import.meta.url));

const wordsOf = (text: string): string[] => tokenize(text).tokens.map(({ image }) => image.replace(/ +/g, ' '));
const remarksOf = (text: string): string[] =>
  tokenize(text)
    .comments.flatMap(({ image }) => image.trim().split(/\s+/))
    .sort();

function printed(text: string): string {
  const result = printDocument(text);
  if (result === null) throw new Error(`not printed:\n${text}`);
  return result;
}

describe('layout', () => {
  test.each([
    ['let a=1+2 *3', 'let a = 1 + 2 * 3\n'],
    ['let a=-  2', 'let a = -2\n'],
    ['let a = 3-  -  (b-1)', 'let a = 3 - -(b - 1)\n'],
    ['let a = min ( 1 ,sqrt( 2 ) )', 'let a = min(1, sqrt(2))\n'],
    ['let a = 3   1/2in', 'let a = 3 1/2in\n'],
    ['title "a   #  b"   # c', 'title "a   #  b"  # c\n'],
    ['panel p {shape 5x4 cells copies 2}', 'panel p { shape 5 x 4 cells  copies 2 }\n'],
    ['panel p {\nshape 5x4\n cells copies 2}', 'panel p {\n  shape 5 x 4 cells\n  copies 2\n}\n'],
    ['outline o {start -5,-6 line to-5,-  7}', 'outline o { start -5, -6  line to -5, -7 }\n'],
    ['panel p {\n}\nlet a = 1', 'panel p { }\nlet a = 1\n'],
    ['let a = 1\npanel p {\nedge sawn }\nlet b = 2', 'let a = 1\n\npanel p {\n  edge sawn\n}\n\nlet b = 2\n'],
    ['\n\nlet a = 1\n\n\n\nlet b = 2\n\n', 'let a = 1\n\nlet b = 2\n'],
    ['# one\n\n# two\nlet a = 1 # three\n# four', '# one\n\n# two\nlet a = 1  # three\n# four\n'],
    ['let a = # one\n 1 + # two\n 2', 'let a = 1 + 2  # one # two\n'],
    [
      'panel p { # one\n# two\nedge sawn # three\n# four\n} # five',
      'panel p {  # one\n  # two\n  edge sawn  # three\n  # four\n}  # five\n',
    ],
    ['let a = 1\r\nlet b = 2', 'let a = 1\r\nlet b = 2\r\n'],
    ['', ''],
    ['# alone', '# alone\n'],
  ])('of %j', (text, expected) => {
    expect(printDocument(text)).toBe(expected);
    expect(printDocument(expected)).toBe(expected);
  });

  test('a block too long for its line is broken', () => {
    const text = `strip ash { lengths ${Array.from({ length: 30 }, (_, index) => String(index + 100)).join(', ')}  flush 0.3 }\n`;
    expect(printed(text).split('\n').length).toBe(5);
  });

  test.each(readdirSync(samples).filter((file) => file.endsWith('.lap')))('of the sample %s is canonical', (file) => {
    const text = readFileSync(join(samples, file), 'utf8');
    expect(printed(text)).toBe(text);
  });
});

test('a text with a syntax problem is left alone', () => {
  expect(printDocument('let a = 1 1')).toBeNull();
  expect(printDocument('panel p { ')).toBeNull();
});

test('words and comments stay, whatever the spaces between them', () => {
  const words = wordsOf(referenceText);
  const space = fc.constantFrom(
    ' ',
    '  ',
    '\n',
    '\n\n',
    '\n\n\n',
    '\t',
    ' # remark\n',
    '\n# line\n',
    '\n\n  # far\n\n',
    '\r\n',
  );
  const text = fc
    .array(space, { minLength: words.length, maxLength: words.length })
    .map((spaces) => words.map((word, index) => word + (spaces[index] ?? ' ')).join(''));
  fc.assert(
    fc.property(text, (written) => {
      const once = printed(written);
      expect(wordsOf(once)).toEqual(words);
      expect(remarksOf(once)).toEqual(remarksOf(written));
      expect(printed(once)).toBe(once);
    }),
    { numRuns: 150 },
  );
});
