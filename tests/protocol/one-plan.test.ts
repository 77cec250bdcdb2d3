/** Every door comes to the same plan of a text: the command, both comparisons, the preview. Figures by hand. */
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { MessageConnection } from 'vscode-languageserver/node';
import { analyseByStages } from '../../server/analyse.ts';
import type { CompareAnswer } from '../../server/language/compare-messages.ts';
import type { DrawingAnswer } from '../../server/language/preview-messages.ts';
import type { ShopPlan } from '../../server/shop/shop-plan.ts';
import { halflap, scratchFolder } from '../cli/halflap.ts';
import { startWithEngine } from './engine-session.ts';

/** Nine backs go on one sheet when they are moved together, on two when they are laid one after another. */
const coaster = (hourly: number): string => `strip ash { section face 3 depth 10  lengths 900 at 4 EUR }
grid mesh { square  pitch 40  of ash }
panel net { grid mesh  shape 3 x 2 cells  edge framed }
outline back { start 0, 0  line to 200, 0  line to 0, 200  line to start }
sheet ply { thick 6  size 600 x 450 at 24 EUR  kerf 2  margin 3  turns 0, 90, 180, 270 }
board base { shape back  of ply  copies 9 }
work coaster {
  place net at 0, 0
  hourly ${hourly} EUR
  minutes 1 per setting for notch_strips
  minutes 10 per metre for mill_strips
}
`;
/** One stick at 4, one sheet at 24; two settings of a minute each and 10 minutes for each of the stick's 0.9 m: 11 minutes. */
const [before, after] = [coaster(30), coaster(60)];
const words = 'Cost of a copy: 33.50 EUR → 39.00 EUR (+5.50).';

const uri = 'file:///coaster.lap';
const scratch = scratchFolder();
let editor: MessageConnection;

beforeAll(async () => {
  editor = await startWithEngine(analyseByStages, () => undefined);
  await editor.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'halflap', version: 1, text: after },
  });
});
afterAll(() => {
  editor.dispose();
});

async function planOf(text: string): Promise<ShopPlan> {
  const { output } = await halflap(['plan', await scratch.file('coaster.lap', text), '--as', 'json']);
  return JSON.parse(output) as ShopPlan;
}

it('the plan nests the boards on one sheet', async () => {
  const { sheets, cost } = await planOf(before);
  expect(sheets.map(({ count }) => count)).toEqual([1]);
  expect(cost.costPerCopy).toBe(33.5);
});

it('the comparison of the command goes by it', async () => {
  const versions = [await scratch.file('before.lap', before), await scratch.file('after.lap', after)];
  expect((await halflap(['compare', ...versions])).output).toContain(words);
});

it('the comparison in the editor goes by it', async () => {
  const question = { uri, earlier: { name: 'earlier', uri: 'git:/coaster.lap', text: before }, cut: 'nothing' };
  const answer = await editor.sendRequest<CompareAnswer | null>('halflap/compare', question);
  expect(answer?.body).toContain(words);
});

it('the preview tells the steps of it, with the minutes for the sticks that it takes', async () => {
  const { steps } = await planOf(after);
  const { table } = await editor.sendRequest<DrawingAnswer>('halflap/drawing', { uri, view: 'steps' });
  const minutes = table?.columns.findIndex(({ title }) => title === 'Minutes') ?? NaN;
  const told = (table?.rows ?? []).map(({ cells }) => [cells[1], cells[minutes]]);
  expect(told).toEqual(steps.map(({ title, handsOnMin }) => [title, handsOnMin === null ? '' : String(handsOnMin)]));
  expect(told[0]).toEqual(['mill strips', '9']);
});
