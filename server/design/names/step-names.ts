/** The steps of the whole job, as the plan calls them and labour rates name them, in their fixed order. */

/** Source of the order: common practice of the trade. */
export const stepNames = [
  'mill strips',
  'notch strips',
  'cut to length',
  'assemble',
  'flush',
  'measure',
  'frame',
  'cut infill',
  'cut keys',
  'fill the lattice',
  'pour',
  'flatten',
  'register templates',
  'saw outlines',
  'bend bands',
  'cast bodies',
  'cut boards',
  'fit shapes',
  'finish',
  'mount',
  'fill the bags',
  'pack',
] as const;

export type StepName = (typeof stepNames)[number];

/** A step as a file writes it: `notch_strips`. */
export const writtenStep = (step: StepName): string => step.replaceAll(' ', '_');
