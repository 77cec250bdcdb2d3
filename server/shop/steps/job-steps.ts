/** The steps of the whole job in their fixed order, each with the gate that must be passed before the next. */
import type { StepName } from '../../design/names/step-names.ts';
import type { SheetName } from '../sections/work-sections.ts';

interface JobStepFacts {
  readonly title: StepName;
  readonly sheet: SheetName;
  /** What must be right before the next step; null where nothing can be spoiled. */
  readonly gate: string | null;
}

/** Source of the order and the gates: common practice of the trade. */
export const jobSteps = [
  { title: 'mill strips', sheet: 'to the lattice', gate: 'a test notch slides under thumb pressure' },
  { title: 'notch strips', sheet: 'to the lattice', gate: 'two strips cross square to their faces and lie flush' },
  { title: 'cut to length', sheet: 'to the lattice', gate: 'strips of one mark lie level at both ends' },
  { title: 'assemble', sheet: 'to the lattice', gate: 'ten cells measured, diagonals equal' },
  { title: 'flush', sheet: 'to the lattice', gate: 'a straight edge rocks nowhere, the depth is the finished one' },
  { title: 'measure', sheet: 'to the lattice', gate: 'the measured sizes are written down; infill follows them' },
  { title: 'frame', sheet: 'after measuring', gate: 'the diagonals of the frame are equal' },
  { title: 'cut infill', sheet: 'after measuring', gate: 'test cell: fits by finger push' },
  {
    title: 'cut keys',
    sheet: 'after measuring',
    gate: 'test cell: the last one needs a tap, and it stays when turned over',
  },
  { title: 'fill the lattice', sheet: 'after measuring', gate: 'turned over and tapped, nothing drops out' },
  { title: 'pour', sheet: 'after measuring', gate: 'each layer goes on inside the recoat window of the one below' },
  { title: 'flatten', sheet: 'after measuring', gate: 'the finished depth is met all over' },
  { title: 'register templates', sheet: 'after measuring', gate: 'three marked nodes lie under their numbers' },
  { title: 'saw outlines', sheet: 'after measuring', gate: 'sanded to the line all round' },
  { title: 'bend bands', sheet: 'after measuring', gate: 'the band is flush, hollows first' },
  { title: 'cast bodies', sheet: 'after measuring', gate: 'hard to the nail, and at the finished depth' },
  { title: 'cut boards', sheet: 'after measuring', gate: 'edges true to the template' },
  { title: 'fit shapes', sheet: 'after measuring', gate: 'dry layout: every joint closes' },
  { title: 'finish', sheet: 'after measuring', gate: 'dry to the touch, joints free of finish' },
  { title: 'mount', sheet: 'after measuring', gate: 'dry layout right, mock hang holds' },
  { title: 'fill the bags', sheet: 'after measuring', gate: 'every bag counted against its label' },
  { title: 'pack', sheet: 'after measuring', gate: null },
] as const satisfies readonly JobStepFacts[];

export type JobStep = (typeof jobSteps)[number]['title'];

export const gateOf = (step: JobStep): string | null => jobSteps.find(({ title }) => title === step)?.gate ?? null;
