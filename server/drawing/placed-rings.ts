/** Where a drawn kind really lies: its rings turned and moved by each of its placements. */
import { direction } from '../geometry/point.ts';
import type { DrawnKind, Rings } from './drawing.ts';

/** The rings of every placement, in order, in the drawing's coordinates (millimetres, y up). */
export function* placedRings(kind: DrawnKind): Generator<Rings> {
  const { placements } = kind;
  for (let index = 0; index + 2 < placements.length; index += 3) {
    const along = direction(placements[index + 2] ?? 0);
    const x = placements[index] ?? 0;
    const y = placements[index + 1] ?? 0;
    yield kind.rings.map((ring) => movedRing(ring, along, x, y));
  }
}

function movedRing(
  ring: readonly number[],
  along: { readonly x: number; readonly y: number },
  x: number,
  y: number,
): number[] {
  const moved: number[] = [];
  for (let index = 0; index + 1 < ring.length; index += 2) {
    const u = ring[index] ?? 0;
    const v = ring[index + 1] ?? 0;
    moved.push(x + u * along.x - v * along.y, y + u * along.y + v * along.x);
  }
  return moved;
}
