/** Whatever is done to a text, it is read: no exception, a tree, problems at places inside the text. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseDocument } from '../../grammar/parse-document.ts';
import type { Problem } from '../../grammar/problem.ts';
import { knownWords, tokenize } from '../../grammar/tokens.ts';
import { buildDesign } from '../../server/design/build-design.ts';
import { referenceText } from './reference-text.ts';

/** All problems of a text, having checked that each stands somewhere in it. */
function problemsOf(text: string): Problem[] {
  const { tree, problems } = parseDocument(text);
  const all = [...problems, ...buildDesign(tree).problems];
  for (const { range, message } of all) {
    if (!(range.start >= 0 && range.start < range.end && range.end <= text.length)) {
      throw new Error(`${JSON.stringify(range)} is no place in the text: ${message}`);
    }
  }
  return all;
}

const tokens = tokenize(referenceText).tokens.map((token) => ({
  start: token.startOffset,
  end: token.startOffset + token.image.length,
}));

/** Every fourth word, from the first, second or so: the page is read anew for each, and all of them would take minutes. */
const everyFourth = <Thing>(things: readonly Thing[], from: number): Thing[] =>
  things.filter((_, index) => index % 4 === from);

const signStarts = new Set(
  parseDocument(referenceText)
    .tree.declarations.flatMap((declaration) => (declaration.kind === 'panel' ? declaration.properties : []))
    .flatMap((property) => (property.kind === 'map' ? property.lines : []))
    .flatMap((line) => (line.kind === 'map row' ? line.signs.map(({ range }) => range.start) : [])),
);

// thousands of texts are read and built here, which takes its time on a busy machine
describe('a text of which', { timeout: 300_000 }, () => {
  test('only a beginning is there', () => {
    for (const { start, end } of everyFourth(tokens, 0)) {
      for (const inside of new Set([start + 1, end - 1])) {
        if (inside > start && inside < end) parseDocument(referenceText.slice(0, inside));
      }
      problemsOf(referenceText.slice(0, end));
    }
  });

  test('one word is missing has at most two problems, nearly always one', () => {
    const counts = everyFourth(tokens, 1).map(
      ({ start, end }) => problemsOf(referenceText.slice(0, start) + referenceText.slice(end)).length,
    );
    expect(Math.max(...counts)).toBeLessThanOrEqual(2);
    expect(counts.filter((count) => count > 1).length / counts.length).toBeLessThan(0.01);
  });

  test('one word is doubled has just one problem', () => {
    // a sign more in a map is wrong only for the panel it is laid over, and a minus of a minus is sound
    const single = everyFourth(tokens, 2).filter(({ start }) => !signStarts.has(start) && referenceText[start] !== '-');
    const damaged = single.map(({ start, end }) => `${referenceText.slice(0, end)} ${referenceText.slice(start)}`);
    expect(damaged.filter((text) => problemsOf(text).length !== 1)).toEqual([]);
  });
});

describe('any text', () => {
  const word = fc.oneof(
    fc.constantFrom(...Object.keys(knownWords)),
    fc.constantFrom('{', '}', '(', ')', ',', '=', '+', '-', '*', '/', '"', '#', '\n', '\r\n', '§', '格子', '😀'),
    fc.constantFrom(
      'ash',
      'hub',
      '36mm',
      '3 1/2in',
      '12deg',
      '5%',
      '40mn',
      '1',
      '0.5',
      '"M 0 0 L 9 0 L 9 9 Z"',
      'sqrt',
      'pi',
    ),
  );

  test('made of words of the notation is read', () => {
    fc.assert(
      fc.property(fc.array(word, { maxLength: 60 }), (words) => void problemsOf(words.join(' '))),
      { numRuns: 1500 },
    );
  });

  test('made of any characters is read', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (text) => void problemsOf(text)),
      { numRuns: 1000 },
    );
  });

  test('in which words are put anywhere is read', () => {
    const edit = fc.record({ at: fc.nat({ max: referenceText.length }), drop: fc.nat({ max: 30 }), put: word });
    const edited = fc
      .array(edit, { minLength: 1, maxLength: 6 })
      .map((edits) =>
        edits.reduce(
          (text, { at, drop, put }) => `${text.slice(0, at)} ${put} ${text.slice(at + drop)}`,
          referenceText,
        ),
      );
    fc.assert(
      fc.property(edited, (text) => void problemsOf(text)),
      { numRuns: 300 },
    );
  });
});

describe('a text that goes too deep is read:', () => {
  const deep = 20_000;
  test.each([
    ['brackets', `let a = ${'('.repeat(deep)}1${')'.repeat(deep)}`],
    ['signs', `let a = ${'-'.repeat(deep)}1`],
    ['a sum', `let a = 1${' + 1'.repeat(deep)}`],
    ['a product', `let a = 1${' * 1'.repeat(deep)}`],
    ['calls', `let a = ${'sqrt('.repeat(deep)}1${')'.repeat(deep)}`],
    ['nodes', `motif m for square { node a at ${'between corner 1 and '.repeat(deep)} corner 2 }`],
    ['braces', `panel a ${'{ '.repeat(deep)}`],
    ['lets', Array.from({ length: 3000 }, (_, index) => `let a${String(index)} = a${String(index + 1)}`).join('\n')],
    [
      'lets in a loop',
      Array.from({ length: 3000 }, (_, index) => `let a${String(index)} = a${String((index + 1) % 3000)}`).join('\n'),
    ],
  ])('%s', (_, text) => {
    expect(problemsOf(text).length).toBeGreaterThan(0);
  });
});
