/** A packing that was found for a blank, taken over for the same blank in a later version of its text. */
import type { GridMove } from '../../lattice/grid/grid-symmetries.ts';
import type { Place } from './cut-out.ts';
import { placedPieces } from './lay-out-blank.ts';
import { laidOut, type NestedBlank } from './nest-blanks.ts';

/**
 * `nested` with the packing of `found`; null where anything differs by which it is packed: places and what fills their
 * cells, numbers wanted, distances. Where the words stand in the text does not count.
 */
export function packedLike(nested: NestedBlank, found: NestedBlank): NestedBlank | null {
  if (taskKey(nested) !== taskKey(found)) return null;
  const placeNow = (place: Place): Place | [] => nested.task.places[found.task.places.indexOf(place)] ?? [];
  const blanks = found.packing.blanks.map((filled) => ({ ...filled, places: filled.places.flatMap(placeNow) }));
  const { bound } = found.packing;
  return laidOut({ ...nested, packing: { blanks, bound, homeless: nested.task.homeless } });
}

const atRest: GridMove = { turn: 0, mirrored: false, shift: { x: 0, y: 0 } };

/** Equal for equal tasks: places are worked out from the cut-outs and the room by one rule. */
function taskKey({ blank, cutOuts, task }: NestedBlank): string {
  const cut = cutOuts.map((cutOut) => [
    ...[cutOut.name, cutOut.count, cutOut.sawLine],
    cutOut.cells.map(({ middle, motif, pieces }) => [middle, motif, pieces]),
    placedPieces(cutOut, atRest).map(({ key }) => key),
  ]);
  const places = task.places.map(({ move }, index) => [task.kinds[index], move]);
  return JSON.stringify([blank.name, task.gap, task.areaBound, task.thinned, cut, places]);
}
