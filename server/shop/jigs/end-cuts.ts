/**
 * The cuts that make a piece's two ends on bevel jigs. A jig is a guide beside a groove: the piece lies in it on one of
 * its faces, one end against a stop, and the guide slopes back over it from the groove's floor, the jig's angle away
 * from the piece's axis. Lengths in mm, angles in degrees.
 */
import { angleOf, distance, cotangent, subtract, type Point } from '../../geometry/point.ts';
import { placeTolerance, sameAngle, sameLength } from '../../geometry/tolerance.ts';
import type { PieceShape } from '../../lattice/laid-panel.ts';
import { laidOtherwise } from '../../lattice/motif/piece-shape.ts';

/** One end cut at one setting. */
export interface EndCut {
  /** Angle of the jig, at most 90. */
  readonly jig: number;
  /** From the stop to where the slope starts at the groove's floor. */
  readonly toe: number;
  /** The side that is cut, seen from end 1 to end 2; both: the piece is turned over between two cuts. */
  readonly side: 'left' | 'right' | 'both';
}

/** All cuts of one end. */
export interface EndCuts {
  readonly end: 1 | 2;
  readonly cuts: readonly EndCut[];
  /** The angle of the end's point: 180 for a square end, and for one slanted cut twice its angle. */
  readonly bluntness: number;
}

/** Cotangent of `angle`; 0 at a right angle, free of rounding. */

/**
 * From the stop to the toe of the slope, for a point on the axis of a piece of `face` that shall be `length` long:
 * length + (face / 2)·cot bevel. The slope passes the tip half a face above the floor, and so starts that much further out.
 */
export const toeToStop = (length: number, face: number, bevel: number): number =>
  length + (face / 2) * cotangent(bevel);

/**
 * The cuts of both ends, the blunter first: it bears on the stop while the sharper, which a stop would crush, is cut.
 * Null where an end has no bevels of its own, being fitted to a frame by hand.
 */
export function cutsOfEnds(shape: PieceShape): readonly [EndCuts, EndCuts] | null {
  const first = turnedBack(cutsOfFarEnd(laidOtherwise(shape, { turned: true, flipped: false })));
  const second = cutsOfFarEnd(shape);
  if (!first || !second) return null;
  return second.bluntness > first.bluntness && !sameAngle(first.bluntness, second.bluntness)
    ? [second, first]
    : [first, second];
}

const otherSide = { left: 'right', right: 'left', both: 'both' } as const;

/** End 1 was looked at as end 2 of the piece turned round, where left is right. */
const turnedBack = (cuts: EndCuts | null): EndCuts | null =>
  cuts && { ...cuts, end: 1, cuts: cuts.cuts.map((cut) => ({ ...cut, side: otherSide[cut.side] })) };

function cutsOfFarEnd(shape: PieceShape): EndCuts | null {
  const { bevels } = shape.ends[1];
  if (!bevels) return null;
  const [left, right] = bevels;
  const straight = sameAngle(left + right, 180);
  const sides: ('left' | 'right')[] = straight ? [left < right ? 'left' : 'right'] : ['left', 'right'];
  const cuts = sides.flatMap((side) => cutOfSide(shape, side, side === 'left' ? left : right));
  if (cuts.length === 0) return null;
  return { end: 2, cuts: sharedSettings(cuts), bluntness: straight ? 2 * Math.min(left, right) : left + right };
}

/**
 * The cut of one side at end 2: its line is read off the outline, so tips beside the axis come out right too. A bevel
 * that no wood is left to show needs no cut. One of more than 90° is the same line cut from the other side.
 */
function cutOfSide({ outline, stock }: PieceShape, side: 'left' | 'right', bevel: number): EndCut[] {
  const heading = side === 'left' ? 180 - bevel : bevel;
  const corner = outline.find((point, index) => {
    const next = outline[(index + 1) % outline.length] ?? point;
    return distance(point, next) > placeTolerance && sameAngle(angleOf(subtract(next, point)), heading);
  });
  if (!corner) return [];
  const facing = side === 'left' ? 1 : -1;
  const floor = (bevel <= 90 ? -facing : facing) * (stock.face / 2);
  const toe = placeOnLine(corner, heading, floor);
  return [{ jig: Math.min(bevel, 180 - bevel), toe, side: bevel <= 90 ? side : otherSide[side] }];
}

/** Where the line through `point` along `heading` passes the height `y`. */
const placeOnLine = (point: Point, heading: number, y: number): number => point.x + (y - point.y) * cotangent(heading);

/** Two sides at one jig and stop are one cut, with a turn over between. */
function sharedSettings(cuts: readonly EndCut[]): EndCut[] {
  const [one, two] = cuts;
  if (!one || !two || !sameAngle(one.jig, two.jig) || !sameLength(one.toe, two.toe)) return [...cuts];
  return [{ ...one, side: 'both' }];
}
