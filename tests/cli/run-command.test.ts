import { mkdir, readdir, readFile, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { subjectOptions } from '../../server/cli/draw-subject.ts';
import { outputOptions } from '../../server/cli/output-options.ts';
import { runCommand } from '../../server/cli/run-command.ts';
import { planCsvFiles } from '../../server/shop/writers/write-plan-csv.ts';
import type { ShopPlan } from '../../server/shop/shop-plan.ts';
import { trayText } from '../compare/versions.ts';
import { FakeTerminal } from './fake-terminal.ts';
import { halflap, type Outcome, scratchFolder } from './halflap.ts';

const good = `title "Two by one"
strip ash { wood white_ash section face 3 depth 10 }
grid squares { square pitch 40 of ash }
panel tray { grid squares shape 2 x 1 cells edge framed }
`;

const scratch = scratchFolder();
const run = (...args: string[]): Promise<Outcome> => halflap(args);

const planOf = (text: string): ShopPlan => JSON.parse(text) as ShopPlan;

describe('the command', () => {
  test('without a verb explains itself on standard error', async () => {
    const { code, output, errors } = await run();
    expect(code).toBe(2);
    expect(output).toBe('');
    for (const verb of ['check', 'plan', 'draw', 'compare', 'format', 'serve']) expect(errors).toContain(verb);
  });

  test('refuses an unknown verb', async () => {
    const { code, errors } = await run('saw');
    expect(code).toBe(2);
    expect(errors).toContain('“saw” is not a verb');
  });

  test.each(['check', 'plan', 'draw', 'compare', 'format', 'serve'])(
    '%s --help goes to standard output',
    async (verb) => {
      const { code, output, errors } = await run(verb, 'any.lap', '--help');
      expect(code).toBe(0);
      expect(output).toMatch(new RegExp(`^halflap ${verb}`));
      expect(errors).toBe('');
    },
  );

  test('draw --help has a row for every option, and the read-me names what can be drawn', async () => {
    const { output } = await run('draw', '--help');
    const readMe = await readFile(new URL('../../README.md', import.meta.url), 'utf8');
    const row = /^\| `halflap draw FILE`.*$/m.exec(readMe)?.[0] ?? '';
    for (const option of Object.keys({ ...outputOptions, ...subjectOptions, paper: null })) {
      expect(output).toMatch(new RegExp(`^ +(-o, )?--${option}( [A-Z]+)? {2,}`, 'm'));
    }
    for (const option of Object.keys(subjectOptions).filter((name) => name !== 'panel')) {
      expect(row).toContain(`\`--${option}`);
    }
  });

  test('tells its version', async () => {
    expect((await run('--version')).output).toMatch(/^\d+\.\d+\.\d+\n$/);
  });

  test.each([
    ['check'],
    ['plan'],
    ['plan', 'one.lap', 'two.lap'],
    ['plan', 'one.lap', '--as', 'stone'],
    ['plan', 'one.lap', '--sideways'],
    ['plan', 'one.lap', '--as'],
    ['draw', 'one.lap', '--as', 'json'],
    ['serve', 'one.lap'],
  ])('refuses %j with one line and exit code 2', async (...args) => {
    const { code, output, errors } = await run(...args);
    expect(code).toBe(2);
    expect(output).toBe('');
    expect(errors).toMatch(/^halflap [a-z]+: .+\n$/);
  });
});

describe('check', () => {
  test('is silent about a sound file', async () => {
    expect(await run('check', await scratch.file('tray.lap', good))).toEqual({ code: 0, output: '', errors: '' });
  });

  test('names file, line, column, severity and code', async () => {
    const path = await scratch.file('tray.lap', good.replace('of ash', 'of oak'));
    const { code, output } = await run('check', path);
    expect(code).toBe(1);
    expect(output).toContain(`${path}:3:35: error LAP0201 `);
  });

  test('goes through all files', async () => {
    const sound = await scratch.file('sound.lap', good);
    const broken = await scratch.file('broken.lap', good.replace('of ash', 'of oak'));
    const { code, output } = await run('check', broken, sound);
    expect(code).toBe(1);
    expect(output).toContain('broken.lap');
    expect(output).not.toContain('sound.lap');
  });

  test.each([
    ['a file that is not there', 'missing.lap', null],
    ['bytes that are not UTF-8', 'bytes.lap', new Uint8Array([0x74, 0xff, 0xfe])],
  ])('exits 2 on %s', async (_, name, bytes) => {
    const path = bytes ? await scratch.file(name, bytes) : scratch.path(name);
    const { code, output, errors } = await run('check', path);
    expect(code).toBe(2);
    expect(output).toBe('');
    expect(errors).toContain(name);
  });
});

test('serve hands its streams to the language server, and says nothing on them itself', async () => {
  const terminal = new FakeTerminal();
  expect(await runCommand(['serve', '--stdio'], terminal)).toBe(0);
  expect(terminal).toMatchObject({ served: 1, output: '', errors: '' });
});

describe('plan', () => {
  test('is JSON when piped, text on a terminal, and reads standard input', async () => {
    const piped = new FakeTerminal({ input: good });
    expect(await runCommand(['plan', '-'], piped)).toBe(0);
    expect(planOf(piped.output)).toMatchObject({ schema: 'halflap-plan/1', source: '<stdin>', title: 'Two by one' });
    const shown = new FakeTerminal({ input: good, outputIsTerminal: true });
    expect(await runCommand(['plan', '-'], shown)).toBe(0);
    expect(shown.output).toMatch(/^Two by one\n/);
  });

  test('tells a person at a terminal what it is doing, and takes that away again', async () => {
    const watched = new FakeTerminal({ input: good, errorsAreTerminal: true });
    expect(await runCommand(['plan', '-'], watched)).toBe(0);
    expect(watched.errors).toBe('planning <stdin> …\r\u001b[K');
  });

  test('tells how the search for sticks stands, and Ctrl-C ends it with the best plan so far', async () => {
    const input = trayText();
    const watched = new FakeTerminal({ input, errorsAreTerminal: true });
    expect(await runCommand(['plan', '-'], watched)).toBe(0);
    expect(watched.errors).toMatch(/cutting ash: at least \d+ …/);
    expect(watched.errors).toMatch(/\r\u001b\[K$/);
    const stopped = new FakeTerminal({ input, interrupted: true });
    expect(await runCommand(['plan', '-'], stopped)).toBe(0);
    const { stock } = JSON.parse(stopped.output) as ShopPlan;
    expect(stock.map(({ problems }) => problems.join())).toEqual(
      stock.map(() => expect.stringContaining('The search was stopped') as unknown),
    );
    for (const { sticks } of stock) expect(sticks.length).toBeGreaterThan(0);
  });

  test('with errors plans what it can, says so, and exits 1', async () => {
    const path = await scratch.file('tray.lap', `${good}panel lost { grid nowhere shape 2 x 1 cells edge framed }\n`);
    const { code, output, errors } = await run('plan', path);
    expect(code).toBe(1);
    expect(planOf(output).incomplete).toBe(true);
    expect(planOf(output).panels.map((panel) => panel.name)).toEqual(['tray']);
    expect(errors).toContain('LAP0201');
  });

  test('writes a file, makes its folder, and leaves nothing else', async () => {
    const path = await scratch.file('tray.lap', good);
    const target = scratch.path('out', 'deep', 'tray.json');
    expect(await run('plan', path, '-o', target)).toEqual({ code: 0, output: '', errors: '' });
    expect(planOf(await readFile(target, 'utf8')).source).toBe(path);
    expect(await readdir(scratch.path('out', 'deep'))).toEqual(['tray.json']);
  });

  test('replaces an output only with --force', async () => {
    const path = await scratch.file('tray.lap', good);
    const target = await scratch.file('tray.json', 'kept');
    const refused = await run('plan', path, '-o', target);
    expect(refused.code).toBe(2);
    expect(refused.errors).toContain('--force');
    expect(await readFile(target, 'utf8')).toBe('kept');
    expect((await run('plan', path, '-o', target, '--force')).code).toBe(0);
    expect(await readFile(target, 'utf8')).not.toBe('kept');
  });

  test('never writes over the design, not even through a link', async () => {
    const path = await scratch.file('tray.lap', good);
    const link = scratch.path('link.json');
    await symlink(path, link);
    for (const target of [path, link]) {
      const { code, errors } = await run('plan', path, '-o', target, '--force');
      expect(code).toBe(2);
      expect(errors).toContain('the design itself');
    }
    expect(await readFile(path, 'utf8')).toBe(good);
  });

  test('refuses a folder, and a path through a file', async () => {
    const path = await scratch.file('tray.lap', good);
    await mkdir(scratch.path('out'));
    expect((await run('plan', path, '-o', scratch.path('out'), '--force')).code).toBe(2);
    expect((await run('plan', path, '-o', join(path, 'tray.json'))).code).toBe(2);
    expect((await readdir(scratch.path())).sort()).toEqual(['out', 'tray.lap']);
  });
});

describe('plan --as csv', () => {
  const names = [...planCsvFiles].sort();

  test('makes a folder of tables', async () => {
    const path = await scratch.file('tray.lap', good);
    const target = scratch.path('out', 'tray');
    expect(await run('plan', path, '--as', 'csv', '-o', target)).toEqual({ code: 0, output: '', errors: '' });
    expect((await readdir(target)).sort()).toEqual(names);
    expect(await readdir(scratch.path('out'))).toEqual(['tray']);
    const strips = await readFile(join(target, 'strips.csv'), 'utf8');
    expect(strips).toMatch(
      /^mark,grid,family,stock,[^\r\n]*\r\nS,squares,2,ash,3,10,37,,0,1,0,1,tray 1,0\.1,-0\.1\r\n$/,
    );
  });

  test('needs a folder, and replaces one only with --force and only if all in it is its own', async () => {
    const path = await scratch.file('tray.lap', good);
    const target = scratch.path('tray');
    expect((await run('plan', path, '--as', 'csv')).code).toBe(2);
    expect((await run('plan', path, '--as', 'csv', '-o', path, '--force')).code).toBe(2);
    expect((await run('plan', path, '--as', 'csv', '-o', target)).code).toBe(0);
    expect((await run('plan', path, '--as', 'csv', '-o', target)).code).toBe(2);
    await writeFile(join(target, 'strips.csv'), 'old');
    expect((await run('plan', path, '--as', 'csv', '-o', target, '--force')).code).toBe(0);
    expect(await readFile(join(target, 'strips.csv'), 'utf8')).not.toBe('old');
    await writeFile(join(target, 'notes.txt'), 'mine');
    const { code, errors } = await run('plan', path, '--as', 'csv', '-o', target, '--force');
    expect(code).toBe(2);
    expect(errors).toContain('notes.txt');
    expect(await readFile(path, 'utf8')).toBe(good);
    expect((await readdir(scratch.path())).sort()).toEqual(['tray', 'tray.lap']);
  });
});

describe('draw', () => {
  const second = 'panel lid { grid squares shape 1 x 1 cells edge sawn }\n';

  test('draws the only panel', async () => {
    const { code, output } = await run('draw', await scratch.file('tray.lap', good));
    expect(code).toBe(0);
    expect(output).toMatch(/^<svg /);
  });

  test('asks which of several', async () => {
    const path = await scratch.file('tray.lap', good + second);
    const { code, errors } = await run('draw', path);
    expect(code).toBe(2);
    expect(errors).toContain('tray, lid');
    expect((await run('draw', path, '--panel', 'lid')).output).toContain('panel lid');
  });

  test('exits 2 for a panel that is not there, 1 for one that has errors', async () => {
    const path = await scratch.file('tray.lap', good);
    expect((await run('draw', path, '--panel', 'door')).code).toBe(2);
    const broken = await scratch.file('broken.lap', good.replace('pitch 40', 'pitch 2'));
    const { code, output } = await run('draw', broken);
    expect(code).toBe(1);
    expect(output).toBe('');
  });
});
