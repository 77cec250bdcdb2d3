/** Bundles every entry of the product into dist/. Usage: node .config/bundle.mjs [--watch] */
import { chmod, copyFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build, context } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));

const latin = '@expo-google-fonts/atkinson-hyperlegible-next';
const inPackages = (path) => new URL(`../node_modules/${path}`, import.meta.url);
const inDist = (name) => new URL(`../dist/${name}`, import.meta.url);

const forNode = { bundle: true, loader: { '.lap': 'text' }, platform: 'node', format: 'cjs', target: 'node20' };
const forWebview = { bundle: true, platform: 'browser', format: 'iife', target: 'es2022' };

/** The solver's other form asks where it lies in a way that a bundle can't answer. */
const withSolver = { alias: { highs: './node_modules/highs/build/highs.js' } };

/** Files that the command reads at run time, and where they come from. */
const carried = {
  'highs.wasm': 'highs/build/highs.wasm',
  'resvg.wasm': '@resvg/resvg-wasm/index_bg.wasm',
  'letters.ttf': `${latin}/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf`,
  'letters-strong.ttf': `${latin}/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf`,
  'letters.LICENCE': `${latin}/LICENSE_FONT`,
  'letters-wide.ttf': 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf',
  'letters-wide.LICENCE': 'dejavu-fonts-ttf/LICENSE',
  'letters-han.ttf': '@expo-google-fonts/sawarabi-gothic/400Regular/SawarabiGothic_400Regular.ttf',
  'letters-han.LICENCE': '@expo-google-fonts/sawarabi-gothic/LICENSE_FONT',
};

const outputs = [
  { ...forNode, entryPoints: ['client/extension.ts'], outfile: 'dist/extension.cjs', external: ['vscode'] },
  { ...forNode, ...withSolver, entryPoints: ['server/language/start-server.ts'], outfile: 'dist/server.cjs' },
  {
    ...forNode,
    ...withSolver,
    entryPoints: ['server/cli/main.ts'],
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
