/** Tasks of the steps that make the lattice and its infill. */
import { counted } from '../../../grammar/words.ts';
import type { Bench } from '../../design/design-model.ts';
import { sum } from '../../geometry/numbers.ts';
import { cotangent } from '../../geometry/point.ts';
import { sidesToMeasure } from './sides-to-measure.ts';
import type { PlannedDesign } from '../planned-design.ts';
import { latticesMade } from '../lattices-made.ts';
import { type LengthWords, orderText, type TaskFigures } from './task-words.ts';

/** Each stock's milling, and once what to look for in the wood of all. */
export function millTasks({ mill }: TaskFigures, words: LengthWords): string[] {
  const rules = [...new Set(mill.flatMap(({ grain }) => grain))];
  return [
    ...mill.flatMap((stock) => stockTasks(stock, words)),
    ...(rules.length > 0 ? [`Choose wood with ${rules.join('; ')}.`] : []),
  ];
}

function stockTasks(
  { stock, faceMm, depthMm, sticks, millSticks, rejectsPct, boards, problems }: TaskFigures['mill'][number],
  words: LengthWords,
): string[] {
  const section = `${words.length(faceMm)} face × ${words.length(depthMm)} depth`;
  const rejects = rejectsPct > 0 ? `: ${sticks ?? 0} and ${rejectsPct} % for rejects, in one run` : ', in one run';
  const head =
    millSticks === null
      ? `${stock}: mill to ${section}.`
      : `${stock}: mill ${counted(millSticks, 'stick')} to ${section}${rejects}.`;
  const ripping = boards
    ? [
        `${stock}: rip ${counted(boards.boards, 'board')} ${words.length(boards.thicknessMm)} × ${words.length(boards.widthMm)} × ${words.length(boards.lengthMm)}, ${boards.stripsPerBoard} strips side by side with a cut of ${words.fine(boards.ripKerfMm)}${boards.rejointMm > 0 ? `, edge dressed by ${words.length(boards.rejointMm)} every ${counted(boards.rejointEvery, 'rip')}` : ''}; ${words.length(boards.leftoverWidthMm)} of the last one is left.`,
      ]
    : [];
  return [head, ...ripping, ...problems];
}

export function notchTasks(
  { settings, changes, strips, stock }: TaskFigures,
  bench: Bench | null,
  words: LengthWords,
): string[] {
  const rows = settings.filter(({ step }) => step === 'notch strips');
  const passes = rows.map(({ notching }) => notching?.passes ?? null);
  const gang = bench?.gang ?? 1;
  const order = changes.find(({ step }) => step === 'notch strips');
  const tasks = [
    bench?.indexing === 'stop'
      ? 'Fixed stop: each notch is set from the strip’s end; the first stop is in the table, the others lie one pitch further each.'
      : 'Indexing pin: set it once for each pitch and do not touch it until all strips of that pitch are done.',
    gang > 1 ? `Push ${gang} strips side by side, taped as a pack.` : 'One strip to a pass.',
  ];
  if (passes.every((count) => count !== null)) tasks.push(`${sum(passes)} passes over the blade in all.`);
  if (stock.some(({ sticks }) => sticks.some(({ cuts }) => cuts.length > 1)))
    tasks.push('The first stop counts from each strip’s own end: on a long stick, one saw cut after the strip before.');
  if (gang > 1) tasks.push(...packTasks(rows, strips, words));
  if (order) tasks.push(orderText(order));
  return tasks;
}

/** A pack of strips side by side is sheared for a slanted row: each is set on from its neighbour by face · cot angle. */
function packTasks(rows: TaskFigures['settings'], strips: TaskFigures['strips'], words: LengthWords): string[] {
  const slanted = rows.flatMap(({ angle, marks }) =>
    angle === null || angle === 90
      ? []
      : strips
          .filter(({ mark }) => marks.includes(mark))
          .map(({ face }) => ({ angle, step: face * Math.abs(cotangent(angle)) })),
  );
  const texts = slanted.map(
    ({ angle, step }) =>
      `At ${angle}° set each strip of a pack on by ${words.fine(step)} from its neighbour, or notch the board before it is ripped.`,
  );
  return [...new Set(texts)];
}

