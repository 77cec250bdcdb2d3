/**
 * Writers killed at every step on the disk. From the step at which the process "dies" on, nothing reaches the disk any
 * more, no clearing up either: what is then there is what kill -9 leaves.
 */
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import type * as filesLater from 'node:fs/promises';
import type * as filesNow from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { writeFolder } from '../../server/cli/write-folder.ts';
import { writeOutput } from '../../server/cli/write-output.ts';
import { FakeTerminal } from './fake-terminal.ts';

const disk = vi.hoisted(() => {
  const state = { steps: 0, deathAt: Number.POSITIVE_INFINITY, order: [] as string[] };
  const step = (name: string): void => {
    state.steps++;
    state.order.push(name);
    if (state.steps >= state.deathAt) throw new Error('the process is dead');
  };
  return { state, step };
});

vi.mock('node:fs/promises', async (original) => {
  const real = await original<typeof filesLater>();
  const counted =
    <Args extends unknown[], Result>(name: string, act: (...args: Args) => Promise<Result>) =>
    async (...args: Args): Promise<Result> => {
      disk.step(name);
      return act(...args);
    };
  const open = async (...args: Parameters<typeof real.open>) => {
    disk.step('open');
    const handle = await real.open(...args);
    const write = handle.writeFile.bind(handle);
    const sync = handle.sync.bind(handle);
    handle.writeFile = async (content) => {
      // Dying in the middle of a write leaves its first half.
      if (disk.state.steps + 1 === disk.state.deathAt)
        await write(String(content).slice(0, String(content).length / 2));
      disk.step('write');
      await write(content);
    };
    handle.sync = async () => {
      disk.step('sync');
      await sync();
    };
    return handle;
  };
  const [rename, mkdir, rm] = [counted('rename', real.rename), counted('mkdir', real.mkdir), counted('rm', real.rm)];
  return { ...real, open, rename, mkdir, rm, writeFile: counted('write', real.writeFile) };
});

vi.mock('node:fs', async (original) => {
  const real = await original<typeof filesNow>();
  const renameSync: typeof real.renameSync = (from, to) => {
    disk.step('rename');
    real.renameSync(from, to);
  };
  return { ...real, renameSync };
});

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'halflap-killed-'));
});
afterEach(() => {
  disk.state.deathAt = Number.POSITIVE_INFINITY;
  rmSync(folder, { recursive: true, force: true });
});

/** Does `write` and dies at step 1, then at step 2 …, until it comes to its end; `look` sees each death and the end. */
async function diesAtEveryStep(
  prepare: () => void,
  write: () => Promise<void>,
  look: (ended: boolean) => void,
): Promise<void> {
  for (let deathAt = 1; ; deathAt++) {
    Object.assign(disk.state, { deathAt: Number.POSITIVE_INFINITY });
    prepare();
    Object.assign(disk.state, { steps: 0, deathAt, order: [] });
    await write().catch(() => undefined);
    const ended = disk.state.steps < deathAt;
    look(ended);
    if (ended) return;
  }
}

const old = 'old '.repeat(1000);
const made = 'made '.repeat(1000);

test('a file is the old one or the new one, whole', async () => {
  const path = join(folder, 'plan.json');
  await diesAtEveryStep(
    () => writeFileSync(path, old),
    () => writeOutput(made, { path, force: true }, new FakeTerminal()),
    (ended) => expect(ended ? [made] : [old, made]).toContain(readFileSync(path, 'utf8')),
  );
  expect(readdirSync(folder).filter((name) => name !== 'plan.json')).not.toEqual([]);
});

const names = ['strips.csv', 'pieces.csv', 'notches.csv'];
const tables = (text: string): Record<string, string> => Object.fromEntries(names.map((name) => [name, name + text]));

test('a folder of tables is always there with all its tables, each of them whole', async () => {
  const path = join(folder, 'plan');
  let mixed = 0;
  await diesAtEveryStep(
    () => {
      mkdirSync(path, { recursive: true });
      for (const [name, text] of Object.entries(tables(old))) writeFileSync(join(path, name), text);
    },
    () => writeFolder(path, tables(made)),
    (ended) => {
      const found = names.map((name) => readFileSync(join(path, name), 'utf8').slice(name.length));
      for (const text of found) expect(ended ? [made] : [old, made]).toContain(text);
      if (new Set(found).size > 1) mixed++;
    },
  );
  // Only between two of the renames, which nothing comes between: with one table placed, and with two.
  expect(mixed).toBe(names.length - 1);
});

test('a new folder is not there or has all its tables', async () => {
  const path = join(folder, 'plan');
  await diesAtEveryStep(
    () => rmSync(path, { recursive: true, force: true }),
    () => writeFolder(path, tables(made)),
    (ended) => {
      const isThere = readdirSync(folder).includes('plan');
      expect(isThere || !ended).toBe(true);
      if (isThere) expect(readdirSync(path).sort()).toEqual([...names].sort());
    },
  );
});

test('contents reach the disk before they take their place', async () => {
  await writeOutput(made, { path: join(folder, 'plan.json'), force: false }, new FakeTerminal());
  expect(disk.state.order.join(' ')).toContain('open write sync rename open sync');
});
