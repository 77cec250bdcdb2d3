/** A number with a unit, said in the other unit. */
import type { NumberLiteral } from '../../../grammar/syntax-tree.ts';
import type { HoverLines } from './hover-text.ts';
import { inchText, isImperial, millimetresIn, plain } from './quantities.ts';

/** Lengths in inches or millimetres, angles as a slope; null for a bare number and for a percentage. */
export function quantityHover({ amount, unit }: Pick<NumberLiteral, 'amount' | 'unit'>): HoverLines | null {
  if (unit === null || unit === 'unknown' || unit === '%') return null;
  if (unit === 'deg') return [`**${plain(amount, 4)}°**`, slopeText(amount)];
  const millimetres = amount * millimetresIn(unit);
  const title = `**${plain(amount, 6)} ${unit}**`;
  if (isImperial(unit)) return [title, `${plain(millimetres, 3)} mm`];
  return [title, `${plain(millimetres / millimetresIn('in'), 4)} in`, `to the nearest 1/64: ${inchText(millimetres)}`];
}

/** A slope as a maker sets it with a square: rise = run · tan(angle), for a run of 100 mm. */
function slopeText(angle: number): string {
  const acute = angle < 90 ? angle : 180 - angle;
  if (acute <= 0 || acute === 90) return 'square or straight to the axis';
  return `rises ${plain(Math.tan((acute * Math.PI) / 180) * 100, 2)} mm in 100 mm`;
}
