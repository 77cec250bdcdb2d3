/** Tasks of the frame: its joints, its members with their figures, and when it is glued. */
import { counted } from '../../../grammar/words.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import { boundsOf } from '../../geometry/polygons.ts';
import { stickTasks } from './lattice-tasks.ts';
import { type LengthWords, type TaskFigures } from './task-words.ts';
import { halfDegrees } from '../writers/text/figures-text.ts';
import type { PlanFrame } from '../sections/work-sections.ts';

/** A frame that the file does not describe is made elsewhere, to the lattice. */
export function frameTasks(
  panels: readonly LaidPanel[],
  plan: TaskFigures,
  cut: TaskFigures['stock'],
  words: LengthWords,
): string[] {
  const framed = panels.filter(({ panel, strips }) => panel.edge === 'framed' && strips.length > 0);
  return [
    ...stickTasks(cut, words),
    ...plan.frames.flatMap((frame) => membersText(frame, words)),
    ...framed
      .filter(({ panel }) => !plan.frames.some((frame) => frame.panel === panel.name))
      .map((laid) => elsewhereText(laid, words)),
    ...framed.map(({ panel }) => `Glue the frame of ${panel.name} square round the lattice before any infill goes in.`),
  ];
}

function membersText(frame: PlanFrame, words: LengthWords): string[] {
  const { panel, stock, corners, joint, jointDepthMm, jointWidthMm, members, bearing, groovePieces } = frame;
  const seat =
    joint === 'groove'
      ? `a groove ${words.length(jointWidthMm)} wide and ${words.length(jointDepthMm)} deep along every inner edge`
      : `a mortice ${words.length(jointWidthMm)} long and ${words.length(jointDepthMm)} deep for every strip’s end`;
  const cut = corners === 'mitred' ? 'mitred' : 'lapped, half the depth each';
  const what = bearing === 'border' ? 'border' : 'filler';
  return [
    `Frame of ${panel}, ${stock}: corners ${cut}; ${seat}. Lengths are to the long points.`,
    ...members.map(
      ({ mark, lengthMm, innerMm, widthMm, ends, make }) =>
        `${mark}: ${make} of ${words.length(lengthMm)}, ${words.length(innerMm)} inside, ${words.length(widthMm)} wide, ends ${ends.map((angle) => `${halfDegrees(angle)}°`).join(' and ')}.`,
    ),
    ...groovePieces.map(
      ({ mark, lengthMm, widthMm, make }) =>
        `${mark}: ${counted(make, what)} of ${words.length(lengthMm)} ripped to ${words.length(widthMm)} × ${words.length(jointWidthMm)}, glued into the groove flush with the inner edge.`,
    ),
  ];
}

function elsewhereText({ panel, region }: LaidPanel, words: LengthWords): string {
  const { left, right, bottom, top } = boundsOf(region.flat());
  return `The frame of ${panel.name} is not described in the file: ${words.length(right - left)} × ${words.length(top - bottom)} clear inside, strips standing ${words.length(panel.stub)} into it.`;
}
