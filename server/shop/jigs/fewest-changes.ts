/** The order of work in which the fewest things on the bench are changed from one job to the next. */
import { minimum } from '../../geometry/numbers.ts';

/** One job at one setting of everything: `settings[i]` is a number that stands for the i-th thing's setting. */
export interface Job {
  readonly settings: readonly number[];
  /** Numbers of jobs to be done before this one. */
  readonly after: readonly number[];
}

export interface JobOrder {
  /** Numbers of the jobs, in the order to do them. */
  readonly order: readonly number[];
  /** Things changed between the jobs, each times its weight; setting up for the first is not counted. */
  readonly cost: number;
  /** No order costs less than this. */
  readonly bound: number;
  /** Whether `cost` is `bound`. */
  readonly proven: boolean;
}

/** Work done so far: which jobs (a bit each), the last of them, what it cost and how it was reached. */
interface State {
  readonly done: bigint;
  readonly last: number;
  readonly cost: number;
  /** The cost, and the least that what is left can add. */
  readonly estimate: number;
  readonly before: State | null;
}

/** Jobs looked at, over all states, before the search is satisfied with an order it can't prove. */
const mostWork = 500_000;

/**
 * An order of `jobs` with the least Σ weight of settings that differ between neighbours; `weights[i]` is what a change
 * of the i-th thing costs. Exact: best-first search over sets of jobs done, guided by the settings still to come
 * (each must be made at least once). A job that may follow at no loss is always taken at once. Beyond `limit` states
 * the most promising order and those from as many beginnings as the work allows are finished greedily; the best of
 * them is given, and `bound` says how far from the least it can be.
 *
 * Jobs that wait for each other in a circle are a RangeError.
 */
export function fewestChanges(
  jobs: readonly Job[],
  weights: readonly number[],
  limit = Math.ceil(mostWork / Math.max(1, jobs.length)),
): JobOrder {
  if (jobs.length === 0) return { order: [], cost: 0, bound: 0, proven: true };
  const problem = problemOf(jobs, weights);
  const open = new Queue();
  const best = new Map<string, number>();
  const push = (state: State): void => {
    const key = `${state.last} ${state.done.toString(32)}`;
    const known = best.get(key);
    if (known !== undefined && known <= state.cost) return;
    best.set(key, state.cost);
    open.push(state);
  };
  const starts = startsOf(problem);
  for (const start of [...starts].reverse()) push(start);
  for (let looked = 0; ; looked++) {
    const state = open.pop();
    if (!state) throw new RangeError('jobs wait for each other in a circle');
    if (state.done === problem.all) return orderTo(state, state.cost);
    if (looked >= limit) {
      const tried = starts.slice(0, Math.ceil(mostWork / jobs.length ** 2));
      const finished = [state, ...tried].map((each) => finishedGreedily(problem, each));
      return orderTo(leastOf(finished, ({ cost }) => cost) ?? state, state.estimate);
    }
    for (const next of successorsOf(problem, state).reverse()) push(next);
  }
}

function orderTo(state: State, bound: number): JobOrder {
  const order: number[] = [];
  for (let each: State | null = state; each; each = each.before) order.push(each.last);
  return { order: order.reverse(), cost: state.cost, bound, proven: state.cost === bound };
}

interface JobProblem {
  readonly jobs: readonly (Job & { readonly bit: bigint; readonly waits: bigint })[];
  readonly weights: readonly number[];
  readonly all: bigint;
}

function problemOf(jobs: readonly Job[], weights: readonly number[]): JobProblem {
  const bitOf = (job: number): bigint => 1n << BigInt(job);
  return {
    jobs: jobs.map((job, number) => ({
      ...job,
      bit: bitOf(number),
      waits: job.after.reduce((mask, first) => mask | bitOf(first), 0n),
    })),
    weights,
    all: bitOf(jobs.length) - 1n,
  };
}

