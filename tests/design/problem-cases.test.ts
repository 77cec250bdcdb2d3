/**
 * Every file of tests/cases/problems has its problems beside it, one a line: place, words, code, message.
 * `ACCEPT=1 npm run vitest -- tests/design/problem-cases.test.ts` rewrites them after a change that is wanted.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { problemCatalogue } from '../../grammar/problems/problem-catalogue.ts';
import { lineColumnAt, lineStartsOf, rangeInFile } from '../../grammar/tree/source-range.ts';
import type { SourceRange } from '../../grammar/tree/source-range.ts';
import { buildFiles } from '../../server/design/build-files.ts';
import { loadFiles } from '../../server/design/load-files.ts';
import { fileAt } from '../../server/design/source-file.ts';
import { readFrom } from './read-from.ts';

const folder = fileURLToPath(new URL('../cases/problems', import.meta.url));
const accepting = process.env['ACCEPT'] === '1';
const cases = readdirSync(folder).filter((file) => file.endsWith('.lap'));

function problemLines(path: string): string {
  const files = loadFiles(readFileSync(join(folder, path), 'utf8'), { path, read: readFrom(folder) });
  const place = (range: SourceRange): string => {
    const file = fileAt(files, range.start) ?? files[0];
    const { start, end } = rangeInFile(range);
    const { line, column } = lineColumnAt(lineStartsOf(file.text), start);
    const where = file.number === 0 ? '' : `${file.path} `;
    return `${where}${String(line + 1)}:${String(column + 1)} ${JSON.stringify(file.text.slice(start, end))}`;
  };
  const problems = [...buildFiles(files).problems];
  problems.sort((first, second) => first.range.start - second.range.start || first.range.end - second.range.end);
  const lines = problems.flatMap(({ range, code, severity, message, related = [] }) => [
    `${place(range)} ${severity} ${code}: ${message}`,
    ...related.map((also) => `    ${place(also.range)}: ${also.message}`),
  ]);
  return lines.map((line) => `${line}\n`).join('');
}

describe('problems of', () => {
  test.each(cases)('%s', (file) => {
    const expectedFile = join(folder, file.replace(/\.lap$/, '.txt'));
    const found = problemLines(file);
    if (accepting) {
      if (process.env['CI']) throw new Error('Expected results are never accepted in CI.');
      writeFileSync(expectedFile, found);
    }
    expect(found).toBe(readFileSync(expectedFile, 'utf8'));
  });
});

test('every problem of text, names, quantities, materials, outlines and motifs that this stage reports has a case', () => {
  const reported = cases.map((file) => problemLines(file)).join('');
  const ofThisStage = Object.values(problemCatalogue).filter(({ code }) =>
    /^LAP0(?:[123]|501|60[1-4]|710|80[1-4]|90[1-4])/.test(code),
  );
  expect(ofThisStage.filter(({ code }) => !reported.includes(code))).toEqual([]);
});
