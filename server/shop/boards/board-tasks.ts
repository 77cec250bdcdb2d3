/** What is done to cut boards. Lengths mm. */
import { type Words, figure, measure, words } from '../../../grammar/words.ts';
import type { PlanBoard } from '../sections/object-sections.ts';
import type { PlanSheet } from '../sections/work-sections.ts';

/** What is sawn from sheets that are cut alike. */
export function sheetTask({ sheet, layout, widthMm, heightMm, kerfMm, count, pieces }: PlanSheet): Words {
  const gives = pieces.map(({ what, n }) => `${n} × ${what}`).join(', ');
  return words`${count} × ${sheet}, ${figure.size([widthMm, heightMm])}: ${gives}${count > 1 ? ' from each' : ''}, laid out as in drawing ${layout}, ${figure.length(kerfMm)} between them for the saw.`;
}

/** A board that is laid out on a sheet is sawn from there; any other from a piece of its own. */
export function boardTasks(board: PlanBoard, sheets: readonly PlanSheet[]): Words[] {
  const { name, sheet, thicknessMm, quantity, widthMm, heightMm, blankMm, pivot, trammel, edge, edgeSizeMm } = board;
  const isLaidOut = sheets.some(({ pieces }) => pieces.some(({ what }) => what === name));
  return [
    words`${measure.name('board', name)}: ${quantity} of ${sheet}, ${figure.size([thicknessMm])} thick, ${figure.length([widthMm, heightMm])}${isLaidOut ? '' : words`, each from a piece ${figure.length([blankMm[0], blankMm[1]])}`}.`,
    ...(pivot
      ? [
          words`${measure.name('board', name)}: pivot at ${figure.length([pivot.xMm, pivot.yMm], ', ')}, bored from behind and not through.`,
        ]
      : []),
    ...(trammel ? [trammelText(name, trammel)] : []),
    ...(edgeSizeMm === null
      ? []
      : [
          words`${measure.name('board', name)}: ${edge === 'chamfer' ? 'chamfer' : 'round over'} the front edge by ${figure.length(edgeSizeMm)}.`,
        ]),
  ];
}

function trammelText(name: string, { kind, settingsMm }: NonNullable<PlanBoard['trammel']>): Words {
  const settings = figure.length(settingsMm, ' and ');
  return kind === 'circle'
    ? words`${measure.name('board', name)}: trammel ${settings} from the pivot to the finished line.`
    : words`${measure.name('board', name)}: ellipse trammel, runners ${settings} from the pencil, slots along its axes.`;
}
