import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { runCommand } from '../../server/cli/run-command.ts';
import { FakeTerminal } from './fake-terminal.ts';

const untidy = `grid   squares{square pitch 40   of ash}   # one
strip ash {
section face 3 depth 10
}
`;

let folder: string;
let file: string;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'halflap-format-'));
  file = join(folder, 'tray.lap');
  await writeFile(file, untidy);
});

afterEach(async () => {
  await rm(folder, { recursive: true, force: true });
});

async function run(args: readonly string[], input = '') {
  const terminal = new FakeTerminal({ input });
  return { code: await runCommand(['format', ...args], terminal), output: terminal.output, errors: terminal.errors };
}

describe('format', () => {
  test('rewrites a file in place, and then has nothing to do', async () => {
    expect((await run(['--check', file])).code).toBe(1);
    expect((await run([file])).code).toBe(0);
    const text = await readFile(file, 'utf8');
    expect(text).toContain('# one');
    expect(text).toContain('  section face 3 depth 10\n');
    expect(await run(['--check', file])).toEqual({ code: 0, output: '', errors: '' });
  });

  test('with --check names the file and leaves it alone', async () => {
    const { code, output } = await run(['--check', file]);
    expect([code, output]).toEqual([1, `${file} is laid out otherwise\n`]);
    expect(await readFile(file, 'utf8')).toBe(untidy);
  });

  test('leaves a file with a syntax error alone and says what is wrong', async () => {
    await writeFile(file, 'grid squares { square pitch }\n');
    const { code, errors } = await run([file]);
    expect(code).toBe(1);
    expect(errors).toContain('LAP01');
    expect(await readFile(file, 'utf8')).toBe('grid squares { square pitch }\n');
  });

  test('lays standard input out on standard output', async () => {
    const { code, output } = await run(['-'], untidy);
    expect(code).toBe(0);
    expect(output).toContain('grid squares { square');
  });

  test('wants a file', async () => {
    expect((await run([])).code).toBe(2);
  });
});
