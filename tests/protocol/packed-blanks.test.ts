/** Blanks in the editor are those of the plan on paper: packed well once a version, for previews, hovers, comparisons and sticks. */
import { readFile } from 'node:fs/promises';
import type { MessageConnection } from 'vscode-languageserver/node';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { analyse, analyseByStages } from '../../server/analyse.ts';
import { changeReport } from '../../server/compare/change-report.ts';
import { compareDesigns } from '../../server/compare/compare-designs.ts';
import type { CompareAnswer } from '../../server/language/compare-messages.ts';
import type { DrawingAnswer } from '../../server/language/preview-messages.ts';
import type { ShopPlan } from '../../server/shop/shop-plan.ts';
import { usualEffort } from '../../server/machine/search-effort.ts';
import { planDesign, type Planned } from '../../server/plan-design.ts';
import { startWithEngine } from './engine-session.ts';
import { positionOf } from './places.ts';
import { plannedAtSight } from '../plan-at-sight.ts';

/** At first sight one blank of two short panels and two of a long one each; a long and a short go together, so two are enough. */
const plank = `units mm
strip ash { wood white_ash  section face 3 depth 10  lengths 600 }
bench shop { kerf 3  band_blade 6 cuts 0.9 curve 16 }
grid mesh { square  side 40  of ash }
panel short { grid mesh  shape 76 x 76  edge sawn  centred node  copies 2 }
panel long { grid mesh  shape 196 x 76  edge sawn  centred node  copies 2 }
blank plank { grid mesh  shape 330 x 90  take short 2  take long 2  gap 2 }
`;
const packingWords = 'Blanks are still being packed: their number, places and counts may change';

const packed: { uri: string; version: number }[] = [];
const progress: (string | null)[] = [];
let editor: MessageConnection;

beforeAll(async () => {
  editor = await startWithEngine(analyseByStages, (listening) => {
    listening.onNotification('halflap/packed', (notice: { uri: string; version: number }) => void packed.push(notice));
    listening.onNotification('halflap/progress', ({ doing }: { doing: string | null }) => void progress.push(doing));
  });
});
afterAll(() => {
  editor.dispose();
});

const open = (uri: string, text: string): Promise<void> =>
  editor.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'halflap', version: 1, text },
  });
const change = (uri: string, version: number, text: string): Promise<void> =>
  editor.sendNotification('textDocument/didChange', {
    textDocument: { uri, version },
    contentChanges: [{ text }],
  });
const drawingOf = (uri: string, view: string): Promise<DrawingAnswer> =>
  editor.sendRequest<DrawingAnswer>('halflap/drawing', { uri, view });
const hover = (uri: string, text: string, words: string): Promise<unknown> =>
  editor.sendRequest('textDocument/hover', { textDocument: { uri }, position: positionOf(text, words) });

async function untilPacked(uri: string, version = 1): Promise<void> {
  while (!packed.some((notice) => notice.uri === uri && notice.version === version))
    await new Promise((resume) => setTimeout(resume, 5));
}

/** The design with its plan, as the command has it. */
const plannedOf = (text: string): Promise<Planned> => planDesign(analyse(text), 'plank.lap', usualEffort());

const planOf = async (text: string): Promise<ShopPlan> => (await plannedOf(text)).plan;

/** Numbers of marks as a view lists them: what is to be cut of each. */
const toCut = ({ table }: DrawingAnswer): Record<string, number> =>
  Object.fromEntries((table?.rows ?? []).map(({ mark, cells }) => [mark ?? '', Number(cells.at(-1))]));

