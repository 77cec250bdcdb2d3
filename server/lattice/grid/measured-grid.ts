/** The grid as it came out after assembly: what infill, openings and nodes follow. */
import type { Grid } from '../../design/design-model.ts';

/** The grid with its measured side and face in place of the drawn ones; the grid itself where nothing was measured. */
export function measuredGrid(grid: Grid): Grid {
  const { measured } = grid;
  if (!measured) return grid;
  const growth = measured.side / grid.side;
  return {
    ...grid,
    side: measured.side,
    families: grid.families.map((family) => ({
      ...family,
      spacing: family.spacing * growth,
      offset: family.offset * growth,
      positions: family.positions?.map((position) => position * growth) ?? null,
      stock: { ...family.stock, face: measured.face ?? family.stock.face },
    })),
  };
}
