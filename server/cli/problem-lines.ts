/** Problems as lines that editors and people can follow: `file:line:column: severity CODE message`. */
import type { WrittenProblem } from '../words/write-words.ts';
import { fileNumberOf, fileStride, lineColumnAt, lineStartsOf } from '../../grammar/tree/source-range.ts';
import { fileAt, type SourceFile } from '../design/files/source-file.ts';
import type { Source } from './read-source.ts';

/**
 * One line a problem, and one indented line a related place; lines and columns count from 1. Empty if there are none.
 * `files` are those that the source uses, itself the first: a related place may stand in any of them.
 */
export function problemLines(
  { name, text }: Source,
  problems: readonly WrittenProblem[],
  files: readonly SourceFile[] = [],
): string {
  const starts = lineStartsOf(text);
  const place = (offset: number): string => {
    const file = fileNumberOf(offset) === 0 ? undefined : fileAt(files, offset);
    const own = file ? lineStartsOf(file.text) : starts;
    const { line, column } = lineColumnAt(own, offset % fileStride);
    return `${file?.path ?? name}:${line + 1}:${column + 1}`;
  };
  return problems
    .flatMap(({ code, severity, range, message, related = [] }) => [
      `${place(range.start)}: ${severity} ${code} ${message}\n`,
      ...related.map((other) => `  ${place(other.range.start)}: ${other.message}\n`),
    ])
    .join('');
}
