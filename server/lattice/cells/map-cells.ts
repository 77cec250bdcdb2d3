/** A panel's map laid over its cells: each sign finds its cell, and what does not agree is said. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import { spanOf } from '../../../grammar/tree/source-range.ts';
import type { CellMap, CellMapRow, PanelFill } from '../../design/design-model.ts';
import { maximum, sum } from '../../geometry/numbers.ts';
import { dot, type Point, quarterTurn } from '../../geometry/point.ts';
import { isZeroLength } from '../../geometry/tolerance.ts';
import { CellLabels } from './cell-labels.ts';
import type { PanelCells } from './panel-cells.ts';
import { countMembers, type LatticeMember, type LatticeRun, memberPlace, membersOf } from '../grid/scan-lattice.ts';

export interface MappedCells {
  readonly signs: CellLabels<string>;
  readonly problems: readonly Problem[];
}

/** The part of a row of cells that one class has. */
interface RowPart {
  readonly classIndex: number;
  readonly inside: readonly LatticeRun[];
  readonly boundary: readonly LatticeMember[];
}

interface RowCell {
  readonly classIndex: number;
  readonly member: LatticeMember;
  readonly middle: Point;
}

/** Rows that agree with the panel are laid; the others are reported and their cells left open. */
export function mapCells(map: CellMap, cells: PanelCells): MappedCells {
  const rows = rowsOfCells(cells);
  const signs = new CellLabels<string>();
  const problems: Problem[] = [];
  const count = Math.max(0, maximum(rows.keys()));
  if (count !== map.rows.length) problems.push(wrongRows(map, count));
  map.rows.forEach((row, index) => {
    const parts = rows.get(index + 1) ?? [];
    const needed = sum(parts.map(({ inside, boundary }) => countMembers(inside) + boundary.length));
    if (needed !== row.signs.length) {
      if (needed > 0) problems.push(wrongLength(row, index + 1, needed));
      return;
    }
    inReadingOrder(parts, cells).forEach(({ classIndex, member }, place) => {
      const sign = row.signs[place];
      if (!sign) return;
      const problem = otherShapeProblem(sign, classIndex, cells);
      if (problem) problems.push(problem);
      else signs.set(classIndex, member, sign.sign);
    });
  });
  return { signs, problems };
}

function rowsOfCells({ scans, numbers }: PanelCells): Map<number, RowPart[]> {
  const rows = new Map<number, RowPart[]>();
  scans.forEach(({ inside, boundary }, classIndex) => {
    const latticeRows = new Set([...inside.map(({ row }) => row), ...boundary.map(({ member }) => member.row)]);
    for (const latticeRow of latticeRows) {
      const number = numbers[classIndex]?.rowOf(latticeRow) ?? 0;
      const parts = rows.get(number) ?? [];
      rows.set(number, parts);
      parts.push({
        classIndex,
        inside: inside.filter(({ row }) => row === latticeRow),
        boundary: boundary.map(({ member }) => member).filter(({ row }) => row === latticeRow),
      });
    }
  });
  return rows;
}

/** Left to right along the first family; of two cells above one another the upper first. */
function inReadingOrder(parts: readonly RowPart[], { scans, period, families }: PanelCells): RowCell[] {
  const along = families[0]?.along ?? { x: 1, y: 0 };
  const up = quarterTurn(along);
  const found = parts.flatMap(({ classIndex, inside, boundary }) => {
    const start = scans[classIndex]?.middle ?? { x: 0, y: 0 };
    return [...membersOf(inside), ...boundary].map((member) => ({
      classIndex,
      member,
      middle: memberPlace(start, period, member),
    }));
  });
  return found.sort((a, b) => {
    const ahead = dot(along, a.middle) - dot(along, b.middle);
    return isZeroLength(ahead) ? dot(up, b.middle) - dot(up, a.middle) : ahead;
  });
}

/** A sign whose motif is for cells of another shape. */
function otherShapeProblem(
  { sign, range }: CellMapRow['signs'][number],
  classIndex: number,
  { panel, scans }: PanelCells,
): Problem | null {
  const shape = scans[classIndex]?.cell.shape;
  const fill = fillOfSign(panel.fills, sign);
  if (!fill || fill.shape === shape) return null;
  const found = shape === 'other' ? 'cell of another shape' : shape;
  const message = `\`${sign}\` is \`${fill.motif.name}\`, for a ${fill.shape}, and this place is a ${found ?? fill.shape}. Put a sign for a ${found ?? fill.shape} here.`;
  return problemAt('mapDoesNotFit', range, message);
}

const fillOfSign = (fills: readonly PanelFill[], sign: string): PanelFill | undefined =>
  fills.find(({ where }) => where.some((condition) => condition.kind === 'mapped' && condition.sign === sign));

function wrongRows(map: CellMap, count: number): Problem {
  const written = map.rows.length;
  const surplus = map.rows[count];
  const last = map.rows.at(-1);
  const range = surplus && last ? spanOf(surplus.range, last.range) : map.range;
  const message =
    written > count
      ? `The panel has ${rowsText(count)} of cells and the map ${written}. Take ${rowsText(written - count)} out.`
      : `The panel has ${rowsText(count)} of cells and the map ${written}. Add ${rowsText(count - written)}.`;
  return problemAt('mapDoesNotFit', range, message);
}

const rowsText = (count: number): string => `${count} ${count === 1 ? 'row' : 'rows'}`;

/** Surplus signs are underlined by themselves, a row that is too short whole. */
function wrongLength(row: CellMapRow, number: number, needed: number): Problem {
  const written = row.signs.length;
  const surplus = row.signs[needed];
  const last = row.signs.at(-1);
  const range = surplus && last ? spanOf(surplus.range, last.range) : row.range;
  const has = `Row ${number} of the panel has ${needed} ${needed === 1 ? 'cell' : 'cells'}, and the map ${written} here`;
  const message =
    written > needed
      ? `${has}: ${written - needed} too many. Take them out.`
      : `${has}: ${needed - written} too few. Add them.`;
  return problemAt('mapDoesNotFit', range, message);
}
