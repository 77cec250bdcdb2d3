/** What is wrong with a layout, found by flatten-js, a geometry library that the engine does not use. */
import Flatten from '@flatten-js/core';
import { type Point, turned } from '../../../server/geometry/point.ts';
import type { Bounds } from '../../../server/geometry/polygons.ts';
import type { NestKind, NestPlace } from '../../../server/shop/sheets/nest-kind.ts';

export const placedRing = (ring: readonly Point[], { turn, x, y }: Pick<NestPlace, 'turn' | 'x' | 'y'>): Point[] =>
  ring.map((point) => turned(point, turn)).map((point) => ({ x: point.x + x, y: point.y + y }));

export const ringsOf = (kinds: readonly NestKind[], places: readonly NestPlace[]): Point[][] =>
  places.map((place) => placedRing(kinds[place.kind]?.ring ?? [], place));

/** Pairs nearer than `gap` or one in the other, and rings that stand out of the room; in words, none for a sound layout. */
export function layoutFaults(rings: readonly (readonly Point[])[], room: Bounds, gap: number): string[] {
  const polygons = rings.map((ring) => new Flatten.Polygon(ring.map(({ x, y }) => Flatten.point(x, y))));
  const outside = rings.flatMap((ring, index) =>
    ring.some(({ x, y }) => x < room.left || x > room.right || y < room.bottom || y > room.top)
      ? [`${index} stands out`]
      : [],
  );
  const near = polygons.flatMap((first, index) =>
    polygons.slice(index + 1).flatMap((second, further) => {
      const pair = `${index} and ${index + 1 + further}`;
      if (!boxesNear(first, second, gap)) return [];
      if (holdsCorner(first, second) || holdsCorner(second, first)) return [`${pair} overlap`];
      const [apart] = first.distanceTo(second);
      return apart < gap || apart === 0 ? [`${pair} are ${apart} apart`] : [];
    }),
  );
  return [...outside, ...near];
}

function boxesNear({ box: a }: Flatten.Polygon, { box: b }: Flatten.Polygon, gap: number): boolean {
  return a.xmin <= b.xmax + gap && b.xmin <= a.xmax + gap && a.ymin <= b.ymax + gap && b.ymin <= a.ymax + gap;
}

const holdsCorner = (outer: Flatten.Polygon, inner: Flatten.Polygon): boolean =>
  inner.vertices.some((corner) => outer.contains(corner));
