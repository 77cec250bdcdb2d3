/** Sections of the shop plan about the objects made out of panels, and how they close, move, weigh and hang. */

/** Whether strips that cross the same neighbours agree: differences of settings against the fit. */
export interface PlanClosing {
  panel: string;
  grid: string;
  /** Notches of the longest row. */
  notches: number;
  indexing: 'pin' | 'stop';
  driftMm: number;
  spreadMm: number;
  fitMm: number;
  verdict: 'closes' | 'tight' | 'apart';
  text: string;
}

/** How much one size across the grain changes from where the work is made to where it hangs. */
export interface PlanMovement {
  what: string;
  stock: string;
  wood: string;
  direction: 'radial' | 'tangential';
  sizeMm: number;
  madePct: number;
  hangsPct: number;
  /** Negative shrinks; null where the wood's shrinkage is not known. */
  changeMm: number | null;
  text: string;
}

export interface PlanMassPart {
  part: string;
  material: string;
  count: number;
  /** All of them together; null where the density is not known. */
  massG: number | null;
}

export interface PlanMass {
  /** One copy of the work; null where a density is not known. */
  perCopyG: number | null;
  parts: PlanMassPart[];
  /** In the work's own frame; null where the work is not placed or not all is known. */
  centre: { xMm: number; yMm: number } | null;
  /** What the figure leaves out or takes for granted. */
  notes: string[];
}

/** A level run behind the work, in its frame, seen from the front; `heightMm` is its upper edge. */
export interface PlanSpan {
  heightMm: number;
  fromMm: number;
  toMm: number;
  lengthMm: number;
}

export interface PlanHanging {
  loadG: number | null;
  fixings: number;
  eachG: number;
  safety: number;
  /** fixings × each ÷ safety. */
  carriesG: number;
  verdict: 'holds' | 'too weak' | 'not known';
  /** The fewest fixings of this kind that would hold. */
  fixingsNeeded: number | null;
  cleat: PlanSpan | null;
  spacer: PlanSpan | null;
  /** Holes in the cleat: x from its left end as seen from behind, y above the work's origin. */
  drill: { xMm: number; yMm: number }[];
  notes: string[];
}

/** A lattice made whole, and the cut-outs laid on it. */
export interface PlanBlank {
  name: string;
  copies: number;
  places: { panel: string; outline: string; move: { dx: number; dy: number; turn: number; mirror: boolean } }[];
  cells: number;
  infill: { make: number };
  bound: number;
  proven: boolean;
}

export interface PlanBand {
  name: string;
  around: string;
  laminations: { lengthMm: number }[];
  parts: number;
  smallestRadiusMm: number | null;
  limitMm: number | null;
  grade: 'bends' | 'try' | 'will not bend';
}

export interface PlanPourLayer {
  resin: string;
  depthMm: number;
  volumeMl: number;
  partA_g: number | null;
  partB_g: number | null;
  mixes: number;
  recoatFromH: number | null;
  recoatToH: number | null;
}

export interface PlanPour {
  name: string;
  layers: PlanPourLayer[];
  sealMl: number;
  holdDownG: number | null;
}

export interface PlanBoard {
  name: string;
  sheet: string;
  copies: number;
  widthMm: number;
  heightMm: number;
  areaMm2: number;
  massG: number | null;
}
