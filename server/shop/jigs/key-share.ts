/** Which pieces of a kind are keys: fitted last, cut longer and shaved until they lock the cell. */
import { maximum } from '../../geometry/numbers.ts';
import type { Motif } from '../../design/design-model.ts';
import { motifsOfFill } from '../steps/fitting-order.ts';
import type { MarkedPiece } from '../marks/marked-kinds.ts';

export interface Keys {
  /** How many of the kind to cut are keys, spares in proportion; at most all of them. */
  readonly pieces: number;
  /** How much longer a key is cut, mm: the most that any of its motifs asks for. */
  readonly longer: number;
}

/**
 * Keys among the pieces of one kind. A motif's order of fitting names, for every cell, how many of a role are keys; of
 * cells cut by an outline some pieces are missing, so the share is rounded up.
 */
export function keysOf({ groups, make, total }: MarkedPiece): Keys {
  let pieces = 0;
  let longer = 0;
  for (const { panel, group } of groups) {
    const motif = panel.panel.fills.flatMap(motifsOfFill).find(({ name }) => name === group.motif);
    const share = motif ? keyShare(motif, group.role) : { share: 0, longer: 0 };
    pieces += group.count * panel.quantity * share.share;
    if (share.share > 0) longer = Math.max(longer, share.longer);
  }
  return { pieces: Math.min(total, Math.ceil((Math.ceil(pieces) * total) / Math.max(make, 1))), longer };
}

/** The part of a motif's pieces of `role` that are keys, and how much longer those are. */
function keyShare({ fitOrder, pieces, dividers }: Motif, role: string): { share: number; longer: number } {
  const named = fitOrder.filter((each) => each.role === role);
  const keys = named.flatMap(({ key }) => key ?? []);
  const inCell = [...pieces, ...dividers].filter((piece) => piece.role === role).length;
  return { share: keys.length / Math.max(named.length, inCell, 1), longer: Math.max(0, maximum(keys)) };
}
