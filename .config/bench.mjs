/** Bundles the benchmarks and runs them: `npm run bench`. Figures go to dist/bench.json. */
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));
await build({
  absWorkingDir: root,
  entryPoints: ['tests/benchmarks/bench.ts', 'tests/benchmarks/peak-memory.ts'],
  outdir: 'dist/bench',
  outExtension: { '.js': '.mjs' },
  bundle: true,
  platform: 'node',
  format: 'esm',
  packages: 'external',
  logLevel: 'warning',
});
execFileSync(process.execPath, ['dist/bench/bench.mjs', 'dist/bench.json', 'dist/bench/peak-memory.mjs'], {
  cwd: root,
  stdio: 'inherit',
});
