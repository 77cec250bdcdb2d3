/**
 * Every file of tests/cases/objects has its problems beside it, one a line: place, words, code, message.
 * `ACCEPT=1 npm run vitest -- tests/shop/object-problems.test.ts` rewrites them after a change that is wanted.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { problemCatalogue } from '../../grammar/problems/problem-catalogue.ts';
import { analyse } from '../../server/analyse.ts';
import { caseFiles, expectAsAccepted, problemLines } from '../golden-problems.ts';
import { planAtSight } from '../plan-at-sight.ts';

const folder = fileURLToPath(new URL('../cases/objects', import.meta.url));
const cases = caseFiles(folder);
const textOf = (file: string): string => readFileSync(join(folder, file), 'utf8');

test.each(cases)('problems of %s', (file) => {
  expectAsAccepted(folder, file, problemLines(textOf(file)));
});

test.each(cases)('all of %s is planned all the same', (file) => {
  const analysis = analyse(textOf(file));
  const plan = planAtSight(analysis, file);
  const { bands, boards } = analysis.design;
  expect([plan.bands.length, plan.boards.length]).toEqual([bands.length, boards.length]);
  expect(plan.pours.length).toBe(analysis.design.pours.length + analysis.design.blanks.length);
});

test('every problem of objects has a case', () => {
  const reported = cases.map((file) => problemLines(textOf(file))).join('');
  const ofObjects = Object.values(problemCatalogue).filter(({ code }) => code.startsWith('LAP10'));
  expect(ofObjects.filter(({ code }) => !reported.includes(code))).toEqual([]);
});
