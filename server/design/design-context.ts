/** What every builder of the design needs: the unit of bare lengths, numbers with names, drawings, and where problems go. */
import type { Problem } from '../../grammar/problems/problem.ts';
import type { TextLiteral } from '../../grammar/tree/syntax-nodes.ts';
import type { LengthUnit } from './design-model.ts';
import type { Quantity } from './values/quantity.ts';
import type { DrawingRead } from './files/source-file.ts';

/** What arithmetic needs. */
export interface NumberContext {
  readonly units: LengthUnit;
  readonly report: (problem: Problem) => void;
  /** The value of a `let`, or null where it has none (unknown, or broken and reported there). */
  readonly numberNamed: (name: string) => Quantity | null;
  /** Whether a `let` stands in another file. */
  readonly isFromOtherFile: (name: string) => boolean;
}

export interface DesignContext extends NumberContext {
  /** The drawings that outlines are taken from, by the words that name them. */
  readonly drawings: ReadonlyMap<TextLiteral, DrawingRead>;
}
