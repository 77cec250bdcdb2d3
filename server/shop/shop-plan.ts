/** The shop plan as written out: the contract of `plan --as json`. Lengths mm, angles degrees. */
import type { Words } from '../../grammar/words.ts';
import type { LengthUnit } from '../design/design-model.ts';
import type {
  PlanBand,
  PlanBlank,
  PlanBoard,
  PlanClosing,
  PlanHanging,
  PlanMass,
  PlanMovement,
  PlanPour,
  PlanWork,
} from './sections/object-sections.ts';
import type {
  PlanCost,
  PlanFinish,
  PlanFrame,
  PlanKit,
  PlanLabour,
  PlanMill,
  PlanSheet,
  PlanStep,
} from './sections/work-sections.ts';

/** What is assumed of a grid, and what ten of its sides must measure along a strip. */
export interface PlanGrid {
  name: string;
  kind: string;
  sideMm: number;
  fitMm: number;
  tenSidesMm: number;
  /** What to measure instead of ten sides: the same, unless a family lies at places of its own. */
  check: { what: string; mm: number };
}

export interface PlanBench {
  name: string;
  kerfMm: number | null;
  bevels: number[];
}

export interface PlanNotch {
  atMm: number;
  widthMm: number;
  runMm: number;
  angle: number;
  depthMm: number;
  from: 'above' | 'below';
}

export interface PlanPanel {
  name: string;
  copies: number;
  /** Made in all: copies times those of the work, or one for each student of a class. */
  quantity: number;
  edge: 'sawn' | 'framed';
  areaMm2: number;
  perimeterMm: number;
  nodes: number;
  cells: { shape: string; met: number; needed: number }[];
  infill: { make: number; whole: number; trimmed: number };
  strips: number;
}

/** Cut `total`, and with `confidencePct` no fewer than `make` are good, if `breakagePct` of them fail. */
export interface PlanBreakage {
  breakagePct: number;
  confidencePct: number;
}

/** What a length changes by when the grid's side, or the face of its strips, grows by 0.1 mm. */
export interface PlanPerTenth {
  pitchMm: number;
  faceMm: number;
}

export interface PlanPiece {
  mark: string;
  from: { motif: string; piece: string; make: number }[];
  stock: string;
  face: number;
  depth: number;
  lengthMm: number;
  /** Where the kind was met first; null for pieces fitted to a frame. */
  perTenth: PlanPerTenth | null;
  edgesMm: [number, number];
  ends: [PlanPieceEnd, PlanPieceEnd];
  outline: [number, number][];
  notches: PlanNotch[];
  make: number;
  whole: number;
  trimmed: number;
  spare: number;
  /** What the spares answer, where a breakage is stated; null where they are a share or none. */
  spareFor: PlanBreakage | null;
  total: number;
  panels: Record<string, number>;
}

/** Two pieces cut as one length: scored across where the halves meet, bevelled and folded. */
export interface PlanHinge {
  /** The marks of the halves, the longer first. */
  marks: [string, string];
  /** Of both halves together, before anything is pared off. */
  lengthMm: number;
  /** From the longer half's far end to the score. */
  scoreMm: number;
  make: number;
}

export interface PlanPieceEnd {
  bevels: [number, number] | null;
}

export interface PlanStrip {
  mark: string;
  /** Where the kind was met first. */
  grid: string;
  family: number;
  /** Every grid and family that uses the kind: turned over, a lowest strip may serve as a highest. */
  from: { grid: string; family: number; make: number }[];
  stock: string;
  face: number;
  depth: number;
  lengthMm: number;
  perTenth: PlanPerTenth | null;
  hand: 'left' | 'right' | null;
  notches: PlanNotch[];
  make: number;
  spare: number;
  /** What the spares answer, where a breakage is stated; null where they are a share or none. */
  spareFor: PlanBreakage | null;
  total: number;
  panels: Record<string, number>;
}

