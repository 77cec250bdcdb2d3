import { readFile } from 'node:fs/promises';
import { beforeEach, describe, expect, test } from 'vitest';
import type { WrittenChange } from '../../server/compare/design-change.ts';
import { changeFaults } from '../compare/change-schema.ts';
import { trayText } from '../compare/versions.ts';
import { readPaths } from '../drawing/read-svg.ts';
import { halflap, type Outcome, scratchFolder } from './halflap.ts';

const scratch = scratchFolder();
let old: string;
let now: string;

beforeEach(async () => {
  old = await scratch.file('old.lap', trayText());
  now = await scratch.file('new.lap', trayText({ side: '38mm' }));
});

const run = (args: readonly string[], input = ''): Promise<Outcome> => halflap(['compare', ...args], { input });

describe('halflap compare', () => {
  test('the same: exit code 0, and says so', async () => {
    const { code, output, errors } = await run([old, old]);
    expect(code).toBe(0);
    expect(output).toContain('Nothing changed');
    expect(errors).toBe('');
  });

  test('different: exit code 1, and in words what changes', async () => {
    const { code, output } = await run([old, now]);
    expect(code).toBe(1);
    expect(output).toMatch(/infill pieces change their length: A 1\.15 shorter/);
  });

  test('as JSON keeps to the schema, with and without re-use', async () => {
    for (const options of [[], ['--cut', 'all']]) {
      const { output } = await run([old, now, '--as', 'json', ...options]);
      const change = JSON.parse(output) as WrittenChange;
      expect(changeFaults(change)).toEqual([]);
      expect(changeFaults({ ...change, colour: 'red' })).not.toEqual([]);
      expect(change.reuse === null).toBe(options.length === 0);
    }
  });

  test('as HTML is one page with the overlay and every table', async () => {
    const { output } = await run([old, now, '--as', 'html', '--cut', 'all']);
    expect(output).toMatch(/^<!DOCTYPE html>[^]*<svg [^]*<\/html>\n$/);
    for (const title of ['Infill pieces', 'Strips', 'Set-ups', 'From pieces already cut']) {
      expect(output).toContain(`<h2>${title}</h2>`);
    }
    expect(output).not.toMatch(/<script|https?:\/\/(?!www\.w3\.org)/);
  });

  test('as SVG tells the versions apart by hatching and line, and keeps every shape', async () => {
    const { output } = await run([old, now, '--as', 'svg']);
    expect(output).toContain('stroke-dasharray');
    const count = (look: string): number => {
      const part = new RegExp(`<g class="${look}">[^]*?</g>`).exec(output)?.[0] ?? '';
      return [...part.matchAll(/<path data-mark=/g)].length;
    };
    expect(readPaths(output).length).toBeGreaterThan(100);
    expect(count('old')).toBeGreaterThan(0);
    expect(count('new')).toBeGreaterThan(0);
    const words = /panel tray: (\d+) shapes only in the old version, (\d+) only in the new/.exec(output);
    expect([Number(words?.[1]), Number(words?.[2])]).toEqual([count('old'), count('new')]);
  });

  test('writes to a file, but not over either version', async () => {
    const target = scratch.path('out', 'change.md');
    expect(await run([old, now, '--as', 'markdown', '-o', target])).toMatchObject({ code: 1, output: '' });
    expect(await readFile(target, 'utf8')).toMatch(/^### Tray\n/);
    expect(await run([old, now, '-o', now, '--force'])).toMatchObject({ code: 2, output: '' });
  });

  test('takes a list of what is cut from a file or from standard input', async () => {
    const list = await scratch.file('cut.csv', 'mark,count\nA,36\n');
    for (const given of [await run([old, now, '--cut', list]), await run([old, now, '--cut', '-'], '{"A":36}')]) {
      expect(given.output).toContain('From pieces already cut: 36;');
    }
    expect(await run([old, now, '--cut', '-'], 'B,1')).toMatchObject({
      code: 2,
      errors: expect.stringContaining('line 1: the old version has no mark “B”') as string,
    });
  });
});

describe('bad input', () => {
  test('a file with an error on one side: the rest is compared, and what is not is said', async () => {
    const broken = await scratch.file(
      'broken.lap',
      trayText({ side: '38mm', extra: 'panel side { grid mesh  shape oval }\n' }),
    );
    const { code, output, errors } = await run([old, broken]);
    expect(code).toBe(1);
    expect(errors).toMatch(/broken\.lap:\d+:\d+: error LAP\d{4} /);
    expect(output).toContain('A 1.15 shorter');
    expect(output).toContain('The new version: because of errors');
  });

  test.each([
    ['old', (broken: string) => [broken, now]],
    ['new', (broken: string) => [now, broken]],
  ])(
    'a %s file that does not parse: the panel is compared despite the break, and what is not is said',
    async (side, args) => {
      const broken = await scratch.file('broken.lap', trayText().replace(/^panel tray \{$/m, 'panel tray { {'));
      const { code, output, errors } = await run(args(broken));
      expect(code).toBe(1);
      expect(errors).toMatch(/broken\.lap:\d+:\d+: error LAP01\d\d /);
      expect(output).toMatch(/A 1\.15 (longer|shorter)/);
      expect(output).toContain(`The ${side} version: because of errors, spares, settings`);
    },
  );

  test('an error that may hide a difference is trouble, not sameness', async () => {
    const broken = await scratch.file('broken.lap', trayText({ extra: 'panel side { grid mesh  shape oval }\n' }));
    expect((await run([old, broken])).code).toBe(2);
  });

  test.each([
    ['one version', () => [old], 'name the old version and the new one'],
    ['three versions', () => [old, now, now], 'two versions at a time, but 3 were given'],
    ['standard input twice', () => ['-', '-'], '“-” can be read only once'],
    ['a missing file', () => [old, scratch.path('none.lap')], 'there is no such file'],
    ['an unknown panel', () => [old, now, '--as', 'svg', '--panel', 'lid'], 'no panel is called lid; there is tray'],
    ['an unknown format', () => [old, now, '--as', 'pdf'], '--as pdf: choose'],
  ])('%s is refused in words', async (_, args, message) => {
    const { code, output, errors } = await run(args());
    expect({ code, output }).toEqual({ code: 2, output: '' });
    expect(errors).toContain(message);
  });
});
