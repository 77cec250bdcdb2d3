/** Where an output may go, and what of a place is kept. */
import { execFileSync } from 'node:child_process';
import {
  chmod,
  chown,
  link,
  lstat,
  mkdir,
  readdir,
  readFile,
  readlink,
  stat,
  symlink,
  writeFile,
} from 'node:fs/promises';
import { hostname } from 'node:os';
import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { planCsvFiles } from '../../server/shop/writers/write-plan-csv.ts';
import { halflap, type Outcome, scratchFolder } from './halflap.ts';

const good = `strip ash { wood white_ash section face 3 depth 10 }
grid squares { square pitch 40 of ash }
panel tray { grid squares shape 2 x 1 cells edge framed }
`;

const scratch = scratchFolder();

const planTo = async (target: string, ...more: string[]): Promise<Outcome> =>
  halflap(['plan', await scratch.file('tray.lap', good), '-o', target, ...more]);

describe('a file that is replaced', () => {
  test('keeps its mode and its owner', async () => {
    const target = await scratch.file('tray.json', 'old');
    await chmod(target, 0o640);
    if (process.getuid?.() === 0) await chown(target, 12345, 12346);
    const before = await stat(target);
    expect((await planTo(target, '--force')).code).toBe(0);
    const { mode, uid, gid } = await stat(target);
    expect({ mode, uid, gid }).toEqual({ mode: before.mode, uid: before.uid, gid: before.gid });
    expect(await readFile(target, 'utf8')).not.toBe('old');
  });

  test('stays behind the link that leads to it', async () => {
    const target = await scratch.file('tray.json', 'old');
    await symlink('tray.json', scratch.path('latest.json'));
    expect((await planTo(scratch.path('latest.json'), '--force')).code).toBe(0);
    expect(await readlink(scratch.path('latest.json'))).toBe('tray.json');
    expect(await readFile(target, 'utf8')).not.toBe('old');
  });

  test('with a second name is refused, since the second would keep what was there', async () => {
    const target = await scratch.file('tray.json', 'old');
    await link(target, scratch.path('second.json'));
    const { code, errors } = await planTo(target, '--force');
    expect(code).toBe(2);
    expect(errors).toMatch(/^halflap plan: .*tray\.json has 2 names .*\n$/);
    expect(await readFile(target, 'utf8')).toBe('old');
  });

  test('is never the design under a second name', async () => {
    const design = await scratch.file('tray.lap', good);
    await link(design, scratch.path('second.json'));
    expect((await halflap(['plan', design, '-o', scratch.path('second.json'), '--force'])).errors).toContain(
      'the design itself',
    );
    expect(await readFile(design, 'utf8')).toBe(good);
  });
});

describe('what is no file', () => {
  test('a pipe is written through and stays a pipe', async () => {
    const pipe = scratch.path('pipe');
    execFileSync('mkfifo', [pipe]);
    const [read, { code }] = await Promise.all([readFile(pipe, 'utf8'), planTo(pipe)]);
    expect(code).toBe(0);
    expect(JSON.parse(read)).toMatchObject({ schema: 'halflap-plan/1' });
    expect((await lstat(pipe)).isFIFO()).toBe(true);
  });

  test('a link to nothing is refused and stays', async () => {
    const target = scratch.path('latest.json');
    await symlink('gone.json', target);
    for (const as of ['json', 'csv']) {
      const { code, errors } = await planTo(target, '--as', as, '--force');
      expect(code).toBe(2);
      expect(errors).toMatch(/^halflap plan: .*latest\.json is a link to nothing.*\n$/);
    }
    expect(await readlink(target)).toBe('gone.json');
  });

  test('a path that ends as a folder does is no file, be one there without the stroke', async () => {
    const design = await scratch.file('tray.lap', good);
    for (const target of [`${design}/`, `${scratch.path('out')}/`]) {
      expect((await halflap(['plan', design, '-o', target, '--force'])).code).toBe(2);
    }
    expect(await readFile(design, 'utf8')).toBe(good);
    expect(await readdir(scratch.path())).toEqual(['tray.lap']);
  });

  test('a pipe is not laid out in its place', async () => {
    const pipe = scratch.path('pipe.lap');
    execFileSync('mkfifo', [pipe]);
    const [, { code, errors }] = await Promise.all([
      writeFile(pipe, good.replace(' }', '}')),
      halflap(['format', pipe]),
    ]);
    expect(code).toBe(2);
    expect(errors).toMatch(/pipe\.lap is no file .*\n$/);
  });
});

describe('a folder of tables', () => {
  test('stays the folder it is, each table with its mode', async () => {
    const target = scratch.path('tray');
    expect((await planTo(target, '--as', 'csv')).code).toBe(0);
    await chmod(target, 0o750);
    await chmod(join(target, 'strips.csv'), 0o600);
    const before = await stat(target);
    expect((await planTo(target, '--as', 'csv', '--force')).code).toBe(0);
    const after = await stat(target);
    expect([after.ino, after.mode]).toEqual([before.ino, before.mode]);
    expect((await stat(join(target, 'strips.csv'))).mode & 0o777).toBe(0o600);
    expect((await readdir(target)).sort()).toEqual([...planCsvFiles].sort());
  });

  test('with a table that is a link or has a second name is refused', async () => {
    const target = scratch.path('tray');
    await planTo(target, '--as', 'csv');
    await link(join(target, 'strips.csv'), scratch.path('second.csv'));
    expect((await planTo(target, '--as', 'csv', '--force')).errors).toContain('strips.csv has 2 names');
    await mkdir(scratch.path('other'));
    await symlink('../second.csv', scratch.path('other', 'strips.csv'));
    expect((await planTo(scratch.path('other'), '--as', 'csv', '--force')).errors).toContain(
      'strips.csv is no plain file',
    );
  });
});

describe('what killed runs left', () => {
  const machine = createHash('sha256').update(hostname()).digest('hex').slice(0, 8);
  const leftBy = (process: number): string => `.halflap-${machine}-${process}-0a1b2c3d.tmp`;
  /** More than Linux hands out. */
  const gone = 999_999_999;

  test('is swept by the next run that writes there; what a living one makes is left alone', async () => {
    await scratch.file(leftBy(gone), 'half a plan');
    await mkdir(scratch.path(leftBy(gone + 1)));
    await scratch.file(join(leftBy(gone + 1), 'strips.csv'), 'half a table');
    await scratch.file(leftBy(process.pid), 'in the making');
    await scratch.file('.halflap-notes.tmp', 'mine');
    expect((await planTo(scratch.path('tray.json'))).code).toBe(0);
    expect((await readdir(scratch.path())).sort()).toEqual(
      ['.halflap-notes.tmp', leftBy(process.pid), 'tray.json', 'tray.lap'].sort(),
    );
  });

  test('in a folder of tables is told, and swept when that is replaced', async () => {
    const target = scratch.path('tray');
    await planTo(target, '--as', 'csv');
    await mkdir(join(target, leftBy(gone)));
    expect((await planTo(target, '--as', 'csv')).errors).toContain('a run that was stopped left it half replaced');
    expect((await planTo(target, '--as', 'csv', '--force')).code).toBe(0);
    expect((await readdir(target)).sort()).toEqual([...planCsvFiles].sort());
  });
});
