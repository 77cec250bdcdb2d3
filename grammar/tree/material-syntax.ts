/** Nodes of the tree for strips, the bench, woods, sheets, resins and finishes. */
import type {
  Block,
  ChoiceProperty,
  Expression,
  ListProperty,
  MoneySyntax,
  NameProperty,
  Phrase,
  ValueProperty,
} from './syntax-nodes.ts';
import type { SourceRange } from './source-range.ts';

/** `shrinkage radial 4.9% tangential 7.8%`; either may be left out. */
export interface ShrinkageProperty extends Phrase {
  readonly kind: 'shrinkage';
  readonly radial: Expression | null;
  readonly tangential: Expression | null;
}

export type WoodProperty =
  | ValueProperty<'density'>
  | ValueProperty<'rupture'>
  | ValueProperty<'elasticity'>
  | ShrinkageProperty
  | ChoiceProperty<'pores', 'porous' | 'closed'>;

export interface WoodDeclaration extends Block<WoodProperty> {
  readonly kind: 'wood';
}

/** The milled section; a null `face` is `from_kerf`: as wide as the notching blade cuts, less the fit. */
export interface SectionProperty extends Phrase {
  readonly kind: 'section';
  readonly face: Expression | null;
  /** Where the face stands: its expression, or the word. */
  readonly faceRange: SourceRange;
  readonly depth: Expression;
}

/** `lengths 900 at 4.20 EUR, 1200`. */
export interface LengthsProperty extends Phrase {
  readonly kind: 'lengths';
  readonly lengths: readonly { readonly length: Expression; readonly price: MoneySyntax | null }[];
}

/** `on_hand 4 of 900, 1 of 640`. */
export interface OnHandProperty extends Phrase {
  readonly kind: 'on_hand';
  readonly sticks: readonly { readonly count: Expression; readonly length: Expression }[];
}

/** `spare 8%`, or `spare breakage 4% confidence 95%` with a `confidence`. */
export interface SpareProperty extends Phrase {
  readonly kind: 'spare';
  readonly share: Expression;
  readonly confidence: Expression | null;
}

/** `rip from 27 x 160 x 2000 at 38 EUR thickness is depth rejoint 0.5 every 3`. */
export interface RipProperty extends Phrase {
  readonly kind: 'rip';
  readonly thickness: Expression;
  readonly width: Expression;
  readonly length: Expression;
  readonly price: MoneySyntax | null;
  readonly thicknessGives: 'face' | 'depth' | null;
  readonly rejoint: { readonly allowance: Expression; readonly every: Expression } | null;
}

export type StripProperty =
  | NameProperty<'of wood'>
  | SectionProperty
  | LengthsProperty
  | OnHandProperty
  | ValueProperty<'kerf'>
  | ValueProperty<'end_trim'>
  | ListProperty<'breath'>
  | ValueProperty<'keep_offcuts'>
  | ValueProperty<'flush'>
  | SpareProperty
  | ValueProperty<'rejects'>
  | RipProperty;

export interface StripDeclaration extends Block<StripProperty> {
  readonly kind: 'strip';
}

/** `band_blade 6 cuts 0.9 curve 16`: width of the blade, of its cut, and the tightest curve it turns. */
export interface BandBladeProperty extends Phrase {
  readonly kind: 'band_blade';
  readonly width: Expression;
  readonly cuts: Expression | null;
  readonly curve: Expression | null;
}

export type BenchProperty =
  | ListProperty<'bevels'>
  | ValueProperty<'kerf'>
  | ValueProperty<'ripping_kerf'>
  | ListProperty<'breath'>
  | BandBladeProperty
  | ValueProperty<'shortest'>
  | ValueProperty<'gang'>
  | ValueProperty<'trim'>
  | ListProperty<'pin pitches'>
  | ChoiceProperty<'fixed stop', 'fixed_stop'>
  | ValueProperty<'pitch_error'>
  | ValueProperty<'pitch_scatter'>;

export interface BenchDeclaration extends Block<BenchProperty> {
  readonly kind: 'bench';
}

/** `size 1220 x 610 at 24 EUR, 600 x 300`. */
export interface SizeProperty extends Phrase {
  readonly kind: 'size';
  readonly sizes: readonly {
    readonly width: Expression;
    readonly height: Expression;
    readonly price: MoneySyntax | null;
  }[];
}

export type SheetProperty =
  | ValueProperty<'thick'>
  | SizeProperty
  | ValueProperty<'density'>
  | ValueProperty<'kerf'>
  | ValueProperty<'margin'>
  | ListProperty<'turns'>;

export interface SheetDeclaration extends Block<SheetProperty> {
  readonly kind: 'sheet';
}

/** `mix 2 to 1 by volume`: parts of resin to parts of hardener. */
export interface MixProperty extends Phrase {
  readonly kind: 'mix';
  readonly resin: Expression;
  readonly hardener: Expression;
  readonly by: 'volume' | 'mass';
}

/** `recoat 4h to 12h`. */
export interface RecoatWindowProperty extends Phrase {
  readonly kind: 'recoat window';
  readonly earliest: Expression;
  readonly latest: Expression;
}

/** `price 32 EUR per 1kg`; a null `per` is the usual measure. */
export interface PriceProperty extends Phrase {
  readonly kind: 'price';
  readonly money: MoneySyntax;
  readonly per: Expression | null;
}

export type ResinProperty =
  | ValueProperty<'density'>
  | MixProperty
  | ListProperty<'part densities'>
  | ValueProperty<'deepest'>
  | ValueProperty<'pot_life'>
  | RecoatWindowProperty
  | ValueProperty<'cure'>
  | ValueProperty<'mix_size'>
  | PriceProperty;

export interface ResinDeclaration extends Block<ResinProperty> {
  readonly kind: 'resin';
}

export type FinishProperty =
  ValueProperty<'coverage'> | ValueProperty<'coats'> | ValueProperty<'loss'> | ValueProperty<'recoat'> | PriceProperty;

export interface FinishDeclaration extends Block<FinishProperty> {
  readonly kind: 'finish';
}

export type MaterialDeclaration =
  WoodDeclaration | StripDeclaration | BenchDeclaration | SheetDeclaration | ResinDeclaration | FinishDeclaration;
