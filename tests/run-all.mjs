/**
 * Every check of the project, one after the other: build, lint, format, types, unit tests, extension tests.
 * The last line is `N passed, N failed`; the exit code is 1 if anything failed. Each check that has
 * no count of its own counts as one test.
 */
import { spawn } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Runs a command in the project, its output shown as it comes; resolves to exit code and standard output. */
function run(command, args) {
  return new Promise((resolve) => {
    const child = spawn(command, args, { cwd: root, stdio: ['ignore', 'pipe', 'inherit'] });
    let output = '';
    child.stdout.on('data', (chunk) => {
      output += chunk;
      process.stdout.write(chunk);
    });
    child.on('error', (error) => {
      console.log(`${command}: ${error.message}`);
      resolve({ code: 1, output });
    });
    child.on('close', (code) => resolve({ code: code ?? 1, output }));
  });
}

/** A check that either passes or fails as a whole. */
async function single(script) {
  const { code } = await run('npm', ['run', '--silent', script]);
  return code === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

/** Counts as the unit test runner's own report gives them; no report is one failure. */
async function unitTests() {
  const folder = await mkdtemp(join(tmpdir(), 'halflap-tests-'));
  const report = join(folder, 'report.json');
  try {
    const { code } = await run('npm', [
      'run',
      '--silent',
      'vitest',
      '--',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${report}`,
    ]);
    const { numPassedTests, numFailedTests, numTotalTests } = JSON.parse(await readFile(report, 'utf8'));
    return trusted(code, numPassedTests, Math.max(numFailedTests, numTotalTests - numPassedTests));
  } catch (error) {
    console.log(`unit tests gave no report: ${error.message}`);
    return { passed: 0, failed: 1 };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** Counts as the extension tests print them; no count is one failure. */
async function extensionTests() {
  const { code, output } = await run('node', ['tests/extension/run.mjs']);
  const counts = [...output.matchAll(/(\d+) passed, (\d+) failed/g)].at(-1);
  return trusted(code, Number(counts?.[1] ?? 0), Number(counts?.[2] ?? 0));
}

/** A run that ended badly, or ran nothing, has failed whatever it counted. */
function trusted(code, passed, failed) {
  const bad = code !== 0 || passed === 0;
  return { passed, failed: failed === 0 && bad ? 1 : failed };
}

const checks = [
  ['build', () => single('build')],
  ['lint', () => single('lint')],
  ['format', () => single('format:check')],
  ['types', () => single('typecheck')],
  ['unit tests', unitTests],
  ['extension tests', extensionTests],
];

const results = [];
for (const [name, check] of checks) {
  console.log(`\n── ${name}`);
  results.push({ name, ...(await check()) });
}
console.log('');
for (const { name, passed, failed } of results) console.log(`${name}: ${passed} passed, ${failed} failed`);
const total = (key) => results.reduce((sum, result) => sum + result[key], 0);
console.log(`${total('passed')} passed, ${total('failed')} failed`);
process.exitCode = total('failed') === 0 ? 0 : 1;
