/** Long work in stages, between which others have their turn, or it is left undone. */
import type { SearchClock } from './stock/watch.ts';

/** What the stages lead to, done in one go. */
export function lastOf<Result>(stages: Generator<unknown, Result>): Result {
  let stage = stages.next();
  while (stage.done !== true) stage = stages.next();
  return stage.value;
}

/** The same, with a rest between any two of them where it is due. */
export async function lastRested<Result>(stages: Generator<unknown, Result>, clock: SearchClock): Promise<Result> {
  let stage = stages.next();
  while (stage.done !== true) {
    await clock.rest();
    stage = stages.next();
  }
  return stage.value;
}
