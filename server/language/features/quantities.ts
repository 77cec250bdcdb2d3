/** Numbers as a maker reads them: millimetres to a tenth or inches to a sixty-fourth, plural nouns, areas. */
import type { LengthUnit } from '../../design/design-model.ts';

const millimetresAnInch = 25.4;
const millimetresAUnit: Record<LengthUnit, number> = { mm: 1, cm: 10, m: 1000, in: millimetresAnInch, ft: 304.8 };

export const isImperial = (units: LengthUnit): boolean => units === 'in' || units === 'ft';

/** Millimetres a unit of length holds. */
export const millimetresIn = (unit: LengthUnit): number => millimetresAUnit[unit];

/** `value` to at most `decimals` places, without trailing zeros. */
export const plain = (value: number, decimals: number): string => String(Number(value.toFixed(decimals)));

/** "20.1 mm". */
export const millimetreText = (millimetres: number): string => `${plain(millimetres, 1)} mm`;

/** Inches to the nearest sixty-fourth in lowest terms, such as "3 1/2 in". */
export function inchText(millimetres: number): string {
  const parts = Math.round((Math.abs(millimetres) / millimetresAnInch) * 64);
  const sign = millimetres < 0 && parts > 0 ? '-' : '';
  const whole = Math.floor(parts / 64);
  let numerator = parts % 64;
  let denominator = 64;
  while (numerator > 0 && numerator % 2 === 0) {
    numerator /= 2;
    denominator /= 2;
  }
  const fraction = numerator > 0 ? `${numerator}/${denominator}` : '';
  const wholeText = whole > 0 || fraction === '' ? String(whole) : '';
  return `${sign}${[wholeText, fraction].filter(Boolean).join(' ')} in`;
}

/** A length in the units of the file. */
export const lengthText = (millimetres: number, units: LengthUnit): string =>
  isImperial(units) ? inchText(millimetres) : millimetreText(millimetres);

/** An area in cm², or in², to one place. */
export function areaText(squareMillimetres: number, units: LengthUnit): string {
  return isImperial(units)
    ? `${plain(squareMillimetres / millimetresAnInch ** 2, 1)} in²`
    : `${plain(squareMillimetres / 100, 1)} cm²`;
}

/** Stock length bought by the metre or the foot. */
export function runText(millimetres: number, units: LengthUnit): string {
  return isImperial(units) ? `${plain(millimetres / 304.8, 1)} ft` : `${plain(millimetres / 1000, 2)} m`;
}

/** "1 strip", "27 strips". */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

/** A fraction as a percentage, such as "4.9 %". */
export const shareText = (share: number): string => `${plain(share * 100, 1)} %`;

/** Minutes as a maker says them: "25 min", "4 h", "2 days". */
export function timeText(minutes: number): string {
  if (minutes < 120) return `${plain(minutes, 0)} min`;
  return minutes < 2 * 24 * 60 ? `${plain(minutes / 60, 1)} h` : `${plain(minutes / (24 * 60), 1)} days`;
}

/** Half-degree precision, such as "22.5°". */
export const angleText = (angle: number): string => `${plain(angle, 2)}°`;
