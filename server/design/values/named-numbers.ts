/** The numbers with names: each `let` computed once, after those it is computed from. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import type { Name } from '../../../grammar/tree/syntax-nodes.ts';
import type { LetDeclaration } from '../../../grammar/tree/syntax-tree.ts';
import type { DesignContext } from '../design-context.ts';
import { evaluateExpression, piNumber } from './evaluate-expression.ts';
import { nodesOf } from '../../../grammar/tree/walk-tree.ts';
import type { Quantity } from './quantity.ts';

export interface NamedNumbers extends Pick<DesignContext, 'numberNamed' | 'isFromOtherFile'> {
  /** All that have a value. */
  readonly numbers: ReadonlyMap<string, Quantity>;
}

/** Computes every one of `lets`, and reports what keeps one from a value; `given` are the numbers of other files. */
export function readNumbers(
  lets: readonly LetDeclaration[],
  given: ReadonlyMap<string, Quantity>,
  { units, report }: Pick<DesignContext, 'units' | 'report'>,
): NamedNumbers {
  const own = new Map(lets.map((declaration) => [declaration.name.text, declaration]));
  const known = new Map<string, Quantity | null>([['pi', piNumber]]);
  const isFromOtherFile = (name: string): boolean => given.has(name) && !own.has(name);
  const numberNamed = (name: string): Quantity | null =>
    known.get(name) ?? (own.has(name) ? null : given.get(name)) ?? null;
  const needsOf = ({ value }: LetDeclaration): LetDeclaration[] =>
    [...new Set(nodesOf(value, 'name').map(({ name }) => name.text))].flatMap((name) => own.get(name) ?? []);
  for (const declaration of lets) compute(declaration);
  const computed = lets.flatMap(({ name }): [string, Quantity][] => {
    const value = numberNamed(name.text);
    return value ? [[name.text, value]] : [];
  });
  return { numberNamed, isFromOtherFile, numbers: new Map([...given, ...computed]) };

  /** Computes a number after all that it needs, on a stack of its own: a chain of thousands would use up the engine's. */
  function compute(wanted: LetDeclaration): void {
    const path = [{ declaration: wanted, needs: needsOf(wanted) }];
    for (let step = path.at(-1); step; step = path.at(-1)) {
      const need = step.needs.pop();
      if (!need) {
        const { name, value } = step.declaration;
        if (!known.has(name.text)) {
          known.set(name.text, evaluateExpression(value, { units, report, numberNamed, isFromOtherFile }));
        }
        path.pop();
      } else if (!known.has(need.name.text)) {
        const from = path.findIndex(({ declaration }) => declaration === need);
        if (from < 0) path.push({ declaration: need, needs: needsOf(need) });
        else
          report(
            cycle(
              need.name,
              path.slice(from).map(({ declaration }) => declaration.name),
              'computed from',
            ),
          );
      }
    }
  }
}

/** A name that leads back to itself through the names of `loop`. */
export function cycle(at: Name, loop: readonly Name[], relation: string): Problem {
  const way = [...loop.map(({ text }) => text), at.text].map((text) => `\`${text}\``).join(' → ');
  const related = loop
    .filter((name) => name !== at)
    .map(({ text, range }) => ({ range, message: `\`${text}\` is given here.` }));
  return problemAt('cyclicName', at.range, `\`${at.text}\` is ${relation} itself: ${way}. Break the loop.`, related);
}
