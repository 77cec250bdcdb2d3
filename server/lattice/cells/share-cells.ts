/**
 * Which cells each fill of a panel gets. Along a row the fills are asked once for every stretch between two places where
 * an answer may change, and within it once for every cell of what repeats: the work does not grow with the area.
 */
import type { Problem } from '../../../grammar/problems/problem.ts';
import type { FillCondition, PanelFill } from '../../design/design-model.ts';
import { leastCommonMultiple, maximum } from '../../geometry/numbers.ts';
import { CellLabels } from './cell-labels.ts';
import { cellRings } from './cell-rings.ts';
import { type CellFacts, cellTest, type CellTest } from './fill-conditions.ts';
import type { BoundaryCell } from './class-scan.ts';
import { mapCells } from './map-cells.ts';
import type { PanelCells } from './panel-cells.ts';
import type { LatticeMember, LatticeRun } from '../grid/scan-lattice.ts';

/** Cells of one class with one fill. */
export interface CellShare {
  readonly fill: PanelFill;
  readonly inside: readonly LatticeRun[];
  readonly boundary: readonly BoundaryCell[];
}

/** What the fills of a panel ask about, found once for all of its cells; conditions count those of `ruled`. */
export function cellFacts(
  cells: PanelCells,
  ruled: PanelCells,
): { readonly facts: CellFacts; readonly problems: readonly Problem[] } {
  const { fills, map } = cells.panel;
  const rings = fills.flatMap(({ where }) => where.flatMap(ringsAsked));
  const mapped = map ? mapCells(map, ruled) : { signs: new CellLabels<string>(), problems: [] };
  return {
    facts: {
      cells,
      ruled,
      rings: rings.length > 0 ? cellRings(ruled, maximum(rings)) : new CellLabels<number>(),
      signs: mapped.signs,
    },
    problems: mapped.problems,
  };
}

const ringsAsked = (condition: FillCondition): number[] =>
  condition.kind === 'rings'
    ? [condition.last]
    : condition.kind === 'not open'
      ? condition.where.flatMap(ringsAsked)
      : [];

interface FillTests {
  readonly fill: PanelFill;
  readonly tests: readonly CellTest[];
}

/** The shares of a class, in the order of the fills; cells without a fill are in none. */
export function shareCells(classIndex: number, facts: CellFacts): CellShare[] {
  const { panel, scans } = facts.cells;
  const scan = scans[classIndex];
  if (!scan) return [];
  const fills = panel.fills
    .filter(
      ({ shape, where }) => shape === scan.cell.shape && (!panel.map || where.some(({ kind }) => kind === 'mapped')),
    )
    .map((fill): FillTests => ({ fill, tests: fill.where.map((each) => cellTest(each, classIndex, facts)) }));
  const lastFirst = [...fills].reverse();
  const choose = (member: LatticeMember): PanelFill | undefined =>
    lastFirst.find(({ tests }) => tests.every(({ holds }) => holds(member)))?.fill;
  const shares = new Map(
    fills.map(({ fill }) => [fill, { inside: [] as LatticeRun[], boundary: [] as BoundaryCell[] }]),
  );
  for (const cell of scan.boundary) {
    const fill = choose(cell.member);
    if (fill) shares.get(fill)?.boundary.push(cell);
  }
  const tests = fills.flatMap((each) => each.tests);
  for (const run of scan.inside) {
    for (const { fill, part } of partsOfRun(run, tests, choose)) if (fill) shares.get(fill)?.inside.push(part);
  }
  return [...shares].map(([fill, share]) => ({ fill, ...share }));
}

interface RunPart {
  readonly fill: PanelFill | undefined;
  readonly part: LatticeRun;
}

function partsOfRun(
  run: LatticeRun,
  tests: readonly CellTest[],
  choose: (member: LatticeMember) => PanelFill | undefined,
): RunPart[] {
  const repeat = tests.reduce((whole, test) => leastCommonMultiple(whole, test.repeat), 1);
  const cuts = tests.flatMap((test) => test.cuts(run.row)).filter((cut) => cut > run.first && cut <= run.last);
  const starts = [run.first, ...new Set(cuts)].sort((a, b) => a - b);
  return starts.flatMap((first, index) => {
    const last = (starts[index + 1] ?? run.last + 1) - 1;
    return repeatingParts({ ...run, first, last }, repeat, choose);
  });
}

/** A stretch without cuts, told apart into what repeats. */
function repeatingParts(
  { row, first, last }: LatticeRun,
  repeat: number,
  choose: (member: LatticeMember) => PanelFill | undefined,
): RunPart[] {
  const count = Math.min(repeat, last - first + 1);
  const parts = Array.from({ length: count }, (_, index): RunPart => {
    const start = first + index;
    const part = { row, first: start, last: last - ((last - start) % repeat), step: repeat };
    return { fill: choose({ row, column: start }), part };
  });
  const [one] = parts;
  return one && parts.every(({ fill }) => fill === one.fill)
    ? [{ fill: one.fill, part: { row, first, last, step: 1 } }]
    : parts;
}
