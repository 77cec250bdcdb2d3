/** Tasks of the steps that make the lattice and its infill. */
import { type Words, counted, figure, measure, words } from '../../../grammar/words.ts';
import type { Bench } from '../../design/design-model.ts';
import { append, sum } from '../../geometry/numbers.ts';
import { cotangent } from '../../geometry/point.ts';
import { sidesToMeasure } from './sides-to-measure.ts';
import type { PlannedDesign } from '../planned-design.ts';
import { latticesMade } from '../lattices-made.ts';
import { orderText, type TaskFigures } from './task-words.ts';

/** Each stock's milling, and once what to look for in the wood of all. */
export function millTasks({ mill }: TaskFigures): Words[] {
  const rules = [...new Set(mill.flatMap(({ grain }) => grain))];
  return [
    ...mill.flatMap((stock) => stockTasks(stock)),
    ...(rules.length > 0 ? [`Choose wood with ${rules.join('; ')}.`] : []),
  ];
}

function stockTasks({
  stock,
  faceMm,
  depthMm,
  sticks,
  millSticks,
  rejectsPct,
  boards,
  problems,
}: TaskFigures['mill'][number]): Words[] {
  const section = words`${figure.length(faceMm)} face × ${figure.length(depthMm)} depth`;
  const rejects = rejectsPct > 0 ? `: ${sticks ?? 0} and ${rejectsPct} % for rejects, in one run` : ', in one run';
  const head =
    millSticks === null
      ? words`${measure.name('strip', stock)}: mill to ${section}.`
      : words`${measure.name('strip', stock)}: mill ${counted(millSticks, 'stick')} to ${section}${rejects}.`;
  const ripping = boards
    ? [
        words`${measure.name('strip', stock)}: rip ${counted(boards.boards, 'board')} ${figure.size([boards.thicknessMm, boards.widthMm, boards.lengthMm])}, ${boards.stripsPerBoard} strips side by side with a cut of ${figure.fine(boards.ripKerfMm)}${boards.rejointMm > 0 ? words`, edge dressed by ${figure.length(boards.rejointMm)} every ${counted(boards.rejointEvery, 'rip')}` : ''}; ${figure.length(boards.leftoverWidthMm)} of the last one is left.`,
      ]
    : [];
  return [head, ...ripping, ...problems];
}

export function notchTasks({ settings, changes, strips, stock }: TaskFigures, bench: Bench | null): Words[] {
  const rows = settings.filter(({ step }) => step === 'notch strips');
  const passes = rows.map(({ notching }) => notching?.passes ?? null);
  const gang = bench?.gang ?? 1;
  const order = changes.find(({ step }) => step === 'notch strips');
  const tasks: Words[] = [
    bench?.indexing === 'stop'
      ? 'Fixed stop: each notch is set from the strip’s end; the first stop is in the table, the others lie one pitch further each.'
      : 'Indexing pin: set it once for each pitch and do not touch it until all strips of that pitch are done.',
    gang > 1 ? `Push ${gang} strips side by side, taped as a pack.` : 'One strip to a pass.',
  ];
  if (passes.every((count) => count !== null)) tasks.push(`${sum(passes)} passes over the blade in all.`);
  if (stock.some(({ sticks }) => sticks.some(({ cuts }) => cuts.length > 1)))
    tasks.push('The first stop counts from each strip’s own end: on a long stick, one saw cut after the strip before.');
  if (gang > 1) append(tasks, packTasks(rows, strips));
  if (order) tasks.push(orderText(order));
  return tasks;
}

/** A pack of strips side by side is sheared for a slanted row: each is set on from its neighbour by face · cot angle. */
function packTasks(rows: TaskFigures['settings'], strips: TaskFigures['strips']): Words[] {
  const slanted = rows.flatMap(({ angle, marks }) =>
    angle === null || angle === 90
      ? []
      : strips
          .filter(({ mark }) => marks.includes(mark))
          .map(({ face }) => ({ angle, step: face * Math.abs(cotangent(angle)) })),
  );
  const texts = slanted.map(
    ({ angle, step }) =>
      words`At ${measure.angle(angle)} set each strip of a pack on by ${figure.fine(step)} from its neighbour, or notch the board before it is ripped.`,
  );
  return [...new Map(texts.map((text) => [JSON.stringify(text), text])).values()];
}

