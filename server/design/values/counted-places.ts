/**
 * Which way the places of a free grid's strips count where the panel says no phase: from the lower left corner of its box,
 * upwards for families that run level or nearly so, to the right for the others.
 */
import { direction, dot, quarterTurn } from '../../geometry/point.ts';
import { headingOf } from '../../geometry/tolerance.ts';
import type { Grid, GridFamily } from '../design-model.ts';

/** 1 where places count along the normal of a family of this direction (in degrees, the grid's turn left out), −1 where against it. */
export function countedWay(heading: number): 1 | -1 {
  const onwards = isLevel(headingOf(heading)) ? { x: 0, y: 1 } : { x: 1, y: 0 };
  return dot(quarterTurn(direction(heading)), onwards) > 0 ? 1 : -1;
}

const isLevel = (heading: number): boolean => heading < 45 || heading >= 135;

export const hasPlaces = ({ families }: Grid): boolean => families.some(({ positions }) => positions !== null);

/** The grid with its places and offsets along the normals, as they are counted from the corner. */
export const countedFromCorner = (grid: Grid): Grid => ({
  ...grid,
  families: grid.families.map((family) =>
    countedWay(family.direction - grid.turn) === 1 ? family : countedBackwards(family),
  ),
});

const countedBackwards = (family: GridFamily): GridFamily => ({
  ...family,
  offset: 0 - family.offset,
  positions: family.positions?.map((position) => 0 - position).reverse() ?? null,
  positionRanges: family.positionRanges ? [...family.positionRanges].reverse() : null,
});
