/** Bundles the benchmarks and runs them: `npm run bench`. Figures go to dist/bench.json and dist/stock-bench.json. */
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));
await build({
  absWorkingDir: root,
  entryPoints: ['tests/benchmarks/bench.ts', 'tests/benchmarks/peak-memory.ts', 'tests/benchmarks/stock-bench.ts'],
  outdir: 'dist/bench',
  outExtension: { '.js': '.mjs' },
  bundle: true,
  platform: 'node',
  format: 'esm',
  packages: 'external',
  loader: { '.lap': 'text' },
  logLevel: 'warning',
});
execFileSync(process.execPath, ['dist/bench/bench.mjs', 'dist/bench.json', 'dist/bench/peak-memory.mjs'], {
  cwd: root,
  stdio: 'inherit',
});
const instances = fileURLToPath(new URL('../../shared/reference/cutting-stock', import.meta.url));
execFileSync(process.execPath, ['dist/bench/stock-bench.mjs', 'dist/stock-bench.json', instances], {
  cwd: root,
  stdio: 'inherit',
});
