/**
 * Pieces put down one after another, each as far left and then as low as it goes among those before it: the corners of its
 * free region, which is the inner fit of the room without the no-fit polygons, are looked at (A. M. Gomes, J. F. Oliveira,
 * European Journal of Operational Research 141, 2002).
 */
import { difference, FillRule } from 'clipper2-ts';
import type { Point } from '../../geometry/point.ts';
import { ringOfBounds } from '../../geometry/polygons.ts';
import type { Spot } from './layout.ts';
import { innerFit, type Room, type Variant } from './nest-kind.ts';
import type { NoFitTable } from './no-fit-table.ts';

/** A piece that was put down, and in which room. */
export interface PlacedSpot extends Spot {
  readonly piece: number;
  readonly room: number;
}

/** Where a piece goes: how far right it then reaches, and how high. */
interface Offer {
  readonly spot: Spot;
  readonly reach: number;
}

/**
 * Each piece of `order` (with the variants it may take) in the first room that has a place for it; without a place, it is
 * left out of the result.
 */
export function placeInTurn(
  order: readonly { readonly piece: number; readonly variants: readonly number[] }[],
  rooms: readonly Room[],
  table: NoFitTable,
): PlacedSpot[] {
  const placed: PlacedSpot[] = [];
  /** What found no place in a room once finds none later. */
  const full = new Set<string>();
  for (const { piece, variants } of order) {
    for (const [index, room] of rooms.entries()) {
      const question = `${index} ${variants.join()}`;
      if (full.has(question)) continue;
      const beside = placed.filter((spot) => spot.room === index);
      const offer = bestOffer(variants, room, beside, table);
      if (!offer) {
        full.add(question);
        continue;
      }
      placed.push({ ...offer.spot, piece, room: index });
      break;
    }
  }
  return placed;
}

function bestOffer(
  variants: readonly number[],
  room: Room,
  beside: readonly PlacedSpot[],
  table: NoFitTable,
): Offer | null {
  return variants.reduce<Offer | null>((best, index) => {
    const variant = table.variants[index];
    const fit = variant && innerFit(variant, room);
    if (!variant || !fit) return best;
    const corners = freeCorners(fit, beside, index, table);
    return corners.reduce((least, { x, y }) => nearer(least, offerAt(variant, index, x, y)), best);
  }, null);
}

const offerAt = ({ bounds }: Variant, variant: number, x: number, y: number): Offer => ({
  spot: { variant, x, y },
  reach: x + bounds.right,
});

function nearer(best: Offer | null, offer: Offer): Offer {
  if (!best || offer.reach < best.reach) return offer;
  return offer.reach === best.reach && offer.spot.y < best.spot.y ? offer : best;
}

function freeCorners(fit: Room, beside: readonly PlacedSpot[], variant: number, table: NoFitTable): Point[] {
  const taken = beside.flatMap((other) =>
    table
      .between(other.variant, variant)
      .rings.map((ring) => ring.map(({ x, y }) => ({ x: x + other.x, y: y + other.y }))),
  );
  // A room that fits exactly leaves a region without area, of which the clipping library knows nothing.
  if (taken.length === 0) return [{ x: fit.left, y: fit.bottom }];
  return difference([ringOfBounds(fit)], taken, FillRule.NonZero).flat();
}
