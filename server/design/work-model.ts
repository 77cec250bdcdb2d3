/**
 * What a file says of the objects made out of panels: blanks, bands, pours, boards, the assembled work, the class kit.
 * Lengths in mm, degrees, masses in g, times in minutes, shares as fractions.
 */
import type { SourceRange } from '../../grammar/tree/source-range.ts';
import type { Point } from '../geometry/point.ts';
import type { Grid, Outline, Panel, StripStock } from './design-model.ts';
import type { FinishStock, Money, ResinStock, SheetStock } from './material-model.ts';
import type { Named } from './names/named.ts';
import type { StepName } from './names/step-names.ts';

/** A lattice made whole, from which the outlines of panels are sawn. */
export interface Blank extends Named {
  readonly grid: Grid;
  readonly width: number;
  readonly height: number;
  readonly takes: readonly { readonly panel: Panel; readonly count: number; readonly range: SourceRange }[];
  /** Kept free along the blank's edge, and between two saw lines beyond the kerf. */
  readonly margin: number;
  readonly gap: number;
  /** Between the finished line and the saw line. */
  readonly allowance: number;
  /** Turns a cut-out may take, degrees; null for every turn that keeps the pattern. */
  readonly turns: readonly number[] | null;
  readonly fromBack: boolean;
  readonly matchLaps: boolean;
  /** The cast: finished depth, what surfacing takes off each face, what the pour stands over; null where nothing is cast. */
  readonly cast: {
    readonly depth: number;
    readonly surfaced: number;
    readonly overfill: number;
    readonly resin: ResinStock;
  } | null;
}

export type BendMethod = 'cold' | 'damp' | 'hot';

/** Strips bent round a panel's edge. */
export interface Band extends Named {
  readonly around: Panel | Outline;
  readonly stock: StripStock;
  readonly laminations: number;
  readonly method: BendMethod;
  /** The smallest radius one lamination was tested to take; wins over the method's limit. */
  readonly testedRadius: number | null;
  readonly corners: 'mitred' | 'lapped';
  readonly overLength: number;
  /** Beyond the work's depth, both sides together. */
  readonly overWidth: number;
}

export interface PourLayer {
  readonly colour: string | null;
  readonly depth: number;
}

/** Resin into a mould. */
export interface Pour extends Named {
  readonly mould:
    | { readonly kind: 'outline'; readonly outline: Outline }
    | { readonly kind: 'rectangle'; readonly width: number; readonly height: number }
    | { readonly kind: 'blank'; readonly blank: Blank };
  readonly resin: ResinStock;
  readonly layers: readonly PourLayer[];
  /** Bodies that stand in the mould and displace resin: area, from and to which height. */
  readonly inserts: readonly {
    readonly outline: Outline;
    readonly from: number;
    readonly to: number;
    /** kg/m³. */
    readonly density: number | null;
    readonly range: SourceRange;
  }[];
  /** Poured above the layers: what stands over, and what surfacing takes off. Both are planed away again. */
  readonly overfill: number;
  readonly surfaced: number;
  /** mL/m² of every wetted wood face. */
  readonly sealCoat: number;
  /** Left in cups, as a share of what is poured. */
  readonly waste: number;
  readonly spareCastings: number;
  readonly copies: number;
}

export interface Board extends Named {
  readonly outline: Outline;
  readonly sheet: SheetStock;
  readonly edge: { readonly kind: 'square' } | { readonly kind: 'chamfer' | 'round'; readonly size: number };
  /** Where a trammel turns, null for no pivot. */
  readonly pivot: Point | null;
  readonly copies: number;
}

export type WorkPart =
  | { readonly kind: 'panel'; readonly panel: Panel }
  | { readonly kind: 'board'; readonly board: Board }
  | { readonly kind: 'pour'; readonly pour: Pour };

export interface Placement {
  readonly part: WorkPart;
  readonly at: Point;
  /** Degrees counter-clockwise. */
  readonly turn: number;
  readonly mirrored: boolean;
  /** Order from the wall: a higher number lies in front. */
  readonly layer: number;
  readonly range: SourceRange;
}

export interface Hanging {
  readonly fixings: number;
  /** g that the maker of one fixing states it holds. */
  readonly each: number;
  readonly safety: number;
  /** Height of the cleat above the work's origin; null: chosen. */
  readonly height: number | null;
}

/** Minutes of hand work, and waits, by step of the job. */
export interface LabourRate {
  readonly step: StepName;
  readonly minutes: number;
  /** What the minutes are for. */
  readonly per: 'work' | 'setting' | 'pass' | 'piece' | 'strip' | 'cell' | 'mix' | 'metre' | 'copy';
  /** Minutes to wait after the step: glue, drying; 0 for none. */
  readonly wait: number;
}

/** The one assembled work of a file. */
export interface Work extends Named {
  readonly copies: number;
  readonly placements: readonly Placement[];
  readonly hanging: Hanging | null;
  readonly finish: FinishStock | 'none' | null;
  /** Moisture in percent where it is made and where it will hang. */
  readonly moisture: { readonly made: number; readonly hangs: number } | null;
  readonly hourly: Money | null;
  readonly labour: readonly LabourRate[];
  /** Share of the price (margin) or of the cost (mark-up). */
  readonly gain: { readonly kind: 'margin' | 'markup'; readonly share: number } | null;
  /** What a seller keeps, and of which price: before tax, or what the buyer pays. */
  readonly commission: number;
  readonly commissionOf: 'before_tax' | 'buyer_price';
  readonly tax: number;
  readonly packing: Money | null;
  /** Share of copies that are lost before they are sold. */
  readonly losses: number;
}

/** A class: every student builds one copy of a panel out of a bag. */
export interface Kit extends Named {
  readonly panel: Panel;
  readonly students: number;
  /** What is done before the bag is packed. */
  readonly done: readonly ('milled' | 'notched' | 'cut' | 'bevelled')[];
  readonly breakage: number;
  readonly sparesPerBag: number;
  readonly sparesWithTeacher: number;
  /** Students at one set of jigs. */
  readonly studentsPerJig: number;
}
