/**
 * Rounding of the written plan: fine enough that nothing a shop can measure is lost, coarse enough
 * that the last bits of floating-point arithmetic never show.
 */
import { rounded } from '../../geometry/tolerance.ts';

/** Millimetres to a ten-thousandth. */
export const planLength = (value: number): number => rounded(value, 4);

/** Degrees to a ten-thousandth. */
export const planAngle = (value: number): number => rounded(value, 4);

/** Square millimetres to a hundredth. */
export const planArea = (value: number): number => rounded(value, 2);
