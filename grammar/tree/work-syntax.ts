/** Nodes of the tree for the assembled work. */
import type { SourceRange } from './source-range.ts';
import type {
  Block,
  ChosenValueProperty,
  Expression,
  MoneyProperty,
  Name,
  Phrase,
  PointSyntax,
  ValueProperty,
} from './syntax-nodes.ts';

/** `place blade at -80, 30 turned 15deg mirrored in front of stem`. */
export interface PlaceProperty extends Phrase {
  readonly kind: 'place';
  readonly part: Name;
  readonly at: PointSyntax;
  readonly turned: Expression | null;
  readonly mirrored: boolean;
  readonly inFrontOf: Name | null;
}

/** `hang cleat screws 4 each 8kg safety 4 height 120`. */
export interface HangProperty extends Phrase {
  readonly kind: 'hang';
  readonly screws: Expression;
  readonly each: Expression;
  readonly safety: Expression | null;
  readonly height: Expression | null;
}

/** `finish oil`; a null name is `finish none`. */
export interface FinishUse extends Phrase {
  readonly kind: 'finish used';
  readonly name: Name | null;
}

/** `moisture 8% to 11%`. */
export interface MoistureProperty extends Phrase {
  readonly kind: 'moisture';
  readonly made: Expression;
  readonly hangs: Expression;
}

/** What minutes may be for, behind `per`. */
export const labourUnits = ['setting', 'pass', 'piece', 'strip', 'cell', 'mix', 'metre', 'copy'] as const;

/** `minutes 1.5 per setting for notch_strips wait 2h`, or `once` in the place of `per setting`. */
export interface MinutesProperty extends Phrase {
  readonly kind: 'minutes';
  readonly value: Expression;
  readonly per: (typeof labourUnits)[number] | 'once';
  readonly perRange: SourceRange;
  readonly step: Name;
  readonly wait: Expression | null;
}

/** `commission 40% of buyer_price`; a null `of` is of the price before tax. */
export interface CommissionProperty extends Phrase {
  readonly kind: 'commission';
  readonly value: Expression;
  readonly of: 'before_tax' | 'buyer_price' | null;
}

export type WorkProperty =
  | ValueProperty<'copies'>
  | PlaceProperty
  | HangProperty
  | FinishUse
  | MoistureProperty
  | MoneyProperty<'hourly'>
  | MinutesProperty
  | ChosenValueProperty<'gain', 'margin' | 'markup'>
  | CommissionProperty
  | ValueProperty<'tax'>
  | MoneyProperty<'packing'>
  | ValueProperty<'losses'>;

export interface WorkDeclaration extends Block<WorkProperty> {
  readonly kind: 'work';
}
