/** The steps of the whole job in their fixed order: all that is known of a step stands in its one description. */
import { type StepName, stepNames } from '../../design/names/step-names.ts';
import type { JobStep, StepFacts, StockUsers } from './job-step.ts';
import { latticeSteps } from './lattice-steps.ts';
import { partSteps } from './part-steps.ts';
import { workSteps } from './work-steps.ts';

const described: Readonly<Record<StepName, StepFacts>> = { ...latticeSteps, ...partSteps, ...workSteps };

export const jobSteps: readonly JobStep[] = stepNames.map((title) => ({ title, ...described[title] }));

export const jobStep = (title: StepName): JobStep => ({ title, ...described[title] });

/** The first step in which the sticks of a stock are cut; null for a stock of which nothing is. */
export const stepOfStock = (stock: string, users: StockUsers): StepName | null =>
  jobSteps.find(({ cuts }) => cuts?.(stock, users))?.title ?? null;
