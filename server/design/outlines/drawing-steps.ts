/** Outlines taken out of an SVG file. */
import type { PathStep } from '../../../grammar/tree/outline-syntax.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import type { DesignContext } from '../design-context.ts';
import { chainOf } from './drawn-segment.ts';
import type { DrawnSegment } from './drawn-segment.ts';
import { readSvgElement } from './svg-file.ts';

/** The closed lines of the element; null where there are none, which is reported at the file's name or the id. */
export function drawFromFile(
  { file, id }: Extract<PathStep['source'], { kind: 'drawing' }>,
  range: SourceRange,
  context: DesignContext,
): DrawnSegment[][] | null {
  const drawing = context.drawings.get(file);
  if (drawing?.kind !== 'text') {
    if (drawing) context.report(drawing.problem);
    return null;
  }
  const read = readSvgElement(drawing.text, id.text);
  if (read.kind === 'lines') return read.lines.map((line) => chainOf(line, range));
  const at = read.trouble.at === 'file' ? file.range : id.range;
  context.report(problemAt('badSvgFile', at, read.trouble.message));
  return null;
}
