/** What shifting, turning and mirroring a design leaves as it is, and what bevels add up to: over thousands of random designs. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Grid, Panel } from '../../server/design/design-model.ts';
import { add, distance, type Point, turned } from '../../server/geometry/point.ts';
import { sum } from '../../server/geometry/numbers.ts';
import { fillOpening } from '../../server/lattice/motif/fill-opening.ts';
import { markKinds } from '../../server/shop/marks/mark-kinds.ts';
import { motifOf, outlineShape, pieceFrom, polygonContour } from '../design-builder.ts';
import { laidOut } from '../laid-out.ts';
import { bass, type RandomPanel, randomPanels } from './random-panels.ts';

/** What is made, so told that rounding in the last place changes nothing: numbers and lengths added up. */
function madeOf(panel: Panel) {
  const { pieces, strips } = markKinds([laidOut(panel)]);
  const stripsOf = (hand: 'left' | 'right' | null) =>
    strips.filter(({ groups }) => (groups[0]?.group.hand ?? null) === hand);
  const run = (of: typeof strips) => sum(of.map(({ make, groups }) => make * (groups[0]?.group.length ?? 0)));
  return {
    wholePieces: sum(pieces.map(({ whole }) => whole)),
    wholeRun: sum(pieces.map(({ whole, shape }) => whole * shape.length)),
    strips: sum(strips.map(({ make }) => make)),
    kinds: strips.length,
    straight: run(stripsOf(null)),
    left: run(stripsOf('left')),
    right: run(stripsOf('right')),
  };
}

type Made = ReturnType<typeof madeOf>;

const countsOf = ({ wholePieces, strips, kinds }: Made): string => [wholePieces, strips, kinds].join(' ');

/**
 * Whether a hair more or less of the outline changes what is made. There rounding may decide: cuts are kept to 0.1 µm,
 * which over a long side is a tenth of the 0.01 mm² that tell a whole piece.
 */
function isBorderline(polygon: readonly Point[], panel: Panel): boolean {
  const [base, ...others] = [1, 1.0005, 0.9995].map((growth) =>
    countsOf(
      madeOf({
        ...panel,
        shape: outlineShape(polygonContour(polygon.map(({ x, y }) => ({ x: x * growth, y: y * growth })))),
      }),
    ),
  );
  return others.some((other) => other !== base);
}

function expectSame(found: Made, wanted: Made, { polygon, panel }: RandomPanel): void {
  if (countsOf(found) !== countsOf(wanted) && isBorderline(polygon, panel)) return;
  expect(countsOf(found)).toBe(countsOf(wanted));
  for (const run of ['wholeRun', 'straight', 'left', 'right'] as const) expect(found[run]).toBeCloseTo(wanted[run], 1);
}

const moved = ({ polygon, panel }: RandomPanel, move: (point: Point) => Point, grid: Grid): Panel => {
  const node = panel.phase.kind === 'nodeAt' ? panel.phase.at : { x: 0, y: 0 };
  const contour = polygonContour(polygon.map(move));
  return { ...panel, grid, shape: outlineShape(contour), phase: { kind: 'nodeAt', at: move(node) } };
};

describe('any panel', () => {
  it('makes the same pieces and strips wherever it lies', () => {
    fc.assert(
      fc.property(
        randomPanels,
        fc.integer({ min: -500, max: 500 }),
        fc.integer({ min: -500, max: 500 }),
        (one, x, y) => {
          const shifted = moved(one, (point) => add(point, { x, y }), one.panel.grid);
          expectSame(madeOf(shifted), madeOf(one.panel), one);
        },
      ),
      { numRuns: 500 },
    );
  });

  it('makes the same pieces and strips however it is turned', () => {
    fc.assert(
      fc.property(randomPanels, fc.integer({ min: 1, max: 359 }), (one, angle) => {
        const { grid } = one.panel;
        const turnedGrid = {
          ...grid,
          turn: grid.turn + angle,
          families: grid.families.map((family) => ({ ...family, direction: family.direction + angle })),
        };
        const panel = moved(one, (point) => turned(point, angle), turnedGrid);
        expectSame(madeOf(panel), madeOf(one.panel), one);
      }),
      { numRuns: 500 },
    );
  });

  it('makes the same pieces seen in a mirror, and strips of the other hand', () => {
    fc.assert(
      fc.property(randomPanels, (one) => {
        const { grid } = one.panel;
        // a leaf with one diagonal is not its own mirror image
        const fills = one.panel.fills.filter(({ shape }) => shape !== 'square');
        const mirroredGrid = {
          ...grid,
          turn: -grid.turn,
          families: grid.families.map((family) => ({
            ...family,
            direction: -family.direction,
            offset: -family.offset,
            positions: family.positions && [...family.positions].map((place) => -place).reverse(),
          })),
        };
        const mirror = moved(one, ({ x, y }) => ({ x, y: -y }), mirroredGrid);
        const outline = polygonContour([...one.polygon].reverse().map(({ x, y }) => ({ x, y: -y })));
        const panel = { ...mirror, shape: outlineShape(outline) };
        const { left, right, ...made } = madeOf({ ...one.panel, fills });
        expectSame(madeOf({ ...panel, fills }), { ...made, left: right, right: left }, one);
      }),
      { numRuns: 500 },
    );
  });
});

describe('bevels around a node', () => {
  const corners = fc
    .array(fc.integer({ min: 1, max: 9 }), { minLength: 3, maxLength: 7 })
    .filter((steps) => Math.max(...steps) * 2 < sum(steps))
    .map((steps) => {
      const whole = sum(steps);
      let angle = 0;
      return steps.map((step) => turned({ x: 40, y: 0 }, (angle += (step * 360) / whole)));
    });

  it('add up to 360°, whatever pieces meet there at whatever angles', () => {
    fc.assert(
      fc.property(corners, (ring) => {
        // a node at the balance point, a piece from each corner
        const pieces = ring.map((_, index) =>
          pieceFrom(
            'spoke',
            { name: null, place: { kind: 'corner', corner: index + 1 } },
            { name: 'hub', place: { kind: 'centroid' } },
          ),
        );
        const { pieces: cut, problems } = fillOpening(ring, motifOf('spokes', 'polygon 5', { pieces }), bass, []);
        fc.pre(problems.length === 0 && cut.length === ring.length);
        const total = cut
          .flatMap(({ shape, placement }) => {
            const [start, end] = [0, shape.length].map((reach) =>
              add(turned({ x: reach, y: 0 }, placement.turn), placement.at),
            );
            const startsAtCorner = start && end && toCorner(ring, start) < toCorner(ring, end);
            return shape.ends[startsAtCorner ? 1 : 0].bevels ?? [];
          })
          .reduce((all, bevel) => all + bevel, 0);
        expect(total).toBeCloseTo(360, 6);
      }),
      { numRuns: 1500 },
    );
  });

  const toCorner = (ring: readonly Point[], end: Point): number =>
    Math.min(...ring.map((corner) => distance(corner, end)));
});
