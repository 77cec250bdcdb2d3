/**
 * What a file says of strips, benches, grids, motifs and panels. Lengths in mm, angles in degrees, percentages as fractions.
 * Plain data; `range` is where the words stand.
 */
import type { NodePlace } from './node-place.ts';
import type { SourceRange } from '../../grammar/tree/source-range.ts';
import type { Contour } from '../geometry/path.ts';
import type { Point } from '../geometry/point.ts';
import type { BoardStock, Breakage, StockLength, StockOnHand } from './material-model.ts';
import type { Named } from './names/named.ts';

export type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'ft';

/** Wood milled to one section. `face` is seen from the front, `depth` runs front to back. */
/** Wood that a cutting plan leaves unused, at each cut and in each stick: no saw is set so well that nothing is lost. */
export interface Breath {
  readonly cut: number;
  readonly stick: number;
}

export interface StripStock extends Named {
  readonly wood: string | null;
  readonly face: number;
  readonly depth: number;
  /** Where the lengths of its sticks stand. */
  readonly lengthsRange: SourceRange | null;
  /** Sticks that can be bought. */
  readonly lengths: readonly StockLength[];
  readonly onHand: readonly StockOnHand[];
  /** Boards it is ripped from, empty where it is bought milled. */
  readonly boards: readonly BoardStock[];
  /** Width of the saw cut that cuts it to length, null where the bench's kerf serves. */
  readonly kerf: number | null;
  /** Cut off each end of a stick before anything else. */
  readonly endTrim: number;
  /** Null where the bench's serves. */
  readonly breath: Breath | null;
  /** Off-cuts at least this long go back into the rack; null where none is kept. */
  readonly keepOffcuts: number | null;
  /** Milled away from each face after assembly. */
  readonly flush: number;
  /** Fraction of strips expected to be rejected in milling. */
  readonly rejects: number;
  /** Fraction of pieces cut beyond the need; null where no spares are asked for. */
  readonly spare: number | null;
  /** Spares by breakage and confidence, in place of `spare`. */
  readonly breakage: Breakage | null;
}

/** Jigs and saws of the shop. */
export interface Bench extends Named {
  /** Angles of the bevel jigs, between the jig's face and the piece's axis. */
  readonly bevels: readonly number[];
  /** Width of the notching blade's cut, null where not stated. */
  readonly kerf: number | null;
  readonly pinPitches: readonly number[];
  readonly bandBlade: number | null;
  /** Kerf of the saw that cuts outlines, and the tightest curve it turns. */
  readonly bandKerf: number | null;
  readonly bandRadius: number | null;
  readonly rippingKerf: number | null;
  /** Null where the usual one serves. */
  readonly breath: Breath | null;
  /** The shortest piece that the jigs hold. */
  readonly shortestPiece: number | null;
  /** Strips notched in one pass. */
  readonly gang: number;
  /** Rough pieces of infill are longer by this before the bevels are cut. */
  readonly trim: number;
  /** `pin`: each notch is set from the one before. `stop`: each from one end. */
  readonly indexing: 'pin' | 'stop';
  /** What two pin settings differ by, and the scatter (one standard deviation) of one step. */
  readonly pitchError: number | null;
  readonly pitchScatter: number | null;
}

/**
 * One family of parallel strips: centre lines n·p = offset + i·spacing, n = (−sin direction, cos direction); or, where
 * `positions` are given, only the lines n·p = position, ascending, with spacing and offset 0.
 */
export interface GridFamily {
  readonly direction: number;
  readonly spacing: number;
  readonly offset: number;
  readonly positions: readonly number[] | null;
  /** The words of each of `positions`; null (or left out) where there are none. */
  readonly positionRanges?: readonly SourceRange[] | null;
  readonly stock: StripStock;
  /** 0 is the lowest (furthest from the viewer). */
  readonly layer: number;
  /** The words that say it: its own line, or the kind of the grid. */
  readonly range: SourceRange;
}

/** The kinds whose families are known by their size alone. */
export type PresetKind = 'three_way' | 'square' | 'diamond' | 'kagome';

export type GridKind = PresetKind | 'free';

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
  /** From node to node along a strip; of a free grid, between two lines of the first family that crosses the first, along that one's strips. */
  readonly side: number;
  /** What came out after assembly, null before: infill follows it, strips already cut stay. */
  readonly measured: MeasuredLattice | null;
  /** Clearance of a notch over the strip it takes; negative presses. */
  readonly fit: number;
  /** The least wood between two notches, and from a notch to the end of its strip; null where not stated. */
  readonly wall: number | null;
  /** Cut both slants on both faces of a three-way middle strip: weaker, fits either hand. */
  readonly bothSlants: boolean;
}

/** `polygon n` is any opening of n corners that is none of the others: a rectangle is a polygon 4. */
export type CellShape = 'triangle' | 'square' | 'rhombus' | 'hexagon' | `polygon ${number}`;

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
  /** Roles that it lies above where they are lapped; elsewhere the smaller direction lies lower. */
  readonly above: readonly string[];
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

/**
 * Pieces of two roles that come in pairs out of one length, scored across and folded at the end they share: every piece of
 * the first role with one of the second, or, of one role twice, two by two in the order written. One left over is single.
 */
export interface Hinge {
  readonly roles: readonly [string, string];
  readonly range: SourceRange;
}

