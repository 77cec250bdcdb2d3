/** Every file of tests/cases/lattice with what laying out, the bench, the frame and the blank say of it. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { problemCatalogue } from '../../../grammar/problems/problem-catalogue.ts';
import { caseFiles, expectAsAccepted, problemLines } from '../../golden-problems.ts';

const folder = fileURLToPath(new URL('../../cases/lattice', import.meta.url));
const linesOf = (file: string): string => problemLines(readFileSync(join(folder, file), 'utf8'));

describe('problems of', () => {
  test.each(caseFiles(folder))('%s', (file) => {
    expectAsAccepted(folder, file, linesOf(file));
  });
});

test('every problem of grids, motifs and panels has a case', () => {
  const reported = caseFiles(folder).map(linesOf).join('');
  const ofTheLattice = Object.values(problemCatalogue).filter(({ code }) => /^LAP0(?:4|50|51|70|905)/.test(code));
  expect(ofTheLattice.filter(({ code }) => !reported.includes(code))).toEqual([]);
});
