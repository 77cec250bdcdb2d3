/** The text as a tree of plain data. Every node knows its exact range; nothing is resolved or computed yet. */
import type { MapProperty, PanelFillProperty } from './fill-syntax.ts';
import type {
  BothSlantsProperty,
  ExceptProperty,
  FamilyProperty,
  FitShapeSyntax,
  GridKindProperty,
  MeasuredProperty,
} from './grid-syntax.ts';
import type { MaterialDeclaration } from './material-syntax.ts';
import type {
  BandDeclaration,
  BlankDeclaration,
  BoardDeclaration,
  FrameProperty,
  KitDeclaration,
  PourDeclaration,
} from './object-syntax.ts';
import type { OutlineStep } from './outline-syntax.ts';
import type { SourceRange } from './source-range.ts';
import type { WorkDeclaration } from './work-syntax.ts';

export type { BothSlantsProperty, ExceptProperty, FamilyProperty, FitShapeSyntax, GridKindProperty, MeasuredProperty };

export interface Node {
  readonly range: SourceRange;
}

/** A name where it is given or used. */
export interface Name extends Node {
  readonly text: string;
}

/** Text in quotes; `range` includes the quotes, `text` does not. */
export interface TextLiteral extends Node {
  readonly text: string;
}

/** Units that stand right behind a number: of length, angle, share, mass, volume and time. */
export type QuantityUnit =
  'mm' | 'cm' | 'm' | 'in' | 'ft' | 'deg' | '%' | 'g' | 'kg' | 'oz' | 'lb' | 'mL' | 'L' | 'min' | 'h' | 'day' | 'days';

/** A number as written: `amount` of `unit`; null where it is bare; 'unknown' where the letters are no unit. */
export interface NumberLiteral extends Node {
  readonly kind: 'number';
  readonly amount: number;
  readonly unit: QuantityUnit | 'unknown' | null;
}

export interface NameUse extends Node {
  readonly kind: 'name';
  readonly name: Name;
}

export interface Negation extends Node {
  readonly kind: 'negation';
  readonly operand: Expression;
}

export interface Operation extends Node {
  readonly kind: 'operation';
  readonly operator: '+' | '-' | '*' | '/';
  readonly left: Expression;
  readonly right: Expression;
}

export interface Call extends Node {
  readonly kind: 'call';
  readonly name: Name;
  readonly values: readonly Expression[];
}

export type Expression = NumberLiteral | NameUse | Negation | Operation | Call;

/** `x, y`. */
export interface PointSyntax extends Node {
  readonly x: Expression;
  readonly y: Expression;
}

/** A property or declaration begins with its keyword. */
export interface Phrase extends Node {
  readonly keyword: SourceRange;
}

/** A property that is one value, such as `kerf 3.15`. */
export interface ValueProperty<Kind extends string> extends Phrase {
  readonly kind: Kind;
  readonly value: Expression;
}

/** A property that is a list of values, such as `lengths 900, 1200`. */
export interface ListProperty<Kind extends string> extends Phrase {
  readonly kind: Kind;
  readonly values: readonly Expression[];
}

/** A property that is a name, such as `of ash`. */
export interface NameProperty<Kind extends string> extends Phrase {
  readonly kind: Kind;
  readonly name: Name;
}

/** A declaration with a body. `open` is its `{`; `close` its `}`, null where that is missing. */
export interface Block<Property> extends Phrase {
  readonly name: Name;
  readonly open: SourceRange | null;
  readonly close: SourceRange | null;
  readonly properties: readonly Property[];
  /** True where some phrase of the body could not be read, so that what seems missing may be there. */
  readonly incomplete: boolean;
}

/** `use "motifs.lap"`, or `use motifs` for a library that comes with the program. */
export interface UseDeclaration extends Phrase {
  readonly kind: 'use';
  readonly source: ({ readonly kind: 'file' } & TextLiteral) | ({ readonly kind: 'library' } & Name);
}

export interface TitleDeclaration extends Phrase {
  readonly kind: 'title';
  readonly text: TextLiteral;
}

export interface UnitsDeclaration extends Phrase {
  readonly kind: 'units';
  readonly unit: 'mm' | 'cm' | 'm' | 'in' | 'ft';
}

export interface LetDeclaration extends Phrase {
  readonly kind: 'let';
  readonly name: Name;
  readonly value: Expression;
}

export type GridProperty =
  | GridKindProperty
  | ValueProperty<'side'>
  | ValueProperty<'pitch'>
  | NameProperty<'of'>
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

export type ShapeWord = 'triangle' | 'square' | 'rhombus' | 'hexagon';

/** A polygon is written `polygon 5`. */
export interface ShapeName extends Node {
  readonly shape: ShapeWord | `polygon ${number}`;
}

/** A whole number counted from 1, as in `corner 2`. */
export interface Ordinal extends Node {
  readonly value: number;
}

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
  | ({ readonly kind: 'edge'; readonly number: Ordinal | null } & Node)
  | ({ readonly kind: 'through'; readonly from: PlaceSyntax; readonly to: PlaceSyntax } & Node);

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
  | ({ readonly kind: 'every' | 'square' | 'sharp' | 'wide' } & Node)
  | ({ readonly kind: 'number'; readonly number: Ordinal } & Node);

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

/** The end of an outline's step: a point, or null for `to start`. */
export type StepEnd = PointSyntax | null;

export interface OutlineDeclaration extends Block<OutlineStep> {
  readonly kind: 'outline';
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
  | ({ readonly kind: 'outline'; readonly name: Name } & Node)
  | ({ readonly kind: 'rectangle' | 'cells'; readonly width: Expression; readonly height: Expression } & Node)
  | ({ readonly kind: 'hexagon of cells'; readonly cells: Expression } & Node);

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
  | NameProperty<'grid'>
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

export type BlockDeclaration =
  | MaterialDeclaration
  | GridDeclaration
  | MotifDeclaration
  | OutlineDeclaration
  | PanelDeclaration
  | BlankDeclaration
  | BandDeclaration
  | PourDeclaration
  | BoardDeclaration
  | WorkDeclaration
  | KitDeclaration;

export type Declaration = UseDeclaration | TitleDeclaration | UnitsDeclaration | LetDeclaration | BlockDeclaration;

export type Property = BlockDeclaration['properties'][number];

export interface SyntaxTree extends Node {
  readonly declarations: readonly Declaration[];
  /** Words of phrases that could not be read: they may be names given there, so using them is no second error. */
  readonly unreadNames: readonly Name[];
  /** Keywords of unread phrases that give a name but show none, such as `strip { … }`: any strip may be that one. */
  readonly unnamed: readonly string[];
}
