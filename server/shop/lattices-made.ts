/** The lattices that are assembled: panels that are made themselves, and blanks, from which the others are sawn. */
import type { LaidPanel } from '../lattice/laid-panel.ts';
import { blanksUsed } from './blanks/cut-out.ts';
import type { NestedBlank } from './blanks/nest-blanks.ts';

/** Blanks of one name are assembled alike, and filled only later: one for each name, its quantity all of them. */
export const latticesMade = (made: {
  readonly panels: readonly LaidPanel[];
  readonly blanks: readonly NestedBlank[];
}): LaidPanel[] => [
  ...made.panels.filter(({ quantity, strips }) => quantity > 0 && strips.length > 0),
  ...made.blanks.flatMap(({ laid, packing }) =>
    laid.slice(0, 1).map((first) => ({ ...first, quantity: blanksUsed(packing) })),
  ),
];
