/** Whole, trimmed and outside of every piece, found again by brute force with flatten-js, which the engine does not use. */
import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Panel, PanelShape } from '../../server/design/design-model.ts';
import { distance, type Point } from '../../server/geometry/point.ts';
import { laidOut, onGround, randomPanels } from './random-panels.ts';

const polygonOf = (points: readonly Point[]): Flatten.Polygon =>
  new Flatten.Polygon(points.map(({ x, y }) => Flatten.point(x, y)));

/** Far larger than any of the random outlines, whose corners lie within 75 mm of the origin. */
const everywhere: PanelShape = { kind: 'rectangle', width: 280, height: 280, range: { start: 0, end: 0 } };

/** Every piece near the outlines, each on its place. */
const allPieces = (panel: Panel): Point[][] =>
  laidOut({ ...panel, shape: everywhere })
    .pieces.filter(({ fate }) => fate === 'whole')
    .flatMap(({ outline, placements }) => [...placements()].map((placement) => onGround(outline, placement)));

type Fate = 'whole' | 'trimmed' | 'outside' | 'undecided';

/** The limit is 0.01 mm²; areas this near to it are left to rounding. */
const fateOf = (kept: number, lost: number): Fate => {
  if ([kept, lost].some((area) => area > 0.005 && area < 0.02)) return 'undecided';
  if (lost <= 0.01) return 'whole';
  return kept <= 0.01 ? 'outside' : 'trimmed';
};

function bruteForce(polygon: readonly Point[], region: Flatten.Polygon, piece: readonly Point[]): Fate {
  const [corner = { x: 0, y: 0 }] = piece;
  const start = Flatten.point(corner.x, corner.y);
  const reach = Math.max(...piece.map((other) => distance(corner, other)));
  const toBoundary = Math.min(
    ...polygon.map((from, index) => {
      const to = polygon[(index + 1) % polygon.length] ?? from;
      return Flatten.segment(from.x, from.y, to.x, to.y).distanceTo(start)[0];
    }),
  );
  if (toBoundary > reach) return region.contains(start) ? 'whole' : 'outside';
  const own = polygonOf(piece);
  const kept = Math.abs(Flatten.BooleanOperations.intersect(region, own).area());
  return fateOf(kept, Math.abs(own.area()) - kept);
}

it('a sawn panel on any grid in any outline makes just the pieces that brute force finds', () => {
  fc.assert(
    fc.property(randomPanels, ({ polygon, panel }) => {
      const sawn: Panel = { ...panel, edge: 'sawn' };
      const region = polygonOf(polygon);
      const fates = allPieces(sawn).map((piece) => bruteForce(polygon, region, piece));
      const count = (fate: Fate): number => fates.filter((each) => each === fate).length;
      const made = (fate: 'whole' | 'trimmed'): number =>
        laidOut(sawn)
          .pieces.filter((group) => group.fate === fate)
          .reduce((sum, group) => sum + group.count, 0);
      const undecided = count('undecided');
      for (const fate of ['whole', 'trimmed'] as const) {
        expect(made(fate)).toBeGreaterThanOrEqual(count(fate));
        expect(made(fate)).toBeLessThanOrEqual(count(fate) + undecided);
      }
    }),
    { numRuns: 100 },
  );
});
