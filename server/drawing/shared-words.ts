/** Words that several drawings say of the same thing. */
import { counted } from '../../grammar/words.ts';
import type { MarkedPiece } from '../shop/marks/marked-kinds.ts';

/** "1 copy", "3 copies". */
export const copiesText = (copies: number): string => counted(copies, 'copy', 'copies');

/** What pieces of a kind are in their motifs, such as "arm of hemp", once each. */
export const rolesOf = ({ groups }: Pick<MarkedPiece, 'groups'>): string[] => [
  ...new Set(groups.map(({ group }) => `${group.role} of ${group.motif}`)),
];
