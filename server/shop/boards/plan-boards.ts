/** Boards as the plan writes them: what to saw from, trammel, areas, mass. Lengths mm, areas mm², masses g. */
import type { Design } from '../../design/design.ts';
import type { Board } from '../../design/work-model.ts';
import { flattenContour } from '../../geometry/flatten-path.ts';
import { contourArea, contourLength } from '../../geometry/measure-path.ts';
import { sum } from '../../geometry/numbers.ts';
import { boundsOf } from '../../geometry/polygons.ts';
import { gramsPerCubicMillimetre } from '../mass/mass.ts';
import type { PlanBoard } from '../sections/object-sections.ts';
import { planArea, planLength } from '../sections/plan-rounding.ts';
import { trammelOf } from './trammel.ts';

/** Left round the outline on the piece it is sawn from: common practice. */
const roughAllowance = 5;

export const planBoards = ({ boards, work }: Design): PlanBoard[] =>
  boards.map((board) => planBoard(board, work?.copies ?? 1));

function planBoard({ name, outline, sheet, edge, pivot, copies }: Board, workCopies: number): PlanBoard {
  const { left, right, bottom, top } = boundsOf(outline.contours.flatMap(flattenContour));
  const [width, height] = [right - left, top - bottom];
  const area = sum(outline.contours.map(contourArea));
  const perimeter = sum(outline.contours.map(contourLength));
  const trammel = trammelOf(outline.contours);
  const turning = pivot ?? trammel?.centre ?? null;
  return {
    name,
    sheet: sheet.name,
    thicknessMm: planLength(sheet.thickness),
    copies,
    quantity: copies * workCopies,
    widthMm: planLength(width),
    heightMm: planLength(height),
    areaMm2: planArea(area),
    perimeterMm: planLength(perimeter),
    edgeAreaMm2: planArea(perimeter * sheet.thickness),
    massG: sheet.density === null ? null : planLength(area * sheet.thickness * sheet.density * gramsPerCubicMillimetre),
    edge: edge.kind,
    edgeSizeMm: edge.kind === 'square' ? null : planLength(edge.size),
    blankMm: trammel
      ? square(Math.max(width, height))
      : [planLength(width + 2 * roughAllowance), planLength(height + 2 * roughAllowance)],
    pivot: turning && { xMm: planLength(turning.x), yMm: planLength(turning.y) },
    trammel: trammel && {
      kind: trammel.kind,
      settingsMm:
        trammel.kind === 'circle' ? [planLength(trammel.long)] : [planLength(trammel.long), planLength(trammel.short)],
    },
  };
}

/** A round board is turned on a pivot, so it comes from a square whose corners clear alike. */
function square(size: number): [number, number] {
  const side = planLength(size + 2 * roughAllowance);
  return [side, side];
}
