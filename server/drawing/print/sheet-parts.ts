/** The page of each way in which a sheet is cut: where its boards lie, counted from the lower left corner. */
import { counted, figure, words } from '../../../grammar/words.ts';
import { flattenContour } from '../../geometry/flatten-path.ts';
import { add, type Point, turned } from '../../geometry/point.ts';
import { boundsOf, middleOfBounds } from '../../geometry/polygons.ts';
import { sheetsStanding } from '../../shop/writers/text/object-text.ts';
import type { PlanSheet } from '../../shop/sections/work-sections.ts';
import { angleText, fixed } from '../../words/figures.ts';
import { area, rectangle, textAt } from '../sheet/sheet-lines.ts';
import { type Block, blockOf, space } from './blocks.ts';
import { asPart, type FlowPart, type Section } from './flow.ts';
import type { PrintContext } from './print-context.ts';
import { remarks } from './remarks.ts';
import { printTable, type PrintColumn } from './table.ts';

/** Share of a page that the picture may take. */
const pictureShare = 0.5;
const letters = 4;

type Place = PlanSheet['places'][number];

export const sheetSections = (height: number, context: PrintContext): Section[] =>
  context.plan.sheets
    .filter(({ places }) => places.length > 0)
    .map((sheet) => ({
      title: `Sheet ${sheet.layout}`,
      part: 2,
      parts: [
        asPart(picture(sheet, height * pictureShare, context)),
        asPart(space(2)),
        ...remarks(sheetLines(sheet, context), context),
        asPart(space(2)),
        placeTable(sheet, context),
      ],
    }));

function sheetLines(sheet: PlanSheet, { say }: PrintContext): string[] {
  const { layout, widthMm, heightMm, marginMm, kerfMm, count, usedPct } = sheet;
  return [
    say(
      words`${layout}, ${figure.size([widthMm, heightMm])}, seen from its upper face; not to scale. The inner line is the margin of ${figure.length(marginMm)}; a saw cut of ${figure.fine(kerfMm)} lies between any two.`,
    ),
    `${counted(count, 'sheet')} to cut like this; ${fixed(usedPct, 1)} % of each is used; ${sheetsStanding(sheet)}.`,
  ];
}

/** Every board as it lies, with its name. */
function picture(sheet: PlanSheet, most: number, { width, drawn }: PrintContext): Block {
  const { widthMm, heightMm, marginMm, places } = sheet;
  const scale = Math.min(width / widthMm, most / heightMm);
  const onPaper = ({ x, y }: Point): Point => ({ x: x * scale, y: (heightMm - y) * scale });
  const boards = places.flatMap(({ board, move }) => {
    const outline = drawn.design.boards.find(({ name }) => name === board)?.outline;
    if (!outline) return [];
    const rings = outline.contours.map((contour) =>
      flattenContour(contour).map((point) => onPaper(add(turned(point, move.turn), { x: move.dx, y: move.dy }))),
    );
    const { x, y } = middleOfBounds(boundsOf(rings.flat()));
    return [
      ...rings.map((ring) => area('outline', ring, { board })),
      textAt(board, { x, y: y + letters / 3 }, { size: letters, anchor: 'middle', look: 'strong halo' }),
    ];
  });
  const inside = rectangle(
    marginMm * scale,
    marginMm * scale,
    (widthMm - 2 * marginMm) * scale,
    (heightMm - 2 * marginMm) * scale,
  );
  const items = [area('rule', rectangle(0, 0, widthMm * scale, heightMm * scale)), area('rule', inside), ...boards];
  const facts = { sheet: sheet.layout, scale: String(scale) };
  return blockOf(heightMm * scale, [{ kind: 'group', name: 'picture', facts, items, clip: null }]);
}

/** The origin of each outline, from the sheet's lower left corner. */
function placeTable({ places }: PlanSheet, { figures, width, typefaces }: PrintContext): FlowPart {
  const columns: PrintColumn<Place>[] = [
    { title: '', tick: true },
    { title: 'board', strong: true, cell: ({ board }) => board },
    { title: 'origin, from the left', align: 'right', cell: ({ move }) => figures.length(move.dx) },
    { title: 'from below', align: 'right', cell: ({ move }) => figures.length(move.dy) },
    { title: 'turned', align: 'right', cell: ({ move }) => angleText(move.turn) },
  ];
  return printTable('Boards on the sheet', columns, places, width, typefaces);
}