export interface Motif extends Named {
  readonly shape: CellShape;
  readonly pieces: readonly MotifPiece[];
  readonly dividers: readonly MotifPiece[];
  readonly fills: readonly PartFill[];
  readonly tips: readonly TipRule[];
  readonly hinges: readonly Hinge[];
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

/** Another count of cells, and the sides with which it would come out across and up. */
export interface FitNeighbour {
  readonly across: number;
  readonly up: number;
  readonly sides: { readonly across: number; readonly up: number };
}

/** How a count of cells was made to come out in a size. */
export interface PanelFit extends FitNeighbour {
  readonly by: 'pitch' | 'frame';
  /** The side that was taken: the smaller of the two. */
  readonly side: number;
  /** Room left with that side, mm. */
  readonly leftOver: { readonly across: number; readonly up: number };
  /** By frame: widths of its members at the sides, and at top and bottom. */
  readonly members: { readonly sides: number; readonly rails: number } | null;
  /** Of a grid whose columns lean: the rectangle inside the frame or over the sawn strips, and a node in it; null where cells fill the panel. */
  readonly inside: { readonly width: number; readonly height: number; readonly node: Point } | null;
  /** One cell more or less each way, the nearest to coming out both ways first. */
  readonly neighbours: readonly FitNeighbour[];
}

/** Where the grid lies under the outline; `corner`: its origin in the lower left corner of the panel's box. */
export type Phase =
  | { readonly kind: 'centred'; readonly on: 'node' | 'cell' | 'edge' }
  | { readonly kind: 'nodeAt'; readonly at: Point }
  | { readonly kind: 'corner' };

/** What takes turns: from cell to cell along a row and from row to row, or whole rows, or whole columns. */
export type TakingTurns = 'cell' | 'row' | 'column';

/**
 * Which cells a fill speaks of. Rows count from 1 at the top, columns from 1 at the left, both over the cells that meet
 * the panel; rings from 1 at its edge. Of `every` rows (columns), those `every` apart from `first` on.
 */
export type FillCondition =
  | { readonly kind: 'rows' | 'columns'; readonly first: number; readonly last: number; readonly every: number }
  | { readonly kind: 'rings'; readonly first: number; readonly last: number }
  /** Cells whose middle lies in the outline, or outside it. */
  | { readonly kind: 'region'; readonly outline: Outline; readonly inside: boolean }
  /** Cells whose middle lies so near to a line, or further: an outline's, or (null) the panel's own edge. */
  | { readonly kind: 'margin'; readonly of: Outline | null; readonly reach: number; readonly within: boolean }
  /** The cells numbered `place` (from 0), `place` + `of`, … in the order of taking turns. */
  | { readonly kind: 'share'; readonly by: TakingTurns; readonly place: number; readonly of: number }
  /** All cells but those that meet every one of these conditions: a later `open` took them. */
  | { readonly kind: 'not open'; readonly where: readonly FillCondition[] }
  /** The cells that the panel's map marks with this sign. */
  | { readonly kind: 'mapped'; readonly sign: string };

/** A motif for the cells of one shape that meet every condition. Of fills that speak of one cell the last counts. */
export interface PanelFill {
  readonly shape: CellShape;
  readonly motif: Motif;
  readonly stock: StripStock;
  /** Corners counter-clockwise by which the motif is turned in its cell. */
  readonly turned: number;
  /** Whether it is mirrored, about the line through corner 1 and the middle, before it is turned. */
  readonly mirrored: boolean;
  readonly tips: readonly TipRule[];
  readonly where: readonly FillCondition[];
  readonly range: SourceRange;
}

/** One sign for every cell, row by row from the top; it has the last word over all fills. */
export interface CellMap {
  readonly rows: readonly CellMapRow[];
  readonly range: SourceRange;
}

export interface CellMapRow {
  /** From left to right; of two cells above one another the upper first. */
  readonly signs: readonly { readonly sign: string; readonly range: SourceRange }[];
  readonly range: SourceRange;
}

export type CutCells = 'trim' | 'own' | 'open';

/** The members round a framed panel. */
export interface Frame {
  readonly stock: StripStock;
  readonly corners: 'mitred' | 'lapped';
  /** How the lattice stands in the frame: its strips' stubs in a groove, or in mortices of their own. */
  readonly joint: 'groove' | 'stub';
  /** Depth of the groove, or of the mortices. */
  readonly jointDepth: number;
  /** Left free between a strip's end and the bottom of its groove. */
  readonly endGap: number;
  /** What edge infill bears on in a groove: a border strip, or fillers between the strips. */
  readonly bearing: 'border' | 'fillers' | null;
  /** Its words. */
  readonly range: SourceRange;
}

/**
 * An edge of a sawn panel that is fitted to another thing in the work. Along the part of the panel's line that faces that
 * thing the saw leaves `leave` mm more than elsewhere; the true line is marked there as the scribe line, and the panel is
 * trimmed to it while fitting. The thing is told by its name alone: two panels may meet each other.
 */
export interface Meeting {
  readonly other: { readonly kind: 'panel' | 'board' | 'pour' | 'outline'; readonly name: string };
  /** Left beyond the true line, mm. */
  readonly leave: number;
  readonly range: SourceRange;
}

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
  /** The fills it speaks of are among `fills`; a sign without one leaves its cell open. */
  readonly map: CellMap | null;
  /** What a cell cut by the frame gets: its whole motif trimmed, a motif of its own set into what is left, or nothing. */
  readonly cutCells: CutCells;
  /** How its cells were made to come out in a size; `grid` and `shape` follow it already. Null where that was not asked. */
  readonly fit: PanelFit | null;
  /** The frame's members; null where the frame is made elsewhere. */
  readonly frame: Frame | null;
  /** What its edges are fitted to. */
  readonly meets: readonly Meeting[];
  /** A trimmed piece that keeps less than this length is reported, mm. */
  readonly sliver: number | null;
  readonly copies: number;
}
