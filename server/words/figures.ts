/**
 * Figures as text, in the units of a file: the one place where a number becomes words, with the one rounding for its kind.
 * Millimetre files are told in mm to 0.1 (fine 0.01, keys 0.05, pins 0.02), inch files in decimal inches to 0.001; what is
 * bought in fractions, where one is exact. Sources: common practice of the bench; the inch is 25.4 mm exactly.
 */
import type { LengthPrecision } from '../../grammar/words.ts';
import { coinDecimals } from '../design/values/currency.ts';
import type { LengthUnit } from '../design/design-model.ts';
import { millimetresIn, quantityOf } from '../design/values/quantity.ts';
import { rounded } from '../geometry/tolerance.ts';

export const isImperial = (units: LengthUnit): boolean => units === 'in' || units === 'ft';

/** `value` to at most `decimals` places, without trailing zeros. */
export const plain = (value: number, decimals: number): string => String(rounded(value, decimals));

/** `value` to exactly `decimals` places, never with a minus before nothing. */
export const fixed = (value: number, decimals: number): string => rounded(value, decimals).toFixed(decimals);

/** With a real minus sign, and always a sign but at nothing: "+2.00", "−1.15", "0.00". */
export function signed(value: number, decimals: number): string {
  const size = fixed(Math.abs(value), decimals);
  return Number(size) === 0 ? size : `${value < 0 ? '−' : '+'}${size}`;
}

/** Lengths of one precision: millimetres in steps of `step`, with so many decimals; `trimmed` leaves trailing zeros out. */
const millimetreForms: Readonly<Record<LengthPrecision, { step: number; decimals: number; trimmed: boolean }>> = {
  length: { step: 0.1, decimals: 1, trimmed: false },
  fine: { step: 0.01, decimals: 2, trimmed: false },
  key: { step: 0.05, decimals: 2, trimmed: false },
  pin: { step: 0.02, decimals: 2, trimmed: false },
  given: { step: 0.01, decimals: 2, trimmed: true },
  size: { step: 0.1, decimals: 1, trimmed: true },
};

const inchDecimals = 3;
/** Parts of an inch on a rule. */
const partsAnInch = 64;

/** A length without its unit: mm, or inches in a file of inches or feet. */
export function lengthFigure(millimetres: number, units: LengthUnit, precision: LengthPrecision = 'length'): string {
  if (isImperial(units)) return inchFigure(rounded(millimetres / millimetresIn.in, inchDecimals + 3), precision);
  const { step, decimals, trimmed } = millimetreForms[precision];
  const stepped = Math.round(rounded(millimetres / step, decimals + 3)) * step;
  return trimmed ? plain(stepped, decimals) : fixed(stepped, decimals);
}

function inchFigure(inches: number, precision: LengthPrecision): string {
  if (precision === 'size') return exactFraction(inches) ?? plain(inches, inchDecimals);
  return precision === 'given' ? plain(inches, inchDecimals) : fixed(inches, inchDecimals);
}

/** The unit that goes with `lengthFigure`, and its millimetres. */
export const lengthUnit = (units: LengthUnit): 'mm' | 'in' => (isImperial(units) ? 'in' : 'mm');
export const millimetresAUnit = (units: LengthUnit): number => millimetresIn[lengthUnit(units)];

/** "36.0 mm", "1.417 in". */
export const lengthText = (millimetres: number, units: LengthUnit, precision: LengthPrecision = 'given'): string =>
  `${lengthFigure(millimetres, units, precision)} ${lengthUnit(units)}`;

