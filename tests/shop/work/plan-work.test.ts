/** The assembled work against figures worked by hand, and overlaps against an independent library. */
import { Polygon, BooleanOperations } from '@flatten-js/core';
import { describe, expect, test } from 'vitest';
import type { Board, Pour } from '../../../server/design/work-model.ts';
import { emptyDesign } from '../../../server/design/empty-design.ts';
import type { Point } from '../../../server/geometry/point.ts';
import { facingOf, sharedArea } from '../../../server/shop/work/facing.ts';
import { planWork } from '../../../server/shop/work/plan-work.ts';
import { boardOf, outlineOf, placementOf, polygonContour, pourOf, workOf } from '../../design-builder.ts';
import { schemaFaults } from '../plan-schema.ts';
import { planOf } from '../planned.ts';

const box = (left: number, bottom: number, width: number, height: number): Point[] => [
  { x: left, y: bottom },
  { x: left + width, y: bottom },
  { x: left + width, y: bottom + height },
  { x: left, y: bottom + height },
];

describe('two edges', () => {
  test('that overlap: how deep, and where', () => {
    expect(facingOf([box(0, 0, 100, 50)], [box(98, 10, 60, 20)])).toMatchObject({
      overlap: expect.closeTo(2, 3) as number,
      overlapArea: expect.closeTo(40, 3) as number,
      gap: 0,
      at: { x: expect.closeTo(99, 3) as number, y: expect.closeTo(20, 3) as number },
    });
  });

  test('that leave a gap: how wide', () => {
    expect(facingOf([box(0, 0, 100, 50)], [box(101.5, 10, 60, 20)])).toMatchObject({
      overlap: 0,
      gap: 1.5,
      contact: 0,
    });
  });

  test('that touch: as long as the shorter of them', () => {
    const facing = facingOf([box(0, 0, 100, 50)], [box(100, 10, 60, 20)]);
    expect(facing).toMatchObject({ overlap: 0, gap: 0 });
    expect(Math.abs((facing?.contact ?? 0) - 20)).toBeLessThanOrEqual(1); // looked at in steps of a millimetre
  });

  test('that are far apart are not meant to meet', () => {
    expect(facingOf([box(0, 0, 100, 50)], [box(110, 0, 60, 20)])).toBeNull();
  });
});

test('shared areas of random triangles are those of an independent polygon library', () => {
  let seed = 7;
  const next = (): number => (seed = (seed * 16807) % 2147483647) / 2147483647;
  const triangle = (): Point[] => {
    const [a, b, c] = Array.from({ length: 3 }, () => ({ x: 100 * next(), y: 100 * next() })) as [Point, Point, Point];
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) > 0 ? [a, b, c] : [a, c, b];
  };
  const polygon = (ring: readonly Point[]): Polygon => new Polygon(ring.map(({ x, y }): [number, number] => [x, y]));
  for (let round = 0; round < 40; round += 1) {
    const [one, two] = [triangle(), triangle()];
    const common = BooleanOperations.intersect(polygon(one), polygon(two));
    expect(Math.abs(sharedArea([one], [two]) - Math.abs(common.area()))).toBeLessThan(0.05);
  }
});

describe('a bar and a plate on a board', () => {
  const at = (x: number, y: number): Point => ({ x, y });
  const board: Board = boardOf(outlineOf('slab', polygonContour(box(-150, -100, 300, 200))));
  const bar: Pour = pourOf({ kind: 'rectangle', width: 80, height: 20 }, [8], { copies: 2 });
  const work = workOf({
    copies: 2,
    placements: [
      placementOf({ kind: 'board', board }, at(0, 0), { layer: 0 }),
      placementOf({ kind: 'pour', pour: bar }, at(0, 0), { layer: 1 }),
      placementOf({ kind: 'pour', pour: bar }, at(0, 50), { layer: 1, turn: 90 }),
    ],
  });
  const plan = planWork({ ...emptyDesign, boards: [board], pours: [bar], work }, []);

  test('size and box: 300 × 200, board and bar deep', () => {
    expect(plan).toMatchObject({ copies: 2, widthMm: 300, heightMm: 200, depthMm: 14, boxMm: [360, 260, 74] });
  });

  test('the bars meet along 20 mm, 8 mm deep, and both lie on the board with all of their area', () => {
    expect(plan?.joints).toHaveLength(1);
    expect(plan?.joints[0]).toMatchObject({ overlapMm: 0, gapMm: 0, parts: ['stem', 'stem'] });
    expect(Math.abs((plan?.joints[0]?.contactMm2 ?? 0) - 20 * 8)).toBeLessThanOrEqual(8);
    expect(plan?.rests.map(({ on, areaMm2 }) => [on, areaMm2])).toEqual([
      ['back', 1600],
      ['back', 1600],
    ]);
  });

  test('counts as many of each part as are placed, within its schema', () => {
    expect(plan?.parts).toEqual([
      { part: 'back', placed: 1 },
      { part: 'stem', placed: 2 },
    ]);
    expect(schemaFaults(planOf([], { boards: [board], pours: [bar], work }))).toEqual([]);
  });
});

test('nothing placed, no work section', () => {
  expect(planWork({ ...emptyDesign, work: workOf() }, [])).toBeNull();
});
