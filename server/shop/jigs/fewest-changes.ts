/** The order of work in which the fewest things on the bench are changed from one job to the next. */

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
  readonly estimate: number;
  readonly before: State | null;
}

/** States looked at before the search is satisfied with an order it can't prove. */
const mostStates = 50_000;

/**
 * An order of `jobs` with the least Σ weight of settings that differ between neighbours; `weights[i]` is what a change
 * of the i-th thing costs. Exact: best-first search over sets of jobs done, guided by the settings still to come
 * (each must be made at least once). A job that may follow at no loss is always taken at once. Beyond `limit` states
 * the most promising order is finished greedily, and `bound` says how far from the least it can be.
 *
 * Jobs that wait for each other in a circle are a RangeError.
 */
export function fewestChanges(jobs: readonly Job[], weights: readonly number[], limit = mostStates): JobOrder {
  if (jobs.length === 0) return { order: [], cost: 0, bound: 0, proven: true };
  const problem = new JobProblem(jobs, weights);
  const open = new Queue();
  const best = new Map<string, number>();
  const push = (state: State): void => {
    const key = `${state.last} ${state.done.toString(36)}`;
    const known = best.get(key);
    if (known !== undefined && known <= state.cost) return;
    best.set(key, state.cost);
    open.push(state);
  };
  for (const job of problem.ready(0n).reverse()) push(problem.start(job));
  for (let looked = 0; ; looked++) {
    const state = open.pop();
    if (!state) throw new RangeError('jobs wait for each other in a circle');
    if (state.done === problem.all) return orderTo(state, state.cost);
    if (looked >= limit) return orderTo(problem.finishGreedily(state), state.estimate);
    for (const next of problem.successors(state).reverse()) push(next);
  }
}

function orderTo(state: State, bound: number): JobOrder {
  const order: number[] = [];
  for (let each: State | null = state; each; each = each.before) order.unshift(each.last);
  return { order, cost: state.cost, bound, proven: state.cost === bound };
}

class JobProblem {
  readonly all: bigint;
  private readonly jobs: readonly Job[];
  private readonly weights: readonly number[];
  private readonly waits: readonly bigint[];

  constructor(jobs: readonly Job[], weights: readonly number[]) {
    this.jobs = jobs;
    this.weights = weights;
    this.all = (1n << BigInt(jobs.length)) - 1n;
    this.waits = jobs.map(({ after }) => after.reduce((mask, job) => mask | (1n << BigInt(job)), 0n));
  }

  /** Jobs not done whose predecessors are. */
  ready(done: bigint): number[] {
    return this.remaining(done).filter((job) => ((this.waits[job] ?? 0n) & ~done) === 0n);
  }

  start(job: number): State {
    const done = 1n << BigInt(job);
    return { done, last: job, cost: 0, estimate: this.stillToChange(done, job), before: null };
  }

  successors(state: State): State[] {
    const ready = this.ready(state.done);
    const atNoLoss = ready.find((job) => this.losesNothing(job, state));
    return (atNoLoss === undefined ? ready : [atNoLoss]).map((job) => this.then(state, job));
  }

  finishGreedily(state: State): State {
    let reached = state;
    while (reached.done !== this.all) {
      const nexts = this.successors(reached);
      const [first] = nexts;
      if (!first) throw new RangeError('jobs wait for each other in a circle');
      reached = nexts.reduce((best, next) => (next.estimate < best.estimate ? next : best), first);
    }
    return reached;
  }

  private then(state: State, job: number): State {
    const done = state.done | (1n << BigInt(job));
    const cost = state.cost + this.change(state.last, job);
    return { done, last: job, cost, estimate: cost + this.stillToChange(done, job), before: state };
  }

  /**
   * Whether doing `job` now can't cost more than doing it later. In each setting it is like the last job; or no other
   * job to come shares its setting nor the last job's. Done later it would cost such a setting anyway, twice less the
   * one change it stands between; and by the triangle inequality taking it out of a later place never adds.
   */
  private losesNothing(job: number, { done, last }: State): boolean {
    const others = this.remaining(done).filter((other) => other !== job);
    return this.weights.every((_, thing) => {
      const [own, current] = [this.setting(job, thing), this.setting(last, thing)];
      if (own === current) return true;
      return !others.some((other) => [own, current].includes(this.setting(other, thing)));
    });
  }

  private remaining(done: bigint): number[] {
    return [...this.jobs.keys()].filter((job) => (done & (1n << BigInt(job))) === 0n);
  }

  private change(from: number, to: number): number {
    return this.weights.reduce(
      (sum, weight, thing) => sum + (this.setting(from, thing) === this.setting(to, thing) ? 0 : weight),
      0,
    );
  }

  /** Every setting still to come but the present one has to be made once. */
  private stillToChange(done: bigint, last: number): number {
    const remaining = this.remaining(done);
    return this.weights.reduce((sum, weight, thing) => {
      const toCome = new Set(remaining.map((job) => this.setting(job, thing)));
      toCome.delete(this.setting(last, thing));
      return sum + weight * toCome.size;
    }, 0);
  }

  private setting(job: number, thing: number): number {
    return this.jobs[job]?.settings[thing] ?? 0;
  }
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
    const least = Math.min(...this.buckets.keys());
    const bucket = this.buckets.get(least);
    const state = bucket?.pop();
    if (bucket?.length === 0) this.buckets.delete(least);
    return state;
  }
}
