/** A placement chart before it is drawn: cells by row, letters of the motifs, places of the labels. Panel millimetres, y up. */
import { minimum } from '../geometry/numbers.ts';
import { add, cross, direction, dot, type Point, quarterTurn, scale } from '../geometry/point.ts';
import { directionTolerance } from '../geometry/tolerance.ts';
import type { LaidCell, LaidPanel } from '../lattice/laid-panel.ts';
import { tellingLetters } from '../shop/marks/mark-kinds.ts';
import { middleOf } from './cell-picture.ts';

export interface ChartCell {
  readonly cell: LaidCell;
  readonly middle: Point;
  /** Letters of the motif, `m` where it is mirrored, and where it is turned by how many corners: `S+1`, not the strip S1. */
  readonly letters: string;
  /** The corner of the opening where the motif's corner 1 lies. */
  readonly corner: Point;
  /** Number of the motif in the legend, from 0. */
  readonly motif: number;
}

export interface ChartRow {
  /** From the top, 1 first. */
  readonly number: number;
  /** In order along the first family's strips. */
  readonly cells: readonly ChartCell[];
}

export interface ChartColumn {
  readonly number: number;
  /** The uppermost cell of the column. */
  readonly top: ChartCell;
}

export interface ChartMotif {
  readonly name: string;
  readonly letters: string;
  readonly count: number;
  /** A cell that shows it, whole and unturned if there is one. */
  readonly sample: LaidCell;
}

export interface ChartPlan {
  readonly rows: readonly ChartRow[];
  readonly columns: readonly ChartColumn[];
  readonly motifs: readonly ChartMotif[];
  /** Unit vectors along the rows, and up the columns. */
  readonly along: Point;
  readonly up: Point;
  /** Radius of the circle that fits the narrowest cell. */
  readonly inradius: number;
}

/** The chart of a panel; no rows where nothing is filled. */
export function planChart(laid: LaidPanel): ChartPlan {
  const cells = [...laid.filledCells()];
  const motifs = motifsOf(cells);
  const charted = cells.map((cell) => chartCell(cell, motifs));
  const { along, up } = axesOf(laid);
  return {
    rows: [...groupedBy(charted, ({ cell }) => cell.row)]
      .sort(([a], [b]) => a - b)
      .map(([number, members]) => ({
        number,
        cells: members.sort((a, b) => dot(along, a.middle) - dot(along, b.middle)),
      })),
    columns: [...groupedBy(charted, ({ cell }) => cell.column)]
      .sort(([a], [b]) => a - b)
      .map(([column, members]) => ({
        number: column,
        top: members.reduce((top, each) => (dot(up, each.middle) > dot(up, top.middle) ? each : top)),
      })),
    motifs,
    along,
    up,
    inradius: minimum(cells.map(inradiusOf)),
  };
}

/** Whether the columns stand upright on the page. */
export const isUpright = ({ up }: ChartPlan): boolean => Math.abs(up.x) <= directionTolerance;

/** Along family 1, and up family 2 where there are only two, else square to the rows. */
function axesOf({ panel }: LaidPanel): { along: Point; up: Point } {
  const [base, other, third] = panel.grid.families;
  const along = direction(base?.direction ?? 0);
  if (!other || third) return { along, up: quarterTurn(along) };
  const lean = direction(other.direction);
  return { along, up: cross(along, lean) > 0 ? lean : scale(lean, -1) };
}

function motifsOf(cells: readonly LaidCell[]): ChartMotif[] {
  const byMotif = groupedBy(cells, ({ motif }) => motif);
  const letters = tellingLetters([...byMotif.keys()]);
  return [...byMotif].map(([name, members]) => ({
    name,
    letters: letters.get(name) ?? name,
    count: members.length,
    sample: members.reduce((best, each) => (showsBetter(each, best) ? each : best)),
  }));
}

const isPlain = ({ turned, mirrored }: LaidCell): boolean => turned === 0 && !mirrored;

const showsBetter = (a: LaidCell, b: LaidCell): boolean =>
  a.inside !== b.inside ? a.inside : isPlain(a) && !isPlain(b);

function chartCell(cell: LaidCell, motifs: readonly ChartMotif[]): ChartCell {
  const motif = motifs.findIndex(({ name }) => name === cell.motif);
  const letters = motifs[motif]?.letters ?? '';
  const { opening, turned, mirrored } = cell;
  const middle = middleOf(opening);
  const corner = opening[((turned % opening.length) + opening.length) % opening.length] ?? middle;
  return {
    cell,
    middle,
    letters: `${letters}${mirrored ? 'm' : ''}${turned === 0 ? '' : `+${turned}`}`,
    corner,
    motif,
  };
}

/** Distance from the middle to the nearest edge. */
function inradiusOf({ opening }: LaidCell): number {
  const middle = middleOf(opening);
  return minimum(
    opening.map((from, index) => {
      const to = opening[(index + 1) % opening.length] ?? from;
      const edge = add(to, scale(from, -1));
      return cross(edge, add(middle, scale(from, -1))) / Math.hypot(edge.x, edge.y);
    }),
  );
}

function groupedBy<Item, Key>(items: readonly Item[], keyOf: (item: Item) => Key): Map<Key, Item[]> {
  const groups = new Map<Key, Item[]>();
  for (const item of items) {
    const group = groups.get(keyOf(item));
    if (group) group.push(item);
    else groups.set(keyOf(item), [item]);
  }
  return groups;
}
