/** The colouring grammar beside the tokens is the one they make, and colours what it should. */
import { wordRoles } from '../../grammar/vocabulary/known-words.ts';
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import type { IGrammar } from 'vscode-textmate';
import { textmateText } from '../../grammar/writing/write-textmate.ts';

const file = fileURLToPath(new URL('../../grammar/halflap.tmLanguage.json', import.meta.url));

if (process.env['ACCEPT'] === '1') writeFileSync(file, textmateText());

test('the committed file is current', () => {
  expect(readFileSync(file, 'utf8')).toBe(textmateText());
});

describe('colours', () => {
  let grammar: IGrammar;
  beforeAll(async () => {
    const require = createRequire(import.meta.url);
    const textmate = require('vscode-textmate') as typeof import('vscode-textmate');
    const oniguruma = require('vscode-oniguruma') as typeof import('vscode-oniguruma');
    const wasm = readFileSync(require.resolve('vscode-oniguruma/release/onig.wasm'));
    await oniguruma.loadWASM(new Uint8Array(wasm).buffer);
    const registry = new textmate.Registry({
      onigLib: Promise.resolve(oniguruma),
      loadGrammar: () => Promise.resolve(textmate.parseRawGrammar(textmateText(), 'halflap.json')),
    });
    const loaded = await registry.loadGrammar('source.halflap');
    if (!loaded) throw new Error('the grammar does not load');
    grammar = loaded;
  });

  /** Pairs of a word and the scope it is given, for one line. */
  function scopes(line: string): [string, string][] {
    return grammar
      .tokenizeLine(line, null)
      .tokens.map(({ startIndex, endIndex, scopes: names }): [string, string] => [
        line.slice(startIndex, endIndex).trim(),
        (names.at(-1) ?? '').replace('.halflap', ''),
      ])
      .filter(([word]) => word !== '');
  }

  test('of a declaration', () => {
    expect(scopes('grid naïve_格子 { three_way side 1/8in } # mesh')).toEqual([
      ['grid', 'storage.type'],
      ['naïve_格子', 'entity.name.type'],
      ['{', 'punctuation.section.block'],
      ['three_way', 'support.type.property-name'],
      ['side', 'support.type.property-name'],
      ['1/8', 'constant.numeric'],
      ['in', 'keyword.other.unit'],
      ['}', 'punctuation.section.block'],
      ['# mesh', 'comment.line.number-sign'],
    ]);
  });

  test('of a let and a text', () => {
    expect(scopes('let side = sqrt(pi) * 12deg')).toEqual([
      ['let', 'storage.type'],
      ['side', 'entity.name.type'],
      ['=', 'keyword.operator'],
      ['sqrt', 'support.function'],
      ['(', 'punctuation.section.group'],
      ['pi', 'constant.language'],
      [')', 'punctuation.section.group'],
      ['*', 'keyword.operator'],
      ['12', 'constant.numeric'],
      ['deg', 'keyword.other.unit'],
    ]);
    expect(scopes('title "a # b"').at(1)?.[1]).toBe('string.quoted.double');
  });

  test('of every known word but the units, which are coloured behind numbers only', () => {
    const plain = Object.entries(wordRoles).filter(([, role]) => role !== 'unit');
    expect(plain.filter(([word]) => scopes(word)[0]?.[1] === 'variable.other')).toEqual([]);
  });
});
