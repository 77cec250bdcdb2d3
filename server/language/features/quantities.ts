/** Numbers as a maker reads them: plural nouns, areas, times, shares. */
import type { PerTenth } from '../../lattice/laid-panel.ts';
import type { LengthUnit } from '../../design/design-model.ts';
import { isImperial, plain } from '../../design/values/length-text.ts';
import { millimetresIn } from '../../design/values/quantity.ts';

/** An area in cm², or in², to one place. */
export function areaText(squareMillimetres: number, units: LengthUnit): string {
  return isImperial(units)
    ? `${plain(squareMillimetres / millimetresIn.in ** 2, 1)} in²`
    : `${plain(squareMillimetres / 100, 1)} cm²`;
}

/** Stock length bought by the metre or the foot. */
export function runText(millimetres: number, units: LengthUnit): string {
  return isImperial(units) ? `${plain(millimetres / millimetresIn.ft, 1)} ft` : `${plain(millimetres / 1000, 2)} m`;
}

/** A fraction as a percentage, such as "4.9 %". */
export const shareText = (share: number): string => `${plain(share * 100, 1)} %`;

/** Minutes as a maker says them: "25 min", "4 h", "2 days". */
export function timeText(minutes: number): string {
  if (minutes < 120) return `${plain(minutes, 0)} min`;
  return minutes < 2 * 24 * 60 ? `${plain(minutes / 60, 1)} h` : `${plain(minutes / (24 * 60), 1)} days`;
}

/** Half-degree precision, such as "22.5°". */
/** "per 0.1 mm of pitch +0.06, of strip face -0.1 mm"; empty where it is not known. */
export function perTenthText(change: PerTenth | null | undefined): string {
  if (!change) return '';
  const signed = (value: number): string => `${value < 0 ? '−' : '+'}${plain(Math.abs(value), 3)}`;
  return `per 0.1 mm of pitch ${signed(change.pitchMm)}, of strip face ${signed(change.faceMm)} mm`;
}

export const angleText = (angle: number): string => `${plain(angle, 2)}°`;
