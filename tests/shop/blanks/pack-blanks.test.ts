/** Pattern-matched packings: sound by an independent polygon library, on the pattern line by line, and proven where they can be. */
import Flatten from '@flatten-js/core';
import { describe, expect, test } from 'vitest';
import type { Grid } from '../../../server/design/design-model.ts';
import { dot, type Point } from '../../../server/geometry/point.ts';
import { lineFamilies } from '../../../server/lattice/grid/grid-lines.ts';
import { movedPoint, undone } from '../../../server/lattice/grid/grid-symmetries.ts';
import {
  type BlankPacking,
  type BlankRoom,
  blanksUsed,
  type CutOut,
  type Place,
} from '../../../server/shop/blanks/cut-out.ts';
import { packBlanks, packQuickly } from '../../../server/shop/blanks/pack-blanks.ts';
import { packingTask } from '../../../server/shop/blanks/packing-task.ts';
import { loadSolver } from '../../../server/machine/load-solver.ts';
import { startWatch } from '../../../server/machine/start-watch.ts';
import { gridOf, stripStock } from '../../design-builder.ts';

const solver = loadSolver();
const ash = stripStock('ash', 3);
const square = gridOf('square', 40, ash);
const threeWay = gridOf('three_way', 36, ash);

const roomOf = (grid: Grid, width: number, height: number, more: Partial<BlankRoom> = {}): BlankRoom => ({
  width,
  height,
  margin: 0,
  gap: 4,
  families: lineFamilies(grid, { x: 0, y: 0 }),
  rules: { wood: false, laps: false },
  turns: null,
  fromBack: false,
  ...more,
});

const cutOutOf = (grid: Grid, name: string, count: number, ring: readonly Point[], node: Point): CutOut => ({
  name,
  outline: name,
  count,
  sawLine: [ring],
  families: lineFamilies(grid, node),
});

const ringOf = (...corners: [number, number][]): Point[] => corners.map(([x, y]) => ({ x, y }));

const packed = async (cutOuts: CutOut[], room: BlankRoom, seconds = 20): Promise<BlankPacking> =>
  packBlanks(
    packingTask(cutOuts, room, () => false),
    await solver,
    startWatch({ seconds }),
  );

/** Every cut-out as often as wanted, inside its blank, apart from the others, and its lines on the lines of the blank. */
function expectSound(packing: BlankPacking, cutOuts: readonly CutOut[], room: BlankRoom): void {
  for (const cutOut of cutOuts) {
    const made = packing.blanks.flatMap(({ places, count }) =>
      places.filter((place) => place.cutOut === cutOut).map(() => count),
    );
    expect(made.reduce((sum, count) => sum + count, 0)).toBe(packing.homeless.includes(cutOut) ? 0 : cutOut.count);
  }
  for (const { places } of packing.blanks) {
    const shapes = places.map(polygonOf);
    shapes.forEach((shape, index) => {
      const { xmin, xmax, ymin, ymax } = shape.box;
      expect(Math.max(-xmin, xmax)).toBeLessThan(room.width / 2 - room.margin + 0.01);
      expect(Math.max(-ymin, ymax)).toBeLessThan(room.height / 2 - room.margin + 0.01);
      for (const other of shapes.slice(index + 1)) expect(shape.distanceTo(other)[0]).toBeGreaterThan(room.gap - 0.02);
    });
    for (const place of places) expectOnPattern(place, room);
  }
}

const polygonOf = ({ rings }: Place): Flatten.Polygon => {
  const polygon = new Flatten.Polygon();
  for (const ring of rings) polygon.addFace(ring.map(({ x, y }) => Flatten.point(x, y)));
  return polygon;
};

/** Places strewn over the cut-out are as far from the lines of the blank, whichever family, as they were in the panel. */
function expectOnPattern({ cutOut, rings, move }: Place, { families }: BlankRoom): void {
  const missesOf = (lines: BlankRoom['families'], place: Point): number[] =>
    lines
      .map(({ normal, offset, spacing }) => {
        const steps = (dot(normal, place) - offset) / spacing;
        return Math.abs(steps - Math.round(steps)) * spacing;
      })
      .sort((a, b) => a - b);
  for (const place of rings.flat()) {
    const inPanel = movedPoint(place, undone(move));
    const [there, here] = [missesOf(families, place), missesOf(cutOut.families, inPanel)];
    there.forEach((miss, index) => expect(miss).toBeCloseTo(here[index] ?? NaN, 6));
  }
}

describe('cut-outs on a square grid', () => {
  const plate = cutOutOf(square, 'plate', 10, ringOf([2, 2], [78, 2], [78, 78], [2, 78]), { x: 0, y: 0 });

  test('four to a blank that takes exactly four: three blanks for ten, proven', async () => {
    const room = roomOf(square, 160, 160);
    const packing = await packed([plate], room);
    expectSound(packing, [plate], room);
    expect([blanksUsed(packing), packing.bound]).toEqual([3, 3]);
  });

  test('a phase that does not fit the blank costs room: the pattern is not broken for it', async () => {
    // The blank is as wide as two plates and their gap, but a line runs through its middle and not between them.
    const room = roomOf(square, 157, 157, { families: lineFamilies(square, { x: 20, y: 20 }) });
    const packing = await packed([plate], room);
    expectSound(packing, [plate], room);
    expect([blanksUsed(packing), packing.bound]).toEqual([10, 10]);
  });

  test('what is larger than the blank has no home, and the rest is packed', async () => {
    const long = cutOutOf(square, 'long', 1, ringOf([0, 0], [300, 0], [300, 30], [0, 30]), { x: 0, y: 0 });
    const room = roomOf(square, 160, 160);
    const packing = await packed([plate, long], room);
    expect(packing.homeless).toEqual([long]);
    expectSound(packing, [plate, long], room);
  });
});

describe('leaning shapes on a three-way grid', () => {
  const wedge = cutOutOf(threeWay, 'wedge', 7, ringOf([0, 0], [150, 10], [60, 118], [22, 64]), { x: 5, y: 9 });
  const bar = cutOutOf(threeWay, 'bar', 5, ringOf([-80, -14], [80, -14], [80, 14], [-80, 14]), { x: 0, y: 0 });

  test('turned to nest in one another, proven or with their gap', async () => {
    const room = roomOf(threeWay, 420, 297, { margin: 8 });
    const packing = await packed([wedge, bar], room);
    expectSound(packing, [wedge, bar], room);
    expect(packing.bound).toBeLessThanOrEqual(blanksUsed(packing));
    expect(packing.bound).toBeGreaterThanOrEqual(1);
    const quick = packQuickly(packingTask([wedge, bar], room, () => false));
    expectSound(quick, [wedge, bar], room);
    expect(blanksUsed(packing)).toBeLessThanOrEqual(blanksUsed(quick));
  });

  test('turns that are not allowed are not used, and only a blank sawn from the back mirrors', async () => {
    const room = roomOf(threeWay, 420, 297, { margin: 8, turns: [0, 180] });
    const packing = await packed([wedge], room);
    const moves = packing.blanks.flatMap(({ places }) => places.map(({ move }) => move));
    expect(moves.every(({ turn, mirrored }) => !mirrored && (turn === 0 || turn === 180))).toBe(true);
    const turnedOver = await packed([wedge], { ...room, turns: [60], fromBack: true });
    expectSound(turnedOver, [wedge], { ...room, turns: [60], fromBack: true });
  });
});
