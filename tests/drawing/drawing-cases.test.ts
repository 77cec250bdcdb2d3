/**
 * Every file of tests/cases/drawings has its sheets beside it, one SVG a mark and a panel's chart.
 * `ACCEPT=1 npm run vitest -- tests/drawing/drawing-cases.test.ts` rewrites them after a change that is wanted: look at them.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { sheetsOf } from './sheets-of.ts';

const folder = fileURLToPath(new URL('../cases/drawings', import.meta.url));
const accepting = process.env['ACCEPT'] === '1';
const files = readdirSync(folder).filter((file) => file.endsWith('.lap'));

/** One sheet of each sort is kept as it is; the others are measured. */
const kept = new Set(['inches B', 'inches S1', 'hemp A', 'hemp S4', 'hemp star', 'diamond d']);

const cases = files.flatMap((file) => {
  const name = file.replace(/\.lap$/, '');
  return sheetsOf(readFileSync(join(folder, file), 'utf8'), file)
    .filter(({ subject }) => kept.has(`${name} ${subject}`))
    .map(({ subject, svg }) => ({ expectedFile: `${name}-${subject}.svg`, svg }));
});

test('every kept sheet is drawn', () => {
  expect(cases).toHaveLength(kept.size);
});

test.each(cases)('$expectedFile', ({ expectedFile, svg }) => {
  const path = join(folder, expectedFile);
  if (accepting) {
    if (process.env['CI']) throw new Error('Expected results are never accepted in CI.');
    writeFileSync(path, svg);
  }
  expect(svg).toBe(readFileSync(path, 'utf8'));
});
