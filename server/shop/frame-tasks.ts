/** Tasks of the frame: its joints, its members with their figures, and when it is glued. */
import type { LaidPanel } from '../lattice/laid-panel.ts';
import { boundsOf } from '../geometry/polygons.ts';
import { stickTasks } from './lattice-tasks.ts';
import { counted, type TaskFigures } from './task-words.ts';
import { halfDegrees, millimetres } from './text/figures-text.ts';
import type { PlanFrame } from './work-sections.ts';

/** A frame that the file does not describe is made elsewhere, to the lattice. */
export function frameTasks(panels: readonly LaidPanel[], plan: TaskFigures): string[] {
  const framed = panels.filter(({ panel, strips }) => panel.edge === 'framed' && strips.length > 0);
  return [
    ...stickTasks('frame', plan),
    ...plan.frames.flatMap(membersText),
    ...framed.filter(({ panel }) => !plan.frames.some((frame) => frame.panel === panel.name)).map(elsewhereText),
    ...framed.map(({ panel }) => `Glue the frame of ${panel.name} square round the lattice before any infill goes in.`),
  ];
}

function membersText({
  panel,
  stock,
  corners,
  joint,
  jointDepthMm,
  jointWidthMm,
  members,
  bearing,
  groovePieces,
}: PlanFrame): string[] {
  const seat =
    joint === 'groove'
      ? `a groove ${millimetres(jointWidthMm)} wide and ${millimetres(jointDepthMm)} deep along every inner edge`
      : `a mortice ${millimetres(jointWidthMm)} long and ${millimetres(jointDepthMm)} deep for every strip’s end`;
  const cut = corners === 'mitred' ? 'mitred' : 'lapped, half the depth each';
  const what = bearing === 'border' ? 'border' : 'filler';
  return [
    `Frame of ${panel}, ${stock}: corners ${cut}; ${seat}. Lengths are to the long points.`,
    ...members.map(
      ({ mark, lengthMm, innerMm, widthMm, ends, make }) =>
        `${mark}: ${make} of ${millimetres(lengthMm)}, ${millimetres(innerMm)} inside, ${millimetres(widthMm)} wide, ends ${ends.map((angle) => `${halfDegrees(angle)}°`).join(' and ')}.`,
    ),
    ...groovePieces.map(
      ({ mark, lengthMm, widthMm, make }) =>
        `${mark}: ${counted(make, what)} of ${millimetres(lengthMm)} ripped to ${millimetres(widthMm)} × ${millimetres(jointWidthMm)}, glued into the groove flush with the inner edge.`,
    ),
  ];
}

function elsewhereText({ panel, region }: LaidPanel): string {
  const { left, right, bottom, top } = boundsOf(region.flat());
  return `The frame of ${panel.name} is not described in the file: ${millimetres(right - left)} × ${millimetres(top - bottom)} clear inside, strips standing ${millimetres(panel.stub)} into it.`;
}
