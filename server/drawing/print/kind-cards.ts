/** What the cards of strips and of pieces share: the mark, the numbers, and the line of what it is. */
import type { PageItem } from '../page/page-model.ts';
import { textWidth } from '../page/typeface.ts';
import { openLine, textAt } from '../sheet/sheet-lines.ts';
import { type Block, blockOf, fittingSize, paragraph } from './blocks.ts';
import { letterSizes, type PrintContext } from './print-context.ts';

interface KindNumbers {
  readonly mark: string;
  readonly make: number;
  readonly spare: number;
  readonly total: number;
}

const markSize = 11;
const equationSize = 7;
const beforeCut = 2;

/** The head of a card: mark, what it is, and needed + spare = cut. */
export function kindHead(kind: KindNumbers, what: string, { width, typefaces }: PrintContext): Block {
  const { mark, make, spare, total } = kind;
  const look = { size: markSize, look: 'strong' };
  const fittedMark = { ...look, size: fittingSize(mark, look, width * 0.3, typefaces) };
  const equation = `${make} + ${spare} =`;
  const cut = String(total);
  const equationLook = { size: equationSize };
  const cutLook = { size: markSize, look: 'strong' };
  const cutWidth = textWidth(cut, cutLook, typefaces);
  const equationWidth = textWidth(equation, equationLook, typefaces) + beforeCut + cutWidth;
  const left = textWidth(mark, fittedMark, typefaces) + 4;
  const text = paragraph(what, { size: letterSizes.text }, width - left - Math.max(equationWidth, 30) - 4, typefaces);
  const items: PageItem[] = [
    openLine('rule', [
      { x: 0, y: 0 },
      { x: width, y: 0 },
    ]),
    textAt(mark, { x: 0, y: 10.5 }, fittedMark),
    textAt(equation, { x: width - cutWidth - beforeCut, y: 10.5 }, { ...equationLook, anchor: 'end' }),
    textAt(cut, { x: width, y: 10.5 }, { ...cutLook, anchor: 'end' }),
    textAt('needed + spare = cut', { x: width, y: 14.6 }, { size: letterSizes.small, look: 'quiet', anchor: 'end' }),
    ...text.items.map((item) => (item.kind === 'text' ? { ...item, at: { x: left, y: item.at.y + 2 } } : item)),
  ];
  return blockOf(Math.max(16, text.height + 3), items);
}
