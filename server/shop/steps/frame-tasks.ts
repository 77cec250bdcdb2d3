/** Tasks of the frame: its joints, its members with their figures, and when it is glued. */
import { type Words, counted, figure, joined, measure, words } from '../../../grammar/words.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import { boundsOf } from '../../geometry/polygons.ts';
import { stickTasks } from './lattice-tasks.ts';
import { type TaskFigures } from './task-words.ts';
import type { PlanFrame } from '../sections/work-sections.ts';

/** A frame that the file does not describe is made elsewhere, to the lattice. */
export function frameTasks(panels: readonly LaidPanel[], plan: TaskFigures, cut: TaskFigures['stock']): Words[] {
  const framed = panels.filter(({ panel, strips }) => panel.edge === 'framed' && strips.length > 0);
  return [
    ...stickTasks(cut),
    ...plan.frames.flatMap((frame) => membersText(frame)),
    ...framed
      .filter(({ panel }) => !plan.frames.some((frame) => frame.panel === panel.name))
      .map((laid) => elsewhereText(laid)),
    ...framed.map(
      ({ panel }) =>
        words`Glue the frame of ${measure.name('panel', panel.name)} square round the lattice before any infill goes in.`,
    ),
  ];
}

function membersText(frame: PlanFrame): Words[] {
  const { panel, stock, corners, joint, jointDepthMm, jointWidthMm, members, bearing, groovePieces } = frame;
  const seat =
    joint === 'groove'
      ? words`a groove ${figure.length(jointWidthMm)} wide and ${figure.length(jointDepthMm)} deep along every inner edge`
      : words`a mortice ${figure.length(jointWidthMm)} long and ${figure.length(jointDepthMm)} deep for every strip’s end`;
  const cut = corners === 'mitred' ? 'mitred' : 'lapped, half the depth each';
  const what = bearing === 'border' ? 'border' : 'filler';
  return [
    words`Frame of ${measure.name('panel', panel)}, ${measure.name('strip', stock)}: corners ${cut}; ${seat}. Lengths are to the long points.`,
    ...members.map(
      ({ mark, lengthMm, innerMm, widthMm, ends, make }) =>
        words`${mark}: ${make} of ${figure.length(lengthMm)}, ${figure.length(innerMm)} inside, ${figure.length(widthMm)} wide, ends ${joined(ends.map(measure.angle), ' and ')}.`,
    ),
    ...groovePieces.map(
      ({ mark, lengthMm, widthMm, make }) =>
        words`${mark}: ${counted(make, what)} of ${figure.length(lengthMm)} ripped to ${figure.length([widthMm, jointWidthMm])}, glued into the groove flush with the inner edge.`,
    ),
  ];
}

function elsewhereText({ panel, region }: LaidPanel): Words {
  const { left, right, bottom, top } = boundsOf(region.flat());
  return words`The frame of ${measure.name('panel', panel.name)} is not described in the file: ${figure.length([right - left, top - bottom])} clear inside, strips standing ${figure.length(panel.stub)} into it.`;
}
