/** What is wrong with the strips of a panel once their notches are known: too near an end, into one another, walls too thin. */
import { maximum } from '../../geometry/numbers.ts';
import { measure, words } from '../../../grammar/words.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import { radians } from '../../geometry/point.ts';
import { arithmeticTolerance, isZeroLength, placeTolerance } from '../../geometry/tolerance.ts';
import type { LaidPanel, NotchRun, StripGroup } from '../laid-panel.ts';
import { placesOfRun } from '../strips/notch-runs.ts';
import { type RaisedProblem, raisedAt } from './raised-problem.ts';

/** One notch along its strip, from `low` to `high`, in mm from the strip's end 1. */
interface Notch {
  readonly place: number;
  readonly low: number;
  readonly high: number;
  readonly depth: number;
  readonly from: NotchRun['from'];
}

export const stripProblems = (panels: readonly LaidPanel[]): RaisedProblem[] =>
  panels.flatMap((laid) => raisedAt(laid.panel, [...endProblems(laid), ...notchProblems(laid)]));

/** Notches in order of their beginning. */
function notchesAlong({ notches }: Pick<StripGroup, 'notches'>): Notch[] {
  return notches
    .flatMap((run) => {
      const half = run.width / Math.sin(radians(run.angle)) / 2;
      return placesOfRun(run).map((place): Notch => ({ ...run, place, low: place - half, high: place + half }));
    })
    .sort((a, b) => a.low - b.low);
}

/** Strips whose notch breaks out of an end, said once a panel with the worst. */
function endProblems({ panel, strips }: LaidPanel): Problem[] {
  const leastWall = panel.grid.wall ?? 0;
  const short = strips.flatMap((group) =>
    notchesAlong(group).flatMap(({ low, high, place }) => {
      const wall = Math.min(low, group.length - high);
      const nearest = Math.min(place, group.length - place);
      return wall < leastWall - arithmeticTolerance ? [{ group, wall, nearest }] : [];
    }),
  );
  if (short.length === 0) return [];
  const worst = short.reduce((least, each) => (each.wall < least.wall ? each : least));
  const ends = short.reduce((total, { group }) => total + group.placements.length, 0);
  const left =
    worst.wall <= 0
      ? `the notch breaks out of the end`
      : words`${measure.given(worst.wall)} of wood are left, less than the ${measure.given(leastWall)} asked for`;
  const advice =
    panel.edge === 'sawn'
      ? 'Give the strips a longer `tail`.'
      : 'Give them a longer stub, move the grid by its phase, or change the size.';
  const message = words`${ends} ${ends === 1 ? 'strip end lies' : 'strip ends lie'} too near a crossing: the nearest is ${measure.given(worst.nearest)} from it, and ${left}. ${advice}`;
  return [problemAt('notchAtEnd', panel.edge === 'sawn' ? panel.nameRange : panel.shape.range, message)];
}

/** Two notches of different nodes, and the wood between them: below 0 they run into one another. */
interface Between {
  readonly group: StripGroup;
  readonly first: Notch;
  readonly second: Notch;
  readonly wall: number;
}

function notchProblems({ panel, strips }: LaidPanel): Problem[] {
  const { grid } = panel;
  const leastWall = grid.wall ?? 0;
  const thin = strips.flatMap((group) => neighbours(group, leastWall));
  if (thin.length === 0) return [];
  const { group, first, second, wall } = thin.reduce((least, each) => (each.wall < least.wall ? each : least));
  const places = words`Notches at ${measure.given([first.place, second.place], ' and ')} of a ${measure.given(group.length)} strip of family ${group.family}`;
  const advice = 'Space the lines wider, take thinner strips, or move one family.';
  return wall < -arithmeticTolerance
    ? [
        problemAt(
          'notchesMeet',
          grid.sideRange,
          words`${places} belong to different nodes and run ${measure.given(-wall)} into one another. ${advice}`,
        ),
      ]
    : [
        problemAt(
          'thinWall',
          grid.sideRange,
          words`${places} leave a wall of ${measure.given(wall)}, less than the ${measure.given(leastWall)} asked for. ${advice}`,
        ),
      ];
}

/** Pairs of notches with less than `leastWall` between them that weaken the same wood. */
function neighbours(group: StripGroup, leastWall: number): Between[] {
  const notches = notchesAlong(group);
  const widest = Math.max(0, maximum(notches.map(({ low, high }) => high - low)));
  return notches.flatMap((first, index) => {
    const found: Between[] = [];
    for (const second of notches.slice(index + 1)) {
      const wall = second.low - first.high;
      if (second.low > first.low + widest + leastWall) break;
      const isOneNode = isZeroLength(second.place - first.place);
      if (!isOneNode && wall < leastWall - placeTolerance && shareWood(group, first, second, wall))
        found.push({ group, first, second, wall });
    }
    return found;
  });
}

/** On one face always; on both, only where they overlap and nothing is left between them. */
const shareWood = ({ stock }: StripGroup, first: Notch, second: Notch, wall: number): boolean =>
  first.from === second.from || (wall < 0 && first.depth + second.depth >= stock.depth - placeTolerance);
