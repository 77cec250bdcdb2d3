/** Blocks: what is never cut in two on the printed sheet. A block's items stand from its own upper left corner. */
import { append } from '../../geometry/numbers.ts';
import { movedItems } from '../page/moved-items.ts';
import type { PageItem, TextLook } from '../page/page-model.ts';
import type { Typefaces } from '../page/typeface.ts';
import { textWidth } from '../page/typeface.ts';
import { textAt } from '../sheet/sheet-lines.ts';
import { wrapText } from './wrap-text.ts';

export interface Block {
  readonly height: number;
  readonly items: readonly PageItem[];
  /** Never the last of its page unless nothing follows. */
  readonly keepsWithNext: boolean;
}

export const blockOf = (height: number, items: readonly PageItem[], keepsWithNext = false): Block => ({
  height,
  items,
  keepsWithNext,
});

/** Base lines stand this far apart, and the first this far below the block's top, in heights of the letters. */
export const leading = 1.32;
export const ascent = 1.0;

/** A paragraph in `width` millimetres. */
export function paragraph(text: string, look: TextLook, width: number, typefaces: Typefaces): Block {
  const lines = wrapText(text, look, width, typefaces);
  const items = lines.map((line, index) => textAt(line, { x: 0, y: (ascent + index * leading) * look.size }, look));
  return blockOf(lines.length * leading * look.size, items);
}

/** Blocks under one another as one block. */
export function stacked(blocks: readonly Block[], gap = 0): Block {
  let top = 0;
  const items: PageItem[] = [];
  for (const [index, block] of blocks.entries()) {
    if (index > 0) top += gap;
    append(items, movedItems(block.items, 0, top));
    top += block.height;
  }
  return blockOf(top, items);
}

/** A block moved to the right by `dx`. */
export const indented = (block: Block, dx: number): Block => ({ ...block, items: movedItems(block.items, dx, 0) });

/** Room between the blocks of a page. */
export const space = (height: number): Block => blockOf(height, []);

/** The largest size up to `size` at which `text` is no wider than `width`. */
export function fittingSize(text: string, look: TextLook, width: number, typefaces: Typefaces): number {
  const natural = textWidth(text, look, typefaces);
  return natural <= width ? look.size : (look.size * width) / natural;
}
