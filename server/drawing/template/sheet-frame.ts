/** What is on every sheet of a template around its picture: which sheet it is, what it rests on, bars both ways. */
import { movedItems } from '../page/moved-items.ts';
import type { PageItem } from '../page/page-model.ts';
import { chain } from '../page/path-steps.ts';
import { paperSizes } from '../page/paper-sizes.ts';
import type { Typefaces } from '../page/typeface.ts';
import { type Block, paragraph, stacked } from '../print/blocks.ts';
import { barItems, type CheckBar, checkBar } from '../sheet/check-bar.ts';
import { textAt } from '../sheet/sheet-lines.ts';
import { lineNames, type Template } from './template.ts';
import { axisLook, lineLooks, scribeLook } from './template-items.ts';

/** The picture keeps this far from the paper's edges; below it stands the foot. Left is wider, for the upright bar. */
const margins = { left: 13, right: 10, top: 10, bottom: 8 };
const barThickness = 2.2;
const besideBar = 6;
const underPicture = 3.5;
/** Bar, its words and the key of the lines. */
const rightFootHeight = 19;
const sizes = { sheet: 3.6, text: 2.7 } as const;

export interface SheetFrame {
  readonly width: number;
  readonly height: number;
  /** Where the picture lies on the paper. */
  readonly picture: { readonly left: number; readonly top: number; readonly width: number; readonly height: number };
  readonly footTop: number;
}

/** The frame of every sheet on one paper, its foot high enough for the longest words. */
export function sheetFrame(
  { width, height }: { readonly width: number; readonly height: number },
  template: Template,
  typefaces: Typefaces,
): SheetFrame {
  const footTop = height - margins.bottom - footHeight(template, width, typefaces);
  const picture = {
    left: margins.left,
    top: margins.top,
    width: width - margins.left - margins.right,
    height: footTop - underPicture - margins.top,
  };
  return { width, height, picture, footTop };
}

/** A sheet as large as its picture needs, and no smaller than A4 in width or a bar in height. */
export function frameAround(
  picture: { readonly width: number; readonly height: number },
  template: Template,
  typefaces: Typefaces,
): SheetFrame {
  const width = Math.max(picture.width + margins.left + margins.right, paperSizes.A4.width);
  const foot = footHeight(template, width, typefaces);
  const height =
    margins.top + Math.max(picture.height, checkBar(template.units).length) + underPicture + foot + margins.bottom;
  return sheetFrame({ width, height }, template, typefaces);
}

const footHeight = (template: Template, width: number, typefaces: Typefaces): number =>
  Math.max(footText(template, 'sheet 888 of 888 · row 88, column 88', width, typefaces).height, rightFootHeight);

/** Foot and bars; `sheet` says which sheet this is. */
export function frameItems(frame: SheetFrame, template: Template, sheet: string, typefaces: Typefaces): PageItem[] {
  const bar = checkBar(template.units);
  const left = frame.width - margins.right - bar.length;
  const top = frame.footTop;
  return [
    ...movedItems(footText(template, sheet, frame.width, typefaces).items, margins.left, top),
    ...barItems(bar, { x: left, y: top + 1 }, barThickness),
    textAt(
      `Bars of ${bar.name}: measure both before cutting; ${bar.units}`,
      { x: left, y: top + 6.4 },
      { size: sizes.text, look: 'strong' },
    ),
    ...key(template, left, top + 11),
    ...uprightBar(frame, bar),
  ];
}

function footText(template: Template, sheet: string, width: number, typefaces: Typefaces): Block {
  const room = width - margins.left - margins.right - checkBar(template.units).length - besideBar;
  const look = { size: sizes.text };
  const strong = { ...look, look: 'strong' };
  return stacked([
    paragraph(template.heading, { size: sizes.sheet, look: 'strong' }, room, typefaces),
    paragraph(`${sheet} · full size · seen from the ${template.seenFrom}`, strong, room, typefaces),
    paragraph(template.origin, look, room, typefaces),
    ...template.assumptions.map((line) => paragraph(line, look, room, typefaces)),
    paragraph(template.check, strong, room, typefaces),
  ]);
}

/** How each line is drawn, two beside one another. */
function key(template: Template, left: number, top: number): PageItem[] {
  const entries = [
    ...template.lines.map(({ kind }) => [lineLooks[kind], lineNames[kind]] as const),
    ...(template.scribe.length > 0 ? [[scribeLook, 'scribe line'] as const] : []),
    ...(template.axes.length > 0 ? [[axisLook, 'middle of a strip'] as const] : []),
  ];
  return entries.flatMap(([look, name], index): PageItem[] => {
    const x = left + (index % 2) * 50;
    const y = top + Math.floor(index / 2) * 4.4;
    const steps = chain([
      { x, y },
      { x: x + 18, y },
    ]);
    return [{ kind: 'path', look, steps, facts: {} }, textAt(name, { x: x + 20, y: y + 1 }, { size: sizes.text })];
  });
}

const uprightBar = ({ picture }: SheetFrame, bar: CheckBar): PageItem[] =>
  barItems(bar, { x: margins.left - 7.5, y: picture.top + (picture.height - bar.length) / 2 }, barThickness, true);