/** Inches as a whole number and sixty-fourths in lowest terms, "3 1/2"; null where that is not exactly what they are. */
function exactFraction(inches: number): string | null {
  const parts = Math.round(Math.abs(inches) * partsAnInch);
  if (rounded(Math.abs(inches) - parts / partsAnInch, 6) !== 0) return null;
  return `${inches < 0 && parts > 0 ? '-' : ''}${mixedNumber(parts)}`;
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

/** A length in the unit that the file is written in, to be put into it: cm and feet as they are. */
export const writtenLength = (millimetres: number, units: LengthUnit): string =>
  plain(millimetres / millimetresIn[units], units === 'mm' ? 2 : 4);

/** "12.5, 30": a place as the file writes places; where its unit is another one than the text's, with that. */
export function placeText(x: number, y: number, units: LengthUnit): string {
  const figure = (each: number): string => (isImperial(units) ? plain(each / millimetresIn.in, 2) : plain(each, 1));
  return `${figure(x)}, ${figure(y)}${units === 'mm' || units === 'in' ? '' : ` ${lengthUnit(units)}`}`;
}

const squareMillimetresInCentimetre = 100;

/** Something lost, overlapping or enclosed, "12.3 mm²", "78.5 cm²" or "0.019 in²". */
export function areaText(mm2: number, units: LengthUnit): string {
  if (isImperial(units)) return `${plain(mm2 / millimetresIn.in ** 2, 3)} in²`;
  return mm2 < 10 * squareMillimetresInCentimetre
    ? `${plain(mm2, 1)} mm²`
    : `${plain(mm2 / squareMillimetresInCentimetre, 1)} cm²`;
}

/** Something coated or covered, "0.35 m²" or "3.8 ft²". */
export const surfaceText = (mm2: number, units: LengthUnit): string =>
  isImperial(units) ? `${fixed(mm2 / millimetresIn.ft ** 2, 2)} ft²` : `${fixed(mm2 / 1e6, 2)} m²`;

/** Stock bought by the run, "12.4 m" or "40.7 ft". */
export const runText = (millimetres: number, units: LengthUnit): string =>
  isImperial(units) ? `${plain(millimetres / millimetresIn.ft, 1)} ft` : `${plain(millimetres / 1000, 2)} m`;

/** To half a degree, as a jig is named. */
export const angleFigure = (degrees: number): string => plain(Math.round(degrees * 2) / 2, 1);
export const angleText = (degrees: number): string => `${angleFigure(degrees)}°`;
export const fineAngleText = (degrees: number): string => `${plain(degrees, 1)}°`;

const gramsAPound = quantityOf(1, 'lb').amount;
const gramsAnOunce = quantityOf(1, 'oz').amount;

/** "1.23 kg" or "85 g"; "2.71 lb" or "3.0 oz". */
export function massText(grams: number, units: LengthUnit): string {
  if (isImperial(units)) {
    return Math.abs(grams) < gramsAPound
      ? `${plain(grams / gramsAnOunce, 1)} oz`
      : `${plain(grams / gramsAPound, 2)} lb`;
  }
  return Math.abs(grams) < 1000 ? `${fixed(grams, 0)} g` : `${plain(grams / 1000, 2)} kg`;
}

/** Masses in a column under `massUnit`: g or ounces. */
export const massFigure = (grams: number, units: LengthUnit): string =>
  isImperial(units) ? fixed(grams / gramsAnOunce, 1) : fixed(grams, 0);
export const massUnit = (units: LengthUnit): 'g' | 'oz' => (isImperial(units) ? 'oz' : 'g');

/** Resin is weighed in g and measured in mL in any file. */
export const resinText = (grams: number): string => `${fixed(grams, 1)} g`;
export const volumeText = (millilitres: number): string => `${fixed(millilitres, 1)} mL`;

/** "12.50", with as many decimals as the currency's smallest coin. */
export const moneyFigure = (amount: number, currency: string | null): string =>
  fixed(amount, coinDecimals(currency ?? ''));
/** "12.50 EUR". */
export const moneyText = (amount: number, currency: string | null): string =>
  `${moneyFigure(amount, currency)}${currency === null ? '' : ` ${currency}`}`;

/** "2.5 h" out of minutes. */
export const hoursText = (minutes: number): string => `${plain(minutes / 60, 1)} h`;

/** "45 min", "3 h 20 min". */
export function minutesText(minutes: number): string {
  const whole = Math.round(minutes);
  const hours = Math.floor(whole / 60);
  return hours === 0 ? `${whole} min` : `${hours} h ${whole % 60} min`;
}

/** A fraction as a percentage, such as "4.9 %". */
export const percentText = (fraction: number): string => `${plain(fraction * 100, 1)} %`;

/** Minutes as a maker says them: "25 min", "4 h", "2 days". */
export function durationText(minutes: number): string {
  if (minutes < 120) return `${plain(minutes, 0)} min`;
  return minutes < 2 * 24 * 60 ? hoursText(minutes) : `${plain(minutes / (24 * 60), 1)} days`;
}

/** The step of a pitch or face whose effect is told: 0.1 mm, or 0.01 in. */
export const changeStep = (units: LengthUnit): '0.1 mm' | '0.01 in' => (isImperial(units) ? '0.01 in' : '0.1 mm');

const inchesAStep = 0.01;
const millimetresAStep = 0.1;

/**
 * What a length changes by, in the unit of `changeStep`, where its change in mm for 0.1 mm is known (a rate, so the figure
 * in inches for 0.01 in is a tenth of it); a dash where it is not.
 */
export function changeFigure(perTenthMm: number | null | undefined, units: LengthUnit): string {
  if (perTenthMm == null) return '–';
  return isImperial(units) ? signed((perTenthMm / millimetresAStep) * inchesAStep, 4) : signed(perTenthMm, 2);
}

/** Units of the figures that a plan holds. */
export type PlanUnit = 'mm' | 'mm²' | 'm²' | 'mL' | 'g' | 'kg' | '%' | 'min' | 'h';

/** What a figure of a plan is told in: its unit in a metric file, or an inch file's, and how many of the one are one of the other. */
function toldUnit(
  unit: PlanUnit,
  units: LengthUnit,
): { readonly unit: string; readonly size: number; readonly decimals: number } {
  const metric = { unit, size: 1, decimals: unit === 'g' ? 1 : 2 };
  if (!isImperial(units)) return metric;
  switch (unit) {
    case 'mm':
      return { unit: 'in', size: millimetresIn.in, decimals: inchDecimals };
    case 'mm²':
      return { unit: 'in²', size: millimetresIn.in ** 2, decimals: inchDecimals };
    case 'm²':
      return { unit: 'ft²', size: (millimetresIn.ft / millimetresIn.m) ** 2, decimals: 2 };
    case 'g':
      return { unit: 'oz', size: gramsAnOunce, decimals: 1 };
    case 'kg':
      return { unit: 'lb', size: gramsAPound / 1000, decimals: 2 };
    case 'mL':
    case '%':
    case 'min':
    case 'h':
      return metric;
  }
}

/** A figure of a plan for a comparison, and the word that goes with it. Versions differ by little: mm to 0.01. */
export function planFigure(value: number, unit: PlanUnit, units: LengthUnit): string {
  const { size, decimals } = toldUnit(unit, units);
  return fixed(value / size, decimals);
}
export const planUnit = (unit: PlanUnit, units: LengthUnit): string => toldUnit(unit, units).unit;

/** How the lengths of a table or a drawing are told: bare, for its head or foot says the unit. */
export interface LengthFigures {
  readonly units: LengthUnit;
  readonly length: (millimetres: number) => string;
  readonly fine: (millimetres: number) => string;
  readonly key: (millimetres: number) => string;
  readonly pin: (millimetres: number) => string;
  readonly size: (millimetres: number) => string;
}

export const lengthFigures = (units: LengthUnit): LengthFigures => ({
  units,
  length: (millimetres) => lengthFigure(millimetres, units, 'length'),
  fine: (millimetres) => lengthFigure(millimetres, units, 'fine'),
  key: (millimetres) => lengthFigure(millimetres, units, 'key'),
  pin: (millimetres) => lengthFigure(millimetres, units, 'pin'),
  size: (millimetres) => lengthFigure(millimetres, units, 'size'),
});
