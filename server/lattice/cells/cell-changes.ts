/**
 * What a small change of the grid does to its cells and pieces: each class laid out again a tenth of a millimetre on.
 * Lengths are linear in side and face as long as no corner passes another, so a tenth tells the derivative exactly.
 */
import type { Grid, Panel, PanelFill } from '../../design/design-model.ts';
import { resizedGrid } from '../../design/builders/fit-cells.ts';
import { origin, type Point } from '../../geometry/point.ts';
import type { Bounds } from '../../geometry/polygons.ts';
import { type CellClass, cellClasses } from './cell-classes.ts';
import { type FilledPiece, fillOpening } from '../motif/fill-opening.ts';
import { lineFamilies } from '../grid/grid-lines.ts';
import { periodOf } from '../grid/grid-period.ts';
import type { PerTenth } from '../laid-panel.ts';
import { measuredGrid } from '../grid/measured-grid.ts';
import { panelRegion } from '../grid/panel-region.ts';

export const tenth = 0.1;

/** The grid with its side, or the faces of its strips, a tenth of a millimetre larger. */
export const withLargerSide = (grid: Grid): Grid => resizedGrid(grid, grid.side + tenth);
export const withLargerFaces = (grid: Grid): Grid => ({
  ...grid,
  families: grid.families.map((family) => ({
    ...family,
    stock: { ...family.stock, face: family.stock.face + tenth },
  })),
});

/** The frame of one class of cells as it would be. */
export interface CellChange {
  readonly pitch: readonly Point[];
  readonly face: readonly Point[];
}

/** For each class of a panel's cells its change; null where the changed grid has no cell that answers to it. */
export function cellChanges(panel: Panel, classes: readonly CellClass[], bounds: Bounds): (CellChange | null)[] {
  const grid = measuredGrid(panel.grid);
  const [pitch, face] = [withLargerSide(grid), withLargerFaces(grid)].map((changed) => {
    const resting = lineFamilies(changed, origin);
    const period = periodOf(resting);
    const families = period ? resting : panelRegion({ ...panel, grid: changed }).families;
    return cellClasses(families, period ?? bounds, grid.turn).classes;
  });
  const areAlike = [pitch, face].every(
    (changed) =>
      changed?.length === classes.length &&
      changed.every(({ frame }, index) => frame.length === classes[index]?.frame.length),
  );
  return classes.map((_, index) => {
    const [wider, thicker] = [pitch?.[index], face?.[index]];
    return areAlike && wider && thicker ? { pitch: wider.frame, face: thicker.frame } : null;
  });
}

/** How the lengths of the pieces of a fill change, in their order; null where the changed cell has other pieces. */
export function pieceChanges(
  pieces: readonly FilledPiece[],
  change: CellChange | null,
  { motif, stock, tips }: PanelFill,
): (PerTenth | null)[] {
  if (!change) return pieces.map(() => null);
  const [pitch, face] = [change.pitch, change.face].map((frame) => fillOpening(frame, motif, stock, tips).pieces);
  return pieces.map(({ shape: { length } }, index) => {
    const [wider, thicker] = [pitch?.[index], face?.[index]];
    const isAlike = pitch?.length === pieces.length && face?.length === pieces.length;
    return isAlike && wider && thicker
      ? { pitchMm: wider.shape.length - length, faceMm: thicker.shape.length - length }
      : null;
  });
}
