/** A drawing as plain data: shapes drawn once and placed many times, in layers. Millimetres, y up. */
import type { SourceRange } from '../../grammar/source-range.ts';

/** What a layer shows; writers choose colour and line by it. */
export type LayerKind = 'region' | 'strip' | 'piece' | 'trimmed' | 'outline' | 'note';

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
  readonly wood: string | null;
  readonly kinds: readonly DrawnKind[];
}

export interface Drawing {
  readonly title: string;
  readonly panel: string;
  readonly bounds: { readonly left: number; readonly bottom: number; readonly right: number; readonly top: number };
  readonly layers: readonly DrawingLayer[];
  /** Lines of plain text that sum the drawing up, for screen readers and captions. */
  readonly summary: readonly string[];
}
