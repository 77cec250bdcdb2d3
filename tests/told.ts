/** A problem's message as a person reads it. */
import type { Problem } from '../grammar/problems/problem.ts';
import type { LengthUnit } from '../server/design/design-model.ts';
import { writeWords } from '../server/words/write-words.ts';

/** Empty where there is no problem. */
export const told = (problem: Problem | undefined, units: LengthUnit = 'mm'): string =>
  problem ? writeWords(problem.message, units) : '';
