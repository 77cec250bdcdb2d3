/** Words that the notation once had, each told what is written instead. */
import type { IToken } from 'chevrotain';
import { problemAt } from '../problems/problem-catalogue.ts';
import type { Problem } from '../problems/problem.ts';
import type { PhraseRule } from '../phrases/phrase-forms.ts';
import { rangeOf, spanOf } from '../tree/source-range.ts';
import type { BlockKind } from '../vocabulary/known-words.ts';

const renamed: ReadonlyMap<string, string> = new Map([
  ['grid basket_weave', 'kagome'],
  ['arc bulge', 'rise'],
  ['minutes per work', 'once'],
]);

/** The word that stands now for what was `written` at the beginning of a phrase of a block, or in a phrase of a rule; null where there is none. */
export const renamedWord = (place: BlockKind | PhraseRule, written: string): string | null =>
  renamed.get(`${place} ${written}`) ?? null;

/** What is wrong where an old word stands, one token or two; null for any other. */
export function oldWord(place: BlockKind | PhraseRule, tokens: readonly [IToken, ...IToken[]]): Problem | null {
  const written = tokens.map(({ image }) => image).join(' ');
  const now = renamedWord(place, written);
  if (now === null) return null;
  const range = spanOf(rangeOf(tokens[0]), rangeOf(tokens.at(-1) ?? tokens[0]));
  return problemAt('unexpectedWord', range, `\`${written}\` is now called \`${now}\`. Write \`${now}\`.`);
}
