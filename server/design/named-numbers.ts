/** The numbers with names: each `let` computed once, when it is first asked for. */
import { problemAt } from '../../grammar/problem-catalogue.ts';
import type { Problem } from '../../grammar/problem.ts';
import type { LetDeclaration, Name } from '../../grammar/syntax-tree.ts';
import type { DesignContext } from './design-context.ts';
import { evaluateExpression, piNumber } from './evaluate-expression.ts';
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
  const path: LetDeclaration[] = [];
  const isFromOtherFile = (name: string): boolean => given.has(name) && !own.has(name);
  const numberNamed = (name: string): Quantity | null => {
    const before = known.get(name);
    if (before !== undefined) return before;
    const declaration = own.get(name);
    if (!declaration) return given.get(name) ?? null;
    if (path.includes(declaration)) {
      const loop = path.slice(path.indexOf(declaration)).map((member) => member.name);
      report(cycle(declaration.name, loop, 'computed from'));
      return null;
    }
    path.push(declaration);
    const value = evaluateExpression(declaration.value, { units, report, numberNamed, isFromOtherFile });
    path.pop();
    known.set(name, value);
    return value;
  };
  const computed = lets.flatMap(({ name }): [string, Quantity][] => {
    const value = numberNamed(name.text);
    return value ? [[name.text, value]] : [];
  });
  return { numberNamed, isFromOtherFile, numbers: new Map([...given, ...computed]) };
}

/** A name that leads back to itself through the names of `loop`. */
export function cycle(at: Name, loop: readonly Name[], relation: string): Problem {
  const way = [...loop.map(({ text }) => text), at.text].map((text) => `\`${text}\``).join(' → ');
  const related = loop
    .filter((name) => name !== at)
    .map(({ text, range }) => ({ range, message: `\`${text}\` is given here.` }));
  return problemAt('cyclicName', at.range, `\`${at.text}\` is ${relation} itself: ${way}. Break the loop.`, related);
}
