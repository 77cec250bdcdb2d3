/** The grammar on paper is the one that is read: kept beside the rules, every name in it given, every word in it known. */
import { wordRoles } from '../../grammar/vocabulary/known-words.ts';
import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { phraseForms } from '../../grammar/phrases/phrase-forms.ts';
import { ebnfText } from '../../grammar/writing/write-ebnf.ts';

const file = new URL('../../grammar/halflap.ebnf', import.meta.url);
const text = ebnfText();

if (process.env['ACCEPT'] === '1') writeFileSync(file, text);

test('the kept file is current', () => {
  expect(readFileSync(file, 'utf8')).toBe(text);
});

const rules = text.slice(0, text.indexOf('/* Tokens.')).replace(/\/\*.*?\*\//g, '');

test('every name that is used is given once', () => {
  const given = [...rules.matchAll(/^(\w+) ::=/gm)].map(([, name]) => name);
  expect(new Set(given).size).toBe(given.length);
  const used = rules.replace(/"[^"]*"/g, '').match(/[a-z]\w*/g) ?? [];
  expect(used.filter((name) => !given.includes(name))).toEqual([]);
});

test('every word of the notation that begins a phrase stands in it, and no other', () => {
  const words = new Set([...rules.matchAll(/"(\w+)"/g)].map(([, word]) => word ?? ''));
  expect([...words].filter((word) => !Object.hasOwn(wordRoles, word))).toEqual([]);
  const begins = Object.values(phraseForms).flatMap((forms) => Object.keys(forms));
  expect(begins.filter((word) => !words.has(word))).toEqual([]);
});

test('brackets close', () => {
  const marks = rules.replace(/"[^"]*"/g, '').replace(/[^()]/g, '');
  let depth = 0;
  for (const mark of marks) {
    depth += mark === '(' ? 1 : -1;
    expect(depth).toBeGreaterThanOrEqual(0);
  }
  expect(depth).toBe(0);
});
