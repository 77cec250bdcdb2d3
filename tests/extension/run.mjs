/**
 * Builds the extension, installs browser and host if need be, and runs the preview's page in a browser and the tests in an editor: VSCODE_EXECUTABLE if that names
 * one, else the VS Code server of tests/host in a headless browser. The last line is `N passed, N failed`; the exit
 * code is 1 on a failure. Pictures of the window are left in .vscode-test/pictures.
 */
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { runTests } from '@vscode/test-electron';
import { build } from 'esbuild';
import { provideBrowser } from '../host/find-browser.mjs';
import { packExtension } from './pack-extension.mjs';

const here = path.dirname(fileURLToPath(import.meta.url));
const root = path.resolve(here, '../..');
const host = path.join(root, 'tests/host');
const scratch = path.join(root, '.vscode-test');
const pictures = path.join(scratch, 'pictures');
const results = path.join(scratch, 'results.json');
const suite = path.join(scratch, 'suite.cjs');
const forSuites = { bundle: true, platform: 'node', target: 'node20', loader: { '.lap': 'text' }, logLevel: 'warning' };

/** Installs the host from its lock files where that has not been done. */
function installHost() {
  for (const [folder, sample] of [
    [host, 'playwright-core'],
    [path.join(host, 'v1.100'), 'code-server'],
  ]) {
    if (fs.existsSync(path.join(folder, 'node_modules', sample))) continue;
    execFileSync('npm', ['ci', '--prefix', folder], { stdio: 'inherit' });
  }
}

function makeWorkspace() {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'halflap-workspace-'));
  fs.cpSync(path.join(here, 'workspace'), folder, { recursive: true });
  return folder;
}

/** The cases inside the editor: the counts they wrote, or one failure where they wrote none. */
async function casesInside() {
  const folder = makeWorkspace();
  fs.rmSync(results, { force: true });
  try {
    await runTests({
      vscodeExecutablePath: process.env.VSCODE_EXECUTABLE ?? path.join(host, 'code.mjs'),
      extensionDevelopmentPath: root,
      extensionTestsPath: suite,
      launchArgs: [folder, '--disable-extensions'],
      extensionTestsEnv: { HALFLAP_HOST: host, HALFLAP_PICTURES: pictures, HALFLAP_RESULTS: results },
    });
  } catch (error) {
    console.log(`The editor ended badly: ${error.message}`);
    return { passed: 0, failed: 1 };
  } finally {
    fs.rmSync(folder, { recursive: true, force: true });
  }
  return fs.existsSync(results) ? JSON.parse(fs.readFileSync(results, 'utf8')) : { passed: 0, failed: 1 };
}

async function caseFromOutside() {
  const name = 'installed from its package, restores preview and comparison after a reload of the window';
  const folder = makeWorkspace();
  try {
    const file = path.join(scratch, 'halflap.vsix');
    await packExtension({ root, host, file });
    const { pagesSurviveReload } = await import('./window-reload.mjs');
    await pagesSurviveReload({ file, folder, pictures });
    console.log(`  ok    ${name}`);
    return { passed: 1, failed: 0 };
  } catch (error) {
    console.log(`  FAIL  ${name}\n${error.stack}`);
    return { passed: 0, failed: 1 };
  } finally {
    fs.rmSync(folder, { recursive: true, force: true });
  }
}

/** The preview's page without an editor: the counts that its suite wrote, or one failure where it wrote none. */
async function casesOfThePage() {
  const pageResults = path.join(scratch, 'page-results.json');
  const pageSuite = path.join(scratch, 'page-suite.mjs');
  fs.rmSync(pageResults, { force: true });
  await build({
    ...forSuites,
    entryPoints: [path.join(root, 'tests/page/page-suite.ts')],
    outfile: pageSuite,
    format: 'esm',
    packages: 'external',
  });
  try {
    execFileSync(process.execPath, [pageSuite, root, pageResults, pictures], { stdio: 'inherit' });
  } catch (error) {
    console.log(`The page's cases ended badly: ${error.message}`);
    return { passed: 0, failed: 1 };
  }
  return fs.existsSync(pageResults) ? JSON.parse(fs.readFileSync(pageResults, 'utf8')) : { passed: 0, failed: 1 };
}

if (!provideBrowser()) {
  console.log('0 passed, 1 failed');
  process.exit(1);
}
installHost();
execFileSync(process.execPath, [path.join(root, '.config/bundle.mjs')], { stdio: 'inherit' });
fs.mkdirSync(pictures, { recursive: true });
await build({
  ...forSuites,
  entryPoints: [path.join(here, 'suite.ts')],
  outfile: suite,
  format: 'cjs',
  external: ['vscode'],
});
const counts = [await casesOfThePage(), await casesInside(), await caseFromOutside()];
const passed = counts.reduce((total, count) => total + count.passed, 0);
const failed = counts.reduce((total, count) => total + count.failed, 0);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;
