/** Sections of the shop plan about the objects made out of panels, and how they close, move, weigh and hang. */
import type { Words } from '../../../grammar/words.ts';
import type { BendMethod } from '../../design/work-model.ts';

/** Whether strips that cross the same neighbours agree: differences of settings against the fit. */
export interface PlanClosing<Text extends Words = string> {
  panel: string;
  grid: string;
  /** Notches of the longest row. */
  notches: number;
  indexing: 'pin' | 'stop';
  driftMm: number;
  spreadMm: number;
  fitMm: number;
  verdict: 'closes' | 'tight' | 'apart';
  text: Text;
}

/** How much one size across the grain changes from where the work is made to where it hangs. */
export interface PlanMovement<Text extends Words = string> {
  what: string;
  stock: string;
  wood: string;
  direction: 'radial' | 'tangential';
  sizeMm: number;
  madePct: number;
  hangsPct: number;
  /** Negative shrinks; null where the wood's shrinkage is not known. */
  changeMm: number | null;
  text: Text;
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

export interface PlanHanging<Text extends Words = string> {
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
  notes: Text[];
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

/** One length of band between two corners, walked with the work on the left. */
export interface PlanBandRun {
  /** From 1, in the order of fitting: hollows first. */
  order: number;
  from: [number, number];
  to: [number, number];
  ends: ('mitred' | 'laps' | 'butts' | 'scarfed')[];
  smallestRadiusMm: number | null;
  marks: string[];
}

export interface PlanBand<Text extends Words = string> {
  name: string;
  around: string;
  stock: string;
  /** Made in all: one for each panel, board or body it runs round. */
  quantity: number;
  /** From the sand line outward. `lengthMm` goes to the outer tips, all runs together; `cutMm` has scarf and over-length. */
  laminations: { lengthMm: number; pieces: { mark: string; lengthMm: number; cutMm: number }[] }[];
  /** Runs between corners. */
  parts: number;
  runs: PlanBandRun[];
  /** All laminations together. */
  thicknessMm: number;
  /** Front to back, of the strip and of the finished edge (null where nothing has the outline). */
  widthMm: number;
  edgeMm: number | null;
  method: BendMethod;
  /** To the middle of the lamination that bends most; null where all is straight. */
  smallestRadiusMm: number | null;
  limitMm: number | null;
  limitFrom: 'tested' | 'strength of the wood' | null;
  grade: 'bends' | 'try' | 'will not bend' | 'not tested';
  /** Where it bends most, and how thick a lamination may be that would bend there. */
  worst: {
    xMm: number;
    yMm: number;
    side: 'bulge' | 'hollow';
    lamination: number;
    bendsAtMm: number | null;
  } | null;
  /** The caul is cut this far outside the finished line: its pad. */
  caulOutMm: number;
  notes: Text[];
}

/** One layer of all castings together, what stays in the cups counted in. */
export interface PlanPourLayer {
  resin: string;
  colour: string | null;
  depthMm: number;
  /** With what is planed away again, on the uppermost layer. */
  pouredMm: number;
  volumeMl: number;
  massG: number;
  /** Null where only densities of the parts could tell, and they are not stated. */
  partA_mL: number | null;
  partB_mL: number | null;
  partA_g: number | null;
  partB_g: number | null;
  mixes: number;
  /** Hours after the layer below; null for the lowest, or where the resin states none. */
  recoatFromH: number | null;
  recoatToH: number | null;
  /** Hours after the first layer at which it can be poured at the earliest. */
  earliestH: number | null;
}

export interface PlanPour<Text extends Words = string> {
  name: string;
  /** A body in a mould of its own, or a lattice blank. */
  kind: 'body' | 'blank';
  resin: string;
  /** Made in all, spares counted in. */
  castings: number;
  spare: number;
  finishedMm: number;
  pouredMm: number;
  layers: PlanPourLayer[];
  /** For all castings. */
  sealMl: number;
  /** For one casting; null where a density is not known. */
  holdDownG: number | null;
  notes: Text[];
}

export interface PlanBoard {
  name: string;
  sheet: string;
  thicknessMm: number;
  copies: number;
  /** Over all copies of the work. */
  quantity: number;
  widthMm: number;
  heightMm: number;
  /** Of one face. */
  areaMm2: number;
  perimeterMm: number;
  edgeAreaMm2: number;
  /** One board; null where the density is not known. */
  massG: number | null;
  edge: 'square' | 'chamfer' | 'round';
  edgeSizeMm: number | null;
  /** The piece it is sawn from: square for a round or oval one. */
  blankMm: [number, number];
  /** Where a trammel turns, in the board's own frame. */
  pivot: { xMm: number; yMm: number } | null;
  /** From the pencil to the pivot, or to both runners; null where no trammel draws it. */
  trammel: { kind: 'circle' | 'ellipse'; settingsMm: number[] } | null;
}

/** One copy of the assembled work. */
export interface PlanWork {
  name: string;
  copies: number;
  parts: { part: string; placed: number }[];
  widthMm: number;
  heightMm: number;
  /** The deepest part of every layer, one on the other. */
  depthMm: number;
  /** Inside of a box with padding on every side: width, height, depth. */
  boxMm: number[];
  /** Parts of one layer that touch, overlap or nearly meet; the glued edge by its length and area. */
  joints: {
    parts: [string, string];
    at: { xMm: number; yMm: number };
    overlapMm: number;
    gapMm: number;
    contactMm: number;
    contactMm2: number;
  }[];
  /** What lies on what, and the face they share. */
  rests: { part: string; on: string; areaMm2: number }[];
}
