/** Printed sheets of designs, for tests, and the boxes that their texts take. */
import { analyse } from '../../server/analyse.ts';
import {
  flatItems,
  type Page,
  type PageFile,
  type PageItem,
  type TextItem,
} from '../../server/drawing/page/page-model.ts';
import { textWidth, type Typefaces } from '../../server/drawing/page/typeface.ts';
import type { PrintPaper } from '../../server/drawing/print/page-frame.ts';
import { printSheet } from '../../server/drawing/print/print-sheet.ts';
import type { PlanStock, ShopPlan } from '../../server/shop/shop-plan.ts';
import { planAtSight } from '../plan-at-sight.ts';

export interface Printed {
  readonly plan: ShopPlan;
  readonly file: PageFile;
}

/** The sheet of a text; its sticks are laid out here one kind a stick, since no layout depends on how few they are. */
export function printed(
  text: string,
  typefaces: Typefaces,
  paper: PrintPaper = 'A4',
  more: Partial<ShopPlan> = {},
): Printed {
  const analysis = analyse(text);
  const plan = { ...planAtSight(analysis, 'design.lap'), ...more };
  const withSticks = { ...plan, stock: more.stock ?? plainSticks(plan) };
  return { plan: withSticks, file: printSheet(withSticks, analysis, paper, typefaces) };
}

function plainSticks({ strips, pieces }: ShopPlan): PlanStock[] {
  const kinds = [...strips, ...pieces];
  return [...new Set(kinds.map(({ stock }) => stock))].map((stock) => {
    const own = kinds.filter((kind) => kind.stock === stock);
    return {
      stock,
      objective: 'sticks',
      needMm: 0,
      kerfMm: 3,
      endTrimMm: 5,
      breathMm: { cut: 0.1, stick: 2 },
      sticks: own.map(({ mark, lengthMm }) => ({
        lengthMm: 2 * lengthMm + 30,
        cuts: [{ mark, lengthMm, n: 2 }],
        count: 3,
        onHand: false,
        offcutMm: 17,
      })),
      sticksUsed: 3 * own.length,
      stickMm: 0,
      value: own.length,
      bound: own.length,
      proven: false,
      length: null,
      wastePct: 12.5,
      cost: null,
      currency: null,
      leftOut: [],
      buy: own.map(({ lengthMm }) => ({
        lengthMm: 2 * lengthMm + 30,
        count: 3,
        rejects: 0,
        price: null,
        cost: null,
      })),
      rack: [],
      keep: null,
      problems: [],
    };
  });
}

export interface TextBox {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Heights of letters over and under the base line, in sizes: enough for capitals, figures and brackets. */
const rise = 0.7;
const fall = 0.12;

/** The box of a text that stands level or upright. */
export function boxOf(item: TextItem, typefaces: Typefaces): TextBox {
  const { text, at, size, anchor = 'start', turn = 0 } = item;
  const width = textWidth(text, item, typefaces);
  const before = { start: 0, middle: 0.5, end: 1 }[anchor] * width;
  return turn === 0
    ? { text, left: at.x - before, right: at.x - before + width, top: at.y - rise * size, bottom: at.y + fall * size }
    : { text, left: at.x - rise * size, right: at.x + fall * size, top: at.y + before - width, bottom: at.y + before };
}

/** Texts of a page outside its pictures, where marks lie as the wood does. */
export function laidTexts(page: Page, typefaces: Typefaces): TextBox[] {
  const outside = (items: readonly PageItem[]): PageItem[] =>
    items.flatMap((item) => (item.kind === 'group' ? (item.name === 'picture' ? [] : outside(item.items)) : [item]));
  return [...flatItems(outside(page.items))]
    .filter((item) => item.kind === 'text' && item.text.trim() !== '')
    .map((item) => boxOf(item as TextItem, typefaces));
}

export const textsOf = (page: Page): string[] =>
  [...flatItems(page.items)].flatMap((item) => (item.kind === 'text' ? [item.text] : []));

/** Pairs of texts that lie over one another by more than a hair (0.05 mm) both ways. */
export function overlaps(boxes: readonly TextBox[]): string[] {
  const hair = 0.05;
  return boxes.flatMap((a, index) =>
    boxes
      .slice(index + 1)
      .filter(
        (b) =>
          Math.min(a.right, b.right) - Math.max(a.left, b.left) > hair &&
          Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > hair,
      )
      .map((b) => `“${a.text}” and “${b.text}”`),
  );
}

/** Texts that leave the printable part of a page: 5 mm from its edges (common practice of office printers). */
export const outOfPage = (page: Page, boxes: readonly TextBox[]): string[] =>
  boxes
    .filter(({ left, right, top, bottom }) => left < 5 || top < 5 || right > page.width - 5 || bottom > page.height - 5)
    .map(({ text }) => text);
