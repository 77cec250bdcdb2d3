/** Which places of cut-outs cannot be taken together in one blank. */
import { minimum } from '../../geometry/numbers.ts';
import { grownRings } from '../../geometry/grow-rings.ts';
import type { Point } from '../../geometry/point.ts';
import { areaOf, boundsMeet, grownBounds, intersectionOf } from '../../geometry/polygons.ts';
import { areaTolerance, placeDecimals, placeTolerance, rounded } from '../../geometry/tolerance.ts';
import { regionHolds, regionOf } from '../../geometry/region.ts';
import type { Place } from './cut-out.ts';

/** For each place, by its index, the places that it rules out. */
export type ConflictTable = readonly ReadonlySet<number>[];

/** Whether two places, by their indices, rule one another out. */
export type ConflictTest = (first: number, second: number) => boolean;

/**
 * Two places conflict where their saw lines come nearer than `gap`, or where `clash` says so. Worked out pair by pair when
 * asked for; pairs that differ by a translation alone are looked at once.
 */
export function conflictTest(
  places: readonly Place[],
  gap: number,
  clash: (first: Place, second: Place) => boolean,
): ConflictTest {
  const near = new Map<string, boolean>();
  const grown = new Map<Place, Point[][]>();
  const grownOf = (place: Place): Point[][] => {
    const rings = grown.get(place) ?? grownRings(place.rings, gap, 'round');
    grown.set(place, rings);
    return rings;
  };
  const isNear = (first: Place, second: Place): boolean => {
    const key = pairKey(first, second);
    const known = near.get(key);
    if (known !== undefined) return known;
    const found = areaOf(intersectionOf(grownOf(first), second.rings)) > areaTolerance;
    near.set(key, found);
    return found;
  };
  return (firstIndex, secondIndex) => {
    const [first, second] = [places[firstIndex], places[secondIndex]];
    if (!first || !second || !boundsMeet(grownBounds(first.bounds, gap), second.bounds)) return false;
    return isNear(first, second) || clash(first, second);
  };
}

export function conflictTable(count: number, conflict: ConflictTest): ConflictTable {
  const table = Array.from({ length: count }, () => new Set<number>());
  for (let first = 0; first < count; first++)
    for (let second = first + 1; second < count; second++) {
      if (!conflict(first, second)) continue;
      table[first]?.add(second);
      table[second]?.add(first);
    }
  return table;
}

/** Equal for pairs that lie to one another in the same way. */
function pairKey(first: Place, second: Place): string {
  const kindOf = ({ cutOut, move }: Place): string => `${cutOut.name} ${String(move.turn)} ${String(move.mirrored)}`;
  const across = rounded(second.move.shift.x - first.move.shift.x, placeDecimals);
  const up = rounded(second.move.shift.y - first.move.shift.y, placeDecimals);
  return [kindOf(first), kindOf(second), across, up].join('|');
}

/** Steps between the spots that are looked at for what lies over them, to the smaller side of the smallest cut-out. */
const spotsAcross = 6;

/**
 * Places that lie over one spot, half of the gap round each counted in: of all of them only one can be taken. A program
 * with a row for every spot sees how little room there is; one with rows for pairs alone does not.
 */
export function spotCliques(places: readonly Place[], gap: number): number[][] {
  const sides = places.map(({ bounds }) => Math.min(bounds.right - bounds.left, bounds.top - bounds.bottom));
  const step = Math.max(minimum(sides) / spotsAcross, gap / 2);
  const spots = new Map<string, number[]>();
  places.forEach(({ rings, bounds }, index) => {
    const region = regionOf(grownRings(rings, gap / 2 - placeTolerance, 'round'));
    const { left, right, bottom, top } = grownBounds(bounds, gap / 2);
    for (let column = Math.ceil(left / step); column * step <= right; column++)
      for (let row = Math.ceil(bottom / step); row * step <= top; row++) {
        if (!regionHolds(region, { x: column * step, y: row * step })) continue;
        const key = `${String(column)} ${String(row)}`;
        const over = spots.get(key);
        if (over) over.push(index);
        else spots.set(key, [index]);
      }
  });
  return [...spots.values()].filter((over) => over.length > 1);
}

/**
 * Cliques of conflicting places that together hold every conflict: rows of a program that let only one of each be
 * taken. First those given, then each begins with a pair not yet held and takes up whatever conflicts with all of it.
 */
export function conflictCliques(table: ConflictTable, given: readonly (readonly number[])[]): (readonly number[])[] {
  const held = table.map(() => new Set<number>());
  const cliques: (readonly number[])[] = [...given];
  for (const clique of given)
    for (const member of clique) for (const mate of clique) if (mate !== member) held[member]?.add(mate);
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
