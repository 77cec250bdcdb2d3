/** What the tasks of the steps are written from, and how. */
import { bare, counted, type Measure, measure, type Words } from '../../../grammar/words.ts';
import type { LengthUnit } from '../../design/design-model.ts';
import { inchFraction, isImperial } from '../../design/values/length-text.ts';
import { millimetresIn } from '../../design/values/quantity.ts';
import type { ShopPlan } from '../shop-plan.ts';
import { keyMillimetres, millimetres } from '../writers/text/figures-text.ts';

/** The sections that the tasks speak of. */
export type TaskFigures = Pick<
  ShopPlan,
  | 'copies'
  | 'grids'
  | 'panels'
  | 'pieces'
  | 'hinges'
  | 'strips'
  | 'settings'
  | 'changes'
  | 'byHand'
  | 'stock'
  | 'mill'
  | 'frames'
  | 'bands'
  | 'pours'
  | 'sheets'
  | 'boards'
  | 'work'
  | 'hanging'
  | 'finish'
  | 'kit'
>;

/** How lengths stand in tasks: in the units of the file. */
export interface LengthWords {
  /** To 0.1 mm, a bare figure; or to 1/64 in, with its unit. */
  readonly length: (millimetres: number) => string;
  /** Where that is too coarse: to 0.01 mm, or to a thousandth of an inch. */
  readonly fine: (millimetres: number) => string;
  /** Of keys: to 0.05 mm, or to 1/64 in. */
  readonly key: (millimetres: number) => string;
  /** Behind a figure that stands alone. */
  readonly unit: '' | ' mm';
}

export const lengthWords = (units: LengthUnit): LengthWords =>
  isImperial(units)
    ? {
        length: inchFraction,
        key: inchFraction,
        fine: (value) => `${(value / millimetresIn.in).toFixed(3)} in`,
        unit: '',
      }
    : { length: millimetres, key: keyMillimetres, fine: (value) => value.toFixed(2), unit: ' mm' };

/** Lengths as tasks tell them: in millimetres without their unit, which the sheet says once for all. */
export const told = {
  length: (millimetres: number | readonly number[], between?: string): Measure =>
    bare(measure.length(millimetres, between)),
  /** What the saw takes, and what is set to a hundredth. */
  fine: (millimetres: number): Measure => bare(measure.fine(millimetres)),
  /** What is bought, and sizes over all. */
  size: (millimetres: readonly number[]): Measure => bare(measure.size(millimetres)),
} as const;

/** How good the order of a step's settings is. */
export const orderText = ({ changes, bound, proven, model }: TaskFigures['changes'][number]): Words =>
  changes === 0
    ? 'One setting serves all that follows.'
    : `${counted(changes, 'change')} of setting after the first, ${proven ? 'and no order needs fewer' : `at least ${bound}`} (${model}).`;
