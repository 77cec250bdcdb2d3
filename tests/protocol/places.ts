/** Places of a text in the protocol's terms, found by the words that stand there. */
import type { Position, Range } from 'vscode-languageserver/node';

/** Position of the first character of the `occurrence`th (from 1) `words` in `text`. Throws when there are fewer. */
export function positionOf(text: string, words: string, occurrence = 1): Position {
  return positionAt(text, offsetOf(text, words, occurrence));
}

export function rangeOf(text: string, words: string, occurrence = 1): Range {
  const start = offsetOf(text, words, occurrence);
  return { start: positionAt(text, start), end: positionAt(text, start + words.length) };
}

function offsetOf(text: string, words: string, occurrence: number): number {
  let offset = -1;
  for (let round = 0; round < occurrence; round++) {
    offset = text.indexOf(words, offset + 1);
    if (offset < 0) throw new Error(`The text has no ${occurrence}. "${words}"`);
  }
  return offset;
}

function positionAt(text: string, offset: number): Position {
  const lines = text.slice(0, offset).split('\n');
  return { line: lines.length - 1, character: lines.at(-1)?.length ?? 0 };
}
