/** What is on every printed page around its body: which part it is, where it comes from, what it takes for granted, how to check it. */
import { figure, words } from '../../../grammar/words.ts';
import { gridsMade } from '../../shop/sections/plan-parts.ts';
import type { LengthUnit } from '../../design/design-model.ts';
import { movedItems } from '../page/moved-items.ts';
import type { Page, PageItem } from '../page/page-model.ts';
import { paperSizes } from '../page/paper-sizes.ts';
import { textWidth } from '../page/typeface.ts';
import { barItems, checkBar } from '../sheet/check-bar.ts';
import { area, openLine, rectangle, textAt } from '../sheet/sheet-lines.ts';
import { type Block, fittingSize, paragraph, stacked } from './blocks.ts';
import type { Body } from './flow.ts';
import type { PrintContext } from './print-context.ts';
import { letterSizes } from './print-context.ts';

/** Papers that the sheet is laid out for. */
export type PrintPaper = 'A4' | 'letter';

export const partNames = { 1: 'to the lattice', 2: 'after measuring' } as const;

/** Left is wider: holes for a ring binder, and the upright bar. */
const margins = { left: 20, right: 12, top: 11, bottom: 9 };
const headHeight = 15;
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
    items: [
      ...head(frame, body, context),
      ...items,
      ...foot(frame, number, count, context),
      ...uprightBar(frame, context.plan.units),
    ],
  };
}

function head({ width }: PageFrame, { title, part }: Body, { typefaces }: PrintContext): PageItem[] {
  const right = width - margins.right;
  const tag = partNames[part];
  const tagLook = { size: letterSizes.figure, look: part === 1 ? 'strong' : 'strong reversed' };
  const tagWidth = textWidth(tag, tagLook, typefaces) + 8;
  const partText = `Part ${part}`;
  const partLook = { size: letterSizes.figure };
  const tagLeft = right - tagWidth;
  const titleRoom = tagLeft - 3 - textWidth(partText, partLook, typefaces) - 4 - margins.left;
  const look = { size: letterSizes.mark, look: 'strong' };
  const base = margins.top + 8;
  return [
    textAt(title, { x: margins.left, y: base }, { ...look, size: fittingSize(title, look, titleRoom, typefaces) }),
    textAt(partText, { x: tagLeft - 3, y: base - 1.2 }, { ...partLook, anchor: 'end' }),
    area(part === 1 ? 'box' : 'arrow', rectangle(tagLeft, base - 7, tagWidth, 8.4)),
    textAt(tag, { x: right - tagWidth / 2, y: base - 1.2 }, { ...tagLook, anchor: 'middle' }),
    openLine('outline', [
      { x: margins.left, y: base + 3 },
      { x: right, y: base + 3 },
    ]),
  ];
}

/** The foot's lines, as high as they need to be: nothing of them is ever left out. */
function footText(context: PrintContext): Block {
  const { plan, say, width, typefaces } = context;
  const room = width - checkBar(plan.units).length - textBesideBar;
  const look = { size: letterSizes.small };
  const strong = { ...look, look: 'strong' };
  const title = plan.title === null ? '' : `${plan.title} · `;
  const text = stacked([
    paragraph(`${title}${plan.source} · text ${plan.revision}`, strong, room, typefaces),
    ...plan.grids.map(({ name, sideMm }) =>
      paragraph(
        say(words`${name}: face ${facesOf(name, context)}, pitch ${figure.length(sideMm)}`),
        look,
        room,
        typefaces,
      ),
    ),
    paragraph(kerfText(context), look, room, typefaces),
    ...plan.grids.map((grid) =>
      paragraph(say(words`Check: ${checkWords(grid)} ${figure.length(grid.check.mm)}`), strong, room, typefaces),
    ),
  ]);
  return { ...text, height: Math.max(text.height, barFootHeight) };
}

const barFootHeight = 15;

/** The strips' faces of one grid. */
function facesOf(grid: string, { drawn, say }: PrintContext): string {
  const families = gridsMade(drawn.design).find(({ name }) => name === grid)?.grid.families ?? [];
  return [...new Set(families.map(({ stock }) => say(words`${figure.fine(stock.face)}`)))].join(' and ');
}

function kerfText({ plan, say }: PrintContext): string {
  const stated = plan.benches.filter(({ kerfMm }) => kerfMm !== null);
  if (stated.length === 0) return 'kerf: not stated';
  return stated.map(({ name, kerfMm }) => say(words`kerf ${figure.fine(kerfMm ?? 0)} (${name})`)).join(', ');
}

function foot(frame: PageFrame, number: number, count: number, { plan, width }: PrintContext): PageItem[] {
  const bar = checkBar(plan.units);
  const top = frame.height - margins.bottom - frame.foot.height;
  const left = margins.left + width - bar.length;
  return [
    openLine('rule', [
      { x: margins.left, y: top - 1.5 },
      { x: margins.left + width, y: top - 1.5 },
    ]),
    ...movedItems(frame.foot.items, margins.left, top),
    ...barItems(bar, { x: left, y: top + 1 }, barThickness),
    textAt(`Bars of ${bar.name}: measure both; ${bar.units}`, { x: left, y: top + 7.6 }, { size: letterSizes.small }),
    textAt(
      `page ${number} of ${count}`,
      { x: left + bar.length, y: top + 13 },
      { size: letterSizes.heading, look: 'strong', anchor: 'end' },
    ),
  ];
}

/** The same bar standing in the left margin. */
function uprightBar({ body }: PageFrame, units: LengthUnit): PageItem[] {
  const bar = checkBar(units);
  return barItems(bar, { x: margins.left - 9, y: body.top + (body.height - bar.length) / 2 }, barThickness, true);
}

/** A grid of one pitch is checked over ten cells. */
const checkWords = ({ name, check, tenSidesMm }: PrintContext['plan']['grids'][number]): string =>
  check.mm === tenSidesMm ? `10 cells of ${name}` : `${name}, ${check.what}`;