export const lengthTasks = (cut: TaskFigures['stock']): Words[] => [
  'Longest first: what is cut wrong can still become a shorter strip.',
  ...stickTasks(cut),
];

/** The sticks that are cut in a step; how, stands in their own list. */
export function stickTasks(cut: TaskFigures['stock']): Words[] {
  return cut
    .filter(({ sticks }) => sticks.length > 0)
    .map(
      ({ stock: name, sticksUsed, kerfMm, endTrimMm }) =>
        words`${measure.name('strip', name)}: ${counted(sticksUsed, 'stick')} as listed, ${figure.fine(kerfMm)} between pieces${endTrimMm > 0 ? words`, ${figure.length(endTrimMm)} off each end first` : ''}.`,
    );
}

export function assembleTasks(planned: PlannedDesign): Words[] {
  return latticesMade(planned).map(({ panel, quantity, strips }) => {
    const layers = [...new Set(strips.map(({ layer }) => layer))].sort((a, b) => a - b);
    const families = layers.map(
      (layer) =>
        `family ${[...new Set(strips.filter((strip) => strip.layer === layer).map(({ family }) => family))].join(' and ')}`,
    );
    return words`${measure.name('panel', panel.name)}, ${quantity} to make: lay ${families.join(', then ')}; seat all laps halfway, then tap home from the middle outward.`;
  });
}

export const flushTasks = ({ mill }: TaskFigures): Words[] =>
  mill
    .filter(({ depthMm, finishedDepthMm }) => finishedDepthMm < depthMm)
    .map(
      ({ stock, depthMm, finishedDepthMm }) =>
        words`${measure.name('strip', stock)}: take ${figure.fine((depthMm - finishedDepthMm) / 2)} off each face, ${figure.length(depthMm)} becomes ${figure.length(finishedDepthMm)}.`,
    );

export function measureTasks({ grids }: TaskFigures, planned: PlannedDesign): Words[] {
  const small = latticesMade(planned).flatMap((laid) => {
    const sides = sidesToMeasure(laid);
    return sides === 0 || sides === 10
      ? []
      : [
          words`${measure.name('panel', laid.panel.name)} has no ten: ${counted(sides, 'side')} along a strip should measure ${figure.length(sides * laid.panel.grid.side)}; measured ________`,
        ];
  });
  return [
    ...grids.map(
      ({ name, check }) => words`${name}: ${check.what} should measure ${figure.length(check.mm)}; measured ________`,
    ),
    ...small,
    'Strip face, at ten places: measured ________',
    'Write both into the grid as measured, and print the second sheet anew: infill, templates and resin follow it.',
  ];
}

export function infillTasks({ pieces, hinges, byHand, changes }: TaskFigures, bench: Bench | null): Words[] {
  const order = changes.find(({ step }) => step === 'cut infill');
  const trim = bench?.trim ?? 0;
  return [
    `${sum(pieces.map(({ total }) => total))} pieces of ${counted(pieces.length, 'mark')}; the caliper governs, the stop is where to begin.`,
    ...(trim > 0
      ? [words`Rough pieces are ${figure.length(trim)} longer at each end, which the first cuts take off.`]
      : []),
    ...hinges.map((hinge) => foldTask(hinge, trim)),
    'Blunt ends first, against the square end; sharp ends last.',
    ...(byHand.length > 0 ? [`Fitted to the frame by hand, no jig has their ends: ${byHand.join(', ')}.`] : []),
    ...(order ? [orderText(order)] : []),
  ];
}

/** Lengths as they are sawn, before the jigs. */
function foldTask({ marks, lengthMm, scoreMm, make }: TaskFigures['hinges'][number], trim: number): Words {
  const [first, second] = marks;
  const which = first === second ? 'one end' : `the end of ${first}`;
  return words`${marks.join('+')}: saw ${counted(make, 'length')} of ${figure.length(lengthMm + 2 * trim)}; score each across on the inside of the fold, ${figure.length(scoreMm + trim)} from ${which}, until only the outer fibres hold; then ends and fold are pared, each half measured from the score.`;
}
