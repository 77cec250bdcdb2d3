/** Text to tree. */
import { problemCatalogue } from '../problems/problem-catalogue.ts';
import type { Problem } from '../problems/problem.ts';
import { type PhrasePlace, readBlocks } from './read-blocks.ts';
import { unclosedText, unknownUnit, unreadableCharacters } from './syntax-problems.ts';
import type { SyntaxTree } from '../tree/syntax-tree.ts';
import { Text, tokenize, UnknownQuantity } from '../vocabulary/tokens.ts';
import { lineColumnAt, lineStartsOf, rangeOf, type SourceRange } from '../tree/source-range.ts';

/** From `#` to the end of its line, `#` included in `text`. */
export interface CommentText {
  readonly text: string;
  readonly range: SourceRange;
}

export interface ParsedDocument {
  readonly tree: SyntaxTree;
  readonly comments: readonly CommentText[];
  /** In order of place. */
  readonly phrases: readonly PhrasePlace[];
  /** In order of place. */
  readonly problems: readonly Problem[];
}

/**
 * Reads any text. Never throws and always gives a tree; what could not be read is left out of it and in `problems`.
 * All ranges are counted from `begin`, which is 0 but for used files.
 */
export function parseDocument(text: string, begin = 0): ParsedDocument {
  const { tokens, comments, errors } = tokenize(text, begin);
  const read = readBlocks(tokens);
  const inText = [
    ...errors.map((error) => unreadableCharacters(error, text, begin)),
    ...tokens.flatMap((token) => {
      if (token.tokenType === Text && !/^"(?:[^"\\]|\\.)*"$/.test(token.image)) return [unclosedText(token)];
      return token.tokenType === UnknownQuantity ? [unknownUnit(token)] : [];
    }),
  ].filter(
    ({ range }) =>
      !read.skipped.some(({ start, end }) => start <= range.start && range.end <= end) &&
      !read.problems.some((problem) => problem.range.start === range.start),
  );
  const problems = [...inText, ...read.problems];
  problems.sort((first, second) => first.range.start - second.range.start || first.range.end - second.range.end);
  return {
    tree: {
      declarations: read.declarations,
      unreadNames: read.unreadNames,
      unnamed: read.unnamed,
      range: { start: begin, end: begin + text.length },
    },
    phrases: read.phrases,
    comments: comments.map((token) => ({ text: token.image, range: rangeOf(token) })),
    problems: withoutConsequences(problems, lineStartsOf(text), begin),
  };
}

/** `problems`, in order, without those that stand behind an unreadable character on its line: it has brought them about. */
function withoutConsequences(problems: readonly Problem[], lineStarts: readonly number[], begin: number): Problem[] {
  let spoilt = -1;
  return problems.filter(({ code, range }) => {
    const { line } = lineColumnAt(lineStarts, range.start - begin);
    if (line === spoilt) return false;
    if (code === problemCatalogue.unreadableCharacter.code) spoilt = line;
    return true;
  });
}
