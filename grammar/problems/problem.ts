/** What is wrong in a text, said so that the maker can put it right. */
import type { SourceRange } from '../tree/source-range.ts';

export type Severity = 'error' | 'warning' | 'information';

/** A second place that explains a problem, such as the first definition of a doubled name. */
export interface RelatedPlace {
  readonly range: SourceRange;
  readonly message: string;
}

/** One diagnostic. `range` covers the offending words exactly; `message` ends by saying what to do. */
export interface Problem {
  readonly code: string;
  readonly severity: Severity;
  readonly range: SourceRange;
  readonly message: string;
  readonly related?: readonly RelatedPlace[];
}

/** In order of place, each said once: the same words may be wrong in many cells. */
export function inOrderOfPlace(problems: readonly Problem[]): Problem[] {
  const distinct = new Map(
    problems.map((problem) => [
      `${problem.code} ${problem.range.start} ${problem.range.end} ${problem.message}`,
      problem,
    ]),
  );
  return [...distinct.values()].sort(
    (first, second) => first.range.start - second.range.start || first.range.end - second.range.end,
  );
}
