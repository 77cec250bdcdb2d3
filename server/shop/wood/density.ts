/** Weight of wood by its moisture. Densities in kg/m³, the same number as µg/mm³; moistures in percent of the ovendry mass. */
import { saturationOf, type Wood } from './wood.ts';
import { fibreSaturation } from './wood-sources.ts';
import { shrinkageTo } from './movement.ts';

/** Moisture at which Table 5-3a gives its figures, and the common state of wood at 20 °C and 65 % humidity. */
export const tableMoisture = 12;

/** Percent of volume shrinkage for each unit of basic specific gravity. Wood Handbook FPL-GTR-282 (2021), eq. 4-12. */
const shrinkagePerGravity = 26.5;

/** Density with `moisture` percent water, of wood whose ovendry mass over volume at that moisture is `gravity`. Eq. 4-14. */
export const densityOf = (gravity: number, moisture: number): number => 1000 * gravity * (1 + moisture / 100);

/** Specific gravity on the volume at `moisture`, from the basic one (green volume) and the total volume shrinkage. Eq. 4-11. */
export const gravityAt = (basic: number, volumeShrinkage: number, moisture: number, saturation: number): number =>
  basic / (1 - shrinkageTo(volumeShrinkage, moisture, saturation) / 100);

/** Specific gravity on the volume at `moisture` where the volume shrinkage isn't known: eq. 4-13, from eq. 4-12. */
export const averageGravityAt = (basic: number, moisture: number): number =>
  gravityAt(basic, shrinkagePerGravity * basic, moisture, fibreSaturation.common);

/** Density of `wood` at `moisture` percent, in kg/m³. At 12 % it is the table's specific gravity × 1120. */
export const densityAt = (wood: Wood, moisture: number): number => {
  const basic = basicGravity(wood);
  const gravity = wood.volumeShrinkage
    ? gravityAt(basic, wood.volumeShrinkage.value, moisture, saturationOf(wood))
    : averageGravityAt(basic, moisture);
  return densityOf(gravity, moisture);
};

/** Specific gravity on the green volume: eq. 4-11, or eq. 4-13, solved for it at the table's moisture. */
function basicGravity(wood: Wood): number {
  const gravity = wood.specificGravity.value;
  if (wood.volumeShrinkage) {
    return gravity * (1 - shrinkageTo(wood.volumeShrinkage.value, tableMoisture, saturationOf(wood)) / 100);
  }
  return gravity / (1 + (gravity * shrinkageTo(shrinkagePerGravity, tableMoisture, fibreSaturation.common)) / 100);
}
