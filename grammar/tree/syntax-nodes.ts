/** What nodes of the tree are made of: names, numbers, points, and the forms that properties of several blocks have. */
import type { SourceRange } from './source-range.ts';

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

/** One of a few words, such as `corners mitred`; `choice` is the word. */
export interface ChoiceProperty<Kind extends string, Choice extends string> extends Phrase {
  readonly kind: Kind;
  readonly choice: Choice;
}

/** A value behind one of a few words, such as `chamfer 10` or `round_over 6`. */
export interface ChosenValueProperty<Kind extends string, Choice extends string> extends Phrase {
  readonly kind: Kind;
  readonly choice: Choice;
  readonly value: Expression;
}

/** `4.20 EUR`. */
export interface MoneySyntax extends Node {
  readonly kind: 'money';
  readonly amount: Expression;
  readonly currency: Name;
}

/** An amount of money behind its word, such as `hourly 32 EUR`. */
export interface MoneyProperty<Kind extends string> extends Phrase {
  readonly kind: Kind;
  readonly money: MoneySyntax;
}

/** `420 x 297` behind a word. */
export interface SizedProperty<Kind extends string> extends Phrase {
  readonly kind: Kind;
  readonly width: Expression;
  readonly height: Expression;
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

export type ShapeWord = 'triangle' | 'square' | 'rhombus' | 'hexagon';

/** A polygon is written `polygon 5`. */
export interface ShapeName extends Node {
  readonly shape: ShapeWord | `polygon ${number}`;
}

/** A whole number counted from 1, as in `corner 2`. */
export interface Ordinal extends Node {
  readonly value: number;
}
