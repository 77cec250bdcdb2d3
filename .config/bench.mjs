/** Bundles the benchmarks and runs them: `npm run bench`. Figures go to dist/bench.json, dist/stock-bench.json, dist/nesting-bench.json, dist/blank-bench.json and dist/pan-bench.json; the last needs a build and a Chromium. */
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));
await build({
  absWorkingDir: root,
  entryPoints: [
    'tests/benchmarks/bench.ts',
    'tests/benchmarks/peak-memory.ts',
    'tests/benchmarks/stock-bench.ts',
    'tests/benchmarks/nesting-bench.ts',
    'tests/benchmarks/blank-bench.ts',
    'tests/benchmarks/pan-bench.ts',
  ],
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
const outlines = fileURLToPath(new URL('../../shared/reference/nesting', import.meta.url));
execFileSync(process.execPath, ['dist/bench/nesting-bench.mjs', 'dist/nesting-bench.json', outlines], {
  cwd: root,
  stdio: 'inherit',
});
execFileSync(process.execPath, ['dist/bench/blank-bench.mjs', 'dist/blank-bench.json', 'samples'], {
  cwd: root,
  stdio: 'inherit',
});
execFileSync(process.execPath, ['dist/bench/pan-bench.mjs', root, 'dist/pan-bench.json'], {
  cwd: root,
  stdio: 'inherit',
});
