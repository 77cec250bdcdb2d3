/** What a DXF file is made of, before it is written: layers of paths and letters in millimetres, y up. */
import type { PathSegment } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';

export interface DxfLayer {
  /** In words; written in the capitals, digits and underscores that the format knows. */
  readonly name: string;
  readonly broken: boolean;
  /** Closed or open chains of segments, each written as what it is. */
  readonly paths: readonly (readonly PathSegment[])[];
  /** Closed polygons. */
  readonly rings: readonly (readonly Point[])[];
  readonly texts: readonly DxfText[];
}

/** One line of letters, `height` mm high, beginning at `at`. */
export interface DxfText {
  readonly at: Point;
  readonly height: number;
  readonly turn: number;
  readonly text: string;
}

export interface DxfDrawing {
  readonly layers: readonly DxfLayer[];
}
