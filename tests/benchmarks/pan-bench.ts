/**
 * How the preview's page holds up at a hundred thousand pieces: the longest time that a frame kept the page busy while
 * panning with every piece in sight, against the same pan over an empty canvas. Prints a table; `node pan-bench.mjs ROOT RESULT.json`.
 */
import { writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { drawPanel } from '../../server/drawing/draw-panel.ts';
import type { Drawing } from '../../server/drawing/drawing.ts';
import type { DrawingAnswer } from '../../server/language/preview-messages.ts';
import { layOutPanel } from '../../server/lattice/lay-out-panel.ts';
import { markKinds } from '../../server/shop/marks/mark-kinds.ts';
import { type Browser, openPage } from '../page/page-host.ts';
import { wavyPanel } from './wavy-panel.ts';

/** What a frame may take beyond one of an empty canvas, ms: the browser's own limit of a long task (W3C Long Tasks). */
const bound = 50;
const pieces = 100_000;

const [root, resultPath] = process.argv.slice(2);
if (root === undefined || resultPath === undefined) throw new Error('usage: pan-bench ROOT RESULT.json');

interface Playwright {
  readonly chromium: { launch(options: { executablePath: string; args: string[] }): Promise<Browser> };
}

const { chromium } = createRequire(join(root, 'tests/host/package.json'))('playwright-core') as Playwright;
const browser = await chromium.launch({
  executablePath: process.env['CHROMIUM_PATH'] ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu'],
});

/** Runs in the page: notes how long every task that moves the picture keeps the page from the next. */
const watch = `(() => {
  window.longest = 0;
  window.frames = 0;
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) window.longest = Math.max(window.longest, duration);
  }).observe({ type: 'longtask', buffered: false });
  const own = window.requestAnimationFrame.bind(window);
  window.requestAnimationFrame = (paint) => own((time) => {
    const start = performance.now();
    paint(time);
    window.longest = Math.max(window.longest, performance.now() - start);
    window.frames++;
  });
})()`;

async function longestFrame(drawing: Drawing | null): Promise<number> {
  const page = await openPage(browser, root ?? '', 'vscode-light');
  await page.send({ type: 'show', answer: answerOf(drawing) });
  await page.page.evaluate(watch);
  const { x, y } = await page.middle();
  await page.page.mouse.move(x, y);
  await page.page.mouse.down();
  for (let step = 0; step < 60; step++) await page.page.mouse.move(x - 8 * step, y - 5 * step);
  await page.page.mouse.up();
  await page.settled();
  const longest = await page.page.evaluate<number>('window.longest');
  await page.page.close();
  return longest;
}

function answerOf(drawing: Drawing | null): DrawingAnswer {
  return {
    ...{ uri: 'file:///wide.lap', version: 1, units: 'mm', view: 'panel', table: null, cards: [], problems: [] },
    views: [{ id: 'panel', label: 'wide', group: 'Panels' }],
    drawing: drawing ?? {
      ...{ title: '', name: 'empty', heading: 'nothing', units: 'mm', layers: [], texts: [], summary: [] },
      bounds: { left: -100, right: 100, bottom: -100, top: 100 },
    },
    summary: [],
    stale: false,
  };
}

const { panel } = layOutPanel(wavyPanel(pieces));
if (!panel) throw new Error('the panel was refused');
const wide = drawPanel(panel, { design: { units: 'mm' }, kinds: markKinds([panel]), blanks: [] }, null);
const drawn = wide.layers.flatMap(({ kinds }) => kinds).reduce((sum, { placements }) => sum + placements.length / 3, 0);
const empty = await longestFrame(null);
const full = await longestFrame(wide);
await browser.close();
const figures = { drawn, emptyMs: empty, fullMs: full, beyondEmptyMs: full - empty, boundMs: bound };
console.table([
  { figure: 'shapes drawn', value: drawn, aim: `≥ ${pieces}` },
  { figure: 'longest frame of a pan over an empty canvas, ms', value: empty.toFixed(1), aim: '' },
  { figure: 'the same over the panel, beyond that, ms', value: (full - empty).toFixed(1), aim: `≤ ${bound}` },
]);
writeFileSync(resultPath, `${JSON.stringify(figures, null, 2)}\n`);
