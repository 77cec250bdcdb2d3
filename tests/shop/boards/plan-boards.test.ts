/** Boards against closed formulas. */
import { describe, expect, test } from 'vitest';
import type { Board } from '../../../server/design/work-model.ts';
import { emptyDesign } from '../../../server/design/empty-design.ts';
import { planBoards } from '../../../server/shop/boards/plan-boards.ts';
import { boardOf, circleContour, ellipseContour, outlineOf, polygonContour, workOf } from '../../design-builder.ts';
import { schemaFaults } from '../plan-schema.ts';
import { planOf } from '../planned.ts';

const plan = (board: Board) => planBoards({ ...emptyDesign, boards: [board], work: workOf({ copies: 2 }) })[0];
const rectangle = polygonContour([
  { x: 0, y: 0 },
  { x: 300, y: 0 },
  { x: 300, y: 200 },
  { x: 0, y: 200 },
]);

test('a round board: πr², 2πr, one trammel setting, from a square that clears it', () => {
  expect(plan(boardOf(outlineOf('disc', circleContour(150, { x: 10, y: 0 }))))).toMatchObject({
    quantity: 2,
    widthMm: expect.closeTo(300, 3) as number,
    areaMm2: expect.closeTo(Math.PI * 150 ** 2, 2) as number,
    edgeAreaMm2: expect.closeTo(2 * Math.PI * 150 * 6, 2) as number,
    massG: expect.closeTo(Math.PI * 150 ** 2 * 6 * 680e-6, 3) as number,
    blankMm: [310, 310],
    pivot: { xMm: 10, yMm: 0 },
    trammel: { kind: 'circle', settingsMm: [150] },
  });
});

test('an oval board: πab, and both settings of an ellipse trammel', () => {
  expect(plan(boardOf(outlineOf('oval', ellipseContour(210, 140))))).toMatchObject({
    areaMm2: expect.closeTo(Math.PI * 210 * 140, 2) as number,
    trammel: { kind: 'ellipse', settingsMm: [210, 140] },
  });
});

describe('a square-cornered board', () => {
  test('has no trammel and no pivot, and comes from a piece of its own size and a little', () => {
    expect(plan(boardOf(outlineOf('slab', rectangle)))).toMatchObject({
      perimeterMm: 1000,
      blankMm: [310, 210],
      pivot: null,
      trammel: null,
    });
  });

  test('keeps the pivot and edge that are stated', () => {
    const board = boardOf(outlineOf('slab', rectangle), {
      pivot: { x: 150, y: 100 },
      edge: { kind: 'chamfer', size: 3 },
    });
    expect(plan(board)).toMatchObject({ pivot: { xMm: 150, yMm: 100 }, edge: 'chamfer', edgeSizeMm: 3 });
  });

  test('stands in a plan that keeps to its schema', () => {
    expect(schemaFaults(planOf([], { boards: [boardOf(outlineOf('slab', rectangle))] }))).toEqual([]);
  });
});
