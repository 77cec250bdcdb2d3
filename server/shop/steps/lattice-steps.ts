/** The steps that make the lattice and fill it. Source of order and gates: common practice of the trade. */
import type { StepName } from '../../design/names/step-names.ts';
import {
  cellsFilled,
  infillMade,
  infillToCut,
  keysToCut,
  laidRun,
  laminationsBent,
  membersCut,
  milledRun,
  notchedRun,
  stripsCut,
  stripsLaid,
  totalOf,
} from '../sections/counted-parts.ts';
import { motifsOfPanels, fittingText } from './fitting-order.ts';
import { frameTasks } from './frame-tasks.ts';
import type { StepFacts } from './job-step.ts';
import {
  assembleTasks,
  flushTasks,
  infillTasks,
  lengthTasks,
  measureTasks,
  millTasks,
  notchTasks,
} from './lattice-tasks.ts';

const smallPieces = 'Pieces this small are cut by hand or in a holding jig, never loose at a power saw.';

export const latticeSteps = {
  'mill strips': {
    sheet: 'to the lattice',
    gate: 'a test notch slides under thumb pressure',
    caution:
      'Sawing and planing make fine dust: extract it and wear a mask. Follow the machine maker’s instructions and local safety rules.',
    tasks: ({ plan }) => millTasks(plan),
    counts: {
      piece: (plan) => stripsCut(plan) + totalOf(plan.pieces) + membersCut(plan) + laminationsBent(plan),
      strip: stripsCut,
      metre: milledRun,
    },
  },
  'notch strips': {
    sheet: 'to the lattice',
    gate: 'two strips cross square to their faces and lie flush',
    caution:
      'Clamp the strips as a pack, keep the guard on and cut a test notch first. Long thin strips whip: support both ends.',
    tasks: ({ plan, bench }) => notchTasks(plan, bench),
    counts: { piece: stripsCut, strip: stripsCut, metre: notchedRun },
  },
  'cut to length': {
    sheet: 'to the lattice',
    gate: 'strips of one mark lie level at both ends',
    caution:
      'Short off-cuts can jam beside the blade and fly: hold the strip against the fence, clear nothing before the blade stands still.',
    tasks: ({ sticks }) => lengthTasks(sticks),
    // what goes into a class's bags cut is cut with the strips
    cuts: (stock, { strips, pieces, kit }) =>
      uses(strips, stock) || (uses(pieces, stock) && (kit?.done.includes('cut') ?? false)),
    counts: { piece: stripsCut, strip: stripsCut },
  },
  assemble: {
    sheet: 'to the lattice',
    gate: 'ten cells measured, diagonals equal',
    caution: null,
    tasks: ({ planned }) => assembleTasks(planned),
    counts: { piece: stripsLaid, strip: stripsLaid, cell: cellsFilled, metre: laidRun },
  },
  flush: {
    sheet: 'to the lattice',
    gate: 'a straight edge rocks nowhere, the depth is the finished one',
    caution:
      'A planing machine tears the short ends of a lattice out and throws them: plane by hand or sand it, extract the dust and wear a mask.',
    isNeeded: ({ panels }) => panels.some(({ strips }) => strips.some(({ stock }) => stock.flush > 0)),
    tasks: ({ plan }) => flushTasks(plan),
    counts: { piece: stripsLaid, strip: stripsLaid, cell: cellsFilled, metre: laidRun },
  },
  measure: {
    sheet: 'to the lattice',
    gate: 'the measured sizes are written down; infill follows them',
    caution: null,
    tasks: ({ plan, planned }) => measureTasks(plan, planned),
    counts: { piece: stripsLaid, strip: stripsLaid, cell: cellsFilled, metre: laidRun },
  },
  frame: {
    sheet: 'after measuring',
    gate: 'the diagonals of the frame are equal',
    caution:
      'Narrow members tip and kick back: keep the guard on, feed them with a push stick, and clamp what is grooved, morticed or mitred.',
    isNeeded: ({ panels }) => panels.some(({ panel, strips }) => panel.edge === 'framed' && strips.length > 0),
    tasks: ({ planned, plan, sticks }) => frameTasks(planned.panels, plan, sticks),
    cuts: (stock, { frames }) => uses(frames, stock),
    counts: { piece: membersCut },
  },
  'cut infill': {
    sheet: 'after measuring',
    gate: 'test cell: fits by finger push',
    caution: smallPieces,
    tasks: ({ plan, bench }) => infillTasks(plan, bench),
    cuts: (stock, { pieces }) => uses(pieces, stock),
    counts: { piece: infillToCut, cell: cellsFilled },
  },
  'cut keys': {
    sheet: 'after measuring',
    gate: 'test cell: the last one needs a tap, and it stays when turned over',
    caution: smallPieces,
    tasks: () => ['Keys are cut longer, as the caliper says, and shaved one by one until they need a tap.'],
    counts: { piece: (_plan, kinds) => keysToCut(kinds), cell: cellsFilled },
  },
  'fill the lattice': {
    sheet: 'after measuring',
    gate: 'turned over and tapped, nothing drops out',
    caution: null,
    isNeeded: ({ panels }) => panels.some(({ pieces }) => pieces.length > 0),
    tasks: ({ planned }) => motifsOfPanels(planned.panels).map(fittingText),
    counts: { piece: infillMade, cell: cellsFilled },
  },
} as const satisfies Partial<Record<StepName, StepFacts>>;

const uses = (parts: readonly { readonly stock: string }[], name: string): boolean =>
  parts.some(({ stock }) => stock === name);
