/** Nodes of the tree inside a panel: where it lies on its grid, its shape and its edge. */
import type { MapProperty, PanelFillProperty } from './fill-syntax.ts';
import type { FrameProperty } from './object-syntax.ts';
import type {
  Block,
  Expression,
  Name,
  NameProperty,
  Node,
  Phrase,
  PointSyntax,
  ValueProperty,
} from './syntax-nodes.ts';

/** `fit 21 x 8 cells in 900 x 380 by pitch`. */
export interface FitShapeSyntax extends Node {
  readonly kind: 'fitted shape';
  readonly across: Expression;
  readonly up: Expression;
  readonly width: Expression;
  readonly height: Expression;
  readonly by: 'pitch' | 'frame';
}

export interface CentredProperty extends Phrase {
  readonly kind: 'centred';
  readonly on: 'node' | 'cell' | 'edge';
}

export interface NodeAtProperty extends Phrase {
  readonly kind: 'node at';
  readonly at: PointSyntax;
}

export type PanelShapeSyntax =
  | FitShapeSyntax
  | ({ readonly kind: 'outline shape'; readonly name: Name } & Node)
  | ({
      readonly kind: 'rectangle shape' | 'cells shape';
      readonly width: Expression;
      readonly height: Expression;
    } & Node)
  | ({ readonly kind: 'hexagon shape'; readonly cells: Expression } & Node);

export interface ShapeProperty extends Phrase {
  readonly kind: 'shape';
  readonly shape: PanelShapeSyntax;
}

export interface CutCellsProperty extends Phrase {
  readonly kind: 'cut cells';
  readonly cutCells: 'trim' | 'own' | 'open';
}

export interface EdgeProperty extends Phrase {
  readonly kind: 'edge';
  readonly edge: 'sawn' | 'framed';
}

/** `meets blade leave 2`: along the edge that faces the other thing, material is left for fitting. */
export interface MeetsProperty extends Phrase {
  readonly kind: 'meets';
  readonly other: Name;
  readonly leave: Expression;
}

export type PanelProperty =
  | NameProperty<'of grid'>
  | CentredProperty
  | NodeAtProperty
  | ShapeProperty
  | EdgeProperty
  | CutCellsProperty
  | ValueProperty<'stub'>
  | ValueProperty<'tail'>
  | FrameProperty
  | MeetsProperty
  | ValueProperty<'sliver'>
  | PanelFillProperty
  | MapProperty
  | ValueProperty<'copies'>;

export interface PanelDeclaration extends Block<PanelProperty> {
  readonly kind: 'panel';
}
