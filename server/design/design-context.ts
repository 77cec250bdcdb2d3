/** What every builder of the design needs: the unit of bare lengths, the numbers with names, and where problems go. */
import type { Problem } from '../../grammar/problem.ts';
import type { LengthUnit } from './design-model.ts';
import type { Quantity } from './quantity.ts';

export interface DesignContext {
  readonly units: LengthUnit;
  readonly report: (problem: Problem) => void;
  /** The value of a `let`, or null where it has none (unknown, or broken and reported there). */
  readonly numberNamed: (name: string) => Quantity | null;
  /** Whether a `let` stands in another file. */
  readonly isFromOtherFile: (name: string) => boolean;
}
