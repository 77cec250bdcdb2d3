/**
 * What a file says of the shop's materials, beside strips: woods, sheets, resins, finishes, prices. Lengths in mm,
 * masses in g, volumes in mL, times in minutes, shares as fractions.
 */
import type { Named } from './names/named.ts';

/** An amount of money; `currency` is a code of ISO 4217. */
export interface Money {
  readonly amount: number;
  readonly currency: string;
}

/** Lengths of stick that can be had, with their price where it is stated. */
export interface StockLength {
  readonly length: number;
  readonly price: Money | null;
}

/** Sticks, sheets or pieces that lie in the rack already. */
export interface StockOnHand {
  readonly length: number;
  readonly count: number;
}

/** Boards that strips are ripped from. */
export interface BoardStock {
  readonly thickness: number;
  readonly width: number;
  readonly length: number;
  readonly price: Money | null;
  /** Which size of the strip is the board's thickness, planed to it. */
  readonly thicknessGives: 'face' | 'depth';
  /** Taken off the board's edge by the jointer, once in so many rips; null where the edge is not dressed again. */
  readonly rejoint: { readonly allowance: number; readonly every: number } | null;
}

/** Spares by a stated breakage: enough that the good ones suffice with this confidence. Both fractions. */
export interface Breakage {
  readonly share: number;
  readonly confidence: number;
}

/** Figures of a wood, as far as the file states them; the others come from the built-in table, if it has the name. */
export interface WoodDeclaration extends Named {
  /** kg/m³ at 12 % moisture. */
  readonly density: number | null;
  /** MPa. */
  readonly rupture: number | null;
  /** GPa. */
  readonly elasticity: number | null;
  /** Green to ovendry, fractions. */
  readonly radialShrinkage: number | null;
  readonly tangentialShrinkage: number | null;
  readonly porous: boolean | null;
}

export interface SheetStock extends Named {
  readonly thickness: number;
  readonly sizes: readonly { readonly width: number; readonly height: number; readonly price: Money | null }[];
  /** kg/m³. */
  readonly density: number | null;
  readonly kerf: number;
  /** Not used along each edge of a sheet. */
  readonly margin: number;
  /** Degrees in [0, 360) that a board may be turned by on it. */
  readonly turns: readonly number[];
}

export interface ResinStock extends Named {
  /** g/mL of the mixed resin. */
  readonly density: number;
  readonly mix: { readonly a: number; readonly b: number; readonly by: 'volume' | 'mass' };
  /** g/mL of the parts where stated; needed to weigh out a mix given by volume. */
  readonly partDensities: { readonly a: number; readonly b: number } | null;
  readonly deepestPour: number | null;
  readonly potLife: number | null;
  readonly recoat: { readonly earliest: number; readonly latest: number } | null;
  readonly cure: number | null;
  /** The most that is mixed at once, mL. */
  readonly mixSize: number | null;
  /** What `per` g of the mixed resin cost. */
  readonly price: { readonly money: Money; readonly per: number } | null;
}

export interface FinishStock extends Named {
  /** m² covered by one litre, one coat. */
  readonly coverage: number;
  readonly coats: number;
  readonly loss: number;
  /** Minutes before the next coat. */
  readonly recoat: number | null;
  /** Per litre. */
  readonly price: Money | null;
}
