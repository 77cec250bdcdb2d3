/** Whether a band's laminations take the bends of their edge. Lengths mm; radii to the middle of a lamination. */
import type { WoodDeclaration } from '../../design/material-model.ts';
import type { Band } from '../../design/work-model.ts';
import type { Point } from '../../geometry/point.ts';
import type { Bend, SharpestBends } from '../../geometry/sharpest-bends.ts';
import { coldBendingRadius } from '../wood/bending.ts';
import { woodFigures } from '../wood/wood-figures.ts';

export type BendGrade = 'bends' | 'try' | 'will not bend' | 'not tested';

/** The tightest place: which lamination, bent how, and how thick one may be that would bend there. */
export interface WorstBend {
  readonly at: Point;
  readonly side: 'bulge' | 'hollow';
  readonly lamination: number;
  readonly radius: number;
  /** Null where no limit is known. */
  readonly bendingThickness: number | null;
}

export interface BendLimit {
  readonly radius: number;
  readonly from: 'tested' | 'strength of the wood';
}

/**
 * The tested radius first; else for dry wood the radius at which the outer fibre reaches the wood's strength. Damp and
 * hot wood bend further, by how much no table of ours says: there the dry limit is what surely bends, and no more.
 */
export function bendLimit({ stock, testedRadius }: Band, woods: readonly WoodDeclaration[]): BendLimit | null {
  if (testedRadius !== null) return { radius: testedRadius, from: 'tested' };
  const wood = woodFigures(stock.wood, woods);
  if (wood?.rupture == null || wood.elasticity === null) return null;
  return { radius: coldBendingRadius(stock.face, wood.rupture, wood.elasticity), from: 'strength of the wood' };
}

/** Figures of wood scatter by about so much: within it a sample bend decides. Common practice. */
const sampleMargin = 1.25;

export function gradeOf(worst: WorstBend | null, limit: BendLimit | null, { method }: Band): BendGrade {
  if (!worst) return 'bends';
  if (!limit) return 'not tested';
  if (worst.radius >= limit.radius) return 'bends';
  if (limit.from !== 'tested' && method !== 'cold') return 'not tested';
  return worst.radius * sampleMargin >= limit.radius ? 'try' : 'will not bend';
}

/**
 * A lamination `distance` outward of the finished line has the curvature κ/(1 + κ·distance); on a bulge the innermost bends
 * most, in a hollow the outermost. A bulge tighter than the lamination lies inside it has no curve left: radius 0.
 */
export function worstBend(
  bends: SharpestBends,
  distances: readonly number[],
  limit: BendLimit | null,
  thickness: number,
): WorstBend | null {
  const worst = (bend: Bend | null, side: WorstBend['side'], lamination: number): WorstBend[] => {
    const distance = distances[lamination - 1];
    if (!bend || distance === undefined) return [];
    const radius = Math.max(0, side === 'bulge' ? 1 / bend.curvature + distance : -1 / bend.curvature - distance);
    const bendingThickness = limit && (thickness * radius) / limit.radius;
    return [{ at: bend.at, side, lamination, radius, bendingThickness }];
  };
  const all = [...worst(bends.left, 'bulge', 1), ...worst(bends.right, 'hollow', distances.length)];
  return all.sort((a, b) => a.radius - b.radius)[0] ?? null;
}
