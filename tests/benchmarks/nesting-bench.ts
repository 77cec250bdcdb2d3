/**
 * Free nesting against published instances of irregular strip packing: density beside the best known, and time. Reads the
 * instances from the folder given second; where it is absent, says so. Figures go as JSON to the path given first; names
 * of instances after that pick some of them.
 */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { areaOf } from '../../server/geometry/polygons.ts';
import type { NestKind } from '../../server/shop/sheets/nest-kind.ts';
import { packStrip } from '../../server/shop/sheets/pack-strip.ts';
import { layoutFaults, ringsOf } from '../shop/sheets/layout-faults.ts';

const [resultPath, folder, ...picked] = process.argv.slice(2);
if (!resultPath || !folder) throw new Error('usage: nesting-bench RESULT.json INSTANCE-FOLDER [NAME…]');

/** Whole units to the width of a strip, which is 0.01 % wider than stated, as those of the published layouts are. */
const units = 1_000_000;
const strip = units * 1.0001;
const hair = { width: 8, arcTolerance: 0 };
/** Moves of pieces, over pieces and their turns: a step takes as long as both are many. */
const effort = 20_000_000;

interface Instance {
  readonly name: string;
  readonly stripWidth: number;
  readonly totalArea: number;
  readonly pieces: readonly {
    readonly quantity: number;
    readonly rotations: readonly number[];
    readonly polygon: readonly (readonly [x: number, y: number])[];
  }[];
}

function kindOf({ quantity, rotations, polygon }: Instance['pieces'][number], index: number, scale: number): NestKind {
  const ring = polygon.map(([x, y]) => ({ x: Math.round(x * scale), y: Math.round(y * scale) }));
  const isClockwise = areaOf([ring]) < 0;
  return { name: `${index}`, ring: isClockwise ? ring.reverse() : ring, count: quantity, turns: rotations };
}

/** Of the published layout; jigsaws without one fill their rectangle. */
function bestKnown(path: string, name: string): number | null {
  const layout = join(path, 'layouts', `${name}.json`);
  if (!existsSync(layout)) return name.startsWith('dighe') ? 100 : null;
  return (JSON.parse(readFileSync(layout, 'utf8')) as { densityPercentNominalWidth: number })
    .densityPercentNominalWidth;
}

const instances = !existsSync(folder)
  ? []
  : readdirSync(folder)
      .filter((file) => file.endsWith('.json'))
      .sort()
      .map((file) => JSON.parse(readFileSync(join(folder, file), 'utf8')) as Instance)
      .filter(({ name }) => picked.length === 0 || picked.includes(name));
if (instances.length === 0) console.log(`free nesting: no instances in ${folder}, nothing measured`);

const rows = instances.map(({ name, stripWidth, totalArea, pieces }) => {
  const scale = units / stripWidth;
  const kinds = pieces.map((piece, index) => kindOf(piece, index, scale));
  const number = kinds.reduce((sum, { count }) => sum + count, 0);
  const turns = Math.max(...kinds.map((kind) => kind.turns.length));
  const before = process.cpuUsage().user;
  const packing = packStrip({ kinds, width: strip, gap: hair, steps: Math.round(effort / number / turns) });
  const seconds = (process.cpuUsage().user - before) / 1e6;
  if (!packing) throw new Error(`${name}: a piece is wider than the strip`);
  const room = { left: 0, right: packing.length, bottom: 0, top: strip };
  const faults = layoutFaults(ringsOf(kinds, packing.places), room, 1);
  const density = (100 * totalArea * scale) / (stripWidth * packing.length);
  const best = bestKnown(folder, name);
  return {
    instance: name,
    pieces: number,
    length: Number((packing.length / scale).toFixed(3)),
    'density %': Number(density.toFixed(2)),
    'best known %': best,
    'of best %': best && Number(((100 * density) / best).toFixed(2)),
    'seconds of one core': Number(seconds.toFixed(1)),
    faults: faults.length,
  };
});

if (rows.length > 0) {
  console.table(rows);
  const shares = rows.flatMap((row) => row['of best %'] ?? []);
  console.table([
    {
      figure: 'free nesting, least share of the best known density',
      value: `${Math.min(...shares).toFixed(1)} %`,
      aim: '≥ 95 % on each',
    },
    {
      figure: 'free nesting, layouts that flatten-js finds fault with',
      value: rows.filter((row) => row.faults > 0).length,
      aim: '0',
    },
  ]);
}
writeFileSync(resultPath, `${JSON.stringify({ rows }, null, 2)}\n`);
