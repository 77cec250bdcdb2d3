/** Woods that neither the file nor the built-in table knows: what is made of them has no mass, movement or limit of bending. */
import { nearestName } from '../../../grammar/problems/nearest-word.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import type { NameIndex } from '../../design/names/name-index.ts';
import { builtInWoods } from './wood-table.ts';

/** Names of woods of which something is known: those declared, and those of the built-in table. */
export const knownWoods = ({ definitions, used }: NameIndex): string[] => [
  ...[...definitions, ...used].filter(({ kind }) => kind === 'wood').map(({ name }) => name),
  ...builtInWoods.keys(),
];

/** One problem at each use of such a name. */
export function unknownWoods(index: NameIndex): Problem[] {
  return index.references
    .filter(({ kind, name, definition }) => kind === 'wood' && !definition && !builtInWoods.has(name))
    .map(({ name, range }) => {
      const near = nearestName(name, knownWoods(index));
      const advice = near
        ? `Did you mean \`${near}\`?`
        : `Add \`wood ${name} { density … }\` with what is known of it; without that its mass and movement stay open.`;
      return problemAt('woodNotKnown', range, `No figures are known of the wood \`${name}\`. ${advice}`);
    });
}
