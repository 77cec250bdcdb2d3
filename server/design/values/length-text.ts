/** Lengths as a maker reads them: millimetres, or inches to a sixty-fourth and how far off that is. */
import type { LengthUnit } from '../design-model.ts';
import { millimetresIn } from './quantity.ts';

/** Parts of an inch on a rule. */
const partsAnInch = 64;

export const isImperial = (units: LengthUnit): boolean => units === 'in' || units === 'ft';

/** `value` to at most `decimals` places, without trailing zeros. */
export const plain = (value: number, decimals: number): string => String(Number(value.toFixed(decimals)));

/** "20.1 mm". */
export const millimetreText = (millimetres: number, decimals = 1): string => `${plain(millimetres, decimals)} mm`;

/** Inches to the nearest sixty-fourth in lowest terms, such as "3 1/2 in", and by how much the length is over or under it. */
export function inchText(millimetres: number): string {
  const inches = millimetres / millimetresIn.in;
  const error = Math.abs(inches) - Math.round(Math.abs(inches) * partsAnInch) / partsAnInch;
  const thousandths = plain(Math.abs(error), 3);
  const remark = thousandths === '0' ? '' : ` (${thousandths} in ${error > 0 ? 'over' : 'under'})`;
  return `${inchFraction(millimetres)}${remark}`;
}

/** The nearest sixty-fourth in lowest terms, without what it leaves out. */
export function inchFraction(millimetres: number): string {
  const inches = millimetres / millimetresIn.in;
  const parts = Math.round(Math.abs(inches) * partsAnInch);
  return `${inches < 0 && parts > 0 ? '-' : ''}${mixedNumber(parts)} in`;
}

/** So many sixty-fourths as a whole number and a fraction in lowest terms. */
function mixedNumber(parts: number): string {
  const whole = Math.floor(parts / partsAnInch);
  let numerator = parts % partsAnInch;
  let denominator = partsAnInch;
  while (numerator > 0 && numerator % 2 === 0) {
    numerator /= 2;
    denominator /= 2;
  }
  const fraction = numerator > 0 ? `${numerator}/${denominator}` : '';
  return [whole > 0 || fraction === '' ? String(whole) : '', fraction].filter(Boolean).join(' ');
}

/** A length in the units of the file; `decimals` are those of millimetres. */
export const lengthText = (millimetres: number, units: LengthUnit, decimals = 1): string =>
  isImperial(units) ? inchText(millimetres) : millimetreText(millimetres, decimals);
