/** The recipes of the read-me with real git: a history of four commits, textconv, external diff, and the Markdown for a review. */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { trayText } from '../compare/versions.ts';
import { GitFolder } from './git-folder.ts';
import { halflap as runHalflap, type Outcome } from './halflap.ts';

const program = fileURLToPath(new URL('../../dist/halflap.cjs', import.meta.url));
const recipe = fileURLToPath(new URL('../../samples/git/compare-changes.sh', import.meta.url));
const golden = fileURLToPath(new URL('../cases/compare/history.md', import.meta.url));
/** The command as a person would have it on the path. */
const halflap = `"${process.execPath}" "${program}"`;

const lid = `title "Lid"
strip cedar { wood cedar  section face 3mm depth 8mm  lengths 600mm }
grid squares { square  pitch 30mm  of cedar }
panel lid { grid squares  shape 4 x 3 cells  edge framed }
`;

let repository: GitFolder;
/** In place of the command, where a process for each call proves nothing: writes down how it was called. */
let recorderFile: string;

beforeAll(() => {
  repository = new GitFolder();
  recorderFile = repository.write('.git/recorder.sh', `printf '<<%s>>\\n' "$*"\n`);
  repository.commit('begun', { 'tray.lap': trayText(), '.gitattributes': '*.lap diff=halflap\n' });
  repository.commit('smaller', { 'tray.lap': trayText({ side: '38mm' }) });
  repository.commit('renamed', {
    'tray.lap': `# for the shop\n${trayText({ side: '38mm', panel: 'dish', copies: 2 })}`,
  });
  repository.commit('lidded', {
    'designs/lid.lap': lid,
    'tray.lap': trayText({ side: '3.8cm', panel: 'dish', copies: 2 }),
  });
});

afterAll(() => {
  repository.remove();
});

/** The command of the read-me that begins so, with the program of this checkout. */
function fromReadMe(beginning: string): string {
  const text = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
  const line = text.split('\n').find((each) => each.startsWith(beginning));
  if (line === undefined) throw new Error(`The read-me has no line ${beginning}`);
  return line.replace('halflap plan', `${halflap} plan`).replace('halflap compare', `${halflap} compare`);
}

/** What a recipe wrote, with every call that it made done here. */
async function withCalls(written: string): Promise<string> {
  let text = '';
  for (const line of written.split(/^(?=<<)|(?<=>>\n)/m)) {
    const [, call] = /^<<(.*)>>\n$/.exec(line) ?? [];
    text += call === undefined ? line : (await halflapHere(call.split(' '))).output;
  }
  return text;
}

const halflapHere = (args: readonly string[]): Promise<Outcome> => runHalflap(args, { folder: repository.path });

test('the Markdown of a history reads well: kept in tests/cases, one part a commit', async () => {
  const steps = ['begun', 'smaller', 'renamed', 'lidded'];
  const parts: string[] = [];
  for (const [index, head] of steps.slice(1).entries()) {
    const base = steps[index] ?? '';
    const script = repository.run('sh', [recipe, base, head], { HALFLAP: `sh ${recorderFile}` });
    parts.push((await withCalls(script)).replaceAll(repository.git('rev-parse', base).trim(), base));
  }
  // sections of the plan come and go; what is kept here is what a reviewer reads first
  const text = parts
    .join('\n')
    .replace(/<details><summary><b>Everything else<[^]*?<\/details>\n\n/g, '')
    .replace(/\*\*Everything else\*\*\n\n(\|.*\n)+\n/g, '');
  if (process.env['ACCEPT'] === '1') writeFileSync(golden, text);
  expect(text).toBe(readFileSync(golden, 'utf8'));
});

test('git diff by textconv compares the plans, line by line', () => {
  repository.run('sh', ['-c', fromReadMe('git config diff.halflap.textconv')]);
  const difference = repository.git('diff', 'begun', 'smaller', '--', 'tray.lap');
  expect(difference).toMatch(/^-A .* 20\.1 .*\n/m);
  expect(difference).toMatch(/^\+A .* 18\.9 .*\n/m);
  repository.git('config', '--unset', 'diff.halflap.textconv');
});

test('git diff by an external command says what changed, also for files that come and go', () => {
  repository.run('sh', ['-c', fromReadMe('git config diff.halflap.command')]);
  const difference = (from: string, to: string, file: string): string =>
    repository.git('diff', '--ext-diff', from, to, '--', file);
  expect(difference('begun', 'smaller', 'tray.lap')).toContain('A 1.15 shorter');
  expect(difference('renamed', 'lidded', 'designs/lid.lap')).toContain('Panel lid is new.');
  expect(difference('lidded', 'renamed', 'designs/lid.lap')).toContain('Panel lid is gone.');
  repository.git('config', '--unset', 'diff.halflap.command');
});

test('a design is compared with the files it used then', async () => {
  const design = (text: string): string => text.replace(/^bench .*$/m, 'use "bench.lap"');
  const bench = (bevels: string): string => `bench shop { bevels ${bevels}  kerf 3mm }\n`;
  repository.commit('parted', { 'uses.lap': design(trayText()), 'bench.lap': bench('30, 60') });
  repository.commit('more', { 'bench.lap': bench('30, 45, 60') });
  expect((await halflapHere(['compare', 'parted:uses.lap', 'more:uses.lap'])).output).toContain('30, 45, 60');
  expect((await halflapHere(['compare', 'HEAD:uses.lap', 'uses.lap'])).output).toContain('Nothing changed');
});

test('a revision or a file in it that does not exist is trouble, in words', async () => {
  expect(await halflapHere(['compare', 'lost:tray.lap', 'tray.lap'])).toMatchObject({
    ...{ code: 2, output: '' },
    errors: expect.stringContaining('git knows no revision “lost”') as string,
  });
  expect((await halflapHere(['compare', 'begun:lid.lap', 'tray.lap'])).errors).toContain('revision begun has no file');
});

test('a file compares with its own past', async () => {
  repository.write('tray.lap', trayText({ side: '40mm', panel: 'dish', copies: 2 }));
  const { code, output } = await halflapHere(['compare', 'HEAD:tray.lap', 'tray.lap']);
  expect(code).toBe(1);
  expect(output).toContain('A 1.15 longer');
  repository.git('checkout', '--quiet', 'tray.lap');
  const same = await halflapHere(['compare', 'HEAD:tray.lap', 'tray.lap']);
  expect(same.code).toBe(0);
  expect(same.output).toContain('Nothing changed');
});
