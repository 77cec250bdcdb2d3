/** What is known of one step of the job, whatever the design. */
import type { Words } from '../../../grammar/words.ts';
import type { Bench } from '../../design/design-model.ts';
import type { Design } from '../../design/design.ts';
import type { StepName } from '../../design/names/step-names.ts';
import type { LabourRate } from '../../design/work-model.ts';
import type { MarkedKinds } from '../marks/marked-kinds.ts';
import type { PlannedDesign } from '../planned-design.ts';
import type { CountedPlan } from '../sections/counted-parts.ts';
import type { SheetName } from '../sections/work-sections.ts';
import type { ShopPlan } from '../shop-plan.ts';
import type { TaskFigures } from './task-words.ts';

export interface JobStep {
  readonly title: StepName;
  /** The print it stands on. */
  readonly sheet: SheetName;
  /** What must be right before the next step; null where nothing can be spoiled. */
  readonly gate: string | null;
  /** Beside every step that can hurt: a blade, heat, dust, what poisons or falls. */
  readonly caution: string | null;
  /** Whether the design asks for it; a step with settings is needed without being asked for. */
  readonly isNeeded?: (planned: PlannedDesign) => boolean;
  /** What is done, a line a task. */
  readonly tasks: (at: StepFigures) => Words[];
  /** What must pass before the next step, as the materials say it; min. */
  readonly wait?: (design: Design) => number;
  /** Whether the sticks of a stock are cut in it; the first step that cuts them has them. */
  readonly cuts?: (stock: string, users: StockUsers) => boolean;
  /** How many of a unit it has in the whole edition, metres in mm; by the metre also what is cut in it from sticks. */
  readonly counts: Partial<Record<PartUnit, (plan: CountedPlan, kinds: MarkedKinds) => number>>;
}

/** What minutes are counted by that only the step can count. */
export type PartUnit = Exclude<LabourRate['per'], 'work' | 'copy' | 'setting' | 'pass'>;

/** A step without its name: that is its key in a list of steps. */
export type StepFacts = Omit<JobStep, 'title'>;

/** What the tasks of a step are written from. */
export interface StepFigures {
  readonly planned: PlannedDesign;
  readonly plan: TaskFigures;
  /** The bench that notches. */
  readonly bench: Bench | null;
  /** The sticks that are cut in the step. */
  readonly sticks: ShopPlan<Words>['stock'];
}

export type StockUsers = Pick<ShopPlan<Words>, 'strips' | 'pieces' | 'frames' | 'bands' | 'kit'>;