/** What is left to do: its jobs, those of them that may come next, and how many want each setting of each thing. */
interface Rest {
  readonly ready: readonly number[];
  readonly wanted: readonly ReadonlyMap<number, number>[];
}

function restOf({ jobs, weights }: JobProblem, done: bigint): Rest {
  const wanted = weights.map(() => new Map<number, number>());
  const ready: number[] = [];
  jobs.forEach(({ bit, waits, settings }, job) => {
    if ((done & bit) !== 0n) return;
    if ((waits & ~done) === 0n) ready.push(job);
    wanted.forEach((counts, thing) => {
      const setting = settings[thing] ?? 0;
      counts.set(setting, (counts.get(setting) ?? 0) + 1);
    });
  });
  return { ready, wanted };
}

function startsOf(problem: JobProblem): State[] {
  const rest = restOf(problem, 0n);
  return rest.ready.map((job) => stateAfter(problem, rest, null, job));
}

function successorsOf(problem: JobProblem, state: State): State[] {
  const rest = restOf(problem, state.done);
  const atNoLoss = rest.ready.find((job) => losesNothing(problem, rest, state.last, job));
  return (atNoLoss === undefined ? rest.ready : [atNoLoss]).map((job) => stateAfter(problem, rest, state, job));
}

/** Every setting still wanted but the job's own has to be made once more, at least. */
function stateAfter(problem: JobProblem, { wanted }: Rest, before: State | null, job: number): State {
  const { jobs, weights } = problem;
  const done = (before?.done ?? 0n) | (jobs[job]?.bit ?? 0n);
  const cost = before ? before.cost + changeBetween(problem, before.last, job) : 0;
  const toCome = weights.reduce((sum, weight, thing) => sum + weight * ((wanted[thing]?.size ?? 1) - 1), 0);
  return { done, last: job, cost, estimate: cost + toCome, before };
}

const settingOf = ({ jobs }: JobProblem, job: number, thing: number): number => jobs[job]?.settings[thing] ?? 0;

const changeBetween = (problem: JobProblem, from: number, to: number): number =>
  problem.weights.reduce(
    (sum, weight, thing) => sum + (settingOf(problem, from, thing) === settingOf(problem, to, thing) ? 0 : weight),
    0,
  );

/**
 * Whether doing `job` now can't cost more than doing it later. In each thing it is set like the `last` job; or no other
 * job to come wants its setting nor the last job's. Put in now, such a setting costs one change more than without it;
 * taken out of its later place it saves at least one, and by the triangle inequality taking it out never adds.
 */
function losesNothing(problem: JobProblem, { wanted }: Rest, last: number, job: number): boolean {
  return wanted.every((counts, thing) => {
    const [own, current] = [settingOf(problem, job, thing), settingOf(problem, last, thing)];
    return own === current || (counts.get(own) === 1 && !counts.has(current));
  });
}

function finishedGreedily(problem: JobProblem, state: State): State {
  let reached = state;
  while (reached.done !== problem.all) {
    const next = leastOf(successorsOf(problem, reached), ({ estimate }) => estimate);
    if (!next) throw new RangeError('jobs wait for each other in a circle');
    reached = next;
  }
  return reached;
}

/** The first of those with the least `measure`. */
function leastOf(states: readonly State[], measure: (state: State) => number): State | null {
  return states.reduce<State | null>((best, each) => (best && measure(best) <= measure(each) ? best : each), null);
}

/** Least estimate first; among equals the last put in, so that one order is followed to its end before others are begun. */
class Queue {
  private readonly buckets = new Map<number, State[]>();

  push(state: State): void {
    const bucket = this.buckets.get(state.estimate);
    if (bucket) bucket.push(state);
    else this.buckets.set(state.estimate, [state]);
  }

  pop(): State | undefined {
    if (this.buckets.size === 0) return undefined;
    const least = minimum(this.buckets.keys());
    const bucket = this.buckets.get(least);
    const state = bucket?.pop();
    if (bucket?.length === 0) this.buckets.delete(least);
    return state;
  }
}
