/**
 * The three lines of one outline: the finished edge of the work; the sand line, so far inside it that the laminations of its
 * bands fill the rest; the saw line outside the sand line, so that something is left to sand. Millimetres.
 */
import type { Outline, Panel } from '../../design/design-model.ts';
import type { Design } from '../../design/design.ts';
import type { Band } from '../../design/work-model.ts';
import { combinedRings } from '../../geometry/combine-rings.ts';
import { flattenContour } from '../../geometry/flatten-path.ts';
import { grownContours } from '../../geometry/grow-contours.ts';
import { grownRings } from '../../geometry/grow-rings.ts';
import { sum } from '../../geometry/numbers.ts';
import type { Contour } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { restoredContours } from '../../geometry/restore-curves.ts';
import type { FacedPart } from './faced-parts.ts';
import { stretchesNear } from './stretches-near.ts';

/** Left outside the sand line where no blank says how much. */
const usualAllowance = 1.5;

export interface ThreeLines {
  readonly finished: readonly Contour[];
  /** The finished line itself where nothing goes round it. */
  readonly sand: readonly Contour[];
  readonly saw: readonly Contour[];
  /** Stretches of the finished line that are fitted to another part: the saw stays further away, and the line is scribed. */
  readonly scribe: readonly (readonly Point[])[];
  readonly bandMm: number;
  readonly allowanceMm: number;
}

/**
 * Corners of the sand line stay sharp, as mitred bands meet; round ones keep the saw at its distance everywhere. Towards
 * what the edge is fitted to the saw leaves more; that may reach as far round the thing, and no further.
 */
export function threeLines(
  finished: readonly Contour[],
  bandMm: number,
  allowanceMm: number,
  faced: readonly FacedPart[] = [],
): ThreeLines {
  const sand = bandMm === 0 ? finished : grownContours(finished, -bandMm, 'sharp');
  const plain = grownContours(sand, allowanceMm, 'round');
  return {
    ...{ finished, sand, bandMm, allowanceMm },
    saw: faced.reduce((saw, part) => sawTowards(saw, sand, allowanceMm, part), plain),
    scribe: faced.flatMap((part) => stretchesNear(finished, part)),
  };
}

/** The saw line with what is left more of it towards one part. */
function sawTowards(
  saw: readonly Contour[],
  sand: readonly Contour[],
  allowanceMm: number,
  { rings, leave }: FacedPart,
): Contour[] {
  const wider = grownContours(sand, allowanceMm + leave, 'round');
  const left = combinedRings(wider.map(flattenContour), grownRings(rings, leave, 'round'), 'common');
  return restoredContours(combinedRings(saw.map(flattenContour), left, 'plus'), [...saw, ...wider].flat());
}

/** What all bands round a panel, or round its outline, take together. */
export const bandThickness = (design: Pick<Design, 'bands'>, around: Panel | Outline): number =>
  sum(bandsRound(design, around).map(thicknessOf));

/** The bands round a panel, or round its outline. */
export function bandsRound({ bands }: Pick<Design, 'bands'>, around: Panel | Outline): Band[] {
  const names = 'contours' in around ? [around.name] : namesRound(around);
  return bands.filter((band) => names.includes(band.around.name));
}

/** What all laminations of a band take. */
export const thicknessOf = ({ laminations, stock }: Band): number => laminations * stock.face;

const namesRound = ({ name, shape }: Panel): string[] =>
  shape.kind === 'outline' ? [name, shape.outline.name] : [name];

/** The allowance of the blank that a panel is taken from. */
export function sawAllowance({ blanks }: Pick<Design, 'blanks'>, { name }: Panel | Outline): number {
  return blanks.find(({ takes }) => takes.some(({ panel }) => panel.name === name))?.allowance ?? usualAllowance;
}