export const lengthTasks = (cut: TaskFigures['stock'], words: LengthWords): string[] => [
  'Longest first: what is cut wrong can still become a shorter strip.',
  ...stickTasks(cut, words),
];

/** The sticks that are cut in a step; how, stands in their own list. */
export function stickTasks(cut: TaskFigures['stock'], words: LengthWords): string[] {
  return cut
    .filter(({ sticks }) => sticks.length > 0)
    .map(
      ({ stock: name, sticksUsed, kerfMm, endTrimMm }) =>
        `${name}: ${counted(sticksUsed, 'stick')} as listed, ${words.fine(kerfMm)} between pieces${endTrimMm > 0 ? `, ${words.length(endTrimMm)} off each end first` : ''}.`,
    );
}

export function assembleTasks(planned: PlannedDesign): string[] {
  return latticesMade(planned).map(({ panel, quantity, strips }) => {
    const layers = [...new Set(strips.map(({ layer }) => layer))].sort((a, b) => a - b);
    const families = layers.map(
      (layer) =>
        `family ${[...new Set(strips.filter((strip) => strip.layer === layer).map(({ family }) => family))].join(' and ')}`,
    );
    return `${panel.name}, ${quantity} to make: lay ${families.join(', then ')}; seat all laps halfway, then tap home from the middle outward.`;
  });
}

export const flushTasks = ({ mill }: TaskFigures, words: LengthWords): string[] =>
  mill
    .filter(({ depthMm, finishedDepthMm }) => finishedDepthMm < depthMm)
    .map(
      ({ stock, depthMm, finishedDepthMm }) =>
        `${stock}: take ${words.fine((depthMm - finishedDepthMm) / 2)} off each face, ${words.length(depthMm)} becomes ${words.length(finishedDepthMm)}.`,
    );

export function measureTasks({ grids }: TaskFigures, planned: PlannedDesign, words: LengthWords): string[] {
  const small = latticesMade(planned).flatMap((laid) => {
    const sides = sidesToMeasure(laid);
    return sides === 0 || sides === 10
      ? []
      : [
          `${laid.panel.name} has no ten: ${counted(sides, 'side')} along a strip should measure ${words.length(sides * laid.panel.grid.side)}; measured ________`,
        ];
  });
  return [
    ...grids.map(
      ({ name, check }) => `${name}: ${check.what} should measure ${words.length(check.mm)}; measured ________`,
    ),
    ...small,
    'Strip face, at ten places: measured ________',
    'Write both into the grid as measured, and print the second sheet anew: infill, templates and resin follow it.',
  ];
}

export function infillTasks(
  { pieces, hinges, byHand, changes }: TaskFigures,
  bench: Bench | null,
  words: LengthWords,
): string[] {
  const order = changes.find(({ step }) => step === 'cut infill');
  const trim = bench?.trim ?? 0;
  return [
    `${sum(pieces.map(({ total }) => total))} pieces of ${counted(pieces.length, 'mark')}; the caliper governs, the stop is where to begin.`,
    ...(trim > 0 ? [`Rough pieces are ${words.length(trim)} longer at each end, which the first cuts take off.`] : []),
    ...hinges.map((hinge) => foldTask(hinge, trim, words)),
    'Blunt ends first, against the square end; sharp ends last.',
    ...(byHand.length > 0 ? [`Fitted to the frame by hand, no jig has their ends: ${byHand.join(', ')}.`] : []),
    ...(order ? [orderText(order)] : []),
  ];
}

/** Lengths as they are sawn, before the jigs. */
function foldTask(
  { marks, lengthMm, scoreMm, make }: TaskFigures['hinges'][number],
  trim: number,
  words: LengthWords,
): string {
  const [first, second] = marks;
  const which = first === second ? 'one end' : `the end of ${first}`;
  return `${marks.join('+')}: saw ${counted(make, 'length')} of ${words.length(lengthMm + 2 * trim)}; score each across on the inside of the fold, ${words.length(scoreMm + trim)} from ${which}, until only the outer fibres hold; then ends and fold are pared, each half measured from the score.`;
}