describe('blanks that take a search', () => {
  const uri = 'file:///plank.lap';

  it('are drawn at first sight, said to be still being packed, and then as the plan has them', async () => {
    const plan = await planOf(plank);
    expect(plan.blanks.map(({ copies }) => copies)).toEqual([2]);
    await open(uri, plank);
    const first = await drawingOf(uri, 'strips');
    expect(first.views.map(({ label }) => label)).toEqual(expect.arrayContaining(['plank_1', 'plank_2']));
    expect(first.summary.at(-1)).toBe(packingWords);
    await untilPacked(uri);
    const found = await drawingOf(uri, 'strips');
    expect(found.views.map(({ label }) => label)).toContain('plank');
    expect(found.summary).not.toContain(packingWords);
    expect(toCut(found)).toEqual(Object.fromEntries(plan.strips.map(({ mark, total }) => [mark, total])));
    expect(toCut(found)).not.toEqual(toCut(first));
    expect(progress).toContain('Packing blanks: 3 found, at least 2');
    expect(progress.at(-1)).toBeNull();
  });

  it('are counted in hovers by the same packing', async () => {
    expect(JSON.stringify(await hover(uri, plank, 'plank'))).toContain('To make: 2 in all, proven fewest');
  });

  it('give the sticks what to cut: a view of them waits for the packing, and no other is looked for', async () => {
    const plan = await planOf(plank);
    const own = 'file:///sticks.lap';
    await open(own, plank);
    const { table, summary } = await drawingOf(own, 'sticks');
    expect(summary).not.toContain(packingWords);
    const sticks = (table?.rows ?? []).map(({ cells }) => Number(cells[0]));
    expect(sticks).toEqual(plan.stock.flatMap((stock) => stock.sticks.map(({ count }) => count)));
    expect(packed.filter((notice) => notice.uri === own)).toHaveLength(1);
  });

  it('are compared by it, asked for at once: the sentences are those of the command', async () => {
    const own = 'file:///compared.lap';
    const before = plank.replace('take long 2', 'take long 1');
    const [old, now] = [await plannedOf(before), await plannedOf(plank)];
    const sentences = changeReport(compareDesigns(old, now)).summary;
    const first = plannedAtSight(analyse(plank), 'plank.lap');
    expect(changeReport(compareDesigns(old, first)).summary).not.toEqual(sentences);
    await open(own, plank);
    const earlier = { name: 'earlier', uri: 'git:/compared.lap', text: before };
    const question = { uri: own, earlier, cut: 'nothing' };
    const answer = await editor.sendRequest<CompareAnswer | null>('halflap/compare', question);
    for (const sentence of sentences) expect(answer?.body).toContain(sentence);
    expect(packed.filter((notice) => notice.uri === own)).toHaveLength(1);
  });

  it('of an older version are given up for a newer one', async () => {
    const own = 'file:///newer.lap';
    await open(own, plank);
    const overtaken = drawingOf(own, 'strips');
    await change(own, 2, plank.replace('gap 2', 'gap 1'));
    expect((await overtaken).version).toBe(1);
    await drawingOf(own, 'strips');
    await untilPacked(own, 2);
    expect(packed.filter((notice) => notice.uri === own)).toEqual([{ uri: own, version: 2 }]);
  });
});

describe('a packing that was found', () => {
  const uri = 'file:///kept.lap';

  it('is kept over an edit elsewhere: the next version has it at once', async () => {
    await open(uri, plank);
    await drawingOf(uri, 'strips');
    await untilPacked(uri);
    const heard = progress.length;
    await change(
      uri,
      2,
      plank.replace('units mm', 'title "Plank"  # for a shelf\nunits mm').replace('face 3', 'face 3.5'),
    );
    const { version, views, summary } = await drawingOf(uri, 'strips');
    expect(version).toBe(2);
    expect(views.map(({ label }) => label)).toContain('plank');
    expect(summary).not.toContain(packingWords);
    expect(progress.slice(heard).filter((words) => words?.startsWith('Packing'))).toEqual([]);
  });

  it('is looked for anew where another number is wanted', async () => {
    await change(uri, 3, plank.replace('take short 2', 'take short 1'));
    expect((await drawingOf(uri, 'strips')).summary).toContain(packingWords);
    await untilPacked(uri, 3);
    expect((await drawingOf(uri, 'strips')).summary).not.toContain(packingWords);
  });
});

it('the blanks of the ginkgo are proven in the preview as they are on paper', async () => {
  const text = await readFile('samples/ginkgo.lap', 'utf8');
  const { blanks } = await planOf(text);
  expect(blanks.map(({ copies, bound, proven }) => ({ copies, bound, proven }))).toEqual([
    { copies: 3, bound: 3, proven: true },
  ]);
  const uri = 'file:///ginkgo.lap';
  await open(uri, text);
  expect((await drawingOf(uri, 'blank cast')).summary).toContain('3 in all; no packing into fewer than 2 is ruled out');
  await untilPacked(uri);
  expect((await drawingOf(uri, 'blank cast')).summary).toContain('3 in all, proven fewest');
});
