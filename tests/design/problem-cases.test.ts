/**
 * Every file of tests/cases/problems has its problems beside it, one a line: place, words, code, message.
 * `ACCEPT=1 npm run vitest -- tests/design/problem-cases.test.ts` rewrites them after a change that is wanted.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { parseDocument } from '../../grammar/parse-document.ts';
import { problemCatalogue } from '../../grammar/problem-catalogue.ts';
import { lineColumnAt, lineStartsOf } from '../../grammar/source-range.ts';
import type { SourceRange } from '../../grammar/source-range.ts';
import { buildDesign } from '../../server/design/build-design.ts';

const folder = fileURLToPath(new URL('../cases/problems', import.meta.url));
const accepting = process.env['ACCEPT'] === '1';
const cases = readdirSync(folder).filter((file) => file.endsWith('.lap'));

function problemLines(text: string): string {
  const { tree, problems: syntaxProblems } = parseDocument(text);
  const starts = lineStartsOf(text);
  const place = ({ start, end }: SourceRange): string => {
    const { line, column } = lineColumnAt(starts, start);
    return `${String(line + 1)}:${String(column + 1)} ${JSON.stringify(text.slice(start, end))}`;
  };
  const problems = [...syntaxProblems, ...buildDesign(tree).problems];
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
    const found = problemLines(readFileSync(join(folder, file), 'utf8'));
    if (accepting) {
      if (process.env['CI']) throw new Error('Expected results are never accepted in CI.');
      writeFileSync(expectedFile, found);
    }
    expect(found).toBe(readFileSync(expectedFile, 'utf8'));
  });
});

test('every problem of text, names, quantities, outlines and motifs that this stage reports has a case', () => {
  const reported = cases.map((file) => problemLines(readFileSync(join(folder, file), 'utf8'))).join('');
  const ofThisStage = Object.values(problemCatalogue).filter(({ code }) => /^LAP0(?:[123]|501|60[1-4])/.test(code));
  expect(ofThisStage.filter(({ code }) => !reported.includes(code))).toEqual([]);
});
