/**
 * The three lines of one outline: the finished edge of the work; the sand line, so far inside it that the laminations of its
 * bands fill the rest; the saw line outside the sand line, so that something is left to sand. Millimetres.
 */
import type { Design, Outline, Panel } from '../../design/design-model.ts';
import { grownContours } from '../../geometry/grow-contours.ts';
import { sum } from '../../geometry/numbers.ts';
import type { Contour } from '../../geometry/path.ts';

/** Left outside the sand line where no blank says how much. */
const usualAllowance = 1.5;

export interface ThreeLines {
  readonly finished: readonly Contour[];
  /** The finished line itself where nothing goes round it. */
  readonly sand: readonly Contour[];
  readonly saw: readonly Contour[];
  readonly bandMm: number;
  readonly allowanceMm: number;
}

/** Corners of the sand line stay sharp, as mitred bands meet; round ones keep the saw at its distance everywhere. */
export function threeLines(finished: readonly Contour[], bandMm: number, allowanceMm: number): ThreeLines {
  const sand = bandMm === 0 ? finished : grownContours(finished, -bandMm, 'sharp');
  return { finished, sand, saw: grownContours(sand, allowanceMm, 'round'), bandMm, allowanceMm };
}

/** What all bands round a panel, or round its outline, take together. */
export function bandThickness({ bands }: Pick<Design, 'bands'>, around: Panel | Outline): number {
  const names = 'contours' in around ? [around.name] : namesRound(around);
  return sum(
    bands.filter((band) => names.includes(band.around.name)).map((band) => band.laminations * band.stock.face),
  );
}

const namesRound = ({ name, shape }: Panel): string[] =>
  shape.kind === 'outline' ? [name, shape.outline.name] : [name];

/** The allowance of the blank that a panel is taken from. */
export function sawAllowance({ blanks }: Pick<Design, 'blanks'>, { name }: Panel | Outline): number {
  return blanks.find(({ takes }) => takes.some(({ panel }) => panel.name === name))?.allowance ?? usualAllowance;
}
