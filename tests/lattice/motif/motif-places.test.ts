/** Places found by mirroring, turning and intersecting; laps with a said order. Figures by hand in a square of 40. */
import { describe, expect, it } from 'vitest';
import { fillOpening } from '../../../server/lattice/motif/fill-opening.ts';
import { placeNode } from '../../../server/design/node-place.ts';
import { designOf, only } from '../../design/design-of.ts';
import { stripStock } from '../../design-builder.ts';
import { told } from '../../told.ts';

const square = [
  { x: 0, y: 0 },
  { x: 40, y: 0 },
  { x: 40, y: 40 },
  { x: 0, y: 40 },
];
const stock = stripStock('bass', 3);

const motifWith = (phrases: string) => only(designOf(`motif trial for square { ${phrases} }`).motifs);

/** Where the piece from the centroid to a place ends. */
function placeOf(words: string) {
  const [piece] = motifWith(`piece arm from centroid to ${words}`).pieces;
  return piece ? placeNode(piece.to.place, square) : null;
}

describe('a place', () => {
  it.each([
    ['mirrored corner 1 over edge 2', { x: 80, y: 0 }],
    ['mirrored 0.25 along edge 1 over mid edge 1 to mid edge 3', { x: 30, y: 0 }],
    ['mirrored corner 2 over corner 1 to corner 3', { x: 0, y: 40 }],
    ['turned corner 1 by 1 corners about centroid', { x: 40, y: 0 }],
    ['turned mid edge 1 by 3 corners about centroid', { x: 0, y: 20 }],
    ['turned corner 2 by 90 about corner 1', { x: 0, y: 40 }],
    ['turned corner 2 by 90deg about corner 1', { x: 0, y: 40 }],
    ['intersection of corner 1 to corner 3 and corner 2 to corner 4', { x: 20, y: 20 }],
    ['intersection of corner 1 to mid edge 2 and corner 2 to corner 3', { x: 40, y: 20 }],
    ['intersection of corner 1 to mid edge 2 and mid edge 1 to mid edge 3', { x: 20, y: 10 }],
    ['between corner 1 and mirrored corner 1 over edge 2 at 0.25', { x: 20, y: 0 }],
  ])('%s', (words, { x, y }) => {
    expect(placeOf(words)?.x).toBeCloseTo(x, 9);
    expect(placeOf(words)?.y).toBeCloseTo(y, 9);
  });

  it.each([
    ['intersection of corner 1 to corner 2 and corner 4 to corner 3', 'never meet'],
    ['intersection of corner 1 to corner 1 and corner 4 to corner 2', 'one point for both ends'],
    ['between corner 1 and mirrored centroid over corner 1 to corner 1', 'one point for both ends'],
  ])('%s is none, and the piece says so', (words, reason) => {
    const { problems } = fillOpening(square, motifWith(`piece arm from centroid to ${words}`), stock, []);
    expect(problems.map(({ code }) => code)).toEqual(['LAP0501']);
    expect(told(problems[0])).toContain(reason);
  });
});

describe('a mirrored piece', () => {
  const ends = (phrase: string) =>
    motifWith(phrase).pieces.map(({ from, to }) =>
      [from, to].flatMap(({ place }) => {
        const { x, y } = placeNode(place, square) ?? { x: NaN, y: NaN };
        return [Number(x.toFixed(6)), Number(y.toFixed(6))];
      }),
    );

  it('is two, over the line that is said', () => {
    expect(ends('piece arm from 0.25 along edge 1 to corner 4, mirrored over mid edge 1 to mid edge 3')).toEqual([
      [10, 0, 0, 40],
      [30, 0, 40, 40],
    ]);
  });

  it('is two at every corner and edge, over the middle line from there', () => {
    const atCorners = ends('piece arm from corner to 0.25 along edge, every corner, mirrored');
    expect(atCorners).toHaveLength(8);
    expect(atCorners.slice(0, 2)).toEqual([
      [0, 0, 10, 0],
      [0, 0, 0, 10],
    ]);
    const atEdges = ends('piece arm from 0.25 along edge to centroid, mirrored, every edge');
    expect(atEdges.slice(0, 2)).toEqual([
      [10, 0, 20, 20],
      [30, 0, 20, 20],
    ]);
  });
});

describe('lapped pieces', () => {
  /** From which side each piece is notched, by role. */
  const sides = (phrases: string) =>
    Object.fromEntries(
      fillOpening(square, motifWith(phrases), stock, []).pieces.map(({ role, shape, flipped }) => {
        const from = shape.notches.map((notch) => notch.from);
        return [role, flipped ? from.map((side) => (side === 'above' ? 'below' : 'above')) : from];
      }),
    );

  it('lie by their direction, unless one is said to lie above', () => {
    const [bar, rail] = ['piece bar from mid edge 4 to mid edge 2', 'piece rail from mid edge 1 to mid edge 3'];
    expect(sides(`${bar} ${rail}`)).toEqual({ bar: ['above'], rail: ['below'] });
    expect(sides(`${bar}, above rail ${rail}`)).toEqual({ bar: ['below'], rail: ['above'] });
    expect(sides(`${bar} ${rail}, above bar`)).toEqual({ bar: ['above'], rail: ['below'] });
  });

  it('are put in order where three cross: the middle one is cut from both sides', () => {
    const three = `piece flat from mid edge 4 to mid edge 2, above steep
      piece rise from corner 1 to corner 3
      piece steep from mid edge 1 to mid edge 3`;
    expect(sides(three)).toEqual({
      rise: ['above', 'above'],
      steep: ['below', 'above'],
      flat: ['below', 'below'],
    });
  });
});
