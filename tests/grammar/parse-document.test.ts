/** The tree says what the text says, wherever its lines end and whatever its names are. */
import { wordRoles } from '../../grammar/vocabulary/known-words.ts';
import { describe, expect, test } from 'vitest';
import { parseDocument } from '../../grammar/reading/parse-document.ts';
import type { SourceRange } from '../../grammar/tree/source-range.ts';
import { referenceText } from './reference-text.ts';

const isRange = (value: unknown): value is SourceRange =>
  typeof value === 'object' && value !== null && 'start' in value && 'end' in value;

/** The tree with each range replaced by the words it covers, spaces and comments evened out. */
function inWords(value: unknown, text: string): unknown {
  if (isRange(value)) return text.slice(value.start, value.end).replace(/#.*$/gm, '').replace(/\s+/g, ' ').trim();
  if (Array.isArray(value)) return value.map((item) => inWords(item, text));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, inWords(item, text)]));
}

const treeInWords = (text: string): unknown => inWords(parseDocument(text).tree, text);

describe('layout', () => {
  const plain = referenceText.replace(/#.*$/gm, '').trim();

  test('lines, spaces and comments mean nothing', () => {
    const asWritten = treeInWords(referenceText);
    expect(treeInWords(plain.replace(/\s+/g, ' '))).toEqual({
      ...(asWritten as object),
      range: expect.anything() as unknown,
    });
    const oneWordALine = plain.replace(/("[^"\n]*")|(\d+ \d+\/\d+in)|\s+/g, (space, text: unknown, inches: unknown) =>
      (text ?? inches) ? space : '\r\n',
    );
    expect(parseDocument(oneWordALine).problems).toEqual([]);
    expect(treeInWords(oneWordALine)).toEqual(treeInWords(plain.replace(/\s+/g, ' ')));
  });

  test('comments are kept with their places', () => {
    const text = '# first\ntitle "a # b" # second\r\n#';
    expect(
      parseDocument(text).comments.map(({ text: comment, range }) => [comment, text.slice(range.start, range.end)]),
    ).toEqual([
      ['# first', '# first'],
      ['# second', '# second'],
      ['#', '#'],
    ]);
  });
});

describe('names', () => {
  test.each(Object.keys(wordRoles))('%s may name a number, a strip and a grid', (word) => {
    const { tree, problems } = parseDocument(
      `let ${word} = 40\nstrip ${word} { section face ${word} depth ${word} / 4 }\ngrid ${word} { three_way side ${word} of ${word} }`,
    );
    expect(problems).toEqual([]);
    expect(tree.declarations.map((declaration) => 'name' in declaration && declaration.name.text)).toEqual([
      word,
      word,
      word,
    ]);
  });

  test('a known word at the start of a line may still be a name', () => {
    const { tree, problems } = parseDocument(
      'panel a {\n  grid\n  edge\n  fill triangle with\n  copies\n  of ash\n  copies 2\n}',
    );
    expect(problems).toEqual([]);
    const [panel] = tree.declarations;
    expect(panel?.kind === 'panel' && panel.properties.map(({ kind }) => kind)).toEqual([
      'of grid',
      'panel fill',
      'copies',
    ]);
  });

  test.each(['größe', '格子', '_a1', 'é'])('%s is a name', (name) => {
    const { tree, problems } = parseDocument(`let ${name} = 1`);
    expect(problems).toEqual([]);
    expect(tree.declarations[0]).toMatchObject({ name: { text: name, range: { start: 4, end: 4 + name.length } } });
  });
});

describe('numbers', () => {
  test.each([
    ['36mm', 36, 'mm'],
    ['2.5cm', 2.5, 'cm'],
    ['.5m', 0.5, 'm'],
    ['1/8in', 0.125, 'in'],
    ['3 1/2in', 3.5, 'in'],
    ['2ft', 2, 'ft'],
    ['12deg', 12, 'deg'],
    ['5%', 5, '%'],
    ['40', 40, null],
    ['40mn', 40, 'unknown'],
  ])('%s', (text, amount, unit) => {
    const [declaration] = parseDocument(`let a = ${text}`).tree.declarations;
    expect(declaration).toMatchObject({
      value: { kind: 'number', amount, unit, range: { start: 8, end: 8 + text.length } },
    });
  });

  test('5x4 cells needs no spaces', () => {
    const [panel] = parseDocument('panel a { shape 5x4 cells }').tree.declarations;
    expect(panel).toMatchObject({
      properties: [{ shape: { kind: 'cells shape', width: { amount: 5 }, height: { amount: 4 } } }],
    });
  });

  test('text may hold quotes and strokes', () => {
    expect(parseDocument('title "a \\"b\\" \\\\"').tree.declarations).toMatchObject([{ text: { text: 'a "b" \\' } }]);
  });
});

test('after a broken line the rest of the file is there', () => {
  const text =
    'strip ash { wood oak  section face 3 depth 10  flush }\ngrid mesh {\n  three_way\n  side 40 40\n  of ash\n}\npanel a { grid mesh  shape 5 x 4 cells  edge }';
  const { tree, problems } = parseDocument(text);
  expect(problems.map(({ range }) => text.slice(range.start, range.end))).toEqual(['flush', '40', 'edge']);
  const kinds = tree.declarations.map(
    (declaration) => 'properties' in declaration && declaration.properties.map(({ kind }) => kind),
  );
  expect(kinds).toEqual([
    ['of wood', 'section'],
    ['grid kind', 'of strip'],
    ['of grid', 'shape'],
  ]);
  expect(tree.declarations.every((declaration) => 'incomplete' in declaration && declaration.incomplete)).toBe(true);
});
