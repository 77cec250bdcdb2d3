/**
 * Rings of cells. Ring 1 holds the cells that the edge cuts and those with no cell of the panel beyond one of their
 * sides; ring n + 1 the cells that lie side to side with one of ring n. The work grows with the boundary.
 */
import { maximum } from '../../geometry/numbers.ts';
import { add, between, type Point, quarterTurn, scale, subtract, unit } from '../../geometry/point.ts';
import { regionHolds } from '../../geometry/region.ts';
import { CellLabels } from './cell-labels.ts';
import { slabOf } from './cell-numbers.ts';
import { isCutCell, scanClass } from './class-scan.ts';
import type { PanelCells } from './panel-cells.ts';
import type { LatticeMember } from '../grid/scan-lattice.ts';

interface RingCell {
  readonly classIndex: number;
  readonly member: LatticeMember;
  /** Keys of the cells beyond its sides. */
  readonly neighbours: readonly string[];
  readonly isOutermost: boolean;
}

/** The cells of rings 1 to `most`, each with the number of its ring. */
export function cellRings(cells: PanelCells, most: number): CellLabels<number> {
  const known = cellsNearEdge(cells, most);
  const rings = new Map<string, number>();
  const labels = new CellLabels<number>();
  let front = [...known].filter(([, { isOutermost }]) => isOutermost).map(([key]) => key);
  for (let ring = 1; ring <= most && front.length > 0; ring++) {
    for (const key of front) rings.set(key, ring);
    const next = front.flatMap((key) => known.get(key)?.neighbours ?? []);
    front = [...new Set(next)].filter((key) => known.has(key) && !rings.has(key));
  }
  for (const [key, ring] of rings) {
    const cell = known.get(key);
    if (cell) labels.set(cell.classIndex, cell.member, ring);
  }
  return labels;
}

/** Every cell of the panel so near to its edge that it may belong to the first `most` rings. */
function cellsNearEdge(cells: PanelCells, most: number): Map<string, RingCell> {
  const { scans, period, region, families } = cells;
  const face = maximum(families.map((lines) => lines.face));
  const reach = most * (maximum(families.map(({ spacing }) => spacing)) + face);
  const near = scans.flatMap(({ cell }, classIndex) => {
    const { boundary, middle } = scanClass(cell, period, region, 2 * reach);
    return boundary.map((each) => ({ each, cell, classIndex, key: keyOf(add(middle, each.move), cells) }));
  });
  const keys = new Set(near.map(({ key }) => key));
  return new Map(
    near.map(({ each, cell, classIndex, key }) => {
      const opening = cell.opening.map((corner) => add(corner, each.move));
      const beyond = opening.map((corner, side) =>
        beyondSide(corner, opening[(side + 1) % opening.length] ?? corner, face),
      );
      const isMet = (point: Point): boolean => keys.has(keyOf(point, cells)) || regionHolds(region, point);
      return [
        key,
        {
          classIndex,
          member: each.member,
          neighbours: beyond.map((point) => keyOf(point, cells)),
          isOutermost: isCutCell(cell, each) || !beyond.every(isMet),
        },
      ];
    }),
  );
}

/** A point in the cell beyond a side: past the strip, half a face into the opening. */
function beyondSide(from: Point, to: Point, face: number): Point {
  const outward = scale(quarterTurn(unit(subtract(to, from))), -1);
  return add(between(from, to, 0.5), scale(outward, 1.5 * face));
}

/** A cell is known by the spaces it lies in, one between two lines of each family. */
const keyOf = (point: Point, { families }: PanelCells): string =>
  families.map((lines) => slabOf(lines, point)).join(' ');