/** One setting of one tool; settings stand in the order of the bench, and a step's gate on its last one. */
export interface PlanSetting {
  order: number;
  step: string;
  tool: string;
  jig: string | null;
  angle: number | null;
  stopMm: number | null;
  /** What the caliper must read after the cut; it goes before `stopMm`. */
  caliperMm: number | null;
  /** Turn each piece over and cut again at the same setting. */
  flip: boolean;
  marks: string[];
  pieces: number;
  /** Rows of notches only. */
  notching: {
    from: 'above' | 'below';
    firstStopMm: number;
    pinPitchMm: number | null;
    pinSquareMm: number | null;
    notches: number;
    notchWidthMm: number;
    bladeHeightMm: number;
    passes: number | null;
  } | null;
  gate: string | null;
}

/** How few changes the order of one step's settings needs, setting up for the first not counted. */
export interface PlanChanges {
  step: string;
  changes: number;
  /** No order of these settings needs fewer. */
  bound: number;
  proven: boolean;
  /** What counts as a change. */
  model: string;
}

/** The cutting plan of one strip stock; null figures where nothing could be planned, with the reasons in `problems`. */
export interface PlanStock<Text extends Words = string> {
  stock: string;
  objective: 'cost' | 'sticks';
  needMm: number;
  kerfMm: number;
  endTrimMm: number;
  /** Left unused for each cut and in each stick; counted in `offcutMm`. */
  breathMm: { cut: number; stick: number };
  sticks: {
    lengthMm: number;
    cuts: { mark: string; lengthMm: number; n: number }[];
    count: number;
    /** Taken from the rack, not bought. */
    onHand: boolean;
    offcutMm: number;
  }[];
  sticksUsed: number;
  stickMm: number;
  value: number;
  bound: number;
  proven: boolean;
  /**
   * Second aim where sticks are counted and their length can be chosen: of those to be bought (of all, where none can
   * be); no plan with as few sticks is shorter than `boundMm`.
   */
  length: { valueMm: number; boundMm: number; proven: boolean } | null;
  wastePct: number;
  /** Of the bought sticks that are cut; rejects and the rack apart. */
  cost: number | null;
  /** Of all its prices; null where none is stated, or they are in several. */
  currency: string | null;
  /** Marks that no stick is long or wide enough for: they are in none. */
  leftOut: string[];
  /** What is bought, rejects in `count`; none where the stock is ripped from boards. */
  buy: { lengthMm: number; count: number; rejects: number; price: number | null; cost: number | null }[];
  /** What is taken from the rack, at the price of its length. */
  rack: { lengthMm: number; count: number; price: number | null; cost: number | null }[];
  /** What the rack holds afterwards, off-cuts of at least `overMm` counted in; null where none is kept. */
  keep: { overMm: number; onHand: { count: number; lengthMm: number }[] } | null;
  /** What keeps pieces out of the plan, or is worth a second look. */
  problems: Text[];
}

/** A cutting plan before anything is bought for it. */
export type CutStock = Omit<PlanStock<Words>, 'buy' | 'rack' | 'keep'>;

export interface ShopPlan<Text extends Words = string> {
  schema: 'halflap-plan/1';
  title: string | null;
  source: string;
  /** Fingerprint of the text this was planned from. */
  revision: string;
  /** Those of the file, for whoever writes the figures out; here every length is in mm. */
  units: LengthUnit;
  copies: number;
  incomplete: boolean;
  grids: PlanGrid[];
  benches: PlanBench[];
  panels: PlanPanel[];
  pieces: PlanPiece[];
  hinges: PlanHinge[];
  strips: PlanStrip[];
  settings: PlanSetting[];
  changes: PlanChanges[];
  /** Marks with an end that no jig has: fitted by hand. */
  byHand: string[];
  stock: PlanStock<Text>[];
  mill: PlanMill<Text>[];
  sheets: PlanSheet[];
  frames: PlanFrame[];
  blanks: PlanBlank[];
  bands: PlanBand<Text>[];
  pours: PlanPour<Text>[];
  boards: PlanBoard[];
  /** Null where nothing is placed. */
  work: PlanWork | null;
  mass: PlanMass;
  /** Null where the work does not hang. */
  hanging: PlanHanging<Text> | null;
  /** Null where the file says nothing of a finish. */
  finish: PlanFinish<Text> | null;
  fit: PlanClosing<Text>[];
  movement: PlanMovement<Text>[];
  steps: PlanStep<Text>[];
  /** Null where there is no class. */
  kit: PlanKit<Text> | null;
  labour: PlanLabour;
  cost: PlanCost<Text>;
  cautions: { step: string; text: string }[];
}
