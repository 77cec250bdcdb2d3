/** Every name of a file: where it is given and where it is used. */
import type { TipProperty } from '../../../grammar/tree/motif-syntax.ts';
import type { Name } from '../../../grammar/tree/syntax-nodes.ts';
import type { MotifUse } from '../../../grammar/tree/fill-syntax.ts';
import type { Declaration, NodeOf, SyntaxTree, TreeNode } from '../../../grammar/tree/syntax-tree.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import { nodesIn } from '../../../grammar/tree/walk-tree.ts';

export type NameKind = Exclude<Declaration['kind'], 'use' | 'title' | 'units'> | 'node' | 'piece' | 'divider';

export interface Definition {
  readonly name: string;
  readonly kind: NameKind;
  /** The motif a node, piece or divider belongs to; null for names of the whole file. */
  readonly scope: string | null;
  readonly nameRange: SourceRange;
  /** The whole declaration or phrase. */
  readonly range: SourceRange;
}

export interface Reference {
  readonly name: string;
  /** The kind of thing wanted. */
  readonly kind: NameKind;
  /** Other kinds that serve as well, in the order they are looked for. */
  readonly otherKinds: readonly NameKind[];
  /** True where the name may be one that no file gives, such as a wood of the built-in table. */
  readonly mayBeBuiltIn: boolean;
  readonly scope: string | null;
  readonly range: SourceRange;
  /** The first definition it may mean, null where there is none. */
  readonly definition: Definition | null;
}

export interface NameIndex {
  readonly definitions: readonly Definition[];
  /** Names given by the files used here. */
  readonly used: readonly Definition[];
  readonly references: readonly Reference[];
}

/** All names of a tree, in order of place; a name it doesn't give itself may be one of `used`. */
export function indexNames(tree: SyntaxTree, used: readonly Definition[] = []): NameIndex {
  const definitions = tree.declarations.flatMap(definitionsOf);
  const firsts = new Map<string, Definition>();
  for (const definition of [...definitions, ...used]) {
    const key = keyOf(definition.kind, definition.scope, definition.name);
    if (!firsts.has(key)) firsts.set(key, definition);
  }
  const references = tree.declarations.flatMap(usesOf).map((use) => ({ ...use, definition: find(use) }));
  return { definitions, used, references: references.sort((first, second) => first.range.start - second.range.start) };

  function find({ kind, otherKinds, scope, name }: Use): Definition | null {
    for (const each of [kind, ...otherKinds]) {
      const found = firsts.get(keyOf(each, scope, name));
      if (found) return found;
    }
    return null;
  }
}

const keyOf = (kind: NameKind, scope: string | null, name: string): string => `${kind} ${scope ?? ''} ${name}`;

/** A use of a name, before its definition is found. */
export type Use = Omit<Reference, 'definition'>;

function definitionsOf(declaration: Declaration): Definition[] {
  if (declaration.kind === 'use' || declaration.kind === 'title' || declaration.kind === 'units') return [];
  const own = definition(declaration.name, declaration.kind, null, declaration.range);
  if (declaration.kind !== 'motif') return [own];
  const inner = declaration.properties.flatMap((property) =>
    property.kind === 'node' || property.kind === 'piece' || property.kind === 'divider'
      ? [definition(property.name, property.kind, declaration.name.text, property.range)]
      : [],
  );
  return [own, ...inner];
}

const definition = (name: Name, kind: NameKind, scope: string | null, range: SourceRange): Definition => ({
  name: name.text,
  kind,
  scope,
  nameRange: name.range,
  range,
});

const use = (name: Name, kind: NameKind, more: Partial<Use> = {}): Use => ({
  name: name.text,
  kind,
  otherKinds: [],
  mayBeBuiltIn: false,
  scope: null,
  range: name.range,
  ...more,
});

function usesOf(declaration: Declaration): Use[] {
  const scope = declaration.kind === 'motif' ? declaration.name.text : null;
  return [...nodesIn(declaration).flatMap((node) => usesIn(node, scope)), ...usesInTips(declaration)];
}

