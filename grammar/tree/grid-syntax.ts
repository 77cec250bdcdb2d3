/** Nodes of the tree inside a grid. */
import type { Block, Expression, ListProperty, Name, NameProperty, Phrase, ValueProperty } from './syntax-nodes.ts';

export interface GridKindProperty extends Phrase {
  readonly kind: 'grid kind';
  readonly gridKind: 'three_way' | 'square' | 'diamond' | 'kagome' | 'free';
  /** The angle of a diamond's sharp or wide corner; null for the other kinds. */
  readonly angle: Expression | null;
}

/** `measured 10 cells 400.6 face 3.02`: the length from node to node over so many cells, and the face if it was measured. */
export interface MeasuredProperty extends Phrase {
  readonly kind: 'measured';
  readonly cells: Expression;
  readonly over: Expression;
  readonly face: Expression | null;
}

/** `family 60deg of ash spacing 40 offset 5 layer 1` or `family 60deg at 0, 35, 80`; `positions` is empty where it is spaced. */
export interface FamilyProperty extends Phrase {
  readonly kind: 'family';
  readonly direction: Expression;
  readonly spacing: Expression | null;
  readonly offset: Expression | null;
  readonly positions: readonly Expression[];
  readonly stock: Name | null;
  readonly layer: Expression | null;
}

/** `except 2 of bass`: a family, by number, that is of another strip. */
export interface ExceptProperty extends Phrase {
  readonly kind: 'except';
  readonly family: Expression;
  readonly stock: Name;
}

export interface BothSlantsProperty extends Phrase {
  readonly kind: 'both slants';
}

export type GridProperty =
  | GridKindProperty
  | ValueProperty<'side'>
  | ValueProperty<'pitch'>
  | NameProperty<'of strip'>
  | FamilyProperty
  | ExceptProperty
  | ListProperty<'layers'>
  | ValueProperty<'wall'>
  | ValueProperty<'fit'>
  | ValueProperty<'turn'>
  | MeasuredProperty
  | BothSlantsProperty;

export interface GridDeclaration extends Block<GridProperty> {
  readonly kind: 'grid';
}
