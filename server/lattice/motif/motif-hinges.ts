/** Which pieces of a motif, set into an opening, come in pairs out of one length. */
import type { Hinge, Motif } from '../../design/design-model.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import { distance } from '../../geometry/point.ts';
import { placeTolerance } from '../../geometry/tolerance.ts';
import type { PlacedMember } from './placed-member.ts';

/** One pair: the hinge it was made by. */
export interface Fold {
  readonly hinge: Hinge;
}

/** The pair of each piece that has one, by its number among `placed`. A hinge of which no pieces meet is reported. */
export function foldsOf(motif: Motif, placed: readonly PlacedMember[]) {
  const folds = new Map<number, Fold>();
  const problems: Problem[] = [];
  for (const hinge of motif.hinges) {
    const [first, second] = hinge.roles.map((role) => numbersOf(role, placed));
    let isFolded = false;
    for (const one of first ?? []) {
      if (folds.has(one)) continue;
      const other = second?.find((each) => each !== one && !folds.has(each) && meet(placed[one], placed[each]));
      if (other === undefined) continue;
      const fold: Fold = { hinge };
      folds.set(one, fold).set(other, fold);
      isFolded = true;
    }
    if (!isFolded && first?.length && second?.length) problems.push(doesNotFold(hinge));
  }
  return { folds, problems };
}

const numbersOf = (role: string, placed: readonly PlacedMember[]): number[] =>
  placed.flatMap(({ member, isDivider }, number) => (member.role === role && !isDivider ? [number] : []));

const endsOf = ({ axis }: PlacedMember) => [axis.from, axis.to];

const meet = (one: PlacedMember | undefined, other: PlacedMember | undefined): boolean =>
  one !== undefined &&
  other !== undefined &&
  endsOf(one).some((end) => endsOf(other).some((far) => distance(end, far) <= placeTolerance));

function doesNotFold({ roles: [first, second], range }: Hinge): Problem {
  const message =
    first === second
      ? `There are no two pieces ${first} with an end in common, so none is folded from another; name two pieces that meet.`
      : `${first} and ${second} have no end in common, so they cannot be folded out of one length; name two pieces that meet.`;
  return problemAt('hingeDoesNotFold', range, message);
}
