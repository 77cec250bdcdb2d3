/**
 * Files with their problems beside them, one a line: place, words, code, message; then related places. Run the test with
 * ACCEPT=1 to rewrite them after a change that is wanted.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';
import { lineColumnAt, lineStartsOf, type SourceRange } from '../grammar/tree/source-range.ts';
import { analyse } from '../server/analyse.ts';

export const caseFiles = (folder: string): string[] => readdirSync(folder).filter((file) => file.endsWith('.lap'));

/** What the whole line, from text to shop, says of a text that uses no other file. */
export function problemLines(text: string): string {
  const starts = lineStartsOf(text);
  const place = ({ start, end }: SourceRange): string => {
    const { line, column } = lineColumnAt(starts, start);
    return `${String(line + 1)}:${String(column + 1)} ${JSON.stringify(text.slice(start, end))}`;
  };
  return analyse(text)
    .problems.flatMap(({ range, severity, code, message, related = [] }) => [
      `${place(range)} ${severity} ${code}: ${message}\n`,
      ...related.map((also) => `    ${place(also.range)}: ${also.message}\n`),
    ])
    .join('');
}

export function expectAsAccepted(folder: string, file: string, found: string): void {
  const expectedFile = join(folder, file.replace(/\.lap$/, '.txt'));
  if (process.env['ACCEPT'] === '1') {
    if (process.env['CI']) throw new Error('Expected results are never accepted in CI.');
    writeFileSync(expectedFile, found);
  }
  expect(found).toBe(readFileSync(expectedFile, 'utf8'));
}
