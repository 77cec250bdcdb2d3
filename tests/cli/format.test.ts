import { readFile, writeFile } from 'node:fs/promises';
import { beforeEach, describe, expect, test } from 'vitest';
import { halflap, type Outcome, scratchFolder } from './halflap.ts';

const untidy = `grid   squares{square pitch 40   of ash}   # one
strip ash {
section face 3 depth 10
}
`;

const scratch = scratchFolder();
let file: string;

beforeEach(async () => {
  file = await scratch.file('tray.lap', untidy);
});

const run = (args: readonly string[], input = ''): Promise<Outcome> => halflap(['format', ...args], { input });

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
    expect([code, output]).toEqual([1, `${file} is laid out differently\n`]);
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
