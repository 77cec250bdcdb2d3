/** The reference page says what is true: its examples are sound and leave no phrase out. */
import { type BlockKind } from '../../grammar/vocabulary/known-words.ts';
import { expect, test } from 'vitest';
import { parseDocument } from '../../grammar/reading/parse-document.ts';
import { phraseForms, wordsOf } from '../../grammar/phrases/phrase-forms.ts';
import { analyse } from '../../server/analyse.ts';
import { declarationsOf } from '../../server/language/features/declarations.ts';
import { examples, referenceText } from './reference-text.ts';

test('each example reads without a problem', () => {
  expect(examples.length).toBeGreaterThan(5);
  expect(examples.flatMap((example) => parseDocument(example).problems)).toEqual([]);
});

test('together they make a sound design, nothing left out', () => {
  const { tree, design, panels, problems } = analyse(referenceText);
  expect(problems).toEqual([]);
  expect(panels.length).toBe(design.panels.length);
  const built = declarationsOf(design);
  const written = tree.declarations.filter(({ kind }) => !['use', 'title', 'units', 'let'].includes(kind));
  expect(built.length).toBe(written.length);
});

test('every phrase of every block has its example on the page', () => {
  const blocks = Object.keys(phraseForms) as BlockKind[];
  const missing = blocks.flatMap((block) =>
    wordsOf(block).filter((word) => !new RegExp(`(?:^|[\\s{])${word}\\b`, 'mu').test(referenceText)),
  );
  expect(missing).toEqual([]);
});

test.each(Object.entries(phraseForms))('the forms shown in messages can be read: %s', (block, forms) => {
  const inBlock: Readonly<Record<string, (phrase: string) => string>> = {
    document: (phrase) =>
      phrase
        .replace('…', 'rectangle 3 x 4')
        .replace(/^(motif .*\{).*\}/, '$1 }')
        .replace(/^(outline .*)rect.*\}/, '$1 }'),
    motif: (phrase) => `motif m for square { ${phrase} }`,
    frame: (phrase) => `panel p { frame { ${phrase} } }`,
    map: (phrase) => `panel p { map { ${phrase} } }`,
    tips: (phrase) => `motif m for square { fill halves with n { ${phrase} } }`,
  };
  const wrap = inBlock[block] ?? ((phrase: string) => `${block} n { ${phrase} }`);
  expect(Object.values(forms).flatMap(({ example }) => parseDocument(wrap(example)).problems)).toEqual([]);
});
