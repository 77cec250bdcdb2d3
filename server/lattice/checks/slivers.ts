/** Trimmed pieces of which the saw leaves too little to stay in their place. */
import { maximum, minimum } from '../../geometry/numbers.ts';
import { centroidOf } from '../../geometry/polygons.ts';
import { joined, measure, words } from '../../../grammar/words.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import type { Panel } from '../../design/design-model.ts';
import { direction, dot } from '../../geometry/point.ts';
import type { FilledPiece } from '../motif/fill-opening.ts';
import type { Polygon, Sliver } from '../laid-panel.ts';

/** The sliver that a trimmed piece leaves in a cell: null while one of its parts keeps the least length. */
export function sliverOf(
  { placement, motif, role, words }: FilledPiece,
  kept: readonly Polygon[],
  leastLength: number | null,
  cell: { readonly row: number; readonly column: number },
): Sliver | null {
  if (leastLength === null) return null;
  const along = direction(placement.turn);
  const parts = kept
    .map((ring) => {
      const reaches = ring.map((point) => dot(along, point));
      return { ring, keptMm: maximum(reaches) - minimum(reaches) };
    })
    .sort((a, b) => b.keptMm - a.keptMm);
  const [largest] = parts;
  if (!largest || largest.keptMm >= leastLength) return null;
  return { motif, role, ...cell, at: centroidOf(largest.ring), keptMm: largest.keptMm, range: words };
}

const mostPlacesNamed = 5;

/** One message for each piece of a motif, with the places of the smallest. */
export function sliverProblems(panel: Panel, slivers: readonly Sliver[]): Problem[] {
  const kindOf = ({ motif, role }: Sliver): string => `${motif} ${role}`;
  return [...new Set(slivers.map(kindOf))].flatMap((kind) => {
    const sorted = slivers.filter((sliver) => kindOf(sliver) === kind).sort((a, b) => a.keptMm - b.keptMm);
    const [smallest] = sorted;
    if (!smallest) return [];
    const places = sorted
      .slice(0, mostPlacesNamed)
      .map(
        ({ row, column, at, keptMm }) =>
          words`row ${row} column ${column} (${measure.length(keptMm)} at ${measure.place(at)})`,
      );
    const more = sorted.length > mostPlacesNamed ? ` and ${sorted.length - mostPlacesNamed} more` : '';
    const count = sorted.length === 1 ? '1 trimmed piece keeps' : `${sorted.length} trimmed pieces keep`;
    const message = words`${count} less than ${measure.given(panel.sliver ?? 0)} of ${smallest.role} (motif ${smallest.motif}): ${joined(places, ', ')}${more}. Such ends break out under the saw: glue them in, leave them out, or move the outline.`;
    return [problemAt('sliverLeft', panel.shape.range, message)];
  });
}
