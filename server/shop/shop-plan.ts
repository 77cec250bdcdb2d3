/** The shop plan as written out: the contract of `plan --as json`. Lengths mm, angles degrees. */

/** What is assumed of a grid, and what ten of its sides must measure along a strip. */
export interface PlanGrid {
  name: string;
  kind: string;
  sideMm: number;
  fitMm: number;
  tenSidesMm: number;
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
  edge: 'sawn' | 'framed';
  areaMm2: number;
  perimeterMm: number;
  nodes: number;
  cells: { shape: string; met: number; needed: number }[];
  infill: { make: number; whole: number; trimmed: number };
  strips: number;
}

export interface PlanPiece {
  mark: string;
  from: { motif: string; piece: string; make: number }[];
  stock: string;
  face: number;
  depth: number;
  lengthMm: number;
  edgesMm: [number, number];
  ends: [PlanPieceEnd, PlanPieceEnd];
  outline: [number, number][];
  notches: PlanNotch[];
  make: number;
  whole: number;
  trimmed: number;
  spare: number;
  total: number;
  panels: Record<string, number>;
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
  hand: 'left' | 'right' | null;
  notches: PlanNotch[];
  make: number;
  spare: number;
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

/** The cutting plan of one strip stock; null figures where nothing could be planned, with the reasons in `problems`. */
export interface PlanStock {
  stock: string;
  objective: 'cost' | 'sticks';
  needMm: number;
  kerfMm: number;
  endTrimMm: number;
  sticks: {
    lengthMm: number;
    cuts: { mark: string; lengthMm: number; n: number }[];
    count: number;
    offcutMm: number;
  }[];
  sticksUsed: number;
  stickMm: number;
  value: number;
  bound: number;
  proven: boolean;
  wastePct: number;
  cost: number | null;
  /** What keeps pieces out of the plan, or is worth a second look. */
  problems: string[];
}

export interface ShopPlan {
  schema: 'halflap-plan/1';
  title: string | null;
  source: string;
  /** Fingerprint of the text this was planned from. */
  revision: string;
  copies: number;
  incomplete: boolean;
  grids: PlanGrid[];
  benches: PlanBench[];
  panels: PlanPanel[];
  pieces: PlanPiece[];
  strips: PlanStrip[];
  settings: PlanSetting[];
  stock: PlanStock[];
  cautions: { step: string; text: string }[];
}
