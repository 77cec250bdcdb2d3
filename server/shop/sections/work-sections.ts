/** Sections of the shop plan about the work: steps, stock to mill, kit, time and money. Lengths mm, times min or h. */
import type { Words } from '../../../grammar/words.ts';
import type { StepName } from '../../design/names/step-names.ts';
import type { LabourRate } from '../../design/work-model.ts';

/** The two sheets: what can be done from the drawing, and what follows the lattice as it came out. */
export type SheetName = 'to the lattice' | 'after measuring';

/** One step of the job; nothing of a later step is begun before the gate of an earlier one. */
export interface PlanStep<Text extends Words = string> {
  order: number;
  title: StepName;
  sheet: SheetName;
  /** What is done in it, a line a task, with its figures. */
  tasks: Text[];
  /** `order` of the settings that belong to it. */
  settings: number[];
  /** For the whole edition; null where the file states no minutes for it. */
  handsOnMin: number | null;
  /** What must pass before the next step: glue, recoat, cure; null where nothing is stated. */
  waitH: number | null;
  gate: string | null;
  caution: string | null;
}

/** How one strip stock is brought to its section. */
export interface PlanMill<Text extends Words = string> {
  stock: string;
  /** The section to mill to; `depthMm` holds the flush allowance of both faces. */
  faceMm: number;
  depthMm: number;
  /** What the depth comes to after flushing. */
  finishedDepthMm: number;
  /** Sticks that the cutting plan takes; null where no lengths are given. */
  sticks: number | null;
  rejectsPct: number;
  /** Sticks to mill in one run, rejects counted in. */
  millSticks: number | null;
  /** Their length in all. */
  millMm: number | null;
  /** How the boards are ripped; null where the stock is bought to its section, or the boards do not give it. */
  boards: {
    thicknessMm: number;
    widthMm: number;
    lengthMm: number;
    thicknessGives: 'face' | 'depth';
    ripKerfMm: number;
    rejointMm: number;
    rejointEvery: number;
    /** Strips side by side, and lengths end to end, in one board. */
    stripsPerBoard: number;
    lengthsPerBoard: number;
    boards: number;
    leftoverWidthMm: number;
    /** Of one board. */
    price: number | null;
    cost: number | null;
    currency: string | null;
  } | null;
  /** What to look for in the wood. */
  grain: string[];
  problems: Text[];
}

/** Sheets of one size that are cut alike: boards in any place, in the turns that the sheet allows. */
export interface PlanSheet {
  sheet: string;
  /** Name of its drawing. */
  layout: string;
  widthMm: number;
  heightMm: number;
  /** Left between two boards. */
  kerfMm: number;
  /** Kept free along every edge. */
  marginMm: number;
  turns: number[];
  count: number;
  /** What one sheet gives. */
  pieces: { what: string; widthMm: number; heightMm: number; n: number }[];
  /** Each board's outline turned about its origin, then moved; 0, 0 is the lower left corner of the sheet. */
  places: { board: string; outline: string; move: { dx: number; dy: number; turn: number; mirror: boolean } }[];
  /** Share of the sheet that becomes boards. */
  usedPct: number;
  /** What `value` and `bound` count: money, or sheets where a size has no price. */
  objective: 'cost' | 'sheets';
  /** Of all sheets of this stock together. */
  value: number;
  /** By area: no layout of them counts for less. */
  bound: number;
  proven: boolean;
  /** Of one sheet. */
  price: number | null;
  /** All sheets of this entry. */
  cost: number | null;
  currency: string | null;
  problems: string[];
}

/** The frame of one panel; numbers are for all copies. */
export interface PlanFrame {
  panel: string;
  stock: string;
  corners: 'mitred' | 'lapped';
  joint: 'groove' | 'stub';
  jointDepthMm: number;
  /** The groove is as wide, and the mortices as long, as the lattice is deep. */
  jointWidthMm: number;
  members: { mark: string; lengthMm: number; innerMm: number; widthMm: number; ends: [number, number]; make: number }[];
  bearing: 'border' | 'fillers' | null;
  /** The border strips, or the fillers between strips, as wide as the groove is deep. */
  groovePieces: { mark: string; lengthMm: number; widthMm: number; make: number }[];
}

