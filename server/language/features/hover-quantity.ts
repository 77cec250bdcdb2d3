/** A number with a unit, said in the other unit. */
import type { NumberLiteral } from '../../../grammar/tree/syntax-nodes.ts';
import { quantityOf } from '../../design/values/quantity.ts';
import type { HoverLines } from './hover-text.ts';
import { millimetresIn } from '../../design/values/quantity.ts';
import { isImperial, lengthText, plain } from '../../words/figures.ts';

/** Lengths in inches or millimetres, masses, volumes and times in their other units, angles as a slope; null for a bare number and for a percentage. */
export function quantityHover({ amount, unit }: Pick<NumberLiteral, 'amount' | 'unit'>): HoverLines | null {
  const title = `**${plain(amount, 6)} ${unit ?? ''}**`;
  switch (unit) {
    case null:
    case 'unknown':
    case '%':
      return null;
    case 'deg':
      return [`**${plain(amount, 4)}°**`, slopeText(amount)];
    case 'g':
    case 'kg':
      return [title, `${plain(quantityOf(amount, unit).amount / quantityOf(1, 'lb').amount, 3)} lb`];
    case 'oz':
    case 'lb':
      return [title, `${plain(quantityOf(amount, unit).amount, 0)} g`];
    case 'mL':
      return [title, `${plain(amount / 1000, 3)} L`];
    case 'L':
      return [title, `${plain(amount * 1000, 0)} mL`];
    case 'min':
      return [title, `${plain(amount / 60, 2)} h`];
    case 'h':
    case 'day':
    case 'days':
      return [title, `${plain(quantityOf(amount, unit).amount, 0)} min`];
    case 'mm':
    case 'cm':
    case 'm':
    case 'in':
    case 'ft': {
      const millimetres = amount * millimetresIn[unit];
      if (isImperial(unit)) return [title, lengthText(millimetres, 'mm')];
      return [title, ...new Set([lengthText(millimetres, 'in'), lengthText(millimetres, 'in', 'size')])];
    }
  }
}

/** A slope as a maker sets it with a square: rise = run · tan(angle), for a run of 100 of any unit. */
function slopeText(angle: number): string {
  const acute = angle < 90 ? angle : 180 - angle;
  if (acute <= 0 || acute === 90) return 'square or straight to the axis';
  return `rises ${plain(Math.tan((acute * Math.PI) / 180) * 100, 2)} in 100`;
}
