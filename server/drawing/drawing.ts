/** A drawing as plain data: shapes drawn once and placed many times, in layers. Millimetres, y up. */
import type { SourceRange } from '../../grammar/tree/source-range.ts';
import type { LengthUnit } from '../design/design-model.ts';

/** What a layer shows; writers choose colour and line by it. */
export type LayerKind =
  | 'region'
  | 'board'
  | 'resin'
  | 'offcut'
  | 'strip'
  | 'piece'
  | 'trimmed'
  /** A line with everything outside it paled. */
  | 'outline'
  /** Lines alone. */
  | 'note';

/** Rings of x, y pairs: [[x0, y0, x1, y1, …], …]; every ring is closed. */
export type Rings = readonly (readonly number[])[];

/** One shape and all its places. */
export interface DrawnKind {
  readonly mark: string;
  /** What a reader is told of it, such as "arm, 20.1 long, 342 to make". */
  readonly label: string;
  readonly rings: Rings;
  /** x, y and turn in degrees, one triple a placement. */
  readonly placements: readonly number[];
  readonly range: SourceRange;
}

export interface DrawingLayer {
  readonly name: string;
  readonly kind: LayerKind;
  /** Strip layer from the back, 0 for all else: writers tint by it. */
  readonly level: number;
  /** The wood it is of; of resin the colour. */
  readonly wood: string | null;
  readonly kinds: readonly DrawnKind[];
  /** Name of the part of a work that the layer shows; left out in drawings of one thing. */
  readonly part?: string;
  /** What the layer is cut down to, in the drawing's coordinates; left out where nothing is cut. */
  readonly clip?: Rings;
}

/** Words in the drawing, at a size on the wood: `size` is the height of the letters in mm. */
export interface DrawnText {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly text: string;
}

export interface Drawing {
  readonly title: string;
  /** What is drawn, as its name stands in the file: ids begin with it. */
  readonly name: string;
  /** What is drawn, in words: "panel blade". */
  readonly heading: string;
  /** What its words are in. */
  readonly units: LengthUnit;
  readonly bounds: { readonly left: number; readonly bottom: number; readonly right: number; readonly top: number };
  readonly layers: readonly DrawingLayer[];
  readonly texts: readonly DrawnText[];
  /** Lines of plain text that sum the drawing up, for screen readers and captions. */
  readonly summary: readonly string[];
}
