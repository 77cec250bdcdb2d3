/** Habits from elsewhere that the notation does not share, each told what to write instead. */
import { type BlockKind } from '../vocabulary/known-words.ts';
import type { IToken } from 'chevrotain';
import { nearestWord } from '../problems/nearest-word.ts';
import { problemAt } from '../problems/problem-catalogue.ts';
import type { Problem } from '../problems/problem.ts';
import { quantityUnits } from '../vocabulary/tokens.ts';
import { type PhraseForm, wordsOf } from '../phrases/phrase-forms.ts';
import { rangeOf, type SourceRange, spanOf } from '../tree/source-range.ts';

/** Where a token stands. */
export const placeOf = (token: IToken): SourceRange => ({
  start: token.startOffset,
  end: token.startOffset + token.image.length,
});

/** A word that fits nowhere, with the words on both its sides. */
export interface Misfit {
  readonly token: IToken;
  readonly before: IToken | null;
  readonly behind: IToken | null;
  /** Of the phrase that it stands right behind, on one line; null where it stands behind none. */
  readonly ended?: PhraseForm | null;
}

/** What the misfit is, where it is a mistake that is often made; null for any other. */
export function commonMistake(misfit: Misfit, block: BlockKind): Problem | null {
  return (
    decimalComma(misfit) ??
    partedUnit(misfit) ??
    foreignComment(misfit) ??
    partedNumbers(misfit) ??
    partedWords(misfit, block) ??
    partedPoints(misfit, block) ??
    hyphenedWord(misfit, block) ??
    numberWithoutLet(misfit, block)
  );
}

/** A number with a comma in it, no space beside it. */
export function decimalComma({ token, before, behind }: Misfit): Problem | null {
  if (token.image !== ',' || !before || !behind) return null;
  if (!/^\d+$/.test(before.image) || !/^\d/.test(behind.image)) return null;
  const range = spanOf(rangeOf(before), rangeOf(behind));
  const written = before.image + token.image + behind.image;
  if (range.end - range.start !== written.length) return null;
  const message = `\`${written}\` is written with a decimal comma, and a comma separates two numbers here. Write \`${before.image}.${behind.image}\`.`;
  return problemAt('unexpectedWord', range, message);
}

/** Units as they are spoken, with the letters that stand for them. */
const spokenUnits: Readonly<Record<string, string>> = {
  inch: 'in',
  inches: 'in',
  foot: 'ft',
  feet: 'ft',
  degree: 'deg',
  degrees: 'deg',
  percent: '%',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeters: 'mm',
  centimetres: 'cm',
  metres: 'm',
};

/** The unit of the number before it, written with a space between or as a whole word. */
export function partedUnit({ token, before }: Misfit): Problem | null {
  const unit = quantityUnits.find((each) => each === token.image) ?? spokenUnits[token.image];
  if (unit === undefined || !before || !/^[\d.]+$/.test(before.image)) return null;
  const message = `The unit \`${token.image}\` belongs to the number before it. Write \`${before.image}${unit}\` without a space.`;
  return problemAt('unexpectedWord', rangeOf(token), message);
}

