/** What is known of a wood by name: the file's own figures first, the built-in table for what it leaves out. */
import type { WoodDeclaration } from '../../design/material-model.ts';
import { densityAt, tableMoisture } from './density.ts';
import { movementAcross, movementByShrinkage } from './movement.ts';
import { saturationOf, type GrainDirection } from './wood.ts';
import { fibreSaturation } from './wood-sources.ts';
import { builtInWoods } from './wood-table.ts';

export interface WoodFigures {
  readonly name: string;
  /** kg/m³ at 12 % moisture. */
  readonly density: number | null;
  /** MPa. */
  readonly rupture: number | null;
  /** GPa. */
  readonly elasticity: number | null;
  readonly porous: boolean | null;
  /** Change in mm of `size` mm between two moistures in percent; null where no shrinkage is known. */
  readonly movement: (direction: GrainDirection, size: number, before: number, after: number) => number | null;
}

/** Null for a stock without a wood; a wood that nobody knows has no figures. */
export function woodFigures(name: string | null, declared: readonly WoodDeclaration[]): WoodFigures | null {
  if (name === null) return null;
  const own = declared.find((wood) => wood.name === name);
  const table = builtInWoods.get(name);
  return {
    name,
    density: own?.density ?? (table ? densityAt(table, tableMoisture) : null),
    rupture: own?.rupture ?? table?.rupture.value ?? null,
    elasticity: own?.elasticity ?? table?.elasticity.value ?? null,
    porous: own?.porous ?? table?.porous ?? null,
    movement: (direction, size, before, after) => {
      const shrinkage = direction === 'radial' ? own?.radialShrinkage : own?.tangentialShrinkage;
      if (shrinkage != null) {
        const saturation = table ? saturationOf(table) : fibreSaturation.common;
        return movementByShrinkage(100 * shrinkage, saturation, size, before, after);
      }
      return table ? movementAcross(table, direction, size, before, after) : null;
    },
  };
}
