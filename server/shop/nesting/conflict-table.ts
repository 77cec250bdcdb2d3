/** Which places of cut-outs cannot be taken together in one blank. */
import { grownRings } from '../../geometry/grow-rings.ts';
import type { Point } from '../../geometry/point.ts';
import { areaOf, boundsMeet, grownBounds, intersectionOf } from '../../geometry/polygons.ts';
import { areaTolerance, placeDecimals, rounded } from '../../geometry/tolerance.ts';
import type { Place } from './cut-out.ts';

/** For each place, by its index, the places that it rules out. */
export type ConflictTable = readonly ReadonlySet<number>[];

/**
 * Two places conflict where their saw lines come nearer than `gap`, or where `clash` says so. Pairs that differ by a
 * translation alone are looked at once.
 */
export function conflictTable(
  places: readonly Place[],
  gap: number,
  clash: (first: Place, second: Place) => boolean,
): ConflictTable {
  const table = places.map(() => new Set<number>());
  const grown = places.map((place) => ({ bounds: grownBounds(place.bounds, gap), rings: null as Point[][] | null }));
  const known = new Map<string, boolean>();
  places.forEach((first, index) => {
    for (let other = index + 1; other < places.length; other++) {
      const [second, wide] = [places[other], grown[index]];
      if (!second || !wide || !boundsMeet(wide.bounds, second.bounds)) continue;
      const key = pairKey(first, second);
      let near = known.get(key);
      if (near === undefined) {
        wide.rings ??= grownRings(first.rings, gap, 'round');
        near = areaOf(intersectionOf(wide.rings, second.rings)) > areaTolerance;
        known.set(key, near);
      }
      if (!near && !clash(first, second)) continue;
      table[index]?.add(other);
      table[other]?.add(index);
    }
  });
  return table;
}

/** Equal for pairs that lie to one another in the same way. */
function pairKey(first: Place, second: Place): string {
  const kindOf = ({ cutOut, move }: Place): string => `${cutOut.name} ${String(move.turn)} ${String(move.mirrored)}`;
  const across = rounded(second.move.shift.x - first.move.shift.x, placeDecimals);
  const up = rounded(second.move.shift.y - first.move.shift.y, placeDecimals);
  return [kindOf(first), kindOf(second), across, up].join('|');
}

/**
 * Cliques of conflicting places that together hold every conflict: rows of a program that let only one of each be
 * taken. Each begins with a pair not yet held and takes up whatever conflicts with all of it.
 */
export function conflictCliques(table: ConflictTable): number[][] {
  const held = table.map(() => new Set<number>());
  const cliques: number[][] = [];
  table.forEach((conflicts, index) => {
    for (const other of conflicts) {
      if (other < index || held[index]?.has(other)) continue;
      const clique = [index, other];
      for (const more of conflicts)
        if (!clique.includes(more) && clique.every((member) => table[member]?.has(more))) clique.push(more);
      for (const member of clique) for (const mate of clique) if (mate !== member) held[member]?.add(mate);
      cliques.push(clique);
    }
  });
  return cliques;
}
