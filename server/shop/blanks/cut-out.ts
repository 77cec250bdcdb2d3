/** What is to be sawn out of blanks, and where it may lie: the questions and answers of nesting. Millimetres, degrees. */
import type { Point } from '../../geometry/point.ts';
import type { Bounds } from '../../geometry/polygons.ts';
import type { LineFamily } from '../../lattice/grid/grid-lines.ts';
import type { GridMove, MatchRules } from '../../lattice/grid/grid-symmetries.ts';

/** One outline and how many of it are wanted. */
export interface CutOut {
  readonly name: string;
  /** Name of the outline it has; the panel's own where it has none. */
  readonly outline: string;
  /** The saw line as polygons (holes clockwise), in the panel's own coordinates. */
  readonly sawLine: readonly (readonly Point[])[];
  /** The lines of the grid as they lie under the panel. */
  readonly families: readonly LineFamily[];
  readonly count: number;
}

/** One kind of blank, centred on the origin. */
export interface BlankRoom {
  readonly width: number;
  readonly height: number;
  /** Kept free along every edge. */
  readonly margin: number;
  /** Least distance between two saw lines. */
  readonly gap: number;
  readonly families: readonly LineFamily[];
  readonly rules: MatchRules;
  /** Turns allowed, in [0°, 360°); null for every turn that keeps the pattern. */
  readonly turns: readonly number[] | null;
  /** Whether a cut-out may be sawn from the back, which mirrors it. */
  readonly fromBack: boolean;
}

/** A place that a cut-out may take in a blank. */
export interface Place {
  readonly cutOut: CutOut;
  readonly move: GridMove;
  /** The saw line as it lies in the blank. */
  readonly rings: readonly (readonly Point[])[];
  readonly bounds: Bounds;
}

/** Places that go together in one blank, and how many blanks are sawn so. */
export interface FilledBlank {
  readonly places: readonly Place[];
  readonly count: number;
}

export interface BlankPacking {
  readonly blanks: readonly FilledBlank[];
  /** No packing into these blanks uses fewer. */
  readonly bound: number;
  /** Cut-outs that go into no blank at all. */
  readonly homeless: readonly CutOut[];
}

export const blanksUsed = ({ blanks }: BlankPacking): number => blanks.reduce((sum, { count }) => sum + count, 0);
