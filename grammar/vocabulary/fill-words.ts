/** The words for what fills the cells of a panel, each with its one-line meaning. */
import { link, property } from './word-entry.ts';
import type { WordEntry } from './word-entry.ts';

export const fillWords = {
  map: property('A motif for every cell, one sign each, row by row from the top.'),
  row: property(
    'Cells between two neighbouring strips of the first direction, counted from the top; in a map, their signs.',
  ),
  column: link('Cells above one another, counted from the left.'),
  ring: link('Cells equally far from the panel’s edge, counted from it.'),
  rows: link('Counts rows of cells.'),
  columns: link('Counts columns of cells.'),
  inside: link('Cells whose middle lies in the outline that follows.'),
  outside: link('Cells whose middle lies outside the outline that follows.'),
  within: link('Cells whose middle is no further from a line than this.'),
  beyond: link('Cells whose middle is further from a line than this.'),
  rim: link('The edge of the panel itself.'),
  mirrored: link('As seen in a mirror.'),
} as const satisfies Record<string, WordEntry>;
