/** Problems as lines that editors and people can follow: `file:line:column: severity CODE message`. */
import type { Problem } from '../../grammar/problem.ts';
import { lineColumnAt, lineStartsOf } from '../../grammar/source-range.ts';
import type { Source } from './read-source.ts';

/** One line a problem, and one indented line a related place; lines and columns count from 1. Empty if there are none. */
export function problemLines({ name, text }: Source, problems: readonly Problem[]): string {
  const starts = lineStartsOf(text);
  const place = (offset: number): string => {
    const { line, column } = lineColumnAt(starts, offset);
    return `${name}:${line + 1}:${column + 1}`;
  };
  return problems
    .flatMap(({ code, severity, range, message, related = [] }) => [
      `${place(range.start)}: ${severity} ${code} ${message}\n`,
      ...related.map((other) => `  ${place(other.range.start)}: ${other.message}\n`),
    ])
    .join('');
}
