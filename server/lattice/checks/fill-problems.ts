/** What may be wrong with the fills of a panel as a whole. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import type { Panel, PanelFill } from '../../design/design-model.ts';
import type { PanelCells } from '../cells/panel-cells.ts';
import { countMembers } from '../grid/scan-lattice.ts';
import type { CellShare } from '../cells/share-cells.ts';

/** A cell that a fill turns or mirrors away from its own outline. */
export function doesNotTurn(panel: Panel, fill: PanelFill): Problem {
  const way = [fill.mirrored ? 'mirrored' : '', fill.turned > 0 ? `turned ${fill.turned} corners` : '']
    .filter(Boolean)
    .join(' and ');
  const message = `A ${fill.shape} of grid ${panel.grid.name} does not come back onto itself when ${way}; choose another turn.`;
  return problemAt('motifDoesNotFitCell', fill.range, message);
}

/** Fills that come to no cell. The fills of one phrase are one: some of them may have none. */
export function unusedFills({ panel, scans }: PanelCells, shares: readonly CellShare[]): Problem[] {
  const made = [...new Set(scans.map(({ cell }) => cell.shape))];
  const used = new Set(
    shares
      .filter(({ inside, boundary }) => countMembers(inside) + boundary.length > 0)
      .map(({ fill }) => fill.range.start),
  );
  const isMapped = ({ where }: PanelFill): boolean => where.some(({ kind }) => kind === 'mapped');
  return panel.fills
    .filter((fill) => !used.has(fill.range.start))
    .flatMap((fill) => {
      if (!made.includes(fill.shape)) {
        const message = `Grid ${panel.grid.name} makes no ${fill.shape} cells, only ${made.join(', ')}; fill one of those.`;
        return [problemAt('nothingToFill', fill.range, message)];
      }
      if (isMapped(fill)) return [];
      const message = panel.map
        ? 'The map has the last word on every cell, so this fill comes to none; take it out or put it into the map.'
        : `No ${fill.shape} is left for this fill: none fits what it asks for, or later fills take them; take it out or change its place.`;
      return [problemAt('nothingToFill', fill.range, message)];
    });
}
