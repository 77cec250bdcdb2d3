/** The page that goes with a template's sheets: which sheet lies where, which are not printed, how they are put together. */
import { counted } from '../../../grammar/words.ts';
import { flattenContour } from '../../geometry/flatten-path.ts';
import { coarserRing } from '../../geometry/coarser-ring.ts';
import { distance, type Point } from '../../geometry/point.ts';
import { type Bounds, boundsOf, ringOfBounds } from '../../geometry/polygons.ts';
import { movedItems } from '../page/moved-items.ts';
import type { Page, PageItem } from '../page/page-model.ts';
import type { PaperName } from '../page/paper-sizes.ts';
import { ring } from '../page/path-steps.ts';
import type { Typefaces } from '../page/typeface.ts';
import { type Block, paragraph, space, stacked } from '../print/blocks.ts';
import { lengthText } from '../../words/figures.ts';
import { area, openLine, textAt } from '../sheet/sheet-lines.ts';
import { frameItems, type SheetFrame } from './sheet-frame.ts';
import type { Template } from './template.ts';
import { lineLooks } from './template-items.ts';
import type { Sheet, TilePlan } from './tile-plan.ts';

const sizes = { heading: 7, text: 3.4 } as const;
/** Between the words and the map. */
const gap = 6;

/** The map page, in the frame of the sheets. */
export function mapPage(
  frame: SheetFrame,
  template: Template,
  plan: TilePlan,
  paper: PaperName,
  typefaces: Typefaces,
): Page {
  const { picture } = frame;
  const words = howTo(template, plan, paper, picture.width, typefaces);
  const room = { ...picture, top: picture.top + words.height + gap, height: picture.height - words.height - gap };
  const title = 'map of the sheets';
  return {
    width: frame.width,
    height: frame.height,
    title,
    items: [
      ...movedItems(words.items, picture.left, picture.top),
      ...mapItems(template, plan, room),
      ...frameItems(frame, template, `${title}: 1 to ${plan.count}`, typefaces),
    ],
  };
}

function howTo(
  template: Template,
  { count, sheets }: TilePlan,
  paper: PaperName,
  width: number,
  typefaces: Typefaces,
): Block {
  const look = { size: sizes.text };
  const left = sheets.length - count;
  const skipped =
    left === 0
      ? ''
      : ` ${left === 1 ? 'One place on the map has' : `${left} places on the map have`} nothing to show and no sheet.`;
  const lines = [
    `1. Print sheets 1 to ${count} on ${paper} at 100 %, never fitted to the page, and measure both bars on each.${skipped}`,
    '2. Sheet by sheet in order: cut along the solid edge with the cross halves on it, lay that edge on the thin line of the sheet before, over the hatched strip. The crosses of the same name must become whole. Glue.',
    template.axes.length > 0 && template.marks.length > 2
      ? `3. Measure across the glued sheets: ${distances(template)}. They are those of the lattice as it is assumed below; where yours measures differently, write it into the grid and print again.`
      : '3. Measure across the glued sheets what the foot gives to check.',
    ...(template.use === null ? [] : [`4. ${template.use}`]),
  ];
  return stacked(
    [
      paragraph(
        `Template of ${template.heading}: ${counted(count, 'sheet')}`,
        { size: sizes.heading, look: 'strong' },
        width,
        typefaces,
      ),
      space(1),
      ...lines.map((line) => paragraph(line, look, width, typefaces)),
    ],
    1,
  );
}

function distances({ marks, units }: Template): string {
  return marks
    .map((mark, index) => {
      const next = marks[(index + 1) % marks.length] ?? mark;
      return `from ${mark.label} to ${next.label}: ${lengthText(distance(mark.at, next.at), units, 'length')}`;
    })
    .join(', ');
}

interface Room {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

function mapItems(template: Template, { sheets }: TilePlan, room: Room): PageItem[] {
  const all = boundsOf(sheets.flatMap(({ window }) => ringOfBounds(window)));
  const scale = Math.min(room.width / (all.right - all.left), room.height / (all.top - all.bottom));
  const left = room.left + (room.width - (all.right - all.left) * scale) / 2;
  const onMap = ({ x, y }: Point): Point => ({ x: left + (x - all.left) * scale, y: room.top + (all.top - y) * scale });
  return [
    ...sheets.filter(({ number }) => number === null).flatMap(({ window }) => emptyPlace(window, onMap)),
    ...sheets
      .filter(({ number }) => number !== null)
      .map(({ window }) => area('rule', ringOfBounds(window).map(onMap), { window: 'printed' })),
    ...template.lines.map(({ kind, contours }): PageItem => ({
      kind: 'path',
      look: lineLooks[kind],
      steps: contours.flatMap((contour) => ring(coarserRing(flattenContour(contour)).map(onMap))),
      facts: { line: kind },
    })),
    ...template.marks.map(({ label, at }) =>
      textAt(label, { ...onMap(at), y: onMap(at).y + 1.3 }, { size: 3.6, anchor: 'middle', look: 'strong halo' }),
    ),
    ...sheets.flatMap((sheet) => sheetNumber(sheet, onMap, scale)),
  ];
}

/** Dashed and crossed out. */
function emptyPlace(window: Bounds, onMap: (point: Point) => Point): PageItem[] {
  const corners = ringOfBounds(window).map(onMap);
  const [a, b, c, d] = corners;
  return [
    area('hidden', corners, { window: 'empty' }),
    ...(a && b && c && d ? [openLine('hidden', [a, c]), openLine('hidden', [b, d])] : []),
  ];
}

function sheetNumber({ number, window }: Sheet, onMap: (point: Point) => Point, scale: number): PageItem[] {
  const middle = onMap({ x: (window.left + window.right) / 2, y: (window.bottom + window.top) / 2 });
  if (number === null) return [textAt('no sheet', middle, { size: 3, anchor: 'middle', look: 'quiet halo' })];
  const size = Math.min(14, (window.top - window.bottom) * scale * 0.3);
  return [
    textAt(String(number), { ...middle, y: middle.y + size * 0.35 }, { size, anchor: 'middle', look: 'strong halo' }),
  ];
}
