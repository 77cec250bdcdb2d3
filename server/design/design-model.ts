/**
 * What a file says, with every name resolved and every quantity in one unit: lengths in millimetres,
 * angles in degrees, percentages as fractions. Plain data; `range` is where the words stand.
 */
import type { SourceRange } from '../../grammar/source-range.ts';
import type { Contour } from '../geometry/path.ts';
import type { Point } from '../geometry/point.ts';

export type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'ft';

/** A declaration with a name. `range` covers the whole declaration, `nameRange` its name alone. */
export interface Named {
  readonly name: string;
  readonly range: SourceRange;
  readonly nameRange: SourceRange;
}

/** Wood milled to one section. `face` is seen from the front, `depth` runs front to back. */
export interface StripStock extends Named {
  readonly wood: string | null;
  readonly face: number;
  readonly depth: number;
  readonly lengths: readonly number[];
  /** Milled away from each face after assembly. */
  readonly flush: number;
  /** Fraction of strips expected to be rejected in milling. */
  readonly rejects: number;
  /** Fraction of pieces cut beyond the need; null where no spares are asked for. */
  readonly spare: number | null;
}

/** Jigs and saws of the shop. */
export interface Bench extends Named {
  /** Angles of the bevel jigs, between the jig's face and the piece's axis. */
  readonly bevels: readonly number[];
  /** Width of the notching blade's cut, null where not stated. */
  readonly kerf: number | null;
  readonly pinPitches: readonly number[];
  readonly bandBlade: number | null;
}

/** One family of parallel strips: centre lines n·p = offset + i·spacing, n = (−sin direction, cos direction). */
export interface GridFamily {
  readonly direction: number;
  readonly spacing: number;
  readonly offset: number;
  readonly stock: StripStock;
  /** 0 is the lowest (furthest from the viewer). */
  readonly layer: number;
}

export type GridKind = 'three_way' | 'square' | 'diamond' | 'basket_weave';

/** Measured over the whole lattice: side from node to node, and the strips' face (null where not measured). */
export interface MeasuredLattice {
  readonly side: number;
  readonly face: number | null;
}

export interface Grid extends Named {
  readonly kind: GridKind;
  readonly families: readonly GridFamily[];
  /** Degrees by which the whole grid is turned; already added to the families' directions. */
  readonly turn: number;
  /** Where the side or pitch is written, for problems about the grid's size. */
  readonly sideRange: SourceRange;
  readonly side: number;
  /** What came out after assembly, null before: infill follows it, strips already cut stay. */
  readonly measured: MeasuredLattice | null;
  /** Clearance of a notch over the strip it takes; negative presses. */
  readonly fit: number;
  /** Cut both slants on both faces of a three-way middle strip: weaker, fits either hand. */
  readonly bothSlants: boolean;
}

export type CellShape = 'triangle' | 'square' | 'rhombus' | 'hexagon';

/** A point of a cell. Corners and edges count from 1; edge n runs from corner n to the next. */
export type NodePlace =
  | { readonly kind: 'corner'; readonly corner: number }
  | { readonly kind: 'along'; readonly edge: number; readonly fraction: number }
  | { readonly kind: 'centroid' }
  | { readonly kind: 'incentre' }
  | { readonly kind: 'between'; readonly first: NodePlace; readonly second: NodePlace; readonly fraction: number };

/** One end of a piece: its place, and the node's name when it has one ("hub"). */
export interface NodeReference {
  readonly name: string | null;
  readonly place: NodePlace;
}

/** Which corners a tip rule speaks of, by number or by the angle of the opening there. */
export type CornerChoice =
  | { readonly kind: 'every' }
  | { readonly kind: 'number'; readonly corner: number }
  | { readonly kind: 'square' }
  | { readonly kind: 'sharp' }
  | { readonly kind: 'wide' };

/** A declared bevel: both sides of the end at `node`, on pieces whose other end is a chosen corner. */
export interface TipRule {
  readonly angle: number;
  readonly node: string;
  readonly corners: CornerChoice;
  readonly range: SourceRange;
}

/** A straight piece of a motif; "every corner" is already written out, one entry a piece. */
export interface MotifPiece {
  readonly role: string;
  readonly from: NodeReference;
  readonly to: NodeReference;
  readonly range: SourceRange;
}

/** Which parts of a divided cell a fill speaks of. */
export type PartChoice = { readonly kind: 'every' } | { readonly kind: 'shape'; readonly shape: CellShape };

export interface PartFill {
  readonly parts: PartChoice;
  readonly motif: Motif;
  readonly tips: readonly TipRule[];
  readonly range: SourceRange;
}

export interface Motif extends Named {
  readonly shape: CellShape;
  readonly pieces: readonly MotifPiece[];
  readonly dividers: readonly MotifPiece[];
  readonly fills: readonly PartFill[];
  readonly tips: readonly TipRule[];
  /** Roles in the order of fitting, empty where not stated. */
  readonly fitOrder: readonly { readonly role: string; readonly key: number | null }[];
}

export interface Outline extends Named {
  /** The outer contour counter-clockwise first; further contours are holes, clockwise. */
  readonly contours: readonly Contour[];
}

export type PanelShape =
  | { readonly kind: 'outline'; readonly outline: Outline; readonly range: SourceRange }
  | { readonly kind: 'rectangle'; readonly width: number; readonly height: number; readonly range: SourceRange }
  | { readonly kind: 'cells'; readonly across: number; readonly up: number; readonly range: SourceRange }
  | { readonly kind: 'hexagonOfCells'; readonly cells: number; readonly range: SourceRange };

/** Where the grid lies under the outline. */
export type Phase =
  { readonly kind: 'centred'; readonly on: 'node' | 'cell' | 'edge' } | { readonly kind: 'nodeAt'; readonly at: Point };

export interface PanelFill {
  readonly shape: CellShape;
  readonly motif: Motif;
  readonly stock: StripStock;
  /** Corners counter-clockwise by which the motif is turned in its cell. */
  readonly turned: number;
  readonly tips: readonly TipRule[];
  readonly range: SourceRange;
}

export type CutCells = 'trim' | 'own' | 'open';

export interface Panel extends Named {
  readonly grid: Grid;
  readonly phase: Phase;
  readonly shape: PanelShape;
  readonly edge: 'sawn' | 'framed';
  /** How far a framed strip's end runs into the frame. */
  readonly stub: number;
  /** How far a sawn strip's end runs beyond its last node. */
  readonly tail: number;
  readonly fills: readonly PanelFill[];
  /** What a cell cut by the frame gets: its whole motif trimmed, a motif of its own set into what is left, or nothing. */
  readonly cutCells: CutCells;
  readonly copies: number;
}

export interface Design {
  readonly title: string | null;
  readonly units: LengthUnit;
  readonly strips: readonly StripStock[];
  readonly benches: readonly Bench[];
  readonly grids: readonly Grid[];
  readonly motifs: readonly Motif[];
  readonly outlines: readonly Outline[];
  readonly panels: readonly Panel[];
}
