/** What is done to cut one board. Lengths mm. */
import type { PlanBoard } from '../object-sections.ts';
import { millimetres } from '../text/figures-text.ts';

export function boardTasks(board: PlanBoard): string[] {
  const { name, sheet, thicknessMm, quantity, widthMm, heightMm, blankMm, pivot, trammel, edge, edgeSizeMm } = board;
  return [
    `${name}: ${quantity} of ${sheet}, ${millimetres(thicknessMm)} thick, ${millimetres(widthMm)} × ${millimetres(heightMm)}, each from a piece ${millimetres(blankMm[0])} × ${millimetres(blankMm[1])}.`,
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
