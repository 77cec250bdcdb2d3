/** One panel from its design to every strip and piece, counted and placed. */
import { type Words, measure, words } from '../../grammar/words.ts';
import type { Panel } from '../design/design-model.ts';
import { problemAt } from '../../grammar/problems/problem-catalogue.ts';
import { maximum, minimum, sum } from '../geometry/numbers.ts';
import { cross, dot } from '../geometry/point.ts';
import { type Bounds, boundsOf, ringOfBounds } from '../geometry/polygons.ts';
import { areaTolerance } from '../geometry/tolerance.ts';
import { cellClasses } from './cells/cell-classes.ts';
import { crossingPair, type LineFamily, spaceAt } from './grid/grid-lines.ts';
import { periodOf } from './grid/grid-period.ts';
import { gridTroubles } from './checks/grid-troubles.ts';
import { type RaisedProblem, raisedAt } from './checks/raised-problem.ts';
import type { LaidPanel } from './laid-panel.ts';
import { measuredGrid } from './grid/measured-grid.ts';
import { countNodes, nodesIn } from './grid/lattice-nodes.ts';
import { panelCells } from './cells/panel-cells.ts';
import { type PanelRegion, panelRegion } from './grid/panel-region.ts';
import { panelInfill } from './motif/piece-groups.ts';
import { sliverProblems } from './checks/slivers.ts';
import { stripGroups } from './strips/strip-groups.ts';

/** A panel that would have more infill pieces (without infill: openings) than this is refused, lest the machine be kept busy for nothing. */
export const mostPieces = 2_000_000;

export interface LaidOut {
  /** Null when a problem of its own keeps the panel from being laid out. */
  readonly panel: LaidPanel | null;
  readonly problems: readonly RaisedProblem[];
}

/**
 * Strips follow the drawing; openings, nodes and infill follow the lattice as measured, where it was. Where the panel is
 * another one laid out to a larger or smaller line, `ruled` is that one, whose rows, rings, map and edge the fills mean.
 */
export function layOutPanel(panel: Panel, quantity = panel.copies, ruled = panel): LaidOut {
  const drawn = panelRegion(panel);
  const { region, areaMm2, perimeterMm, families } = panel.grid.measured ? measuredRegion(panel) : drawn;
  const ruledRegion = ruled === panel ? region : measuredRegion(ruled).region;
  if (!crossingPair(families)) return refused('gridFinerThanStrips', panel, runsOneWay(panel));
  if (areaMm2 <= areaTolerance)
    return refused('emptyPanel', panel, `Panel ${panel.name} has no room inside its frame; make its shape larger.`);
  const period = periodOf(families);
  const openings = period
    ? areaMm2 / Math.abs(cross(period.first, period.second))
    : crossingsIn(families, region.bounds);
  if (!period && openings > mostEnumeratedCells) return refused('tooManyPieces', panel, tooManyCells(panel, openings));
  const troubles = panel.grid.kind === 'free' ? gridTroubles(families, nodesIn(families, period, region)) : [];
  if (troubles.length > 0) return { panel: null, problems: raisedAt(panel, troubles) };
  const { classes, closed } = cellClasses(
    families,
    period ?? boundsOf([region, ruledRegion].flatMap(({ bounds }) => ringOfBounds(bounds))),
    panel.grid.turn,
  );
  if (closed > 0 && panel.grid.kind !== 'free') return refused('gridFinerThanStrips', panel, tooFine(panel));
  const expected = (period ? openings * classes.length : classes.length) * mostPiecesACell(panel);
  if (expected > mostPieces) return refused('tooManyPieces', panel, tooMany(panel, expected));
  const cells = panelCells(panel, region, families, period, classes);
  const infill = panelInfill(
    cells,
    ruled === panel ? cells : panelCells(ruled, ruledRegion, families, period, classes),
  );
  return {
    panel: {
      panel,
      quantity,
      taken: 0,
      region: region.rings,
      areaMm2,
      perimeterMm,
      nodes: countNodes(families, period, region),
      cells: infill.cells,
      filledCells: infill.filledCells,
      strips: stripGroups(panel, drawn.families, drawn.region),
      pieces: infill.groups,
      hinges: infill.hinges,
      slivers: infill.slivers,
    },
    problems: [...infill.problems, ...raisedAt(panel, sliverProblems(panel, infill.slivers))],
  };
}

const measuredRegion = (panel: Panel): PanelRegion => panelRegion({ ...panel, grid: measuredGrid(panel.grid) });

function refused(name: 'gridFinerThanStrips' | 'emptyPanel' | 'tooManyPieces', panel: Panel, message: Words): LaidOut {
  const range = name === 'gridFinerThanStrips' ? panel.grid.sideRange : panel.nameRange;
  return { panel: null, problems: raisedAt(panel, [problemAt(name, range, message)]) };
}

const runsOneWay = ({ grid }: Panel): string =>
  `Grid ${grid.name} has no two families that cross; give it two directions.`;

function tooFine({ grid }: Panel): Words {
  const face = maximum(grid.families.map(({ stock }) => stock.face));
  return words`A ${grid.kind} grid of ${measure.given(grid.side)} leaves no opening between strips of ${measure.given(face)} face; make the grid wider or the strips thinner.`;
}

/** Pieces that the fullest motif sets in one cell; a panel without infill is measured by its openings, for its strips take as much work. */
const mostPiecesACell = ({ fills }: Panel): number =>
  Math.max(1, maximum(fills.map(({ motif }) => motif.pieces.length + motif.dividers.length)));

/** A grid without a period has its cells made one by one: more than this is refused. */
const mostEnumeratedCells = 20_000;

/** As many crossings as bounds may hold: every line of a family by every line of the others. */
function crossingsIn(families: readonly LineFamily[], bounds: Bounds): number {
  const corners = ringOfBounds(bounds);
  const lines = families.map((each) => {
    const reaches = corners.map((corner) => dot(each.normal, corner));
    return spaceAt(each, maximum(reaches)) - spaceAt(each, minimum(reaches));
  });
  return sum(lines.map((count, index) => count * sum(lines.slice(index + 1))));
}

const tooManyCells = ({ name, grid }: Panel, crossings: number): string =>
  `The strips of grid ${grid.name} cross about ${Math.round(crossings).toLocaleString('en')} times in panel ${name}, and no part of them repeats; more than ${mostEnumeratedCells.toLocaleString('en')} crossings are not planned one by one. Give its families spacings in a simple ratio, or make the panel smaller.`;

const tooMany = (panel: Panel, expected: number): string =>
  `Panel ${panel.name} would have about ${Math.round(expected).toLocaleString('en')} ${panel.fills.length > 0 ? 'infill pieces' : 'openings'}, more than the ${mostPieces.toLocaleString('en')} that are planned; make the grid wider or the panel smaller.`;
