/** Every token of the notation. */
import { createToken, Lexer } from 'chevrotain';
import type { ILexingError, IToken, TokenType } from 'chevrotain';
import type { QuantityUnit } from '../tree/syntax-nodes.ts';
import { isKnownWord, type KnownWord, wordRoles } from './known-words.ts';

/** Functions of the arithmetic, with what they give. */
export const knownFunctions = {
  sqrt: 'Square root.',
  sin: 'Sine of an angle.',
  cos: 'Cosine of an angle.',
  tan: 'Tangent of an angle.',
  min: 'Smallest of its values.',
  max: 'Largest of its values.',
} as const;

export const isKnownFunction = (name: string): name is keyof typeof knownFunctions =>
  Object.hasOwn(knownFunctions, name);

/** Units that may stand right behind a number. */
export const quantityUnits: readonly QuantityUnit[] = [
  'mm',
  'cm',
  'm',
  'in',
  'ft',
  'deg',
  '%',
  'g',
  'kg',
  'oz',
  'lb',
  'mL',
  'L',
  'min',
  'h',
  'day',
  'days',
];

const namePattern = /[\p{L}_][\p{L}\p{M}\p{N}_]*/uy;
const crossPattern = /(?<=\d)x(?=\d)/y;
const barePathPattern = /[\p{L}_.][\p{L}\p{M}\p{N}_./-]*\.lap(?![\p{L}\p{M}\p{N}_])/uy;
const unitEnd = '(?![\\p{L}\\p{M}\\p{N}_])';
const unitLetters = quantityUnits.filter((letters) => letters !== '%').join('|');
const amount = '(?:\\d+\\.\\d+|\\.\\d+|\\d+)';
/** A unit behind its number; `"` stands for inches. */
const behindNumber = (open: string): string => `${open}"|(?:${unitLetters})${unitEnd})`;
const quantityPattern = new RegExp(
  `(?:(?:\\d+(?: +|-))?\\d+/\\d+${behindNumber('(?:')}|${amount}${behindNumber('(?:%|')})`,
  'uy',
);
const unknownQuantityPattern = new RegExp(`${amount}(?!x\\d)[\\p{L}_][\\p{L}\\p{M}\\p{N}_]*`, 'uy');

/** The lexer drops the `u` flag of plain patterns, so these are matched by hand. */
function matchedBy(pattern: RegExp) {
  return {
    exec(text: string, offset: number): RegExpExecArray | null {
      pattern.lastIndex = offset;
      return pattern.exec(text);
    },
  };
}

/** A name, or a known word where it stands for a name. */
export const Word = createToken({
  name: 'Word',
  label: 'a name',
  pattern: matchedBy(namePattern),
  line_breaks: false,
});

/** A token type per known word; each is also a Word. They carry no pattern: `tokenize` tells them apart. */
export const keyword = Object.fromEntries(
  Object.keys(wordRoles).map((word) => [
    word,
    createToken({ name: `word_${word}`, label: `\`${word}\``, pattern: Lexer.NA, categories: [Word] }),
  ]),
) as Record<KnownWord, TokenType>;

/** The `x` of `5x4`, written without spaces. */
export const CrossBetweenDigits = createToken({
  name: 'CrossBetweenDigits',
  label: '`x`',
  pattern: matchedBy(crossPattern),
  line_breaks: false,
  categories: [keyword.x],
});

/** The path of a file whose quotes were forgotten: no phrase takes it, so it costs one message. */
export const BarePath = createToken({
  name: 'BarePath',
  label: 'a file in double quotes',
  pattern: matchedBy(barePathPattern),
  line_breaks: false,
});

/** A number with its unit, such as 36mm, 3 1/2in, 3-1/2", 12deg or 5%. */
export const Quantity = createToken({
  name: 'Quantity',
  label: 'a quantity',
  pattern: matchedBy(quantityPattern),
  line_breaks: false,
});

/** A number with letters behind it that are no unit. */
export const UnknownQuantity = createToken({
  name: 'UnknownQuantity',
  label: 'a quantity',
  pattern: matchedBy(unknownQuantityPattern),
  line_breaks: false,
});

/** A bare number; its place says what it measures. */
export const NumberToken = createToken({ name: 'Number', label: 'a number', pattern: /\d+\.\d+|\.\d+|\d+/ });

/** Text in double quotes on one line; a missing closing quote is reported apart. */
export const Text = createToken({
  name: 'Text',
  label: 'text in double quotes',
  pattern: /"(?:[^"\\\r\n]|\\[^\r\n])*"?/,
});

export const LeftBrace = createToken({ name: 'LeftBrace', label: '`{`', pattern: '{' });
export const RightBrace = createToken({ name: 'RightBrace', label: '`}`', pattern: '}' });
export const LeftBracket = createToken({ name: 'LeftBracket', label: '`(`', pattern: '(' });
export const RightBracket = createToken({ name: 'RightBracket', label: '`)`', pattern: ')' });
export const Comma = createToken({ name: 'Comma', label: '`,`', pattern: ',' });
export const Equals = createToken({ name: 'Equals', label: '`=`', pattern: '=' });
/** A sign of its own in a map; never before a digit, where it begins a number. */
export const Dot = createToken({ name: 'Dot', label: '`.`', pattern: /\.(?!\d)/ });
export const Plus = createToken({ name: 'Plus', label: '`+`', pattern: '+' });
export const Minus = createToken({ name: 'Minus', label: '`-`', pattern: '-' });
export const Times = createToken({ name: 'Times', label: '`*`', pattern: '*' });
export const Divide = createToken({ name: 'Divide', label: '`/`', pattern: '/' });

/** From `#` to the end of the line; kept apart from the grammar for the printer. */
export const Comment = createToken({ name: 'Comment', pattern: /#[^\r\n]*/, group: 'comments' });

const Space = createToken({
  name: 'Space',
  pattern: /[ \t\r\n\f\v\u00a0\ufeff]+/,
  group: Lexer.SKIPPED,
  line_breaks: true,
});

const lexedTokens = [
  Space,
  Comment,
  Text,
  Quantity,
  UnknownQuantity,
  NumberToken,
  CrossBetweenDigits,
  BarePath,
  Word,
  LeftBrace,
  RightBrace,
  LeftBracket,
  RightBracket,
  Comma,
  Equals,
  Dot,
  Plus,
  Minus,
  Times,
  Divide,
];

/** Every token type the grammar may speak of. */
export const allTokens: TokenType[] = [...lexedTokens, ...Object.values(keyword)];

const lexer = new Lexer(allTokens, { positionTracking: 'full', ensureOptimizations: false });

export interface Tokens {
  readonly tokens: readonly IToken[];
  readonly comments: readonly IToken[];
  readonly errors: readonly ILexingError[];
}

/** Tells a text apart into tokens, their offsets counted from `begin`. Never throws; what it cannot read is in `errors`. */
export function tokenize(text: string, begin = 0): Tokens {
  const { tokens, groups, errors } = lexer.tokenize(text);
  const comments = groups['comments'] ?? [];
  if (begin > 0) for (const token of [...tokens, ...comments]) token.startOffset += begin;
  for (const token of tokens) {
    if (token.tokenType !== Word || !isKnownWord(token.image)) continue;
    const type = keyword[token.image];
    token.tokenType = type;
    token.tokenTypeIdx = type.tokenTypeIdx ?? token.tokenTypeIdx;
  }
  return { tokens, comments, errors };
}
