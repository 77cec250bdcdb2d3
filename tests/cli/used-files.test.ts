/** The command reads the files a design uses, below the workspace folder and never above. */
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { runCommand } from '../../server/cli/run-command.ts';
import type { ShopPlan } from '../../server/shop/shop-plan.ts';
import { FakeTerminal } from './fake-terminal.ts';

const strips = 'strip ash { section face 3 depth 10 }\n';
const design = `use "../strips.lap"
grid squares { square  pitch 40  of ash }
panel tray { grid squares  shape 2 x 1 cells }
`;

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'halflap-used-'));
  mkdirSync(join(folder, 'job/trays'), { recursive: true });
  writeFileSync(join(folder, 'job/strips.lap'), strips);
  writeFileSync(join(folder, 'job/trays/tray.lap'), design);
});
afterEach(() => rmSync(folder, { recursive: true }));

async function run(...args: string[]) {
  const terminal = new FakeTerminal();
  return { code: await runCommand(args, terminal), output: terminal.output, errors: terminal.errors };
}

const tray = (): string => join(folder, 'job/trays/tray.lap');

test('the nearest folder with .git is the workspace', async () => {
  mkdirSync(join(folder, 'job/.git'));
  expect(await run('check', tray())).toEqual({ code: 0, output: '', errors: '' });
  const { output } = await run('plan', tray(), '--as', 'json');
  const plan = JSON.parse(output) as ShopPlan;
  expect(plan.strips.map(({ stock }) => stock)).toEqual(['ash']);
});

test('without one a file elsewhere has only its own folder', async () => {
  const { code, output } = await run('check', tray());
  expect(code).toBe(1);
  expect(output).toContain('tray.lap:1:5: error LAP0205 `../strips.lap` lies above the workspace folder');
});

test('a link out of the workspace is not followed', async () => {
  mkdirSync(join(folder, 'job/trays/.git'));
  symlinkSync(join(folder, 'job/strips.lap'), join(folder, 'job/trays/strips.lap'));
  writeFileSync(tray(), design.replace('../', ''));
  expect((await run('check', tray())).output).toContain('lies above the workspace folder');
});

test('a problem in a used file is one line at its `use`, and shows the place in that file', async () => {
  mkdirSync(join(folder, 'job/.git'));
  writeFileSync(join(folder, 'job/strips.lap'), strips.replace('face 3', 'face 0'));
  const { output } = await run('check', tray());
  const lines = output.trimEnd().split('\n');
  expect(lines[0]).toMatch(/tray\.lap:1:5: error LAP0207 `strips\.lap` has 1 error\./);
  expect(lines[1]).toMatch(/^ {2}strips\.lap:1:26: The face must be more than 0/);
  expect(lines).toHaveLength(2);
});

test('the revision of a plan follows the used files too', async () => {
  mkdirSync(join(folder, 'job/.git'));
  const revision = async () => (JSON.parse((await run('plan', tray(), '--as', 'json')).output) as ShopPlan).revision;
  const before = await revision();
  writeFileSync(join(folder, 'job/strips.lap'), `${strips}# harder wood next time\n`);
  expect(await revision()).not.toBe(before);
});
