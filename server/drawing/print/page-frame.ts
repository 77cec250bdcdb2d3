/** What stands on every printed page around its body: which sheet it is, where it comes from, what it takes for granted, how to check it. */
import { gridsMade } from '../../shop/sections/plan-parts.ts';
import type { Point } from '../../geometry/point.ts';
import { movedItems } from '../page/moved-items.ts';
import type { Page, PageItem } from '../page/page-model.ts';
import { paperSizes } from '../page/paper-sizes.ts';
import { textWidth } from '../page/typeface.ts';
import { area, openLine, rectangle, textAt } from '../sheet/sheet-lines.ts';
import { type Block, fittingSize, paragraph, stacked } from './blocks.ts';
import type { Body } from './flow.ts';
import type { PrintContext } from './print-context.ts';
import { letterSizes } from './print-context.ts';

/** Papers that the sheet is laid out for. */
export type PrintPaper = 'A4' | 'letter';

export const sheetNames = { 1: 'to the lattice', 2: 'after measuring' } as const;

/** Left is wider: holes for a ring binder, and the upright bar. */
const margins = { left: 20, right: 12, top: 11, bottom: 9 };
const headHeight = 15;
const bar = 100;
const barThickness = 2.6;
const afterBody = 4;
const textBesideBar = 6;

/** The frame of all pages of one print. */
export interface PageFrame {
  readonly width: number;
  readonly height: number;
  /** The body's place and size. */
  readonly body: { readonly left: number; readonly top: number; readonly width: number; readonly height: number };
  readonly foot: Block;
}

export const bodyWidth = (paper: PrintPaper): number => paperSizes[paper].width - margins.left - margins.right;

export function pageFrame(paper: PrintPaper, context: PrintContext): PageFrame {
  const { width, height } = paperSizes[paper];
  const foot = footText(context);
  const top = margins.top + headHeight;
  const bottom = height - margins.bottom - foot.height - afterBody;
  return { width, height, body: { left: margins.left, top, width: context.width, height: bottom - top }, foot };
}

/** A whole page; `number` counts from 1 to `count`. */
export function framedPage(
  frame: PageFrame,
  body: Body,
  items: readonly PageItem[],
  number: number,
  count: number,
  context: PrintContext,
): Page {
  const { width, height } = frame;
  return {
    width,
    height,
    title: body.title,
    items: [...head(frame, body, context), ...items, ...foot(frame, number, count, context), ...uprightBar(frame)],
  };
}

function head({ width }: PageFrame, { title, sheet }: Body, { typefaces }: PrintContext): PageItem[] {
  const right = width - margins.right;
  const tag = sheetNames[sheet];
  const tagLook = { size: letterSizes.figure, look: sheet === 1 ? 'strong' : 'strong reversed' };
  const tagWidth = textWidth(tag, tagLook, typefaces) + 8;
  const sheetText = `Sheet ${sheet}`;
  const sheetLook = { size: letterSizes.figure };
  const tagLeft = right - tagWidth;
  const titleRoom = tagLeft - 3 - textWidth(sheetText, sheetLook, typefaces) - 4 - margins.left;
  const look = { size: letterSizes.mark, look: 'strong' };
  const base = margins.top + 8;
  return [
    textAt(title, { x: margins.left, y: base }, { ...look, size: fittingSize(title, look, titleRoom, typefaces) }),
    textAt(sheetText, { x: tagLeft - 3, y: base - 1.2 }, { ...sheetLook, anchor: 'end' }),
    area(sheet === 1 ? 'box' : 'arrow', rectangle(tagLeft, base - 7, tagWidth, 8.4)),
    textAt(tag, { x: right - tagWidth / 2, y: base - 1.2 }, { ...tagLook, anchor: 'middle' }),
    openLine('outline', [
      { x: margins.left, y: base + 3 },
      { x: right, y: base + 3 },
    ]),
  ];
}

/** The foot's lines, as high as they need to be: nothing of them is ever left out. */
function footText({ plan, drawn, figure, width, typefaces }: PrintContext): Block {
  const room = width - bar - textBesideBar;
  const look = { size: letterSizes.small };
  const strong = { ...look, look: 'strong' };
  const title = plan.title === null ? '' : `${plan.title} · `;
  const text = stacked([
    paragraph(`${title}${plan.source} · text ${plan.revision}`, strong, room, typefaces),
    ...plan.grids.map(({ name, sideMm }) =>
      paragraph(`${name}: face ${facesOf(drawn, name, figure)}, pitch ${figure(sideMm)}`, look, room, typefaces),
    ),
    paragraph(kerfText(plan), look, room, typefaces),
    ...plan.grids.map((grid) =>
      paragraph(`Check: ${checkWords(grid)} ${figure(grid.check.mm)}`, strong, room, typefaces),
    ),
  ]);
  return { ...text, height: Math.max(text.height, barFootHeight) };
}

const barFootHeight = 15;

/** The strips' faces of one grid. */
function facesOf({ design }: PrintContext['drawn'], grid: string, figure: PrintContext['figure']): string {
  const families = gridsMade(design).find(({ name }) => name === grid)?.grid.families ?? [];
  return [...new Set(families.map(({ stock }) => figure(stock.face)))].join(' and ');
}

function kerfText({ benches }: PrintContext['plan']): string {
  const stated = benches.filter(({ kerfMm }) => kerfMm !== null);
  if (stated.length === 0) return 'kerf: not stated';
  return stated.map(({ name, kerfMm }) => `kerf ${(kerfMm ?? 0).toFixed(2)} (${name})`).join(', ');
}

function foot(frame: PageFrame, number: number, count: number, { width }: PrintContext): PageItem[] {
  const top = frame.height - margins.bottom - frame.foot.height;
  const left = margins.left + width - bar;
  return [
    openLine('rule', [
      { x: margins.left, y: top - 1.5 },
      { x: margins.left + width, y: top - 1.5 },
    ]),
    ...movedItems(frame.foot.items, margins.left, top),
    ...ruler(rectangle(left, top + 1, bar, barThickness), (index) =>
      rectangle(left + index * 10, top + 1, 10, barThickness),
    ),
    textAt(`${bar} mm: measure both bars`, { x: left, y: top + 7.6 }, { size: letterSizes.small }),
    textAt(
      `page ${number} of ${count}`,
      { x: left + bar, y: top + 13 },
      { size: letterSizes.heading, look: 'strong', anchor: 'end' },
    ),
  ];
}

/** The same bar standing in the left margin. */
function uprightBar({ body }: PageFrame): PageItem[] {
  const left = margins.left - 9;
  const top = body.top + (body.height - bar) / 2;
  return ruler(rectangle(left, top, barThickness, bar), (index) => rectangle(left, top + index * 10, barThickness, 10));
}

/** Ten fields of ten millimetres, every other one filled. */
function ruler(outline: readonly Point[], field: (index: number) => readonly Point[]): PageItem[] {
  const filled = Array.from({ length: bar / 10 }, (_, index) => index).filter((index) => index % 2 === 0);
  return [area('box', outline, { 'check-mm': bar }), ...filled.map((index) => area('arrow', field(index)))];
}

/** A grid of one pitch is checked over ten cells. */
const checkWords = ({ name, check, tenSidesMm }: PrintContext['plan']['grids'][number]): string =>
  check.mm === tenSidesMm ? `10 cells of ${name}` : `${name}, ${check.what}`;
