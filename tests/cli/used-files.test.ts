/** The command reads the files a design uses, below the workspace folder and never above. */
import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { ShopPlan } from '../../server/shop/shop-plan.ts';
import { halflap, type Outcome, scratchFolder } from './halflap.ts';

const strips = 'strip ash { section face 3 depth 10 }\n';
const design = `use "../strips.lap"
grid squares { square  pitch 40  of ash }
panel tray { grid squares  shape 2 x 1 cells }
`;

const scratch = scratchFolder();

beforeEach(() => {
  mkdirSync(scratch.path('job/trays'), { recursive: true });
  writeFileSync(scratch.path('job/strips.lap'), strips);
  writeFileSync(scratch.path('job/trays/tray.lap'), design);
});

afterEach(() => {
  vi.unstubAllEnvs();
});

const run = (...args: string[]): Promise<Outcome> => halflap(args);
const tray = (): string => scratch.path('job/trays/tray.lap');

test('the nearest folder with .git is the workspace', async () => {
  mkdirSync(scratch.path('job/.git'));
  expect(await run('check', tray())).toEqual({ code: 0, output: '', errors: '' });
  const { output } = await run('plan', tray(), '--as', 'json');
  const plan = JSON.parse(output) as ShopPlan;
  expect(plan.strips.map(({ stock }) => stock)).toEqual(['ash']);
});

test('a home folder is no workspace, be it under git, nor is the folder one stands in', async () => {
  mkdirSync(scratch.path('job/.git'));
  vi.stubEnv('HOME', scratch.path('job'));
  const { output } = await halflap(['check', tray()], { folder: scratch.path('job') });
  expect(output).toContain('lies above the workspace folder');
});

test('a file right in a home folder uses only what lies beside it', async () => {
  vi.stubEnv('HOME', scratch.path('job'));
  writeFileSync(scratch.path('job/tray.lap'), design.replace('../', ''));
  expect((await run('check', scratch.path('job/tray.lap'))).code).toBe(0);
  mkdirSync(scratch.path('job/private'));
  writeFileSync(scratch.path('job/private/strips.lap'), strips);
  writeFileSync(scratch.path('job/tray.lap'), design.replace('../', 'private/'));
  expect((await run('check', scratch.path('job/tray.lap'))).output).toContain('lies above the workspace folder');
});

test('without one a file has only its own folder', async () => {
  const { code, output } = await run('check', tray());
  expect(code).toBe(1);
  expect(output).toContain('tray.lap:1:5: error LAP0205 `../strips.lap` lies above the workspace folder');
});

test('a link out of the workspace is not followed', async () => {
  mkdirSync(scratch.path('job/trays/.git'));
  symlinkSync(scratch.path('job/strips.lap'), scratch.path('job/trays/strips.lap'));
  writeFileSync(tray(), design.replace('../', ''));
  expect((await run('check', tray())).output).toContain('lies above the workspace folder');
});

test('a problem in a used file is one line at its `use`, and shows the place in that file', async () => {
  mkdirSync(scratch.path('job/.git'));
  writeFileSync(scratch.path('job/strips.lap'), strips.replace('face 3', 'face 0'));
  const { output } = await run('check', tray());
  const lines = output.trimEnd().split('\n');
  expect(lines[0]).toMatch(/tray\.lap:1:5: error LAP0207 `strips\.lap` has 1 error\./);
  expect(lines[1]).toMatch(/^ {2}strips\.lap:1:26: The face must be more than 0/);
  expect(lines).toHaveLength(2);
});

test('the revision of a plan follows the used files too', async () => {
  mkdirSync(scratch.path('job/.git'));
  const revision = async () => (JSON.parse((await run('plan', tray(), '--as', 'json')).output) as ShopPlan).revision;
  const before = await revision();
  writeFileSync(scratch.path('job/strips.lap'), `${strips}# harder wood next time\n`);
  expect(await revision()).not.toBe(before);
});
