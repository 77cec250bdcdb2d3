/** Sheets as the plan writes them: one entry for each way in which sheets of a stock are cut. Lengths mm, angles degrees. */
import { contourArea } from '../../geometry/measure-path.ts';
import { sum } from '../../geometry/numbers.ts';
import { boundsOf } from '../../geometry/polygons.ts';
import { flattenContour } from '../../geometry/flatten-path.ts';
import { placeTolerance, rounded } from '../../geometry/tolerance.ts';
import type { Board } from '../../design/work-model.ts';
import { planAngle, planLength } from '../sections/plan-rounding.ts';
import type { PlanSheet } from '../sections/work-sections.ts';
import type { FilledSheet } from './fill-sheets.ts';
import { type NestedSheet, unitsPerMm } from './nest-sheets.ts';

export const planSheets = (nested: readonly NestedSheet[]): PlanSheet[] => nested.flatMap(planSheet);

function planSheet(nested: NestedSheet): PlanSheet[] {
  const { sheet, objective, packing } = nested;
  return packing.sheets.map((filled, index): PlanSheet => {
    const { width = 0, height = 0, price = null } = sheet.sizes[filled.size] ?? {};
    const boards = boardsOn(filled, nested);
    return {
      sheet: sheet.name,
      layout: layoutName(nested, index),
      widthMm: planLength(width),
      heightMm: planLength(height),
      kerfMm: planLength(sheet.kerf),
      marginMm: planLength(sheet.margin),
      turns: sheet.turns.map(planAngle),
      count: filled.count,
      pieces: distinctBoards(boards),
      places: filled.places.map(({ turn, x, y }, place) => ({
        board: boards[place]?.name ?? '',
        outline: boards[place]?.outline.name ?? '',
        move: { dx: planLength(x / unitsPerMm), dy: planLength(y / unitsPerMm), turn: planAngle(turn), mirror: false },
      })),
      usedPct: rounded((100 * sum(boards.map(boardArea))) / (width * height), 1),
      objective,
      value: packing.value,
      bound: packing.bound,
      proven: packing.value <= packing.bound + placeTolerance,
      price: price && price.amount,
      cost: price && filled.count * price.amount,
      currency: price && price.currency,
      problems:
        index > 0
          ? []
          : nested.homeless.map(
              (board) => `board ${board.name}: larger than every sheet of ${sheet.name}; it is not laid out.`,
            ),
    };
  });
}

/** The name that a layout is drawn by: that of the sheet, with a number where there are several. */
export const layoutName = ({ sheet, packing }: NestedSheet, index: number): string =>
  packing.sheets.length > 1 ? `${sheet.name}_${index + 1}` : sheet.name;

export const boardsOn = ({ places }: FilledSheet, { boards }: NestedSheet): Board[] =>
  places.flatMap(({ kind }) => boards[kind]?.board ?? []);

const boardArea = ({ outline }: Board): number => sum(outline.contours.map(contourArea));

/** Each board once, with how many of it one sheet gives. */
const distinctBoards = (boards: readonly Board[]): PlanSheet['pieces'] =>
  [...new Set(boards)].map((board) => {
    const { left, right, bottom, top } = boundsOf(board.outline.contours.flatMap(flattenContour));
    const n = boards.filter((other) => other === board).length;
    return { what: board.name, widthMm: planLength(right - left), heightMm: planLength(top - bottom), n };
  });
