/** The word under an offset, as the lexer tells words apart. */
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

/** The word that holds `offset`, its end included. */
export function wordAt(text: string, offset: number): Word | null {
  return wordsOf(text).find(({ range }) => range.start <= offset && offset <= range.end) ?? null;
}
