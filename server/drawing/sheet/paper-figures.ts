/** Figures as they stand on paper: 0.1 mm or 1/64 in, half degrees. */
import type { LengthUnit } from '../../design/design-model.ts';
import { inchFraction, isImperial } from '../../design/values/length-text.ts';
import { rounded } from '../../geometry/tolerance.ts';

export type PaperLength = (millimetres: number) => string;

const millimetresAnInch = 25.4;
const finest = 64;

/** Writes lengths for a file in `units`: inches as fractions in lowest terms, all else in millimetres. */
export const paperLength = (units: LengthUnit): PaperLength =>
  isImperial(units) ? inchFraction : (millimetres) => rounded(millimetres, 1).toFixed(1);

/**
 * The same for the printed sheet: millimetres in steps of `stepMm`, inches with what the fraction leaves out, in
 * thousandths of an inch behind it.
 */
export function printLength(units: LengthUnit, stepMm: number): PaperLength {
  if (!isImperial(units)) {
    const decimals = stepMm < 0.1 ? 2 : 1;
    return (millimetres) => (Math.round(millimetres / stepMm) * stepMm).toFixed(decimals);
  }
  return (millimetres) => {
    const fraction = Math.round((millimetres / millimetresAnInch) * finest) / finest;
    const rest = rounded(millimetres / millimetresAnInch - fraction, 3);
    return rest === 0
      ? inchFraction(millimetres)
      : `${inchFraction(millimetres)} ${rest < 0 ? '−' : '+'}${Math.abs(rest).toFixed(3)}`;
  };
}

/** The word after a bare figure: none for inches, which carry their own. */
export const paperUnit = (units: LengthUnit): string => (isImperial(units) ? '' : ' mm');

/** An angle to half a degree, with its sign. */
export const paperAngle = (angle: number): string => `${Math.round(angle * 2) / 2}°`;
