/** How little sheet could do: a bound by area, and the choices of sheets that could hold everything. */
import { minimum } from '../../geometry/numbers.ts';
import { arithmeticTolerance } from '../../geometry/tolerance.ts';

/** What one size of sheet costs (in money, or as one sheet) and holds by area. */
export interface SheetWorth {
  readonly worth: number;
  readonly area: number;
}

/** How many of each size are taken. */
export type SheetChoice = readonly number[];

export const worthOf = (choice: SheetChoice, sizes: readonly SheetWorth[]): number =>
  choice.reduce((sum, count, size) => sum + count * (sizes[size]?.worth ?? 0), 0);

export const areaOfChoice = (choice: SheetChoice, sizes: readonly SheetWorth[]): number =>
  choice.reduce((sum, count, size) => sum + count * (sizes[size]?.area ?? 0), 0);

/** Every choice that is large enough by area and would not be without any one of its sheets' kinds being fewer. */
export function choicesFor(need: number, sizes: readonly SheetWorth[]): SheetChoice[] {
  const [size, ...others] = sizes;
  if (!size) return [];
  const most = sheetsFor(need, size.area);
  if (others.length === 0) return [[most]];
  return Array.from({ length: most + 1 }, (_, count) =>
    choicesFor(Math.max(0, need - count * size.area), others).map((rest) => [count, ...rest]),
  ).flat();
}

/** No choice that is large enough by area costs less. */
export const boundByArea = (need: number, sizes: readonly SheetWorth[]): number =>
  minimum(choicesFor(need, sizes).map((choice) => worthOf(choice, sizes)));

const sheetsFor = (need: number, area: number): number => Math.ceil(need / area - arithmeticTolerance);
