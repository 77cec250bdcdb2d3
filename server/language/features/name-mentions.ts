/** Every place of a text where a name is given or used, with what it names. */
import type { SourceRange } from '../../../grammar/source-range.ts';
import type {
  Declaration,
  MotifDeclaration,
  MotifProperty,
  Name,
  PanelDeclaration,
  PlaceSyntax,
  SyntaxTree,
  TipProperty,
} from '../../../grammar/syntax-tree.ts';
import type { DeclarationKind } from './declarations.ts';
import { namesInExpressions } from './expressions.ts';

export type NameKind = DeclarationKind | 'let' | 'node' | 'role';

export interface NameMention {
  readonly kind: NameKind;
  readonly text: string;
  /** Nodes and roles belong to a motif: its name; null for names of the whole file. */
  readonly motif: string | null;
  readonly range: SourceRange;
  readonly declares: boolean;
}

/** All mentions, in the order of the text. */
export function nameMentions(tree: SyntaxTree): NameMention[] {
  const lets = namesInExpressions(tree).map((name) => use('let', name));
  return [...tree.declarations.flatMap(mentionsIn), ...lets].sort(
    (first, second) => first.range.start - second.range.start,
  );
}

const mention = (kind: NameKind, name: Name, motif: string | null, declares: boolean): NameMention => ({
  kind,
  text: name.text,
  motif,
  range: name.range,
  declares,
});
const use = (kind: NameKind, name: Name, motif: string | null = null): NameMention => mention(kind, name, motif, false);

function mentionsIn(declaration: Declaration): NameMention[] {
  switch (declaration.kind) {
    case 'title':
    case 'units':
      return [];
    case 'let':
    case 'strip':
    case 'bench':
    case 'outline':
      return [mention(declaration.kind, declaration.name, null, true)];
    case 'grid':
      return [
        mention('grid', declaration.name, null, true),
        ...declaration.properties.flatMap((property) => (property.kind === 'of' ? [use('strip', property.name)] : [])),
      ];
    case 'motif':
      return mentionsInMotif(declaration);
    case 'panel':
      return mentionsInPanel(declaration);
  }
}

function mentionsInMotif({ name, properties }: MotifDeclaration): NameMention[] {
  return [
    mention('motif', name, null, true),
    ...properties.flatMap((property) => mentionsInMotifProperty(property, name.text)),
  ];
}

function mentionsInMotifProperty(property: MotifProperty, motif: string): NameMention[] {
  switch (property.kind) {
    case 'node':
      return [mention('node', property.name, motif, true), ...nodesIn(property.place, motif)];
    case 'divider':
    case 'piece':
      return [
        mention('role', property.name, motif, true),
        ...nodesIn(property.from, motif),
        ...nodesIn(property.to, motif),
      ];
    case 'fit_order':
      return property.roles.map(({ name }) => use('role', name, motif));
    case 'part fill':
      return [use('motif', property.motif), ...tipNodes(property.tips, property.motif.text)];
    case 'tip':
      return tipNodes([property], motif);
  }
}

function mentionsInPanel({ name, properties }: PanelDeclaration): NameMention[] {
  const inProperties = properties.flatMap((property): NameMention[] => {
    if (property.kind === 'grid') return [use('grid', property.name)];
    if (property.kind === 'shape' && property.shape.kind === 'outline') return [use('outline', property.shape.name)];
    if (property.kind !== 'panel fill') return [];
    return [
      use('motif', property.motif),
      use('strip', property.stock),
      ...tipNodes(property.tips, property.motif.text),
    ];
  });
  return [mention('panel', name, null, true), ...inProperties];
}

/** A tip speaks of a node of the motif that is filled in. */
const tipNodes = (tips: readonly TipProperty[], motif: string): NameMention[] =>
  tips.map(({ node }) => use('node', node, motif));

function nodesIn(place: PlaceSyntax, motif: string): NameMention[] {
  if (place.kind === 'named') return [use('node', place.name, motif)];
  return place.kind === 'between' ? [...nodesIn(place.first, motif), ...nodesIn(place.second, motif)] : [];
}
