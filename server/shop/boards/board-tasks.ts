/** What is done to cut boards. Lengths mm. */
import type { PlanBoard } from '../object-sections.ts';
import type { PlanSheet } from '../work-sections.ts';
import { millimetres } from '../text/figures-text.ts';

/** What is sawn from sheets that are cut alike. */
export function sheetTask({ sheet, layout, widthMm, heightMm, kerfMm, count, pieces }: PlanSheet): string {
  const gives = pieces.map(({ what, n }) => `${n} × ${what}`).join(', ');
  return `${count} × ${sheet}, ${millimetres(widthMm)} × ${millimetres(heightMm)}: ${gives}${count > 1 ? ' from each' : ''}, laid out as in drawing ${layout}, ${millimetres(kerfMm)} between them for the saw.`;
}

/** A board that is laid out on a sheet is sawn from there; any other from a piece of its own. */
export function boardTasks(board: PlanBoard, sheets: readonly PlanSheet[]): string[] {
  const { name, sheet, thicknessMm, quantity, widthMm, heightMm, blankMm, pivot, trammel, edge, edgeSizeMm } = board;
  const isLaidOut = sheets.some(({ pieces }) => pieces.some(({ what }) => what === name));
  return [
    `${name}: ${quantity} of ${sheet}, ${millimetres(thicknessMm)} thick, ${millimetres(widthMm)} × ${millimetres(heightMm)}${isLaidOut ? '' : `, each from a piece ${millimetres(blankMm[0])} × ${millimetres(blankMm[1])}`}.`,
    ...(pivot
      ? [`${name}: pivot at ${millimetres(pivot.xMm)}, ${millimetres(pivot.yMm)}, bored from behind and not through.`]
      : []),
    ...(trammel ? [trammelText(name, trammel)] : []),
    ...(edgeSizeMm === null
      ? []
      : [`${name}: ${edge === 'chamfer' ? 'chamfer' : 'round over'} the front edge by ${millimetres(edgeSizeMm)}.`]),
  ];
}

function trammelText(name: string, { kind, settingsMm }: NonNullable<PlanBoard['trammel']>): string {
  const settings = settingsMm.map(millimetres).join(' and ');
  return kind === 'circle'
    ? `${name}: trammel ${settings} from the pivot to the finished line.`
    : `${name}: ellipse trammel, runners ${settings} from the pencil, slots along its axes.`;
}
