/** What is to be nested, in whole units: outlines in every turn they may take. Holes are ignored: nothing is put into them. */
import type { Point } from '../../geometry/point.ts';
import { turned } from '../../geometry/point.ts';
import { type Bounds, boundsOf } from '../../geometry/polygons.ts';

/** An outline, a simple counter-clockwise polygon in whole units, and how many of it are wanted. */
export interface NestKind {
  readonly name: string;
  readonly ring: readonly Point[];
  readonly count: number;
  /** Degrees counter-clockwise that it may be turned by; at least one. */
  readonly turns: readonly number[];
}

/** A kind in one of its turns, about its own origin. */
export interface Variant {
  readonly kind: number;
  readonly turn: number;
  readonly ring: readonly Point[];
  readonly bounds: Bounds;
}

/** Where the origin of one piece lies in a room. */
export interface NestPlace {
  readonly kind: number;
  readonly turn: number;
  readonly x: number;
  readonly y: number;
}

/** A room, the free inside of a sheet or of a strip: pieces lie in it, edges included. */
export type Room = Bounds;

/** Every kind in every turn it may take, its corners rounded to whole units. */
export const variantsOf = (kinds: readonly NestKind[]): Variant[] =>
  kinds.flatMap(({ ring, turns }, kind) =>
    turns.map((turn): Variant => {
      const moved = ring.map((point) => wholePoint(turned(point, turn)));
      return { kind, turn, ring: moved, bounds: boundsOf(moved) };
    }),
  );

const wholePoint = ({ x, y }: Point): Point => ({ x: Math.round(x) + 0, y: Math.round(y) + 0 });

/** Where the origin of a variant may lie in a room; null where the variant is larger than the room. */
export function innerFit({ bounds }: Variant, room: Room): Room | null {
  const fit = {
    left: room.left - bounds.left,
    right: room.right - bounds.right,
    bottom: room.bottom - bounds.bottom,
    top: room.top - bounds.top,
  };
  return fit.left <= fit.right && fit.bottom <= fit.top ? fit : null;
}
