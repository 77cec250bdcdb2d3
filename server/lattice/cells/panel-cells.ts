/** All cells of a panel: their classes scanned over its region, with the numbers of their rows and columns. */
import type { Panel } from '../../design/design-model.ts';
import type { Region } from '../../geometry/region.ts';
import { cellChanges, type CellChange } from './cell-changes.ts';
import type { CellClass } from './cell-classes.ts';
import { type ClassNumbers, numberCells } from './cell-numbers.ts';
import { type ClassScan, scanClass } from './class-scan.ts';
import type { LineFamily } from '../grid/grid-lines.ts';
import type { Period } from '../grid/grid-period.ts';

/** `scans`, `numbers` and `changes` have one entry for each class, in the same order. */
export interface PanelCells {
  readonly panel: Panel;
  readonly region: Region;
  readonly families: readonly LineFamily[];
  /** Null where nothing repeats: each class is then a single cell. */
  readonly period: Period | null;
  readonly scans: readonly ClassScan[];
  readonly numbers: readonly ClassNumbers[];
  readonly changes: readonly (CellChange | null)[];
}

export function panelCells(
  panel: Panel,
  region: Region,
  families: readonly LineFamily[],
  period: Period | null,
  classes: readonly CellClass[],
): PanelCells {
  const scans = classes.map((cell) => scanClass(cell, period, region));
  return {
    panel,
    region,
    families,
    period,
    scans,
    numbers: numberCells(scans, families, period),
    changes: cellChanges(panel, classes, region.bounds),
  };
}
