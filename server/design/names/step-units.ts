/** What a step's minutes can be counted by: a finish has no passes, and a notch no mixes. */
import type { StepName } from './step-names.ts';
import type { LabourRate } from '../work-model.ts';

type Unit = LabourRate['per'];

/** Every step can be counted by these: one work, and its copies. */
const ofEveryStep: readonly Unit[] = ['work', 'copy'];

const unitsOfSteps: Readonly<Record<StepName, readonly Unit[]>> = {
  'mill strips': ['setting', 'pass', 'piece', 'strip', 'metre'],
  'notch strips': ['setting', 'pass', 'piece', 'strip', 'metre'],
  'cut to length': ['setting', 'pass', 'piece', 'strip', 'metre'],
  assemble: ['piece', 'strip', 'cell', 'metre'],
  flush: ['piece', 'strip', 'cell', 'metre'],
  measure: ['piece', 'strip', 'cell', 'metre'],
  frame: ['setting', 'pass', 'piece', 'metre'],
  'cut infill': ['setting', 'pass', 'piece', 'cell', 'metre'],
  'cut keys': ['setting', 'pass', 'piece', 'cell'],
  'fill the lattice': ['piece', 'cell'],
  pour: ['piece', 'mix'],
  flatten: ['piece'],
  'register templates': ['piece'],
  'saw outlines': ['piece', 'metre'],
  'bend bands': ['piece', 'strip', 'metre'],
  'cast bodies': ['piece', 'mix'],
  'cut boards': ['piece', 'metre'],
  'fit shapes': ['piece'],
  finish: ['piece'],
  mount: ['piece'],
  'fill the bags': ['piece', 'strip'],
  pack: ['piece', 'strip'],
};

/** The units that `step` has any of. */
export const unitsOfStep = (step: StepName): readonly Unit[] => [...ofEveryStep, ...unitsOfSteps[step]];
