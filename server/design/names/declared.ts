/** The declarations of a tree by kind, and things by name. */
import type { Declaration, SyntaxTree } from '../../../grammar/tree/syntax-tree.ts';
import type { Named } from './named.ts';

/** The declarations of a kind; of those with one name, the first. */
export function declared<Kind extends Exclude<Declaration['kind'], 'use' | 'title' | 'units'>>(
  tree: SyntaxTree,
  kind: Kind,
): Extract<Declaration, { readonly kind: Kind }>[] {
  const found = new Map<string, Extract<Declaration, { readonly kind: Kind }>>();
  for (const declaration of tree.declarations) {
    if (!isKind(declaration, kind) || !('name' in declaration)) continue;
    if (!found.has(declaration.name.text)) found.set(declaration.name.text, declaration);
  }
  return [...found.values()];
}

const isKind = <Kind extends Declaration['kind']>(
  declaration: Declaration,
  kind: Kind,
): declaration is Extract<Declaration, { readonly kind: Kind }> => declaration.kind === kind;

export const byName = <Thing extends Named>(things: readonly Thing[]): ReadonlyMap<string, Thing> =>
  new Map(things.map((thing) => [thing.name, thing]));
