/** Declarations that may be made of each other, each built once, those it is made of first. */
import type { Name } from '../../../grammar/tree/syntax-nodes.ts';
import type { DesignContext } from '../design-context.ts';
import { cycle } from '../values/named-numbers.ts';

interface NamedDeclaration {
  readonly name: Name;
}

/** How one kind of declaration is built. */
export interface Builder<Declaration, Thing> {
  /** `find` gives the thing a name means; null where there is none, or it is made of itself. */
  readonly build: (declaration: Declaration, find: (name: Name) => Thing | null) => Thing | null;
  /** What one is to the one it is made of: "filled with". */
  readonly relation: string;
}

/** All that could be built, in order. A loop is reported at the name that closes it. `given` are those of other files. */
export function buildOnce<Declaration extends NamedDeclaration, Thing extends { readonly name: string }>(
  declarations: readonly Declaration[],
  given: readonly Thing[],
  { build, relation }: Builder<Declaration, Thing>,
  context: DesignContext,
): Thing[] {
  const built = new Map<Declaration, Thing | null>();
  const path: Declaration[] = [];
  const buildNow = (declaration: Declaration): Thing | null => {
    const before = built.get(declaration);
    if (before !== undefined) return before;
    path.push(declaration);
    const thing = build(declaration, find);
    path.pop();
    built.set(declaration, thing);
    return thing;
  };
  const find = (name: Name): Thing | null => {
    const declaration = declarations.find((candidate) => candidate.name.text === name.text);
    if (!declaration) return given.find((thing) => thing.name === name.text) ?? null;
    if (!path.includes(declaration)) return buildNow(declaration);
    const loop = path.slice(path.indexOf(declaration)).map((member) => member.name);
    context.report(cycle(name, loop, relation));
    return null;
  };
  return declarations.flatMap((declaration) => buildNow(declaration) ?? []);
}
