/** Text set in lines by the letters' real widths. */
import { append } from '../../geometry/numbers.ts';
import { stepTolerance } from '../../geometry/tolerance.ts';
import type { TextLook } from '../page/page-model.ts';
import { textWidth, type Typefaces } from '../page/typeface.ts';

/** Lines no wider than `width` millimetres: broken at spaces, and inside a word only where the word alone is wider. */
export function wrapText(text: string, look: TextLook, width: number, typefaces: Typefaces): string[] {
  const fits = (line: string): boolean => textWidth(line, look, typefaces) <= width + stepTolerance;
  const lines: string[] = [];
  for (const paragraph of text.split('\n')) {
    let line = '';
    for (const word of paragraph.split(' ')) {
      const longer = line === '' ? word : `${line} ${word}`;
      if (fits(longer)) {
        line = longer;
        continue;
      }
      if (line !== '') lines.push(line);
      const parts = brokenWord(word, fits);
      append(lines, parts.slice(0, -1));
      line = parts.at(-1) ?? '';
    }
    lines.push(line);
  }
  return lines;
}

/** A word in parts that fit; a letter that does not fit by itself stands alone. */
function brokenWord(word: string, fits: (part: string) => boolean): string[] {
  const parts: string[] = [];
  let part = '';
  for (const letter of word) {
    if (part === '' || fits(part + letter)) part += letter;
    else {
      parts.push(part);
      part = letter;
    }
  }
  return [...parts, part];
}
