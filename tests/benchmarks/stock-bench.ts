/**
 * Cutting plans against published instances: sticks, optimum, proof and time of each, and the share met. Reads the
 * instances from the folder given second; where it is absent, says so. Figures go as JSON to the path given first.
 */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { loadSolver } from '../../server/machine/load-solver.ts';
import { cutOneStock } from '../../server/shop/stock/cut-one-stock.ts';
import { startWatch } from '../../server/machine/start-watch.ts';

const [resultPath, folder] = process.argv.slice(2);
if (!resultPath || !folder) throw new Error('usage: stock-bench RESULT.json INSTANCE-FOLDER');

/** Seconds an instance may take. */
const seconds = 20;

interface Instance {
  readonly name: string;
  readonly capacity: number;
  readonly kerf?: number;
  readonly optimum: number;
  readonly items: readonly (readonly [size: number, quantity: number])[];
}

const instances = !existsSync(folder)
  ? []
  : readdirSync(folder)
      .filter((file) => file.endsWith('.json'))
      .sort()
      .flatMap((file) => JSON.parse(readFileSync(join(folder, file), 'utf8')) as Instance[]);
if (instances.length === 0) console.log(`cutting plans: no instances in ${folder}, nothing measured`);

const solver = await loadSolver();
const rows = [];
for (const { name, capacity, kerf = 0, optimum, items } of instances) {
  const watch = startWatch({ seconds });
  const start = performance.now();
  const { plan } = await cutOneStock(
    {
      stock: name,
      kerfMm: kerf,
      endTrimMm: 0,
      breathMm: { cut: 0, stick: 0 },
      sticks: [{ lengthMm: capacity, price: null, onHand: null }],
      pieces: items.map(([lengthMm, total], index) => ({ mark: `P${index + 1}`, lengthMm, total })),
    },
    solver,
    watch,
  );
  const ms = Math.round(performance.now() - start);
  rows.push({ instance: name, sticks: plan?.value ?? null, optimum, bound: plan?.bound, proven: plan?.proven, ms });
}

const met = rows.filter(({ sticks, optimum }) => sticks === optimum).length;
if (rows.length > 0) {
  console.table(rows);
  console.table([
    {
      figure: 'cutting plans at the known optimum',
      value: `${met} of ${rows.length}, ${((100 * met) / rows.length).toFixed(1)} %`,
      aim: '≥ 95 %, the rest one more',
    },
    {
      figure: 'cutting plans proven',
      value: `${rows.filter(({ proven }) => proven).length} of ${rows.length}`,
      aim: '–',
    },
  ]);
}
writeFileSync(resultPath, `${JSON.stringify({ rows }, null, 2)}\n`);
