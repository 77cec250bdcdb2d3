/** All cells of a panel: their classes scanned over its region, with the numbers of their rows and columns. */
import type { Panel } from '../design/design-model.ts';
import type { Region } from '../geometry/region.ts';
import type { CellClass } from './cell-classes.ts';
import { type ClassNumbers, numberCells } from './cell-numbers.ts';
import { type ClassScan, scanClass } from './class-scan.ts';
import type { LineFamily, Period } from './grid-lines.ts';

/** `scans` and `numbers` have one entry for each class, in the same order. */
export interface PanelCells {
  readonly panel: Panel;
  readonly region: Region;
  readonly families: readonly LineFamily[];
  readonly period: Period;
  readonly scans: readonly ClassScan[];
  readonly numbers: readonly ClassNumbers[];
}

export function panelCells(
  panel: Panel,
  region: Region,
  families: readonly LineFamily[],
  period: Period,
  classes: readonly CellClass[],
): PanelCells {
  const scans = classes.map((cell) => scanClass(cell, period, region));
  return { panel, region, families, period, scans, numbers: numberCells(scans, families, period) };
}
