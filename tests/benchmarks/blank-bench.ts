/**
 * Pattern-matched packing of blanks: blanks used beside the bound that no packing is below, on every sample with blanks in the
 * folder given second and on ten works made up from a seed. Figures go as JSON to the path given first.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { analyse } from '../../server/analyse.ts';
import { blanksUsed } from '../../server/shop/blanks/cut-out.ts';
import { usualEffort } from '../../server/machine/search-effort.ts';
import { packDesign } from '../../server/plan-design.ts';

const [resultPath, folder] = process.argv.slice(2);
if (!resultPath || !folder) throw new Error('usage: blank-bench RESULT.json SAMPLES-FOLDER');

const made = 10;

/** Numbers in [0, 1), the same at every run: x ↦ 48271·x mod (2³¹ − 1) (S. K. Park, K. W. Miller, CACM 31, 1988). */
function numbersFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return (state - 1) / 2_147_483_646;
  };
}

/** A star-shaped outline with so many corners, its radii between the two given. */
function outlineText(name: string, next: () => number): string {
  const corners = 5 + Math.floor(4 * next());
  const points = Array.from({ length: corners }, (_, index) => {
    const angle = (2 * Math.PI * (index + 0.6 * next())) / corners;
    const radius = 45 + 75 * next();
    return `${(radius * Math.cos(angle)).toFixed(1)}, ${(radius * Math.sin(angle)).toFixed(1)}`;
  });
  const [start = '', ...others] = points;
  return [
    `outline ${name} {`,
    `  start ${start}`,
    ...others.map((point) => `  line to ${point}`),
    '  line to start',
    '}',
  ].join('\n');
}

/** One to three panels, two to six of each, on one kind of blank. */
function workText(seed: number): string {
  const next = numbersFrom(seed);
  const panels = ['alder', 'birch', 'cedar'].slice(0, 1 + Math.floor(3 * next()));
  const grid = next() < 0.6 ? 'three_way  side 36' : 'square  pitch 40';
  const size = `${360 + 20 * Math.floor(12 * next())} x ${280 + 20 * Math.floor(8 * next())}`;
  return [
    'strip ash { wood white_ash  section face 3 depth 10 }',
    `grid mesh { ${grid}  of ash  fit 0.05 }`,
    ...panels.map((name) => outlineText(`${name}_edge`, next)),
    ...panels.map(
      (name) =>
        `panel ${name} { grid mesh  centred ${next() < 0.5 ? 'node' : 'cell'}  shape ${name}_edge  edge sawn  copies ${2 + Math.floor(5 * next())} }`,
    ),
    `blank cast { grid mesh  shape ${size}  ${panels.map((name) => `take ${name}`).join('  ')}  margin 8  gap 4  allowance 1.5 }`,
  ].join('\n');
}

const samples = readdirSync(folder)
  .filter((file) => file.endsWith('.lap'))
  .map((file) => ({ name: file, text: readFileSync(join(folder, file), 'utf8') }));
const generated = Array.from({ length: made }, (_, index) => ({
  name: `made ${index + 1}`,
  text: workText(index + 1),
}));

const rows: {
  work: string;
  blank: string;
  'cut-outs': number;
  blanks: number;
  bound: number;
  proven: boolean;
  s: number;
}[] = [];
for (const { name, text } of [...samples, ...generated]) {
  const read = analyse(text);
  if (read.incomplete) throw new Error(`${name} has an error: ${read.problems[0]?.message ?? ''}`);
  const started = performance.now();
  const { blanks } = await packDesign(read, usualEffort());
  const seconds = (performance.now() - started) / 1000;
  for (const { blank, packing, cutOuts } of blanks) {
    const used = blanksUsed(packing);
    rows.push({
      ...{ work: name, blank: blank.name, 'cut-outs': cutOuts.reduce((sum, { count }) => sum + count, 0) },
      ...{ blanks: used, bound: packing.bound, proven: used === packing.bound, s: Math.round(seconds * 10) / 10 },
    });
  }
}
console.table(rows);
console.log(`blanks: ${rows.filter(({ proven }) => proven).length} of ${rows.length} proven fewest`);
writeFileSync(resultPath, `${JSON.stringify({ rows }, null, 2)}\n`);
