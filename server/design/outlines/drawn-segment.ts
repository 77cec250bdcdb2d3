/** Parts of an outline with the words that drew them. */
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import type { Contour, PathSegment } from '../../geometry/path.ts';

export interface DrawnSegment {
  readonly segment: PathSegment;
  /** The words of the step. */
  readonly range: SourceRange;
  /** The radius that rounds the corner at its end, with its words. */
  readonly rounded?: { readonly radius: number; readonly range: SourceRange };
}

/** A closed line. */
export type DrawnChain = readonly DrawnSegment[];

export const chainOf = (contour: Contour, range: SourceRange): DrawnSegment[] =>
  contour.map((segment) => ({ segment, range }));

export const contourOf = (chain: DrawnChain): Contour => chain.map(({ segment }) => segment);
