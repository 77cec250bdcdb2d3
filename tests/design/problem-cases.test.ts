/**
 * Every file of tests/cases/problems has its problems beside it, one a line: place, words, code, message. They lie by the
 * hundred of the catalogue that they are about.
 * `ACCEPT=1 npm run vitest -- tests/design/problem-cases.test.ts` rewrites them after a change that is wanted.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { problemCatalogue } from '../../grammar/problems/problem-catalogue.ts';
import { lineColumnAt, lineStartsOf, rangeInFile } from '../../grammar/tree/source-range.ts';
import type { SourceRange } from '../../grammar/tree/source-range.ts';
import { buildFiles } from '../../server/design/builders/build-files.ts';
import { loadFiles } from '../../server/design/files/load-files.ts';
import { fileAt } from '../../server/design/files/source-file.ts';
import { writeProblems } from '../../server/words/write-words.ts';
import { caseFiles, expectAsAccepted } from '../golden-problems.ts';
import { readFrom } from './read-from.ts';

const folder = fileURLToPath(new URL('../cases/problems', import.meta.url));
const cases = readdirSync(folder).flatMap((hundred) =>
  caseFiles(join(folder, hundred)).map((file) => join(hundred, file)),
);

function problemLines(file: string): string {
  const [home, path] = [join(folder, dirname(file)), basename(file)];
  const files = loadFiles(readFileSync(join(home, path), 'utf8'), { path, read: readFrom(home) });
  const place = (range: SourceRange): string => {
    const own = fileAt(files, range.start) ?? files[0];
    const { start, end } = rangeInFile(range);
    const { line, column } = lineColumnAt(lineStartsOf(own.text), start);
    const where = own.number === 0 ? '' : `${own.path} `;
    return `${where}${String(line + 1)}:${String(column + 1)} ${JSON.stringify(own.text.slice(start, end))}`;
  };
  const { problems: raised, design } = buildFiles(files);
  const problems = writeProblems(raised, design.units);
  problems.sort((first, second) => first.range.start - second.range.start || first.range.end - second.range.end);
  const lines = problems.flatMap(({ range, code, severity, message, related = [] }) => [
    `${place(range)} ${severity} ${code}: ${message}`,
    ...related.map((also) => `    ${place(also.range)}: ${also.message}`),
  ]);
  return lines.map((line) => `${line}\n`).join('');
}

describe('problems of', () => {
  test.each(cases)('%s', (file) => {
    expectAsAccepted(folder, file, problemLines(file));
  });
});

test('every problem of text, names, quantities, materials, outlines and motifs that this stage reports has a case', () => {
  const reported = cases.map((file) => problemLines(file)).join('');
  const ofThisStage = Object.values(problemCatalogue).filter(({ code }) =>
    /^LAP0(?:[123]|501|60[1-4]|710|80[1-4]|90[1-4])/.test(code),
  );
  expect(ofThisStage.filter(({ code }) => !reported.includes(code))).toEqual([]);
});
