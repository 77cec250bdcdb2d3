/** What the editor is told of the language: fences in Markdown, words, and where lines are indented. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { beforeAll, describe, expect, test } from 'vitest';
import type { IGrammar, StackElement } from 'vscode-textmate';
import { textmateText } from '../../grammar/writing/write-textmate.ts';
import packageFile from '../../package.json' with { type: 'json' };

const root = new URL('../../', import.meta.url);
const read = (path: string): string => readFileSync(new URL(path, root), 'utf8');

describe('a fence in Markdown', () => {
  const injected = packageFile.contributes.grammars.find(({ scopeName }) => scopeName.startsWith('markdown.'));
  let markdown: IGrammar;

  beforeAll(async () => {
    const require = createRequire(import.meta.url);
    const textmate = require('vscode-textmate') as typeof import('vscode-textmate');
    const oniguruma = require('vscode-oniguruma') as typeof import('vscode-oniguruma');
    await oniguruma.loadWASM(
      new Uint8Array(readFileSync(require.resolve('vscode-oniguruma/release/onig.wasm'))).buffer,
    );
    const texts: Readonly<Record<string, string>> = {
      'text.html.markdown': JSON.stringify({ scopeName: 'text.html.markdown', patterns: [] }),
      'source.halflap': textmateText(),
      [injected?.scopeName ?? '']: read(injected?.path ?? ''),
    };
    const registry = new textmate.Registry({
      onigLib: Promise.resolve(oniguruma),
      loadGrammar: (scope) => {
        const text = texts[scope];
        return Promise.resolve(text === undefined ? null : textmate.parseRawGrammar(text, `${scope}.json`));
      },
      getInjections: (scope) => (injected?.injectTo?.includes(scope) ? [injected.scopeName] : []),
    });
    const loaded = await registry.loadGrammar('text.html.markdown');
    if (!loaded) throw new Error('the grammar does not load');
    markdown = loaded;
  });

  /** The innermost scope of each word, line by line. */
  function scopesOf(text: string): string[][] {
    let state: StackElement | null = null;
    return text.split('\n').map((line) => {
      const { tokens, ruleStack } = markdown.tokenizeLine(line, state);
      state = ruleStack;
      return tokens.map(({ scopes }) => scopes.at(-1) ?? '');
    });
  }

  test.each(['```lap', '```halflap', '~~~ lap', '```LAP {title="one"}'])(
    '%s is coloured as the notation',
    (opening) => {
      const lines = scopesOf(`${opening}\nlet side = 40mm\n${opening.slice(0, 3)}\nlet it be\n`);
      expect(lines[1]).toContain('storage.type.halflap');
      expect(lines[1]).toContain('keyword.other.unit.halflap');
      expect(lines[3]?.join(' ')).not.toContain('halflap');
    },
  );

  test('of another language is left alone', () => {
    expect(scopesOf('```lapis\nlet side = 40mm\n```\n').flat().join(' ')).not.toContain('halflap');
  });
});

interface LanguageConfiguration {
  readonly wordPattern: { readonly pattern: string; readonly flags: string };
  readonly indentationRules: { readonly increaseIndentPattern: string; readonly decreaseIndentPattern: string };
}

describe('the editor', () => {
  const { wordPattern, indentationRules } = JSON.parse(
    read('grammar/language-configuration.json'),
  ) as LanguageConfiguration;

  test('takes names and quantities for words', () => {
    const words = 'fill triangle with 麻の葉 of bass_2 turned 12.5deg, 40mm 5%'.match(
      new RegExp(wordPattern.pattern, `${wordPattern.flags}g`),
    );
    expect(words).toEqual(['fill', 'triangle', 'with', '麻の葉', 'of', 'bass_2', 'turned', '12.5deg', '40mm', '5%']);
  });

  test.each([
    ['grid mesh {', true],
    ['grid mesh {  # of ash', true],
    ['  fill halves with hemp {', true],
    ['strip ash { section face 3 depth 10 }', false],
    ['# grid mesh {', false],
    ['title "a { b"', false],
    ['}', false],
  ])('indents behind %s: %s', (line, expected) => {
    expect(new RegExp(indentationRules.increaseIndentPattern).test(line)).toBe(expected);
  });

  test.each([
    ['}', true],
    ['  }  # end', true],
    ['strip ash { }', false],
  ])('outdents %s: %s', (line, expected) => {
    expect(new RegExp(indentationRules.decreaseIndentPattern).test(line)).toBe(expected);
  });
});