function foreignComment({ token, behind }: Misfit): Problem | null {
  const written = token.image + (behind?.image ?? '');
  const isJoined = behind?.startOffset === token.startOffset + token.image.length;
  if (!isJoined || !/^(?:\/[/*]|--)/.test(written)) return null;
  const range = { start: token.startOffset, end: token.startOffset + 2 };
  return problemAt('unexpectedWord', range, 'A comment begins with `#` and ends with its line. Write `#` here.');
}

const isMeasured = (token: IToken): boolean => /^[\d.]/.test(token.image);

/** Two numbers side by side: parts of a sum, a mixed number, or of a list. */
function partedNumbers({ token, before, behind }: Misfit): Problem | null {
  if (!before || !isMeasured(token) || !isMeasured(before)) return null;
  const [first, second] = [before.image, token.image];
  const isWhole = /^\d+$/.test(first) && /^\d+$/.test(second);
  const advice =
    behind?.image === '/' && isWhole
      ? `A number with a fraction takes its unit, as in \`${first} ${second}/2in\`; without one write a sum, \`${first} + ${second}/2\`.`
      : `In a list put \`,\` between the two; to add them write \`${first} + ${second}\`.`;
  return problemAt('unexpectedWord', rangeOf(token), `\`${second}\` does not belong after \`${first}\`. ${advice}`);
}

/** What may follow in a list of words, by the rule that reads the list: any word, or only these. */
const listsOfWords: Partial<Record<PhraseForm['rule'], readonly string[] | 'any'>> = {
  fitOrder: 'any',
  done: 'any',
  piece: ['every', 'mirrored', 'above'],
  divider: ['above'],
};

/** A word of a list of which the comma is missing: `done milled notched`. */
function partedWords({ token, before, ended }: Misfit, block: BlockKind): Problem | null {
  const words = ended ? listsOfWords[ended.rule] : undefined;
  if (!before || !words || !/^[\p{L}_]/u.test(token.image)) return null;
  if (words === 'any' ? nearestWord(token.image, wordsOf(block)) : !words.includes(token.image)) return null;
  const message = `\`${token.image}\` does not belong after \`${before.image}\`. Put a comma between the two: write \`${before.image}, ${token.image}\`.`;
  return problemAt('unexpectedWord', rangeOf(token), message);
}

/** A comma between two points that `and` joins, for a comma stands between x and y. */
function partedPoints({ token, before, behind }: Misfit, block: BlockKind): Problem | null {
  if (block !== 'outline' || token.image !== ',' || !before || !isMeasured(before)) return null;
  if (!behind || !(isMeasured(behind) || behind.image === '-')) return null;
  const message = `A comma separates x from y, and \`and\` one point from the next. Write \`and\` here.`;
  return problemAt('unexpectedWord', rangeOf(token), message);
}

/** A word of two parts with a hyphen: `three-way`. */
function hyphenedWord({ token, behind }: Misfit, block: BlockKind): Problem | null {
  const word = wordsOf(block).find((each) => each.startsWith(`${token.image}_`));
  if (behind?.image !== '-' || word === undefined) return null;
  const message = `A hyphen subtracts; the parts of a name are joined by \`_\`. Write \`${word}\`.`;
  return problemAt('unknownProperty', rangeOf(token), message);
}

function numberWithoutLet({ token, behind }: Misfit, block: BlockKind): Problem | null {
  if (block !== 'document' || behind?.image !== '=') return null;
  const message = `A number with a name begins with \`let\`. Write \`let ${token.image} = …\`.`;
  return problemAt('unknownDeclaration', rangeOf(token), message);
}

/** What to write instead of characters that mean nothing here. */
const instead: readonly (readonly [characters: RegExp, advice: string])[] = [
  [/^[“”„«»‘’]/u, 'Text goes between straight quotes: write `"`.'],
  [/^'/u, 'Text goes between double quotes, `"`; feet and inches are `ft` and `in`.'],
  [/^×/u, 'Between a width and a height write `x`.'],
  [/^[:;]/u, 'Nothing goes between a word and its value, or between phrases. Delete it.'],
  [/^\[|^\]/u, 'A block goes between `{` and `}`.'],
  [/^°/u, 'Write `deg` right after the number.'],
  [/^[−–—]/u, 'Write `-`.'],
  [/^[½¼¾⅛⅜⅝⅞]/u, 'Write the fraction with a slash, as in `1/2in`.'],
  [/^″/u, 'Write `in` or `"` right after the number.'],
  [/^%/u, 'The percent sign goes right after its number, as in `8%`.'],
  [/^\^/u, 'Write a power as a product, as in `side * side`.'],
];

/** Advice about characters that could not be read. */
export const adviceFor = (characters: string): string =>
  instead.find(([pattern]) => pattern.test(characters))?.[1] ?? 'Delete it.';
