/** Lines of plain text under a table or a heading. */
import { paragraph, space, stacked } from './blocks.ts';
import { asPart, type FlowPart } from './flow.ts';
import { letterSizes, type PrintContext } from './print-context.ts';

export const remarks = (lines: readonly string[], { width, typefaces }: PrintContext): FlowPart[] =>
  lines.map((line) => asPart(stacked([space(1), paragraph(line, { size: letterSizes.text }, width, typefaces)])));
