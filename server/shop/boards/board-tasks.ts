/** What is done to cut boards. Lengths mm. */
import type { PlanBoard } from '../sections/object-sections.ts';
import type { LengthWords } from '../steps/task-words.ts';
import type { PlanSheet } from '../sections/work-sections.ts';

/** What is sawn from sheets that are cut alike. */
export function sheetTask(
  { sheet, layout, widthMm, heightMm, kerfMm, count, pieces }: PlanSheet,
  words: LengthWords,
): string {
  const gives = pieces.map(({ what, n }) => `${n} × ${what}`).join(', ');
  return `${count} × ${sheet}, ${words.length(widthMm)} × ${words.length(heightMm)}: ${gives}${count > 1 ? ' from each' : ''}, laid out as in drawing ${layout}, ${words.length(kerfMm)} between them for the saw.`;
}

/** A board that is laid out on a sheet is sawn from there; any other from a piece of its own. */
export function boardTasks(board: PlanBoard, sheets: readonly PlanSheet[], words: LengthWords): string[] {
  const { name, sheet, thicknessMm, quantity, widthMm, heightMm, blankMm, pivot, trammel, edge, edgeSizeMm } = board;
  const isLaidOut = sheets.some(({ pieces }) => pieces.some(({ what }) => what === name));
  return [
    `${name}: ${quantity} of ${sheet}, ${words.length(thicknessMm)} thick, ${words.length(widthMm)} × ${words.length(heightMm)}${isLaidOut ? '' : `, each from a piece ${words.length(blankMm[0])} × ${words.length(blankMm[1])}`}.`,
    ...(pivot
      ? [`${name}: pivot at ${words.length(pivot.xMm)}, ${words.length(pivot.yMm)}, bored from behind and not through.`]
      : []),
    ...(trammel ? [trammelText(name, trammel, words)] : []),
    ...(edgeSizeMm === null
      ? []
      : [`${name}: ${edge === 'chamfer' ? 'chamfer' : 'round over'} the front edge by ${words.length(edgeSizeMm)}.`]),
  ];
}

function trammelText(
  name: string,
  { kind, settingsMm }: NonNullable<PlanBoard['trammel']>,
  words: LengthWords,
): string {
  const settings = settingsMm.map(words.length).join(' and ');
  return kind === 'circle'
    ? `${name}: trammel ${settings} from the pivot to the finished line.`
    : `${name}: ellipse trammel, runners ${settings} from the pencil, slots along its axes.`;
}
