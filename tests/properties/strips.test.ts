/** Every strip with its ends, notches and hand, found again by the school geometry of `strips-again.ts`. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { turned } from '../../server/geometry/point.ts';
import type { StripGroup } from '../../server/lattice/laid-panel.ts';
import { placesOfRun } from '../../server/lattice/strips/notch-runs.ts';
import { laidOut } from '../laid-out.ts';
import { type Design, randomDesigns } from './random-lattices.ts';
import { ash } from './random-panels.ts';
import { type CutAgain, type StripAgain, stripsAgain, TooClose } from './strips-again.ts';

const designs = 5000;

/** The engine clips to whole thousandths, which a slanted side lengthens. */
const nearby = 0.01;

/** Lengths of one kind may differ by 0.01, and both ends by the clipping. */
const kind = 0.01 + 2 * nearby;

type Cut = Omit<CutAgain, 'lines'>;

const otherSide = { above: 'below', below: 'above' } as const;

/** The cuts of a strip turned end for end, flipped about its axis, or both. */
function laid(cuts: readonly Cut[], length: number, isTurned: boolean, isFlipped: boolean): Cut[] {
  return cuts.map((cut) => ({
    ...cut,
    place: isTurned ? length - cut.place : cut.place,
    angle: isFlipped ? 180 - cut.angle : cut.angle,
    from: isFlipped ? otherSide[cut.from] : cut.from,
  }));
}

const isSameCut = (a: Cut, b: Cut, within = kind): boolean =>
  a.from === b.from &&
  Math.abs(a.place - b.place) < within &&
  Math.abs(a.angle - b.angle) < 1e-6 &&
  Math.abs(a.width - b.width) < 1e-9 &&
  Math.abs(a.depth - b.depth) < 1e-9;

/** As many, and each of one among the other; cuts of one strip are all unlike. */
const sameCuts = (a: readonly Cut[], b: readonly Cut[], within = kind): boolean =>
  a.length === b.length && a.every((cut) => b.some((other) => isSameCut(cut, other, within)));

const ways = [false, true].flatMap((isTurned) => [false, true].map((isFlipped) => [isTurned, isFlipped] as const));

const canBeLaidAs = (cuts: readonly Cut[], length: number, as: readonly Cut[], within: number): boolean =>
  ways.some(([isTurned, isFlipped]) => sameCuts(laid(cuts, length, isTurned, isFlipped), as, within));

/** Seen in a mirror along the strip every slant leans the other way. */
const mirrored = (cuts: readonly Cut[]): Cut[] => cuts.map((cut) => ({ ...cut, angle: 180 - cut.angle }));

/** Notch upward, how many more slants lean right than left. */
const lean = (cuts: readonly Cut[]): number =>
  cuts.reduce((sum, { from, angle }) => sum + (from === 'above' ? 1 : -1) * Math.sign(Math.round(90 - angle)), 0);

const cutsOfGroup = ({ notches }: StripGroup): Cut[] =>
  notches.flatMap((run) =>
    placesOfRun(run).map((place) => ({ place, angle: run.angle, width: run.width, depth: run.depth, from: run.from })),
  );

/** The cuts of the kind as this strip of it lies. */
function cutsInPlace(group: StripGroup, again: StripAgain): Cut[] {
  const cuts = cutsOfGroup(group);
  const way = ways.find(([isTurned, isFlipped]) => sameCuts(laid(cuts, group.length, isTurned, isFlipped), again.cuts));
  if (!way) throw new Error(`${JSON.stringify(cuts)} cannot be laid as ${JSON.stringify(again)}`);
  return laid(cuts, group.length, ...way);
}

/** Strips that are nearly, but not quite, their own mirror image are left to rounding. */
function checkHand({ hand }: StripGroup, { cuts, length }: StripAgain): void {
  const [isEitherHand, isNearlyEither] = [0.001, kind].map((within) =>
    canBeLaidAs(mirrored(cuts), length, cuts, within),
  );
  if (isEitherHand !== isNearlyEither) return;
  expect(hand === null).toBe(isEitherHand);
  const more = lean(cuts);
  if (!isEitherHand && more !== 0) expect(hand).toBe(more > 0 ? 'right' : 'left');
}

interface Lap {
  readonly depths: number[];
  readonly sides: Set<string>;
  /** How many lines of the grid meet here. */
  readonly lines: number;
}

/** Depths of two that cross where three meet, in sixths of the strip: the middle one’s first, last, or not among them. */
const sixthsOfThree = [
  [2, 4],
  [4, 2],
  [4, 4],
];

/** Two strips that cross take each other’s place: from both sides, as deep together as the strips. Lowest and highest of three take a third more, the middle one’s. */
function checkLap(lap: Lap): void {
  const [one, other] = lap.depths.map((depth) => Math.round((6 * depth) / ash.depth));
  expect([...lap.sides].sort()).toEqual(['above', 'below']);
  expect(lap.lines === 2 ? [[3, 3]] : sixthsOfThree).toContainEqual([one, other]);
}

/** Where a cut lies, and of which two directions. */
function lapKey(direction: number, { start }: StripAgain, { place, angle }: Cut): string {
  const { x, y } = turned({ x: place, y: 0 }, direction);
  const headings = [direction, direction + angle].map((each) => Math.round((((each % 180) + 180) % 180) * 100) % 18000);
  return [...[start.x + x, start.y + y].map((each) => Math.round((each + 0.0371) * 10)), ...headings.sort()].join();
}

function check({ panel, ring, origin }: Design): void {
  const again = stripsAgain(panel, origin, ring);
  const { strips } = laidOut(panel);
  const made = strips.flatMap((group) => group.placements.map(({ at, turn }) => ({ group, at, turn })));
  expect(made.length).toBe(again.length);
  const laps = new Map<string, Lap>();
  for (const { group, at, turn } of made) {
    const twin = again.find(
      ({ family, start }) => family === group.family - 1 && Math.hypot(start.x - at.x, start.y - at.y) < nearby,
    );
    if (!twin) throw new Error(`no strip starts at ${JSON.stringify(at)} but ${JSON.stringify(again)}`);
    expect(turn).toBe(panel.grid.families[twin.family]?.direction);
    expect(Math.abs(group.length - twin.length)).toBeLessThan(kind);
    checkHand(group, twin);
    for (const cut of cutsInPlace(group, twin)) {
      const known = twin.cuts.find((each) => isSameCut(each, cut));
      const key = lapKey(turn, twin, known ?? cut);
      const lap = laps.get(key) ?? { depths: [], sides: new Set(), lines: known?.lines ?? 0 };
      laps.set(key, { ...lap, depths: [...lap.depths, cut.depth], sides: lap.sides.add(cut.from) });
    }
  }
  if (!panel.grid.bothSlants) for (const lap of laps.values()) checkLap(lap);
}

it(`strips, ends, notches and hands of ${String(designs)} panels are those of a second, independent geometry`, () => {
  fc.assert(
    fc.property(randomDesigns, (design) => {
      try {
        check(design);
      } catch (error) {
        fc.pre(!(error instanceof TooClose));
        throw error;
      }
    }),
    { numRuns: designs },
  );
});
