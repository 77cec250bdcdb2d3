/** The shape every hover has: a heading, then one fact a line. */
import type { SourceRange } from '../../../grammar/tree/source-range.ts';

/** Markdown for the words at `range`. */
export interface HoverText {
  readonly markdown: string;
  readonly range: SourceRange;
}

/** A heading, then facts; empty facts are left out. */
export type HoverLines = readonly [heading: string, ...facts: string[]];

/** "**panel** `blade` (sawn, 3 copies)". */
export const heading = (kind: string, name: string, more = ''): string =>
  `**${kind}** \`${name}\`${more === '' ? '' : ` (${more})`}`;

export function hoverText([title, ...facts]: HoverLines, range: SourceRange): HoverText {
  const list = facts.filter((fact) => fact !== '').map((fact) => `- ${fact}`);
  return { markdown: [title, '', ...list].join('\n'), range };
}
