/** Bands as the plan writes them: lengths, fitting order, bends, form. Lengths mm. */
import { type Words, figure, measure, words } from '../../../grammar/words.ts';
import type { Design } from '../../design/design.ts';
import { sum } from '../../geometry/numbers.ts';
import { edgeDepth } from '../lines/work-depth.ts';
import type { PlanBand } from '../sections/object-sections.ts';
import { planLength } from '../sections/plan-rounding.ts';
import { radiusAfterSpringback } from '../wood/bending.ts';
import { bandQuantity } from './band-quantity.ts';
import { gradeOf } from './bend-grade.ts';
import { type MeasuredBand, type MeasuredRun, measureBand } from './measure-band.ts';

/** A soft pad between the band and its caul: cork or rubber, common practice. */
export const caulPad = 3;

export const planBands = (design: Design): PlanBand<Words>[] =>
  design.bands.map((band) => planBand(measureBand(band, design.woods), design));

function planBand(measured: MeasuredBand, design: Design): PlanBand<Words> {
  const { band, runs, limit, worst, thickness } = measured;
  const laminations = Array.from({ length: band.laminations }, (_, index) => {
    const pieces = runs.flatMap((run) => run.pieces.filter(({ lamination }) => lamination === index + 1));
    return {
      lengthMm: planLength(sum(pieces.map(({ length }) => length))),
      pieces: pieces.map(({ mark, length, cutLength }) => ({
        mark,
        lengthMm: planLength(length),
        cutMm: planLength(cutLength),
      })),
    };
  });
  return {
    name: band.name,
    around: band.around.name,
    stock: band.stock.name,
    quantity: bandQuantity(band, design),
    laminations,
    parts: runs.length,
    runs: runs.map(planRun),
    thicknessMm: planLength(thickness),
    widthMm: planLength(band.stock.depth),
    edgeMm: edgeDepth(band.around, design),
    method: band.method,
    smallestRadiusMm: worst && planLength(worst.radius),
    limitMm: limit && planLength(limit.radius),
    limitFrom: limit?.from ?? null,
    grade: gradeOf(worst, limit, band),
    worst: worst && {
      xMm: planLength(worst.at.x),
      yMm: planLength(worst.at.y),
      side: worst.side,
      lamination: worst.lamination,
      bendsAtMm: worst.bendingThickness === null ? null : planLength(worst.bendingThickness),
    },
    caulOutMm: caulPad,
    notes: notesFor(measured, design),
  };
}

function planRun({ run, order, ends, worst, pieces }: MeasuredRun): PlanBand<Words>['runs'][number] {
  const [first, last] = [run.segments[0]?.from, run.segments.at(-1)?.to];
  return {
    order,
    from: [planLength(first?.x ?? 0), planLength(first?.y ?? 0)],
    to: [planLength(last?.x ?? 0), planLength(last?.y ?? 0)],
    ends: [...ends],
    smallestRadiusMm: worst && planLength(worst.radius),
    marks: pieces.map(({ mark }) => mark),
  };
}

function notesFor({ band, worst, limit, runs }: MeasuredBand, design: Design): Words[] {
  const notes: Words[] = [];
  const grade = gradeOf(worst, limit, band);
  if (worst && grade !== 'bends') {
    const place = words`${worst.side === 'bulge' ? 'Bulge' : 'Hollow'} at ${measure.place(worst.at)}: lamination ${worst.lamination} bends to ${figure.length(worst.radius)}`;
    notes.push(
      limit === null
        ? words`${place}; nothing is known of how far ${band.stock.wood ?? 'this strip'} bends: test it and write \`bends …mm tested\`.`
        : words`${place}, its limit is ${figure.length(limit.radius)} (${limit.from})${grade === 'not tested' ? ` dry, and bent ${band.method} it is not tested` : ''}; ${figure.fine(worst.bendingThickness ?? 0)} thick it would.`,
    );
  }
  const depth = edgeDepth(band.around, design);
  if (depth !== null && band.stock.depth < depth + band.overWidth)
    notes.push(
      words`The strip is ${figure.length(band.stock.depth)} wide; the edge with its over-width takes ${figure.length(depth + band.overWidth)}.`,
    );
  if (runs.some(({ ends }) => ends.includes('scarfed')))
    notes.push('Closed: ends scarfed 1 in 8, the scarfs of neighbouring laminations set apart.');
  if (band.laminations > 1) {
    const opens = 100 * (radiusAfterSpringback(1, band.laminations) - 1);
    notes.push(
      words`Glued up on a form alone it opens by about ${measure.number(opens, 1)} % of its radius; glued to the work it stays.`,
    );
  }
  notes.push('Bend a sample first; run-out, knots and short grain break earlier.');
  return notes;
}
