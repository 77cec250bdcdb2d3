/** Nodes of the tree that say places in an opening. */
import type { Expression, Name, Node, Ordinal } from './syntax-nodes.ts';

/** A place in an opening. A null `number` is the corner or edge that `every` counts through. */
export type PlaceSyntax =
  | ({ readonly kind: 'corner'; readonly number: Ordinal | null } & Node)
  | ({ readonly kind: 'mid'; readonly number: Ordinal | null } & Node)
  | ({ readonly kind: 'along'; readonly fraction: Expression; readonly number: Ordinal | null } & Node)
  | ({ readonly kind: 'centroid' } & Node)
  | ({ readonly kind: 'incentre' } & Node)
  | ({
      readonly kind: 'between';
      readonly first: PlaceSyntax;
      readonly second: PlaceSyntax;
      readonly fraction: Expression | null;
    } & Node)
  | ({ readonly kind: 'mirrored'; readonly place: PlaceSyntax; readonly line: LineSyntax } & Node)
  | ({
      readonly kind: 'turned';
      readonly place: PlaceSyntax;
      readonly by: Expression;
      /** True where `by` counts corners, false where it is an angle. */
      readonly inCorners: boolean;
      readonly about: PlaceSyntax;
    } & Node)
  | ({ readonly kind: 'intersection'; readonly first: LineSyntax; readonly second: LineSyntax } & Node)
  | ({ readonly kind: 'named'; readonly name: Name } & Node);

/** A straight line without ends: along an edge, or through two places. */
export type LineSyntax =
  | ({ readonly kind: 'edge line'; readonly number: Ordinal | null } & Node)
  | ({ readonly kind: 'line through'; readonly from: PlaceSyntax; readonly to: PlaceSyntax } & Node);
