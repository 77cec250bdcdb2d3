/** What is wrong in a text, said so that the maker can put it right. */
import type { SourceRange } from '../tree/source-range.ts';
import type { Words } from '../words.ts';

export type Severity = 'error' | 'warning' | 'information';

/** A second place that explains a problem, such as the first definition of a doubled name. */
export interface RelatedPlace<Message extends Words = Words> {
  readonly range: SourceRange;
  readonly message: Message;
}

/** One diagnostic. `range` covers the offending words exactly; `message` ends by saying what to do: a string once it is written. */
export interface Problem<Message extends Words = Words> {
  readonly code: string;
  readonly severity: Severity;
  readonly range: SourceRange;
  readonly message: Message;
  readonly related?: readonly RelatedPlace<Message>[];
}

/** In order of place, each said once: the same words may be wrong in many cells. */
export function inOrderOfPlace<Message extends Words>(problems: readonly Problem<Message>[]): Problem<Message>[] {
  const distinct = new Map(
    problems.map((problem) => [
      `${problem.code} ${problem.range.start} ${problem.range.end} ${JSON.stringify(problem.message)}`,
      problem,
    ]),
  );
  return [...distinct.values()].sort(
    (first, second) => first.range.start - second.range.start || first.range.end - second.range.end,
  );
}
