/** One phrase on one line: its words with the canonical spaces between. */
import { tokenMatcher } from 'chevrotain';
import type { IToken } from 'chevrotain';
import type { SyntaxTree } from '../tree/syntax-tree.ts';
import { nodesOf } from '../tree/walk-tree.ts';
import { Comma, LeftBracket, RightBracket } from '../vocabulary/tokens.ts';

/** Offsets of things whose spaces depend on what they mean. */
export interface TightPlaces {
  /** First offsets of what a sign stands before: `-x`, not `- x`. */
  readonly signed: ReadonlySet<number>;
  /** First offsets of the names of called functions: `sqrt(2)`, not `sqrt (2)`. */
  readonly called: ReadonlySet<number>;
}

/** Finds every sign and call of a tree, wherever in it they stand. */
export const tightPlaces = (tree: SyntaxTree): TightPlaces => ({
  signed: new Set(nodesOf(tree, 'negation').map(({ operand }) => operand.range.start)),
  called: new Set(nodesOf(tree, 'call').map(({ name }) => name.range.start)),
});

/** The words of a phrase on one line. */
export function printPhrase(tokens: readonly IToken[], places: TightPlaces): string {
  return tokens
    .map((token, index) => {
      const before = tokens[index - 1];
      const space = before && !isTight(before, token, places) ? ' ' : '';
      return space + printWord(token);
    })
    .join('');
}

/** A mixed fraction has one space; text keeps its own. */
const printWord = ({ image }: IToken): string => (image.startsWith('"') ? image : image.replace(/ +/g, ' '));

function isTight(before: IToken, token: IToken, { signed, called }: TightPlaces): boolean {
  if (tokenMatcher(token, Comma) || tokenMatcher(token, RightBracket) || tokenMatcher(before, LeftBracket)) return true;
  if (tokenMatcher(token, LeftBracket) && called.has(before.startOffset)) return true;
  return signed.has(token.startOffset);
}
