/** Whatever is done to a text, it is read: no exception, a tree, problems at places inside the text. */
import { wordRoles } from '../../grammar/vocabulary/known-words.ts';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseDocument } from '../../grammar/reading/parse-document.ts';
import type { Problem } from '../../grammar/problems/problem.ts';
import { tokenize } from '../../grammar/vocabulary/tokens.ts';
import { buildFiles } from '../../server/design/builders/build-files.ts';
import { loadFiles } from '../../server/design/files/load-files.ts';
import type { SourceRange } from '../../grammar/tree/source-range.ts';
import { readFrom } from '../design/read-from.ts';
import { type DeclarationInText, declarationsOf } from './declarations-of.ts';
import { referenceText } from './reference-text.ts';

const samples = fileURLToPath(new URL('../../samples', import.meta.url));

/** All problems of a text, having checked that each stands somewhere in it. */
function problemsOf(text: string): readonly Problem[] {
  const { problems } = buildFiles(loadFiles(text, { path: 'damaged.lap', read: readFrom(samples) }));
  for (const { range, message } of problems) {
    if (!(range.start >= 0 && range.start < range.end && range.end <= text.length)) {
      throw new Error(`${JSON.stringify(range)} is no place in the text: ${JSON.stringify(message)}`);
    }
  }
  return problems;
}

/** The words of a declaration, each with where it stands in the text. */
const wordsOf = ({ text, start, end }: DeclarationInText): SourceRange[] =>
  tokenize(text)
    .tokens.map((token) => ({ start: token.startOffset, end: token.startOffset + token.image.length }))
    .filter((word) => word.start >= start && word.end <= end);

/** Where signs of a map stand: one too many is wrong only for the panel that it is laid over. */
const signStarts = (text: string): Set<number> =>
  new Set(
    parseDocument(text)
      .tree.declarations.flatMap((declaration) => (declaration.kind === 'panel' ? declaration.properties : []))
      .flatMap((property) => (property.kind === 'map' ? property.lines : []))
      .flatMap((line) => (line.kind === 'map row' ? line.signs.map(({ range }) => range.start) : [])),
  );

const files = [
  ['the reference page', referenceText],
  ...readdirSync(samples, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.lap'))
    .map((path) => [path, readFileSync(join(samples, path), 'utf8')] as const),
] as const;

// every word of all that is written in the notation: thousands of texts, on a busy machine too
describe.each(files)('of %s,', { timeout: 120_000 }, (_, whole) => {
  describe.each(declarationsOf(whole).map((declaration) => [declaration.title, declaration] as const))(
    '%s',
    (__, declaration) => {
      const { text } = declaration;
      const words = wordsOf(declaration);

      test('stands in a sound text', () => {
        expect(problemsOf(text)).toEqual([]);
      });

      test('broken off anywhere is read', () => {
        for (const { start, end } of words) {
          if (end - start > 1) parseDocument(text.slice(0, start + 1));
          problemsOf(text.slice(0, end));
        }
      });

      test('with a word missing has at most one problem', () => {
        const damaged = words.map(({ start, end }) => text.slice(0, start) + text.slice(end));
        expect(damaged.filter((each) => problemsOf(each).length > 1)).toEqual([]);
      });

      test('with a word doubled has just one problem', () => {
        const signs = signStarts(text);
        // a minus of a minus is sound
        const single = words.filter(({ start }) => !signs.has(start) && text[start] !== '-');
        const damaged = single.map(({ start, end }) => `${text.slice(0, end)} ${text.slice(start)}`);
        expect(damaged.filter((each) => problemsOf(each).length !== 1)).toEqual([]);
      });
    },
  );
});

describe('any text', () => {
  const word = fc.oneof(
    fc.constantFrom(...Object.keys(wordRoles)),
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
    const edit = fc.record({ at: fc.nat(), drop: fc.nat({ max: 30 }), put: word });
    const edited = fc
      .tuple(fc.constantFrom(...declarationsOf(referenceText)), fc.array(edit, { minLength: 1, maxLength: 6 }))
      .map(([{ text: whole }, edits]) =>
        edits.reduce((text, { at, drop, put }) => {
          const place = at % text.length;
          return `${text.slice(0, place)} ${put} ${text.slice(place + drop)}`;
        }, whole),
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
