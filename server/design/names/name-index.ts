/** Every name of a file: where it is given and where it is used. */
import type { FillPlaceSyntax, MotifUse } from '../../../grammar/tree/fill-syntax.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import type {
  BlockDeclaration,
  Declaration,
  Expression,
  LineSyntax,
  MotifDeclaration,
  Name,
  PlaceSyntax,
  Property,
  SyntaxTree,
  TipProperty,
} from '../../../grammar/tree/syntax-tree.ts';
import { expressionsIn } from '../values/tree-expressions.ts';

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
  if (declaration.kind === 'use' || declaration.kind === 'title' || declaration.kind === 'units') return [];
  if (declaration.kind === 'let') return usesInExpression(declaration.value);
  return (declaration.properties as readonly Property[]).flatMap((property) => [
    ...expressionsIn(property).flatMap(usesInExpression),
    ...usesInProperty(property, declaration),
  ]);
}

function usesInExpression(expression: Expression): Use[] {
  switch (expression.kind) {
    case 'number':
      return [];
    case 'name':
      return expression.name.text === 'pi' ? [] : [use(expression.name, 'let')];
    case 'negation':
      return usesInExpression(expression.operand);
    case 'operation':
      return [...usesInExpression(expression.left), ...usesInExpression(expression.right)];
    case 'call':
      return expression.values.flatMap(usesInExpression);
  }
}

function usesInProperty(property: Property, owner: BlockDeclaration): Use[] {
  switch (property.kind) {
    case 'wood':
      return [use(property.name, 'wood', { mayBeBuiltIn: true })];
    case 'of':
      return [use(property.name, 'strip')];
    case 'except':
      return [use(property.stock, 'strip')];
    case 'family':
      return property.stock ? [use(property.stock, 'strip')] : [];
    case 'frame':
      return property.properties.flatMap((part) => (part.kind === 'of' ? [use(part.name, 'strip')] : []));
    case 'of resin':
      return [use(property.name, 'resin')];
    case 'of sheet':
      return [use(property.name, 'sheet')];
    case 'take':
      return [use(property.panel, 'panel')];
    case 'kit panel':
      return [use(property.name, 'panel')];
    case 'around':
      return [use(property.name, 'panel', { otherKinds: ['outline'] })];
    case 'mould':
      return [use(property.name, 'outline', { otherKinds: ['blank'] })];
    case 'insert':
      return [use(property.outline, 'outline')];
    case 'board shape':
      return [use(property.name, 'outline')];
    case 'place':
      return [property.part, ...(property.inFrontOf ? [property.inFrontOf] : [])].map((name) =>
        use(name, 'panel', { otherKinds: ['board', 'pour'] }),
      );
    case 'meets':
      return [use(property.other, 'panel', { otherKinds: ['board', 'pour', 'outline'] })];
    case 'finish used':
      return property.name ? [use(property.name, 'finish')] : [];
    case 'grid':
      return [use(property.name, 'grid')];
    case 'shape':
      return property.shape.kind === 'outline' ? [use(property.shape.name, 'outline')] : [];
    case 'panel fill':
      return [
        ...property.places.flatMap(usesInFillPlace),
        ...(property.use ? usesInMotifUse(property.use, property.tips) : []),
      ];
    case 'copy':
    case 'plus':
    case 'minus':
    case 'common':
      return [use(property.name, 'outline')];
    case 'map':
      return property.lines.flatMap((line) =>
        line.kind === 'map entry' && line.use ? usesInMotifUse(line.use, []) : [],
      );
    default:
      return owner.kind === 'motif' ? usesInMotif(property, owner) : [];
  }
}

const usesInMotifUse = ({ motifs, stock }: MotifUse, tips: readonly TipProperty[]): Use[] => [
  ...motifs.flatMap((motif) => [use(motif, 'motif'), ...usesInTips(tips, motif)]),
  use(stock, 'strip'),
];

function usesInFillPlace(place: FillPlaceSyntax): Use[] {
  if (place.kind === 'region') return [use(place.outline, 'outline')];
  return place.kind === 'margin' && place.of ? [use(place.of, 'outline')] : [];
}

function usesInMotif(property: Property, motif: MotifDeclaration): Use[] {
  const scope = motif.name.text;
  switch (property.kind) {
    case 'node':
      return usesInPlace(property.place, scope);
    case 'piece':
    case 'divider':
      return [
        ...usesInPlace(property.from, scope),
        ...usesInPlace(property.to, scope),
        ...('mirrored' in property ? property.mirrored : []).flatMap(({ line }) =>
          line ? usesInLine(line, scope) : [],
        ),
        ...property.above.map(({ name }) => use(name, 'piece', { otherKinds: ['divider'], scope })),
      ];
    case 'fit_order':
      return property.roles.map(({ name }) => use(name, 'piece', { otherKinds: ['divider'], scope }));
    case 'hinge':
      return [property.first, property.second].map((name) => use(name, 'piece', { scope }));
    case 'part fill':
      return [use(property.motif, 'motif'), ...usesInTips(property.tips, property.motif)];
    case 'tip':
      return usesInTips([property], motif.name);
    default:
      return [];
  }
}

function usesInPlace(place: PlaceSyntax, scope: string): Use[] {
  if (place.kind === 'named') return [use(place.name, 'node', { scope })];
  return placesIn(place).flatMap((inner) => usesInPlace(inner, scope));
}

const usesInLine = (line: LineSyntax, scope: string): Use[] =>
  placesOfLine(line).flatMap((inner) => usesInPlace(inner, scope));

/** The places by which a place is found. */
function placesIn(place: PlaceSyntax): readonly PlaceSyntax[] {
  switch (place.kind) {
    case 'between':
      return [place.first, place.second];
    case 'mirrored':
      return [place.place, ...placesOfLine(place.line)];
    case 'turned':
      return [place.place, place.about];
    case 'intersection':
      return [...placesOfLine(place.first), ...placesOfLine(place.second)];
    default:
      return [];
  }
}

const placesOfLine = (line: LineSyntax): readonly PlaceSyntax[] => (line.kind === 'edge' ? [] : [line.from, line.to]);

const usesInTips = (tips: readonly TipProperty[], motif: Name): Use[] =>
  tips.map((tip) => use(tip.node, 'node', { scope: motif.text }));