/** What a node itself uses, without the names of the nodes inside it; `scope` is the motif it is of. */
type UsesOf<Kind extends TreeNode['kind']> = (node: NodeOf<Kind>, scope: string | null) => readonly Use[];

const usesOfKind: { readonly [Kind in TreeNode['kind']]?: UsesOf<Kind> } = {
  name: ({ name }) => (name.text === 'pi' ? [] : [use(name, 'let')]),
  'of wood': ({ name }) => [use(name, 'wood', { mayBeBuiltIn: true })],
  'of strip': ({ name }) => [use(name, 'strip')],
  'of resin': ({ name }) => [use(name, 'resin')],
  'of sheet': ({ name }) => [use(name, 'sheet')],
  'of grid': ({ name }) => [use(name, 'grid')],
  except: ({ stock }) => [use(stock, 'strip')],
  family: ({ stock }) => (stock ? [use(stock, 'strip')] : []),
  named: ({ name }, scope) => [use(name, 'node', { scope })],
  piece: ({ above }, scope) => above.map(({ name }) => usedMember(name, scope)),
  divider: ({ above }, scope) => above.map(({ name }) => usedMember(name, scope)),
  fit_order: ({ roles }, scope) => roles.map(({ name }) => usedMember(name, scope)),
  hinge: ({ first, second }, scope) => [first, second].map((name) => use(name, 'piece', { scope })),
  'part fill': ({ motif }) => [use(motif, 'motif')],
  'panel fill': (fill) => usesInMotifUse(fill.use),
  'map entry': (entry) => usesInMotifUse(entry.use),
  region: ({ outline }) => [use(outline, 'outline')],
  'by distance': ({ of }) => (of ? [use(of, 'outline')] : []),
  'outline shape': ({ name }) => [use(name, 'outline')],
  'board shape': ({ name }) => [use(name, 'outline')],
  copy: ({ name }) => [use(name, 'outline')],
  plus: ({ name }) => [use(name, 'outline')],
  minus: ({ name }) => [use(name, 'outline')],
  common: ({ name }) => [use(name, 'outline')],
  insert: ({ outline }) => [use(outline, 'outline')],
  mould: ({ name }) => [use(name, 'outline', { otherKinds: ['blank'] })],
  around: ({ name }) => [use(name, 'panel', { otherKinds: ['outline'] })],
  take: ({ panel }) => [use(panel, 'panel')],
  'kit panel': ({ name }) => [use(name, 'panel')],
  meets: ({ other }) => [use(other, 'panel', { otherKinds: ['board', 'pour', 'outline'] })],
  place: ({ part, inFrontOf }) =>
    [part, ...(inFrontOf ? [inFrontOf] : [])].map((name) => use(name, 'panel', { otherKinds: ['board', 'pour'] })),
  'finish used': ({ name }) => (name ? [use(name, 'finish')] : []),
};

function usesIn(node: TreeNode, scope: string | null): readonly Use[] {
  const uses = usesOfKind[node.kind] as UsesOf<TreeNode['kind']> | undefined;
  return uses?.(node, scope) ?? [];
}

const usedMember = (name: Name, scope: string | null): Use => use(name, 'piece', { otherKinds: ['divider'], scope });

const usesInMotifUse = (motifUse: MotifUse | null): Use[] =>
  motifUse ? [...motifUse.motifs.map((motif) => use(motif, 'motif')), use(motifUse.stock, 'strip')] : [];

/** A tip is at a node of the motif in whose braces it stands, or of each motif of the fill. */
function usesInTips(declaration: Declaration): Use[] {
  if (declaration.kind === 'panel') {
    return declaration.properties.flatMap((property) =>
      property.kind === 'panel fill'
        ? (property.use?.motifs ?? []).flatMap((motif) => atNodes(property.tips, motif))
        : [],
    );
  }
  if (declaration.kind !== 'motif') return [];
  return declaration.properties.flatMap((property) => {
    if (property.kind === 'part fill') return atNodes(property.tips, property.motif);
    return property.kind === 'tip' ? atNodes([property], declaration.name) : [];
  });
}

const atNodes = (tips: readonly TipProperty[], motif: Name): Use[] =>
  tips.map((tip) => use(tip.node, 'node', { scope: motif.text }));
