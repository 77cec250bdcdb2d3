/** How long a bar of a round length in the file's units is on the page. */
import type { LengthUnit } from '../../../server/language/preview-messages.ts';
import { isImperial, lengthText, millimetresAUnit } from '../../../server/words/figures.ts';

export interface ScaleBar {
  readonly pixels: number;
  readonly words: string;
}

const steps = [1, 2, 5] as const;
/** Below an inch, rules are halved. */
const partsOfAnInch = [1 / 16, 1 / 8, 1 / 4, 1 / 2] as const;

/** The longest bar of a round length that is no longer than `room` pixels, at `scale` pixels a millimetre. */
export function scaleBar(units: LengthUnit, scale: number, room: number): ScaleBar {
  const unit = millimetresAUnit(units);
  const most = room / scale / unit;
  const power = 10 ** Math.floor(Math.log10(most));
  const decimal = power * Math.max(...steps.filter((step) => step * power <= most));
  const part = Math.max(...partsOfAnInch.filter((each) => each <= most), 0);
  const length = (isImperial(units) && decimal < 1 && part > 0 ? part : decimal) * unit;
  return { pixels: length * scale, words: lengthText(length, units, isImperial(units) ? 'size' : 'given') };
}
