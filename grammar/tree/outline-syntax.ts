/** Nodes of the tree that draw an outline, and those that change what is drawn. */
import type { Block, Expression, Name, Node, Phrase, PointSyntax, TextLiteral } from './syntax-nodes.ts';

/** The end of an outline's step: a point, or null for `to start`. */
export type StepEnd = PointSyntax | null;

export interface StartStep extends Phrase {
  readonly kind: 'start';
  readonly at: PointSyntax;
}

/** `rounded` rounds the corner at its end. */
export interface LineStep extends Phrase {
  readonly kind: 'line';
  readonly to: StepEnd;
  readonly rounded: Expression | null;
}

/** What says how an arc runs: its radius, a point on it, or its rise over its chord. */
export type ArcForm =
  | ({
      readonly kind: 'arc by radius';
      readonly radius: Expression;
      readonly turn: 'left' | 'right';
      readonly large: boolean;
    } & Node)
  | ({ readonly kind: 'arc through'; readonly point: PointSyntax } & Node)
  | ({ readonly kind: 'arc by rise'; readonly rise: Expression; readonly turn: 'left' | 'right' } & Node);

export interface ArcStep extends Phrase {
  readonly kind: 'arc';
  readonly to: StepEnd;
  readonly form: ArcForm;
  readonly rounded: Expression | null;
}

export interface CurveStep extends Phrase {
  readonly kind: 'curve';
  readonly to: StepEnd;
  readonly controls: readonly [PointSyntax] | readonly [PointSyntax, PointSyntax];
  readonly rounded: Expression | null;
}

export interface SplineStep extends Phrase {
  readonly kind: 'spline';
  readonly to: StepEnd;
  readonly through: readonly PointSyntax[];
  readonly rounded: Expression | null;
}

/** A closed smooth line. */
export interface LoopStep extends Phrase {
  readonly kind: 'loop';
  readonly through: readonly PointSyntax[];
}

export interface CircleStep extends Phrase {
  readonly kind: 'circle';
  readonly at: PointSyntax | null;
  readonly radius: Expression;
}

export interface EllipseStep extends Phrase {
  readonly kind: 'ellipse';
  readonly at: PointSyntax | null;
  readonly radii: PointSyntax;
  readonly turned: Expression | null;
}

export interface RectangleStep extends Phrase {
  readonly kind: 'rectangle';
  readonly width: Expression;
  readonly height: Expression;
  readonly at: PointSyntax | null;
  readonly turned: Expression | null;
  readonly rounded: Expression | null;
}

export interface PolygonStep extends Phrase {
  readonly kind: 'polygon';
  readonly corners: Expression;
  readonly at: PointSyntax | null;
  readonly radius: Expression;
  readonly turned: Expression | null;
  readonly rounded: Expression | null;
}

/** Path data, or an element of an SVG file by its id. */
export interface PathStep extends Phrase {
  readonly kind: 'path';
  readonly source:
    | ({ readonly kind: 'data'; readonly data: TextLiteral } & Node)
    | ({ readonly kind: 'drawing'; readonly file: TextLiteral; readonly id: TextLiteral } & Node);
}

/** Begins with what another outline is. */
export interface CopyStep extends Phrase {
  readonly kind: 'copy';
  readonly name: Name;
}

export interface MoveStep extends Phrase {
  readonly kind: 'move';
  readonly by: PointSyntax;
}

/** In the x axis, the y axis, or the line through two points. */
export interface MirrorStep extends Phrase {
  readonly kind: 'mirror';
  readonly over: 'x' | 'y' | readonly [PointSyntax, PointSyntax];
}

export interface TurnStep extends Phrase {
  readonly kind: 'turn about';
  readonly angle: Expression;
  readonly about: PointSyntax | null;
}

export interface ScaleStep extends Phrase {
  readonly kind: 'scale';
  readonly factor: Expression;
  readonly about: PointSyntax | null;
}

export interface GrowStep extends Phrase {
  readonly kind: 'grow';
  readonly by: Expression;
  readonly sharp: boolean;
}

/** Adds another outline, takes it away, or keeps what is common. */
export interface CombineStep extends Phrase {
  readonly kind: 'plus' | 'minus' | 'common';
  readonly name: Name;
}

/** What changes all that is drawn so far. */
export type OutlineChange = MoveStep | MirrorStep | TurnStep | ScaleStep | GrowStep | CombineStep;

/** Goes on from where the step before it ends. */
export type PenStep = LineStep | ArcStep | CurveStep | SplineStep;

/** A closed line by itself. */
export type WholeStep = LoopStep | CircleStep | EllipseStep | RectangleStep | PolygonStep | PathStep;

export type OutlineStep = StartStep | PenStep | WholeStep | CopyStep | OutlineChange;

export interface OutlineDeclaration extends Block<OutlineStep> {
  readonly kind: 'outline';
}
