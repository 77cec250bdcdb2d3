/** What is done to cut one board. Lengths mm. */
import type { PlanBoard } from '../object-sections.ts';
import { mm } from '../task-words.ts';

export function boardTasks(board: PlanBoard): string[] {
  const { name, sheet, thicknessMm, quantity, widthMm, heightMm, blankMm, pivot, trammel, edge, edgeSizeMm } = board;
  return [
    `${name}: ${quantity} of ${sheet}, ${mm(thicknessMm)} thick, ${mm(widthMm)} × ${mm(heightMm)}, each from a piece ${mm(blankMm[0])} × ${mm(blankMm[1])}.`,
    ...(pivot ? [`${name}: pivot at ${mm(pivot.xMm)}, ${mm(pivot.yMm)}, bored from behind and not through.`] : []),
    ...(trammel ? [trammelText(name, trammel)] : []),
    ...(edgeSizeMm === null
      ? []
      : [`${name}: ${edge === 'chamfer' ? 'chamfer' : 'round over'} the front edge by ${mm(edgeSizeMm)}.`]),
  ];
}

function trammelText(name: string, { kind, settingsMm }: NonNullable<PlanBoard['trammel']>): string {
  const settings = settingsMm.map(mm).join(' and ');
  return kind === 'circle'
    ? `${name}: trammel ${settings} from the pivot to the finished line.`
    : `${name}: ellipse trammel, runners ${settings} from the pencil, slots along its axes.`;
}