/** So many pieces of one mark. */
export interface PlanCount {
  mark: string;
  n: number;
}

/** A class: what each bag and the teacher's box hold. */
export interface PlanKit<Text extends Words = string> {
  name: string;
  panel: string;
  students: number;
  /** What is done before the bag is packed. */
  done: ('milled' | 'notched' | 'cut' | 'bevelled')[];
  /** Spares stand beside the pieces that the panel needs. */
  bag: { mark: string; n: number; spare: number; lengthMm: number; label: Text }[];
  teacherBox: PlanCount[];
  /**
   * Pieces to make so that with `confidencePct` nobody in the whole class is short of the mark, if all spares lie in the
   * bags, and if all lie in one box; beside it what the kit states, null where it states no spares: how sure that is, and
   * the least box beside those bags that is as sure as it should be (null where no box of a sensible size is).
   */
  spares: {
    mark: string;
    needed: number;
    perBag: number;
    pooled: number;
    stated: { total: number; surePct: number; leastBox: number | null; leastTotal: number | null } | null;
  }[];
  confidencePct: number;
  breakagePct: number;
  jigs: {
    sets: number;
    studentsPerSet: number;
    jigs: {
      jig: string;
      angle: number;
      stopMm: number;
      /** It goes before `stopMm`. */
      caliperMm: number | null;
      /** Set finer than all else. */
      keys: boolean;
      flip: boolean;
      marks: string[];
    }[];
  };
  /** The order in which a student works, a line a stage; for the card. */
  card: Text[];
  problems: Text[];
}

/** Minutes by step. */
export interface PlanLabour {
  hourly: number | null;
  currency: string | null;
  lines: { step: string; per: LabourRate['per']; minutesEach: number; units: number; minutes: number }[];
  /** For the whole edition; null where no minutes are stated. */
  handsOnMin: number | null;
  waitH: number;
  /** Working days of `hoursPerDay`, waits that a night covers counted as nights; null where no minutes are stated. */
  elapsedDays: number | null;
  hoursPerDay: number;
  /** Steps of the job without stated minutes. */
  notStated: string[];
}

/** One line of the price, in the order it is built up. */
export interface PlanCostLine<Text extends Words = string> {
  kind: 'material' | 'labour' | 'packing' | 'losses' | 'gain' | 'commission' | 'tax';
  what: Text;
  perCopy: number;
}

/** One thing bought for the whole edition, or taken from the rack: `quantity` of it at `price` for every `per`. */
export interface PlanMaterial {
  /** The line of the price that it goes into. */
  line: string;
  /** Of a stick; null for all else. */
  lengthMm: number | null;
  quantity: number;
  unit: 'stick' | 'board' | 'sheet' | 'g' | 'mL';
  price: number;
  per: number;
  /** To the coin. */
  cost: number;
}

/** The price of a copy, from what it takes. Money in `currency`, rounded to its smallest coin at every line. */
export interface PlanCost<Text extends Words = string> {
  currency: string | null;
  copies: number;
  /** What the lines of material are made of; those of a copy are their sums over the edition by its copies. */
  materials: PlanMaterial[];
  lines: PlanCostLine<Text>[];
  /** Materials, labour, packing and losses. */
  costPerCopy: number | null;
  /** With gain and commission; tax apart. */
  pricePerCopy: number | null;
  taxPerCopy: number | null;
  /** Price and tax. */
  buyerPaysPerCopy: number | null;
  /** The least that a copy must bring where nobody takes a commission; null where none is stated. */
  direct: { pricePerCopy: number; buyerPaysPerCopy: number } | null;
  editionPrice: number | null;
  /** What is not priced, and what does not add up. */
  problems: Text[];
}

/** What the finish takes for the whole edition. */
export interface PlanFinish<Text extends Words = string> {
  finish: string | null;
  areaMm2: number;
  coats: number;
  volumeMl: number;
  recoatMin: number | null;
  /** In which order, a line a task. */
  order: Text[];
}
