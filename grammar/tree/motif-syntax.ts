/** Nodes of the tree inside a motif. */
import type { LineSyntax, PlaceSyntax } from './place-syntax.ts';
import type { Block, Expression, Name, Node, Ordinal, Phrase, ShapeName, ShapeWord } from './syntax-nodes.ts';

export interface NodeProperty extends Phrase {
  readonly kind: 'node';
  readonly name: Name;
  readonly place: PlaceSyntax;
}

export interface DividerProperty extends Phrase {
  readonly kind: 'divider';
  readonly name: Name;
  readonly from: PlaceSyntax;
  readonly to: PlaceSyntax;
  readonly above: readonly AboveClause[];
}

/** `above rib`: where the two are lapped, this one lies nearer to the viewer. */
export interface AboveClause extends Node {
  readonly name: Name;
}

/** `mirrored`, over the middle line of the corner or edge that `every` has come to, or over a line that is said. */
export interface MirroredClause extends Node {
  readonly line: LineSyntax | null;
}

export interface EveryClause extends Node {
  readonly over: 'corner' | 'edge';
}

export interface PieceProperty extends Phrase {
  readonly kind: 'piece';
  readonly name: Name;
  readonly from: PlaceSyntax;
  readonly to: PlaceSyntax;
  readonly every: readonly EveryClause[];
  readonly mirrored: readonly MirroredClause[];
  readonly above: readonly AboveClause[];
}

export interface FitOrderProperty extends Phrase {
  readonly kind: 'fit_order';
  readonly roles: readonly { readonly name: Name; readonly key: Expression | null }[];
}

export type CornersSyntax =
  | ({ readonly kind: 'corners by form'; readonly form: 'every' | 'square' | 'sharp' | 'wide' } & Node)
  | ({ readonly kind: 'corner by number'; readonly number: Ordinal } & Node);

export interface TipProperty extends Phrase {
  readonly kind: 'tip';
  readonly angle: Expression;
  readonly node: Name;
  readonly corners: CornersSyntax | null;
}

/** `fill halves with hemp { tip … }` inside a motif. */
export interface PartFillProperty extends Phrase {
  readonly kind: 'part fill';
  readonly parts: 'halves' | 'parts' | ShapeWord;
  readonly motif: Name;
  readonly tips: readonly TipProperty[];
}

/** `hinge arm, arm`: pieces that come in pairs out of one length. */
export interface HingeProperty extends Phrase {
  readonly kind: 'hinge';
  readonly first: Name;
  readonly second: Name;
}

export type MotifProperty =
  NodeProperty | DividerProperty | PieceProperty | FitOrderProperty | HingeProperty | PartFillProperty | TipProperty;

export interface MotifDeclaration extends Block<MotifProperty> {
  readonly kind: 'motif';
  readonly shape: ShapeName;
}
