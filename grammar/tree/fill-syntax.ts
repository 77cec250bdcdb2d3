/** Nodes of the tree that say what fills the cells of a panel. */
import type { TipProperty } from './motif-syntax.ts';
import type { Expression, Name, Node, ShapeName } from './syntax-nodes.ts';
import type { SourceRange } from './source-range.ts';

/** Which cells a fill speaks of; several must all hold. A null `last` is the same as `first`. */
export type FillPlaceSyntax =
  | ({
      readonly kind: 'rows' | 'columns' | 'rings';
      readonly first: Expression;
      readonly last: Expression | null;
    } & Node)
  | ({
      readonly kind: 'every';
      readonly of: 'rows' | 'columns';
      readonly every: Expression;
      readonly from: Expression | null;
    } & Node)
  | ({ readonly kind: 'region'; readonly inside: boolean; readonly outline: Name } & Node)
  /** `of` is null for the panel's own edge. */
  | ({
      readonly kind: 'by distance';
      readonly within: boolean;
      readonly reach: Expression;
      readonly of: Name | null;
    } & Node);

/** `hemp, star of bass turned 0, 1 by row mirrored`: motifs and turns that take turns. */
export interface MotifUse {
  readonly motifs: readonly Name[];
  readonly stock: Name;
  readonly turned: readonly Expression[];
  /** What takes turns, where that is said. */
  readonly by: ({ readonly what: 'cell' | 'row' | 'column' } & Node) | null;
  readonly mirrored: boolean;
}

/** `fill row 1 triangle with hemp of bass turned 1 { tip … }` inside a panel. */
/** `use` is null for `open`. */
export interface PanelFillProperty extends Node {
  readonly kind: 'panel fill';
  readonly keyword: SourceRange;
  readonly places: readonly FillPlaceSyntax[];
  readonly shape: ShapeName;
  readonly use: MotifUse | null;
  readonly tips: readonly TipProperty[];
}

/** A sign in a map: a name, or `.`. */
export interface MapSign extends Node {
  readonly text: string;
}

/** `h = hemp of bass turned 1`; `use` is null for `open`. `keyword` is the sign. */
export interface MapEntry extends Node {
  readonly kind: 'map entry';
  readonly keyword: SourceRange;
  readonly sign: MapSign;
  readonly use: MotifUse | null;
}

/** `row h t h`. */
export interface MapRow extends Node {
  readonly kind: 'map row';
  readonly keyword: SourceRange;
  readonly signs: readonly MapSign[];
}

/** `map { … }` inside a panel; `incomplete` where some line of it could not be read. */
export interface MapProperty extends Node {
  readonly kind: 'map';
  readonly keyword: SourceRange;
  readonly lines: readonly (MapEntry | MapRow)[];
  readonly incomplete: boolean;
}
