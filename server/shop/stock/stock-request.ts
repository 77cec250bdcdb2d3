/** What a cutting plan is asked for, and what can be wrong with the question. Lengths mm. */

import type { Breath } from '../../design/design-model.ts';

/** A length of stick that can be had. */
export interface StickChoice {
  readonly lengthMm: number;
  /** Price of one stick, null where not stated. */
  readonly price: number | null;
  /** Sticks there are of it, null where more can always be bought. */
  readonly onHand: number | null;
}

/** Pieces of one mark. `lengthMm` is the length to cut, with any allowance. */
export interface PieceDemand {
  readonly mark: string;
  readonly lengthMm: number;
  readonly total: number;
}

/** Everything to be cut from sticks of one section. */
export interface StockRequest {
  readonly stock: string;
  /** Wood lost between two neighbouring pieces. */
  readonly kerfMm: number;
  /** Wood cut off each end of a stick before it is used. */
  readonly endTrimMm: number;
  /** Wood left unused beside: for each cut between two pieces, and for each stick. */
  readonly breathMm: Breath;
  readonly sticks: readonly StickChoice[];
  readonly pieces: readonly PieceDemand[];
}

/** What is wrong with a request. Only `kerfWiderThanPiece` leaves the plan whole: it is worth a second look. */
export type StockProblem =
  | { readonly kind: 'noLengths' }
  | { readonly kind: 'impossibleNumber'; readonly of: string; readonly value: number }
  | { readonly kind: 'stickUsedUpByTrim'; readonly lengthMm: number }
  | { readonly kind: 'pieceTooLong'; readonly mark: string; readonly lengthMm: number; readonly longestMm: number }
  | { readonly kind: 'pieceTooWide'; readonly mark: string; readonly widthMm: number; readonly faceMm: number }
  | { readonly kind: 'kerfWiderThanPiece'; readonly mark: string; readonly lengthMm: number }
  | { readonly kind: 'notEnoughSticks'; readonly proven: boolean }
  | { readonly kind: 'mixedCurrencies' };

/** One way of cutting a stick, and how many sticks are cut so. */
export interface CutStick {
  readonly lengthMm: number;
  readonly cuts: readonly { readonly mark: string; readonly lengthMm: number; readonly n: number }[];
  readonly count: number;
  /** Taken from the rack, not bought. */
  readonly onHand: boolean;
  /** What is left at the end of one stick, after the last piece, the trim and its breath. */
  readonly offcutMm: number;
}

/** A cutting plan. Over all sticks every mark is cut exactly as often as asked. */
export interface StockPlan {
  readonly stock: string;
  /** `sticks`: of those to be bought, where there are others. */
  readonly objective: 'cost' | 'sticks';
  /** The pieces' own length, no kerf. */
  readonly needMm: number;
  readonly kerfMm: number;
  readonly endTrimMm: number;
  readonly breathMm: Breath;
  readonly sticks: readonly CutStick[];
  readonly sticksUsed: number;
  /** Length of all sticks used. */
  readonly stickMm: number;
  /** In units of the objective; no plan at all is below `bound`. */
  readonly value: number;
  readonly bound: number;
  readonly proven: boolean;
  /**
   * Second aim where sticks are counted and there are several lengths to choose from: the length of those that count,
   * and what no plan with as few of them is below; else null.
   */
  readonly length: { readonly valueMm: number; readonly boundMm: number; readonly proven: boolean } | null;
  /** Share of the sticks' length that is no piece. */
  readonly wastePct: number;
  /** Null unless every length has a price. */
  readonly cost: number | null;
}

/** Why the watch ended the search before it was through, null when it did not. */
export type Interruption = 'time' | 'cancelled' | null;

export interface StockAnswer {
  /** Null where nothing can be planned; pieces with a problem are left out of it. */
  readonly plan: StockPlan | null;
  readonly problems: readonly StockProblem[];
  readonly interrupted: Interruption;
}
