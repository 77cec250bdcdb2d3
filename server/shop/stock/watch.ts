/** What a long search asks of the world: the time, a pause for others, and someone to tell. */
import type { Interruption } from './stock-request.ts';

/** How a search stands: the best plan's value so far (null: none yet) and the bound, in the objective's unit. */
export interface SearchProgress {
  readonly value: number | null;
  readonly bound: number;
}

/** The time that a search has. */
export interface SearchClock {
  /** Why to stop now, null to go on. */
  interruption(): Interruption;
  secondsLeft(): number;
  /** Lets other work have its turn; a cancel can only arrive then. */
  rest(): Promise<void>;
}

export interface Watch extends SearchClock {
  report(progress: SearchProgress): void;
}

/** A watch for the first of `parts` equal parts of the time left. */
export function shareOf(watch: Watch, parts: number): Watch {
  const left = watch.secondsLeft();
  const secondsLeft = (): number => Math.max(0, watch.secondsLeft() - left * (1 - 1 / parts));
  return {
    interruption: () => watch.interruption() ?? (secondsLeft() > 0 ? null : 'time'),
    secondsLeft,
    rest: () => watch.rest(),
    report: (progress) => watch.report(progress),
  };
}
