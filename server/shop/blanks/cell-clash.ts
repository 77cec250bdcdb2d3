/** Whether two cut-outs may share the cells that both of them meet: only where both fill them alike. */
import { rounded } from '../../geometry/tolerance.ts';
import { type GridMove, movedPoint } from '../../lattice/grid/grid-symmetries.ts';
import type { Point } from '../../geometry/point.ts';
import type { PanelCutOut } from './cut-out-of-panel.ts';
import type { Place } from './cut-out.ts';

/** A place in the blank as a key: moves carry a cell onto a cell within far less than its last decimal. */
export function placeKey(point: Point): string {
  return `${String(rounded(point.x + keyShift, keyDecimals))} ${String(rounded(point.y + keyShift, keyDecimals))}`;
}

/** Middles of cells and pieces often lie on round figures, where noise alone would choose between two keys. */
const keyShift = 0.001_37;
const keyDecimals = 2;

/** Tells of two places that some cell would be filled in two ways. Each place's cells are worked out when first asked for. */
export function cellClash(cutOuts: readonly PanelCutOut[]): (first: Place, second: Place) => boolean {
  const known = new Map<Place, ReadonlyMap<string, string>>();
  const fillsOf = (place: Place): ReadonlyMap<string, string> => {
    const before = known.get(place);
    if (before) return before;
    const fills = placedFills(
      cutOuts.find((each) => each === place.cutOut),
      place.move,
    );
    known.set(place, fills);
    return fills;
  };
  return (first, second) => {
    const [here, there] = [fillsOf(first), fillsOf(second)];
    for (const [cell, fill] of here) if ((there.get(cell) ?? fill) !== fill) return true;
    return false;
  };
}

/** Cell → how it is filled: equal for the same motif placed the same way, whatever turn of a symmetric motif that is. */
function placedFills(cutOut: PanelCutOut | undefined, move: GridMove): ReadonlyMap<string, string> {
  return new Map(
    cutOut?.cells.map(({ middle, motif, pieces }) => [
      placeKey(movedPoint(middle, move)),
      [motif, ...pieces.map((piece) => placeKey(movedPoint(piece, move))).sort()].join('|'),
    ]),
  );
}
