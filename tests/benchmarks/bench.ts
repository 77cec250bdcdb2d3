/**
 * Speed of counting, as ratios inside one run: how it grows with the panel, and how it compares with
 * clipping every piece. Prints one table and writes the figures as JSON to the path given first; the
 * second argument is the bundled peak-memory program.
 */
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { Bench } from 'tinybench';
import { areaOf, intersectionOf } from '../../server/geometry/polygons.ts';
import { add, turned } from '../../server/geometry/point.ts';
import type { LaidPanel } from '../../server/lattice/laid-panel.ts';
import { layOutPanel } from '../../server/lattice/lay-out-panel.ts';
import { markKinds } from '../../server/shop/marks/mark-kinds.ts';
import { plannedOf } from '../shop/planned.ts';
import { wavyPanel } from './wavy-panel.ts';
import { planAtSight } from '../plan-at-sight.ts';

const [resultPath, memoryProgram] = process.argv.slice(2);
if (!resultPath || !memoryProgram) throw new Error('usage: bench RESULT.json MEMORY-PROGRAM');

const sizes = [10_000, 100_000, 1_000_000];
const sampleSize = 400;

const laidOut = (pieces: number): LaidPanel => {
  const { panel } = layOutPanel(wavyPanel(pieces));
  if (!panel) throw new Error('the panel was refused');
  return panel;
};

const made = (panel: LaidPanel): number => markKinds([panel]).pieces.reduce((sum, { make }) => sum + make, 0);

const bench = new Bench({ iterations: 5, time: 0, warmupIterations: 1, warmupTime: 0 });
for (const size of sizes) bench.add(`count ${size}`, () => void made(laidOut(size)));

const planned = plannedOf([wavyPanel(100_000)]);
bench.add('plan 100000 pieces, every section but the sticks', () => void planAtSight(planned, 'wavy.lap'));

const sample = samplePieces(laidOut(100_000));
bench.add(`clip ${sample.outlines.length} of ${sample.of} pieces with the polygon library`, () => {
  for (const outline of sample.outlines) areaOf(intersectionOf([outline], sample.region));
});
await bench.run();

/** Every so-manieth piece of a panel, on the ground. */
function samplePieces(panel: LaidPanel) {
  const of = made(panel);
  const every = Math.ceil(of / sampleSize);
  let number = 0;
  const outlines = panel.pieces.flatMap(({ outline, placements }) =>
    [...placements()]
      .filter(() => number++ % every === 0)
      .map(({ at, turn }) => outline.map((point) => add(turned(point, turn), at))),
  );
  return { of, outlines, region: panel.region };
}

const medians = bench.tasks.map((task) => {
  const result = task.result;
  if (!('latency' in result)) throw new Error(`${task.name} did not run`);
  return { name: task.name, medianMs: result.latency.p50 };
});
const counting = medians.slice(0, sizes.length).map(({ medianMs }) => medianMs);
const clipping = ((medians.at(-1)?.medianMs ?? 0) * sample.of) / sample.outlines.length;
const memory = JSON.parse(execFileSync(process.execPath, [memoryProgram, '1000000'], { encoding: 'utf8' })) as {
  made: number;
  peakBytes: number;
};

const figures = {
  checksum: sizes.map((size) => made(laidOut(size))),
  medians,
  growthExponent: fittedExponent(sizes, counting),
  clippingOverCountingAt100000: clipping / (counting[1] ?? Infinity),
  peakMiBAtAMillion: memory.peakBytes / 2 ** 20,
};
console.table(medians.map(({ name, medianMs }) => ({ task: name, 'median ms': Number(medianMs.toFixed(1)) })));
console.table([
  { figure: 'growth exponent of counting, 10⁴ to 10⁶ pieces', value: figures.growthExponent.toFixed(2), aim: '≤ 0.6' },
  {
    figure: 'clipping every piece ÷ counting, 10⁵ pieces',
    value: figures.clippingOverCountingAt100000.toFixed(0),
    aim: '≥ 30',
  },
  { figure: 'peak memory at 10⁶ pieces, MiB', value: figures.peakMiBAtAMillion.toFixed(0), aim: '< 1024' },
]);
writeFileSync(resultPath, `${JSON.stringify(figures, null, 2)}\n`);

/** Least-squares slope of log time over log size. */
function fittedExponent(counts: readonly number[], times: readonly number[]): number {
  const xs = counts.map(Math.log);
  const ys = times.map(Math.log);
  const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
  const [middleX, middleY] = [mean(xs), mean(ys)];
  const over = xs.reduce((sum, x, index) => sum + (x - middleX) * ((ys[index] ?? 0) - middleY), 0);
  return over / xs.reduce((sum, x) => sum + (x - middleX) ** 2, 0);
}
