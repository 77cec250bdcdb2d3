/** Nodes of the tree for frames, blanks, bands, pours, boards and kits. */
import type {
  Block,
  ChoiceProperty,
  ChosenValueProperty,
  Expression,
  ListProperty,
  Name,
  NameProperty,
  Phrase,
  PointSyntax,
  SizedProperty,
  ValueProperty,
} from './syntax-nodes.ts';

export type FramePart =
  | NameProperty<'of strip'>
  | ChoiceProperty<'corners', 'mitred' | 'lapped'>
  | ChosenValueProperty<'joint', 'groove' | 'stub'>
  | ValueProperty<'end_gap'>
  | ChoiceProperty<'bearing', 'border' | 'fillers'>;

/** `frame { … }` inside a panel. */
export interface FrameProperty extends Phrase {
  readonly kind: 'frame';
  readonly properties: readonly FramePart[];
  /** True where some phrase of it could not be read. */
  readonly incomplete: boolean;
}

/** `take blade 3`; without a count as many as are made. */
export interface TakeProperty extends Phrase {
  readonly kind: 'take';
  readonly panel: Name;
  readonly count: Expression | null;
}

/** `depth 10 surfaced 0.5 overfill 1` of a cast blank. */
export interface CastDepthProperty extends Phrase {
  readonly kind: 'cast depth';
  readonly depth: Expression;
  readonly surfaced: Expression | null;
  readonly overfill: Expression | null;
}

export type BlankProperty =
  | NameProperty<'of grid'>
  | SizedProperty<'blank size'>
  | TakeProperty
  | ValueProperty<'margin'>
  | ValueProperty<'gap'>
  | ValueProperty<'allowance'>
  | ListProperty<'turns'>
  | ChoiceProperty<'from back', 'from_back'>
  | ChoiceProperty<'match laps', 'match'>
  | CastDepthProperty
  | NameProperty<'of resin'>;

export interface BlankDeclaration extends Block<BlankProperty> {
  readonly kind: 'blank';
}

/** `bends 15mm hot tested`; a null `method` is cold. */
export interface BendsProperty extends Phrase {
  readonly kind: 'bends';
  readonly radius: Expression;
  readonly method: 'cold' | 'damp' | 'hot' | null;
}

export type BandProperty =
  | NameProperty<'around'>
  | NameProperty<'of strip'>
  | ValueProperty<'laminations'>
  | BendsProperty
  | ChoiceProperty<'method', 'cold' | 'damp' | 'hot'>
  | ChoiceProperty<'corners', 'mitred' | 'lapped'>
  | ValueProperty<'over_length'>
  | ValueProperty<'over_width'>;

export interface BandDeclaration extends Block<BandProperty> {
  readonly kind: 'band';
}

/** `layer clear 6`; the colour may be left out. */
export interface LayerProperty extends Phrase {
  readonly kind: 'layer';
  readonly colour: Name | null;
  readonly depth: Expression;
}

/** `insert tenon from 0 to 6 density 650`. */
export interface InsertProperty extends Phrase {
  readonly kind: 'insert';
  readonly outline: Name;
  readonly from: Expression;
  readonly to: Expression;
  readonly density: Expression | null;
}

export type PourProperty =
  | NameProperty<'mould'>
  | SizedProperty<'mould size'>
  | LayerProperty
  | NameProperty<'of resin'>
  | InsertProperty
  | ValueProperty<'overfill'>
  | ValueProperty<'surfaced'>
  | ValueProperty<'seal'>
  | ValueProperty<'waste'>
  | ValueProperty<'spare_castings'>
  | ValueProperty<'copies'>;

export interface PourDeclaration extends Block<PourProperty> {
  readonly kind: 'pour';
}

export interface PivotProperty extends Phrase {
  readonly kind: 'pivot';
  readonly at: PointSyntax;
}

export type BoardProperty =
  | NameProperty<'board shape'>
  | NameProperty<'of sheet'>
  | ChosenValueProperty<'board edge', 'chamfer' | 'round_over'>
  | PivotProperty
  | ValueProperty<'copies'>;

export interface BoardDeclaration extends Block<BoardProperty> {
  readonly kind: 'board';
}

/** `done milled, notched`. */
export interface DoneProperty extends Phrase {
  readonly kind: 'done';
  readonly tasks: readonly ('milled' | 'notched' | 'cut' | 'bevelled')[];
}

/** `spares 2 per bag, 20 with teacher`. */
export interface SparesProperty extends Phrase {
  readonly kind: 'spares';
  readonly perBag: Expression | null;
  readonly withTeacher: Expression | null;
}

export type KitProperty =
  | NameProperty<'kit panel'>
  | ValueProperty<'students'>
  | DoneProperty
  | ValueProperty<'breakage'>
  | SparesProperty
  | ValueProperty<'jig'>;

export interface KitDeclaration extends Block<KitProperty> {
  readonly kind: 'kit';
}
