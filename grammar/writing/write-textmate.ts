/** Colours for editors that read TextMate grammars, written from the tokens. The file beside is made from this; a test keeps it current. */
import { wordRoles } from '../vocabulary/known-words.ts';
import { knownFunctions, quantityUnits } from '../vocabulary/tokens.ts';
import type { WordRole } from '../vocabulary/word-entry.ts';

interface Rule {
  readonly name?: string;
  readonly match?: string;
  readonly begin?: string;
  readonly end?: string;
  readonly captures?: Readonly<Record<string, { readonly name: string }>>;
  readonly patterns?: readonly Rule[];
}

export interface TextmateGrammar {
  readonly name: string;
  readonly scopeName: string;
  readonly patterns: readonly Rule[];
}

const nameStart = '[\\p{L}_]';
const nameRest = '[\\p{L}\\p{M}\\p{N}_]';
const nameForm = `${nameStart}${nameRest}*`;
const wordStart = `(?<!${nameRest})`;
const wordEnd = `(?!${nameRest})`;

/** Longest first, so that no word hides behind its own beginning. */
const oneOf = (words: readonly string[]): string => [...words].sort((a, b) => b.length - a.length).join('|');

const wordsOf = (role: WordRole): string[] =>
  Object.entries(wordRoles)
    .filter(([, own]) => own === role)
    .map(([word]) => word);

const whole = (words: readonly string[]): string => `${wordStart}(?:${oneOf(words)})${wordEnd}`;

/** The grammar, scope `source.halflap`. */
export function textmateGrammar(): TextmateGrammar {
  const letters = quantityUnits.filter((unit) => unit !== '%');
  const number = '(?:\\d+(?: +|-))?\\d+/\\d+|\\d+\\.\\d+|\\.\\d+|\\d+';
  return {
    name: 'Halflap',
    scopeName: 'source.halflap',
    patterns: [
      { name: 'comment.line.number-sign.halflap', match: '#.*$' },
      {
        name: 'string.quoted.double.halflap',
        begin: '"',
        end: '"|$',
        patterns: [{ name: 'constant.character.escape.halflap', match: '\\\\.' }],
      },
      {
        match: `${wordStart}(${oneOf(wordsOf('declaration'))})\\s+(${nameForm})(?=\\s*(?:\\{|=|for${wordEnd}))`,
        captures: { '1': { name: 'storage.type.halflap' }, '2': { name: 'entity.name.type.halflap' } },
      },
      {
        match: `${wordStart}(node|piece|divider)\\s+(${nameForm})(?=\\s+(?:at|from)${wordEnd})`,
        captures: { '1': { name: 'support.type.property-name.halflap' }, '2': { name: 'entity.name.tag.halflap' } },
      },
      {
        match: `(${number})(?:(${oneOf(letters)})${wordEnd}|(%|"))`,
        captures: {
          '1': { name: 'constant.numeric.halflap' },
          '2': { name: 'keyword.other.unit.halflap' },
          '3': { name: 'keyword.other.unit.halflap' },
        },
      },
      { name: 'constant.numeric.halflap', match: '\\d+\\.\\d+|\\.\\d+|\\d+' },
      { name: 'support.function.halflap', match: `${whole(Object.keys(knownFunctions))}(?=\\s*\\()` },
      { name: 'constant.language.halflap', match: whole(['pi', ...wordsOf('constant')]) },
      { name: 'storage.type.halflap', match: whole(wordsOf('declaration')) },
      { name: 'support.type.property-name.halflap', match: whole(wordsOf('property')) },
      { name: 'keyword.control.halflap', match: whole(wordsOf('link')) },
      { name: 'keyword.operator.halflap', match: '[-+*/=]' },
      { name: 'punctuation.separator.halflap', match: ',' },
      { name: 'punctuation.section.block.halflap', match: '[{}]' },
      { name: 'punctuation.section.group.halflap', match: '[()]' },
      { name: 'variable.other.halflap', match: nameForm },
    ],
  };
}

/** The file's text, laid out as the house's formatter does it. */
export const textmateText = (): string => `${JSON.stringify(textmateGrammar(), null, 2)}\n`;
