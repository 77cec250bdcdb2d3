/**
 * Every file of tests/cases/objects has its problems beside it, one a line: place, words, code, message.
 * `ACCEPT=1 npm run vitest -- tests/shop/object-problems.test.ts` rewrites them after a change that is wanted.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { problemCatalogue } from '../../grammar/problem-catalogue.ts';
import { lineColumnAt, lineStartsOf } from '../../grammar/source-range.ts';
import { analyse } from '../../server/analyse.ts';
import { buildPlan } from '../../server/shop/build-plan.ts';

const folder = fileURLToPath(new URL('../cases/objects', import.meta.url));
const cases = readdirSync(folder).filter((file) => file.endsWith('.lap'));
const textOf = (file: string): string => readFileSync(join(folder, file), 'utf8');

function problemLines(text: string): string {
  return analyse(text)
    .problems.map(({ range, severity, code, message }) => {
      const { line, column } = lineColumnAt(lineStartsOf(text), range.start);
      const words = JSON.stringify(text.slice(range.start, range.end));
      return `${String(line + 1)}:${String(column + 1)} ${words} ${severity} ${code}: ${message}\n`;
    })
    .join('');
}

test.each(cases)('problems of %s', (file) => {
  const expectedFile = join(folder, file.replace(/\.lap$/, '.txt'));
  const found = problemLines(textOf(file));
  if (process.env['ACCEPT'] === '1') {
    if (process.env['CI']) throw new Error('Expected results are never accepted in CI.');
    writeFileSync(expectedFile, found);
  }
  expect(found).toBe(readFileSync(expectedFile, 'utf8'));
});

test.each(cases)('all of %s is planned all the same', (file) => {
  const analysis = analyse(textOf(file));
  const plan = buildPlan(analysis, file);
  const { bands, boards } = analysis.design;
  expect([plan.bands.length, plan.boards.length]).toEqual([bands.length, boards.length]);
  expect(plan.pours.length).toBe(analysis.design.pours.length + analysis.design.blanks.length);
});

test('every problem of objects has a case', () => {
  const reported = cases.map((file) => problemLines(textOf(file))).join('');
  const ofObjects = Object.values(problemCatalogue).filter(({ code }) => code.startsWith('LAP10'));
  expect(ofObjects.filter(({ code }) => !reported.includes(code))).toEqual([]);
});
