/** Typefaces: which letters each has and how wide they are, so that a layout knows its texts' widths before anything is written. */
import { create } from '@cantoo/fontkit';
import { saysOf, type TextLook } from './page-model.ts';

/** One font file, ready to measure with and to be put into a document. */
export interface Typeface {
  /** Names the face inside a document. */
  readonly name: string;
  readonly bytes: Uint8Array;
  /** Advance of a letter in ems, null where the face lacks it. */
  readonly advanceOf: (codePoint: number) => number | null;
}

/** Faces in the order in which a letter is looked for, for plain and for strong text. */
export interface Typefaces {
  readonly plain: readonly [Typeface, ...Typeface[]];
  readonly strong: readonly [Typeface, ...Typeface[]];
}

/** Letters of one text that come from one face. */
export interface TextRun {
  readonly face: Typeface;
  readonly text: string;
  /** Ems. */
  readonly width: number;
}

/** Reads a TrueType font; throws if `bytes` are none, which is a fault of the package, not of the design. */
export function typefaceOf(name: string, bytes: Uint8Array): Typeface {
  const font = create(bytes);
  if ('fonts' in font) throw new Error(`${name} is a collection of fonts`);
  const known = new Map<number, number | null>();
  const measure = (codePoint: number): number | null =>
    font.hasGlyphForCodePoint(codePoint)
      ? (font.glyphForCodePoint(codePoint)?.advanceWidth ?? 0) / font.unitsPerEm
      : null;
  return {
    name,
    bytes,
    advanceOf(codePoint) {
      const advance = known.get(codePoint) ?? measure(codePoint);
      known.set(codePoint, advance);
      return advance;
    },
  };
}

/** What a letter takes that no face has: the box that is printed in its place. */
const missingAdvance = 0.6;

/** The text cut into runs of one face each; a letter that no face has goes to the first. */
export function runsOf(text: string, look: TextLook, typefaces: Typefaces): TextRun[] {
  const faces = saysOf(look, 'strong') ? typefaces.strong : typefaces.plain;
  const runs: { face: Typeface; text: string; width: number }[] = [];
  for (const letter of text) {
    const codePoint = letter.codePointAt(0) ?? 0;
    const face = faces.find((each) => each.advanceOf(codePoint) !== null) ?? faces[0];
    const width = face.advanceOf(codePoint) ?? missingAdvance;
    const last = runs.at(-1);
    if (last?.face === face) {
      last.text += letter;
      last.width += width;
    } else runs.push({ face, text: letter, width });
  }
  return runs;
}

/** Width of a line of text in millimetres. */
export const textWidth = (text: string, look: TextLook, typefaces: Typefaces): number =>
  runsOf(text, look, typefaces).reduce((total, { width }) => total + width, 0) * look.size;
