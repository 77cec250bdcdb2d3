/** The words of a text, as the lexer tells them apart. */
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import { tokenize } from '../../../grammar/vocabulary/tokens.ts';

export interface Word {
  readonly text: string;
  readonly range: SourceRange;
}

/** All tokens but comments, in order. */
export function wordsOf(text: string): Word[] {
  return tokenize(text).tokens.map(({ image, startOffset }) => ({
    text: image,
    range: { start: startOffset, end: startOffset + image.length },
  }));
}
