import { chmodSync, existsSync, rmSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readRevision, revisionPathOf } from '../../server/cli/git-revision.ts';
import { GitFolder } from './git-folder.ts';

let repository: GitFolder;

beforeAll(() => {
  repository = new GitFolder();
  repository.commit('first', { 'designs/tray one.lap': 'units mm\n', '$(touch owned);.lap': 'units cm\n' });
  repository.commit('second', { 'designs/tray one.lap': 'units in\n' });
});

afterAll(() => {
  repository.remove();
});

const read = (argument: string, folder = repository.path): string => {
  const place = revisionPathOf(argument);
  if (!place) throw new Error(`${argument} names no revision`);
  return new TextDecoder().decode(readRevision(place, folder).bytes);
};

test('reads a tag, a branch, an older commit and what is staged', () => {
  expect(read('first:designs/tray one.lap')).toBe('units mm\n');
  expect(read('main:designs/tray one.lap')).toBe('units in\n');
  expect(read('HEAD~1:designs/tray one.lap')).toBe('units mm\n');
  expect(read(':designs/tray one.lap')).toBe('units in\n');
});

test('a path that begins with ./ counts from the folder', () => {
  expect(read('first:./tray one.lap', `${repository.path}/designs`)).toBe('units mm\n');
});

test('hands names to git as they are: no shell sees them', () => {
  expect(read('first:$(touch owned);.lap')).toBe('units cm\n');
  expect(repository.git('status', '--porcelain')).toBe('');
});

test('files that a design uses are read from the same revision', () => {
  const { place } = readRevision({ revision: 'first', path: './tray one.lap' }, `${repository.path}/designs`);
  expect(place.path).toBe('designs/tray one.lap');
  expect(place.read('designs/tray one.lap')).toEqual({ kind: 'text', text: 'units mm\n' });
  expect(place.read('designs/none.lap')).toEqual({ kind: 'missing' });
});

test.each([
  ['an unknown revision', 'third:designs/tray one.lap', 'git knows no revision “third”'],
  ['an option in its place', '--output=x:designs/tray one.lap', 'git knows no revision “--output=x”'],
  ['a missing file', 'first:tray.lap', 'revision first has no file tray.lap'],
  ['a missing staged file', ':tray.lap', 'what is staged has no file tray.lap'],
  ['a folder', 'first:designs', 'revision first has no file designs'],
  ['no file at all', 'first:', 'first: names no file'],
])('refuses %s in words', (_, argument, message) => {
  expect(() => read(argument)).toThrow(message);
});

test('says so where there is no repository', () => {
  expect(() => read('first:tray.lap', '/')).toThrow(
    'cannot read first:tray.lap: there is no such file, and this folder is in no git repository',
  );
});

test('a name without a colon is no revision', () => {
  expect(revisionPathOf('tray.lap')).toBeNull();
});

test('runs no program that the repository names: no watcher of files, no way to fetch what it lacks', () => {
  const hostile = new GitFolder();
  try {
    hostile.commit('first', { 'tray.lap': 'units mm\n' });
    const mark = hostile.write('ran.sh', `#!/bin/sh\ntouch '${hostile.path}/ran'\n`);
    chmodSync(mark, 0o755);
    hostile.git('config', 'core.fsmonitor', mark);
    hostile.git('config', 'remote.origin.url', `ext::${mark} %S`);
    hostile.git('config', 'remote.origin.promisor', 'true');
    hostile.git('config', 'remote.origin.partialclonefilter', 'blob:none');
    hostile.git('config', 'protocol.ext.allow', 'always');
    const object = hostile.git('rev-parse', 'first:tray.lap').trim();
    expect(read(':tray.lap', hostile.path)).toBe('units mm\n');
    rmSync(`${hostile.path}/.git/objects/${object.slice(0, 2)}/${object.slice(2)}`);
    expect(() => read('first:tray.lap', hostile.path)).toThrow('has no file tray.lap');
    expect(existsSync(`${hostile.path}/ran`)).toBe(false);
  } finally {
    hostile.remove();
  }
});
