/** Bundles every entry of the product into dist/. Usage: node .config/bundle.mjs [--watch] */
import { chmod, copyFile, readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build, context } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));

const inPackages = (path) => new URL(`../node_modules/${path}`, import.meta.url);
const inDist = (name) => new URL(`../dist/${name}`, import.meta.url);

const forNode = { bundle: true, loader: { '.lap': 'text' }, platform: 'node', format: 'cjs', target: 'node20' };
const forWebview = { bundle: true, platform: 'browser', format: 'iife', target: 'es2022' };

/** The solver's other form asks where it lies in a way that a bundle can't answer. */
const withSolver = { alias: { highs: './node_modules/highs/build/highs.js' } };

/** Files that the programs read at run time, by their name in dist/, and where they come from. */
const carried = JSON.parse(await readFile(new URL('../server/machine/carried-files.json', import.meta.url), 'utf8'));

const outputs = [
  { ...forNode, entryPoints: ['client/extension.ts'], outfile: 'dist/extension.cjs', external: ['vscode'] },
  { ...forNode, ...withSolver, entryPoints: ['server/language/start-server.ts'], outfile: 'dist/server.cjs' },
  {
    ...forNode,
    ...withSolver,
    entryPoints: ['server/main.ts'],
    outfile: 'dist/halflap.cjs',
    banner: { js: '#!/usr/bin/env node' },
  },
  { ...forWebview, entryPoints: ['client/preview/webview/main.ts'], outfile: 'dist/preview.js' },
  { ...forWebview, entryPoints: ['client/preview/webview/preview.css'], outfile: 'dist/preview.css' },
  { ...forWebview, entryPoints: ['client/compare/webview/main.ts'], outfile: 'dist/compare.js' },
  { ...forWebview, entryPoints: ['client/compare/webview/compare.css'], outfile: 'dist/compare.css' },
].map((output) => ({
  ...output,
  absWorkingDir: root,
  mainFields: output.platform === 'node' ? ['module', 'main'] : ['browser', 'module', 'main'],
  sourcemap: true,
  minify: true,
  logLevel: 'warning',
}));

if (process.argv.includes('--watch')) {
  for (const output of outputs) await (await context(output)).watch();
} else {
  await Promise.all(outputs.map((output) => build(output)));
  await Promise.all(Object.entries(carried).map(([name, path]) => copyFile(inPackages(path), inDist(name))));
  await chmod(inDist('halflap.cjs'), 0o755);
}
