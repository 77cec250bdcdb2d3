/** What a cutting plan leaves unused, for strips and benches. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { ListProperty } from '../../../grammar/tree/syntax-nodes.ts';
import type { DesignContext } from '../design-context.ts';
import type { Breath } from '../design-model.ts';
import { readLength } from '../values/read-values.ts';

/** `breath 0.1, 2`: at each cut, then in each stick; `breath 0` is neither. Null where it is not stated or broken. */
export function buildBreath(property: ListProperty<'breath'> | undefined, context: DesignContext): Breath | null {
  if (!property) return null;
  const [atCut, inStick, ...others] = property.values;
  const cut = atCut ? readLength(atCut, 'breath at a cut', 'notNegative', context) : null;
  const stick = inStick ? readLength(inStick, 'breath in a stick', 'notNegative', context) : cut === 0 ? 0 : null;
  if (cut === null || (inStick && stick === null)) return null;
  if (stick !== null && others.length === 0) return { cut, stick };
  const message =
    'Breath is left at each cut and in each stick. Give both lengths, `breath 0.1, 2`, or `breath 0` for neither.';
  context.report(problemAt('outOfRange', property.keyword, message));
  return null;
}
