/** One panel from its design to every strip and piece, counted and placed. */
import type { Panel } from '../design/design-model.ts';
import type { Problem } from '../../grammar/problem.ts';
import { problemAt } from '../../grammar/problem-catalogue.ts';
import { cross } from '../geometry/point.ts';
import { areaTolerance, rounded } from '../geometry/tolerance.ts';
import { cellClasses } from './cell-classes.ts';
import { type Period, periodOf } from './grid-lines.ts';
import type { LaidPanel } from './laid-panel.ts';
import { measuredGrid } from './measured-grid.ts';
import { countNodes } from './lattice-nodes.ts';
import { panelCells } from './panel-cells.ts';
import { panelRegion } from './panel-region.ts';
import { panelInfill } from './piece-groups.ts';
import { stripGroups } from './strip-groups.ts';

/** A panel that would have more infill pieces (without infill: openings) than this is refused, lest the machine be kept busy for nothing. */
export const mostPieces = 2_000_000;

export interface LaidOut {
  /** Null when a problem of its own keeps the panel from being laid out. */
  readonly panel: LaidPanel | null;
  readonly problems: readonly Problem[];
}

/** Strips follow the drawing; openings, nodes and infill follow the lattice as measured, where it was. */
export function layOutPanel(panel: Panel, workCopies = 1): LaidOut {
  const drawn = panelRegion(panel);
  const { region, areaMm2, perimeterMm, families } = panel.grid.measured
    ? panelRegion({ ...panel, grid: measuredGrid(panel.grid) })
    : drawn;
  const period = periodOf(families);
  if (!period)
    return refused(
      'gridFinerThanStrips',
      panel,
      `Grid ${panel.grid.name} has no two families that cross; give it two directions.`,
    );
  const { classes, closed } = cellClasses(families, period, panel.grid.turn);
  if (closed > 0) return refused('gridFinerThanStrips', panel, tooFine(panel));
  if (areaMm2 <= areaTolerance)
    return refused('emptyPanel', panel, `Panel ${panel.name} has no room inside its frame; make its shape larger.`);
  const expected = expectedPieces(panel, areaMm2, period, classes.length);
  if (expected > mostPieces) return refused('tooManyPieces', panel, tooMany(panel, expected));
  const infill = panelInfill(panelCells(panel, region, families, period, classes));
  return {
    panel: {
      panel,
      quantity: panel.copies * workCopies,
      region: region.rings,
      areaMm2,
      perimeterMm,
      nodes: countNodes(families, period, region),
      cells: infill.cells,
      filledCells: infill.filledCells,
      strips: stripGroups(panel, drawn.families, drawn.region),
      pieces: infill.groups,
    },
    problems: infill.problems,
  };
}

function refused(name: 'gridFinerThanStrips' | 'emptyPanel' | 'tooManyPieces', panel: Panel, message: string): LaidOut {
  const range = name === 'gridFinerThanStrips' ? panel.grid.sideRange : panel.nameRange;
  return { panel: null, problems: [problemAt(name, range, message)] };
}

function tooFine({ grid }: Panel): string {
  const face = Math.max(...grid.families.map(({ stock }) => stock.face));
  return `A ${grid.kind} grid of ${rounded(grid.side, 2)} mm leaves no opening between strips of ${rounded(face, 2)} mm face; make the grid wider or the strips thinner.`;
}

/**
 * Pieces by area: cells of the region times the pieces that the fullest motif sets in one; a panel without infill
 * is measured by its openings, for its strips take as much work.
 */
function expectedPieces(panel: Panel, areaMm2: number, period: Period, cellsAPeriod: number): number {
  const piecesACell = Math.max(1, ...panel.fills.map(({ motif }) => motif.pieces.length + motif.dividers.length));
  return (areaMm2 / Math.abs(cross(period.first, period.second))) * cellsAPeriod * piecesACell;
}

const tooMany = (panel: Panel, expected: number): string =>
  `Panel ${panel.name} would have about ${Math.round(expected).toLocaleString('en')} ${panel.fills.length > 0 ? 'infill pieces' : 'openings'}, more than the ${mostPieces.toLocaleString('en')} that are planned; make the grid wider or the panel smaller.`;
