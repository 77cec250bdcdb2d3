/** Each word means what it says in its phrase: told once for each place that reads it, and for no other. */
import {
  type IProduction,
  NonTerminal,
  RepetitionMandatoryWithSeparator,
  RepetitionWithSeparator,
  Terminal,
  tokenLabel,
} from 'chevrotain';
import { describe, expect, test } from 'vitest';
import { phraseForms } from '../../grammar/phrases/phrase-forms.ts';
import {
  firstWords,
  grammarRules,
  meaningBehind,
  partsOf,
  ruleNameOf,
  rulesReached,
} from '../../grammar/phrases/phrase-rules.ts';
import { parseDocument } from '../../grammar/reading/parse-document.ts';
import { phraseWordAt } from '../../grammar/reading/word-places.ts';
import { isKnownWord, wordRoles, wordTables } from '../../grammar/vocabulary/known-words.ts';

const doubled = (names: readonly string[]): string[] => names.filter((name, index) => names.indexOf(name) < index);

describe('the tables of words', () => {
  test('describe no block and no rule twice', () => {
    expect(doubled(wordTables.flatMap(({ beginning }) => Object.keys(beginning)))).toEqual([]);
    expect(doubled(wordTables.flatMap(({ within }) => Object.keys(within)))).toEqual([]);
  });

  test('let a word do the same wherever it stands, for it has one colour', () => {
    const entries = wordTables
      .flatMap(({ beginning, within }) => [...Object.values(beginning), ...Object.values(within)])
      .flatMap((words) => Object.entries(words));
    expect(entries.filter(([word, { role }]) => isKnownWord(word) && wordRoles[word] !== role)).toEqual([]);
  });

  test('say in one line what a word means', () => {
    const meanings = wordTables
      .flatMap(({ beginning, within }) => [...Object.values(beginning), ...Object.values(within)])
      .flatMap((words) => Object.values(words).map(({ meaning }) => meaning));
    expect(meanings.filter((meaning) => !/^[A-Z0-9].*\.$/.test(meaning))).toEqual([]);
  });
});

const wordOf = (label: string): string[] => (/^`\w+`$/.test(label) ? [label.slice(1, -1)] : []);

function wordsRead(production: IProduction): string[] {
  if (production instanceof Terminal) return wordOf(tokenLabel(production.terminalType));
  if (production instanceof NonTerminal) return [];
  const isList =
    production instanceof RepetitionMandatoryWithSeparator || production instanceof RepetitionWithSeparator;
  return [...(isList ? wordOf(tokenLabel(production.separator)) : []), ...partsOf(production).flatMap(wordsRead)];
}

test('every word that a rule reads behind the first of its phrase has its meaning there, and no other word', () => {
  const beginnings = new Set(
    Object.values(phraseForms).flatMap((forms) =>
      Object.entries(forms).map(([word, { rule }]) => `${ruleNameOf(rule)} ${word}`),
    ),
  );
  const phrases = Object.values(phraseForms).flatMap((forms) =>
    Object.values(forms).map(({ rule }) => ruleNameOf(rule)),
  );
  const read = [...rulesReached([...phrases, 'mapEntry'])].flatMap((rule) =>
    (grammarRules[rule]?.definition ?? []).flatMap(wordsRead).map((word) => `${rule} ${word}`),
  );
  const told = wordTables.flatMap(({ within }) =>
    Object.entries(within).flatMap(([rule, words]) => Object.keys(words).map((word) => `${rule} ${word}`)),
  );
  expect(read.filter((each) => !told.includes(each) && !beginnings.has(each))).toEqual([]);
  expect(told.filter((each) => !read.includes(each))).toEqual([]);
});

/** What the word between `>` and `<` means. */
function meaningOfMarked(marked: string): string | null {
  const text = marked.replace(/[><]/g, '');
  const { phrases } = parseDocument(text);
  return phraseWordAt(phrases, text, marked.indexOf('>') + 1)?.meaning ?? null;
}

describe('a word means', () => {
  test.each([
    ['panel p { shape fit 21 x 8 cells >in< 900 x 380 by pitch }', 'The size that the cells are fitted into.'],
    ['units >in<', 'Inches, 25.4 mm each.'],
    ['work w { place leaf at 0, 0 >in< front of stem }', 'With front of: nearer to the viewer.'],
    ['strip ash { lengths 900 >at< 4 EUR }', 'The price of one.'],
    ['motif m for square { node hub >at< centroid }', 'The place of the node.'],
    ['outline o { >turn< 30deg }', 'Turns what is drawn so far counter-clockwise.'],
    ['grid g { >turn< 30deg }', 'Turns the whole grid counter-clockwise.'],
    ['outline o { >copy< leaf }', 'Begins with what another outline is.'],
    ['work w { minutes 5 per >copy< for pack }', 'One copy of the work.'],
    ['wood oak { >density< 700 }', 'Mass in its volume at 12 % moisture, kg/m³.'],
    ['resin clear { >density< 1.1 }', 'Mass in its volume, mixed, g/mL.'],
    ['panel p { frame { >stub< 6 } }', 'Depth of the mortices that take the strips’ stubs.'],
    ['panel p { >stub< 6 }', 'How far a framed strip runs into the frame.'],
    ['panel p { fill within 30 of >rim< square with m of s }', 'The edge of the panel itself.'],
    ['panel p { map { h = hemp >of< bass } }', 'The strip that the infill is made of.'],
  ])('%s', (marked, meaning) => {
    expect(meaningOfMarked(marked)).toBe(meaning);
  });

  test('what it says up to the place where its phrase breaks', () => {
    expect(meaningOfMarked('strip ash { section >face< 3 dept 10 }')).toBe('Width seen from the front.');
    expect(meaningOfMarked('strip ash { section face 3 >dept< 10 }')).toBe(null);
  });

  test('nothing where it is a name', () => {
    expect(meaningOfMarked('grid side { three_way side >side< of ash }')).toBe(null);
    expect(meaningOfMarked('# >side<')).toBe(null);
  });

  test('with its phrase written out where it begins it', () => {
    const text = 'bench shop { kerf 3 }';
    const { phrases } = parseDocument(text);
    expect(phraseWordAt(phrases, text, text.indexOf('kerf'))).toMatchObject({
      meaning: 'Width of the cut of the notching blade.',
      example: 'kerf 3.15',
    });
  });
});

test('what may follow a word is told as it is meant there', () => {
  expect(meaningBehind('by', phraseForms.resin.mix, 'mass')).toBe('Weighed on scales.');
  expect(meaningBehind('every', phraseForms.motif.piece, 'corner')).toBe('At each corner of the opening.');
  expect(meaningBehind('at', phraseForms.motif.node, 'corner')).toContain('counted counter-clockwise');
  expect(meaningBehind('at', phraseForms.motif.node, 'mass')).toBe('');
});

test('a place may begin with these words', () => {
  expect(firstWords('place')).toEqual(
    expect.arrayContaining(['corner', 'mid', 'centroid', 'incentre', 'between', 'mirrored', 'turned', 'intersection']),
  );
});
