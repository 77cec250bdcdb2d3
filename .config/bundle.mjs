/** Bundles every entry of the product into dist/. Usage: node .config/bundle.mjs [--watch] */
import { chmod, copyFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build, context } from 'esbuild';

const root = fileURLToPath(new URL('..', import.meta.url));

const forNode = { bundle: true, platform: 'node', format: 'cjs', target: 'node20' };
const forWebview = { bundle: true, platform: 'browser', format: 'iife', target: 'es2022' };

const outputs = [
  { ...forNode, entryPoints: ['client/extension.ts'], outfile: 'dist/extension.cjs', external: ['vscode'] },
  { ...forNode, entryPoints: ['server/language/start-server.ts'], outfile: 'dist/server.cjs' },
  {
    ...forNode,
    entryPoints: ['server/cli/main.ts'],
    // the solver's other form asks where it lies in a way that a bundle can't answer
    alias: { highs: './node_modules/highs/build/highs.js' },
    outfile: 'dist/halflap.cjs',
    banner: { js: '#!/usr/bin/env node' },
  },
  { ...forWebview, entryPoints: ['client/preview/webview/main.ts'], outfile: 'dist/preview.js' },
  { ...forWebview, entryPoints: ['client/preview/webview/preview.css'], outfile: 'dist/preview.css' },
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
  await copyFile(
    new URL('../node_modules/highs/build/highs.wasm', import.meta.url),
    new URL('../dist/highs.wasm', import.meta.url),
  );
  await chmod(new URL('../dist/halflap.cjs', import.meta.url), 0o755);
}
