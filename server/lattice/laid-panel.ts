/** A panel after all geometry is done: kinds of strips and pieces, and where each one lies. Millimetres, y up, from the front. */
import type { SourceRange } from '../../grammar/tree/source-range.ts';
import type { CellShape, Panel, PanelFill, StripStock } from '../design/design-model.ts';
import type { Point } from '../geometry/point.ts';

/** A simple polygon, counter-clockwise; holes are clockwise. */
export type Polygon = readonly Point[];

/** Equal notches at `first`, `first + step`, … `count` of them; positions are crossing centres from the strip's end 1. */
export interface NotchRun {
  readonly first: number;
  readonly step: number;
  readonly count: number;
  readonly width: number;
  /** Counter-clockwise from the strip's axis to the crossing strip, in (0°, 180°). */
  readonly angle: number;
  readonly depth: number;
  readonly from: 'above' | 'below';
}

/** Left and right look from end 1 to end 2. Bevels are inside the wood to the axis, in degrees. */
export interface PieceEnd {
  readonly bevels: readonly [left: number, right: number] | null;
}

/** A kind of infill piece in its own frame: axis along x from its lowest x = 0, left is +y. */
export interface PieceShape {
  readonly stock: StripStock;
  readonly length: number;
  readonly edges: readonly [left: number, right: number];
  readonly ends: readonly [PieceEnd, PieceEnd];
  readonly outline: Polygon;
  readonly notches: readonly NotchRun[];
}

/** Where a shape lies: p ↦ R(turn)·p + at. */
export interface Placement {
  readonly at: Point;
  readonly turn: number;
}

/** whole: untouched by the outline; trimmed: made whole and sawn later (or, framed, fitted to the frame). */
export type PieceFate = 'whole' | 'trimmed';

/** What a length changes by when the grid's side, or the face of its strips, grows by a tenth of a millimetre. */
export interface PerTenth {
  readonly pitchMm: number;
  readonly faceMm: number;
}

/** Pieces of one shape, role and fate in one panel: `count` of them, one copy of the panel. */
export interface PieceGroup {
  /** The fill that sets it. */
  readonly fill: PanelFill;
  readonly motif: string;
  readonly role: string;
  readonly shape: PieceShape;
  /** The shape's outline as its placements lay it: `shape.outline`, or that flipped over about the axis. */
  readonly outline: Polygon;
  readonly fate: PieceFate;
  readonly count: number;
  /** Null for pieces fitted to a frame, and where a small change makes another cell of theirs. */
  readonly perTenth: PerTenth | null;
  /** The words of the piece in its motif. */
  readonly range: SourceRange;
  /** Walks over every placement; interior cells are kept as runs, so this is where they are written out. */
  readonly placements: () => Iterable<Placement>;
}

/** Pairs of pieces that are cut as one length, scored and folded: `count` of them, one copy of the panel. */
export interface HingeGroup {
  readonly motif: string;
  readonly roles: readonly [string, string];
  readonly shapes: readonly [PieceShape, PieceShape];
  readonly count: number;
  readonly range: SourceRange;
}

/** Strips of one kind in one panel. */
export interface StripGroup {
  readonly grid: string;
  /** Number of the family, from 1, in the order of the grid's families. */
  readonly family: number;
  readonly layer: number;
  readonly stock: StripStock;
  readonly length: number;
  readonly notches: readonly NotchRun[];
  readonly hand: 'left' | 'right' | null;
  /** Null where a small change of the grid makes another strip there. */
  readonly perTenth: PerTenth | null;
  readonly range: SourceRange;
  readonly placements: readonly Placement[];
}

export interface CellCount {
  readonly shape: CellShape | 'other';
  /** Openings that meet the region. */
  readonly met: number;
  /** Openings in which at least one piece is made. */
  readonly needed: number;
}

/** An opening in which at least one piece is made. Rows count from 1 at the top, columns from 1 at the left, over all openings that meet the region. */
export interface LaidCell {
  readonly row: number;
  readonly column: number;
  readonly shape: CellShape | 'other';
  readonly motif: string;
  readonly fill: PanelFill;
  /** Corners counter-clockwise by which the motif is turned. */
  readonly turned: number;
  /** Whether the motif is mirrored before it is turned. */
  readonly mirrored: boolean;
  /** As it lies in the panel, begun at the cell's corner 1. */
  readonly opening: Polygon;
  /** Whether all of it is inside the region. */
  readonly inside: boolean;
}

/** A trimmed piece of which less is kept than the panel's `sliver`: the cell, the middle of what is kept, and its length. */
export interface Sliver {
  readonly motif: string;
  readonly role: string;
  readonly row: number;
  readonly column: number;
  readonly at: Point;
  readonly keptMm: number;
  readonly range: SourceRange;
}

export interface LaidPanel {
  readonly panel: Panel;
  /** How many are made in all. All other figures are for one. */
  readonly quantity: number;
  /** How many more are sawn from blanks, which make the strips and the infill in their place. */
  readonly taken: number;
  /** The region as polygons (curves flattened within the tolerance): outer contours and holes. */
  readonly region: readonly Polygon[];
  readonly areaMm2: number;
  readonly perimeterMm: number;
  readonly nodes: number;
  readonly cells: readonly CellCount[];
  /** Walks over every opening that needs infill, in no order. */
  readonly filledCells: () => Iterable<LaidCell>;
  readonly strips: readonly StripGroup[];
  readonly pieces: readonly PieceGroup[];
  /** Pieces in a cell that needs one half alone are single, as are those fitted to a frame. */
  readonly hinges: readonly HingeGroup[];
  /** Empty where the panel states no least length. */
  readonly slivers: readonly Sliver[];
}
