/** Laws that hold on every design, checked with flatten-js, which the engine does not use. */
import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Panel } from '../../server/design/design-model.ts';
import { type Point, turned } from '../../server/geometry/point.ts';
import { placesOfRun } from '../../server/lattice/strips/notch-runs.ts';
import { notchesOf, weaveOf } from '../../server/lattice/strips/notches.ts';
import { panelRegion } from '../../server/lattice/grid/panel-region.ts';
import { pointOnLine, stripParts } from '../../server/lattice/strips/strip-parts.ts';
import { markKinds } from '../../server/shop/marks/mark-kinds.ts';
import { outlineShape, panelOf, polygonContour, stripStock } from '../design-builder.ts';
import { polygonOf } from '../independent-polygons.ts';
import { laidOut, onGround } from '../laid-out.ts';
import { fills, gridOfKind, starPolygons } from './random-panels.ts';

const ash = stripStock('ash', 3);

const panels = fc
  .record({
    polygon: starPolygons(45, 160),
    kind: fc.constantFrom('square' as const, 'three_way' as const, 'diamond' as const, 'basket' as const),
    side: fc.integer({ min: 22, max: 60 }),
    turn: fc.constantFrom(0, 0, 11, 45, 90),
    on: fc.constantFrom('node' as const, 'cell' as const, 'edge' as const),
    edge: fc.constantFrom('sawn' as const, 'framed' as const),
  })
  .map(({ polygon, kind, side, turn, on, edge }): { polygon: Point[]; panel: Panel } => {
    const grid = gridOfKind(kind, side, turn, 50);
    return {
      polygon,
      panel: panelOf(grid, outlineShape(polygonContour(polygon)), { edge, phase: { kind: 'centred', on }, fills }),
    };
  });

/** A direction in [0°, 180°). */
const headingOf = (direction: number): number => ((direction % 180) + 180) % 180;

function keptArea(region: Flatten.Polygon, piece: readonly Point[]): number {
  const own = polygonOf(piece);
  if (own.faces.size === 0) return 0;
  return Math.abs(Flatten.BooleanOperations.intersect(region, own).area());
}

/** Whether some piece loses or keeps so nearly the area tolerance that rounding decides its fate. */
function isBorderline(polygon: readonly Point[], panel: Panel): boolean {
  const region = polygonOf(polygon);
  return laidOut({ ...panel, edge: 'sawn' }).pieces.some(({ outline, placements }) => {
    const full = Math.abs(polygonOf(outline).area());
    return [...placements()].some((placement) => {
      const kept = keptArea(region, onGround(outline, placement));
      return [kept, full - kept].some((area) => area > 0.005 && area < 0.02);
    });
  });
}

describe('any sawn or framed panel', () => {
  it('calls a piece whole, trimmed or outside exactly as an independent polygon library measures it', () => {
    fc.assert(
      fc.property(panels, ({ polygon, panel }) => {
        const region = polygonOf(polygon);
        for (const { outline, fate, placements } of laidOut({ ...panel, edge: 'sawn' }).pieces) {
          const full = Math.abs(polygonOf(outline).area());
          for (const placement of placements()) {
            const kept = keptArea(region, onGround(outline, placement));
            if (fate === 'whole') expect(full - kept).toBeLessThan(0.0125);
            else {
              expect(kept).toBeGreaterThan(0.0075);
              expect(full - kept).toBeGreaterThan(0.0075);
            }
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it('keeps as much infill framed as sawn: whole + kept part of trimmed', () => {
    fc.assert(
      fc.property(panels, ({ polygon, panel }) => {
        const region = polygonOf(polygon);
        const sawn = laidOut({ ...panel, edge: 'sawn' }).pieces.flatMap(({ outline, placements }) =>
          [...placements()].map((placement) => keptArea(region, onGround(outline, placement))),
        );
        const framed = laidOut({ ...panel, edge: 'framed' }).pieces.map(
          ({ outline, count }) => count * Math.abs(polygonOf(outline).area()),
        );
        const [sawnArea, framedArea] = [sawn, framed].map((areas) => areas.reduce((sum, area) => sum + area, 0));
        expect(Math.abs((sawnArea ?? 0) - (framedArea ?? 0))).toBeLessThan(0.03 * (1 + sawn.length));
      }),
      { numRuns: 40 },
    );
  });

  it('counts the same pieces and strips when outline and grid are turned together', () => {
    fc.assert(
      fc.property(panels, fc.integer({ min: 1, max: 359 }), ({ polygon, panel }, angle) => {
        const node = { x: 3.7, y: -5.3 };
        const fixed: Panel = { ...panel, phase: { kind: 'nodeAt', at: node } };
        const turnedPanel: Panel = {
          ...fixed,
          shape: outlineShape(polygonContour(polygon.map((point) => turned(point, angle)))),
          grid: {
            ...panel.grid,
            turn: panel.grid.turn + angle,
            families: panel.grid.families.map((family) => ({ ...family, direction: family.direction + angle })),
          },
          phase: { kind: 'nodeAt', at: turned(node, angle) },
        };
        fc.pre(!isBorderline(polygon, fixed));
        const list = (each: Panel) => {
          const { pieces, strips } = markKinds([laidOut(each)]);
          return {
            pieces: pieces.filter(({ whole }) => whole > 0).map(({ whole, shape }) => [whole, shape.length.toFixed(2)]),
            strips: strips.reduce((sum, { make }) => sum + make, 0),
          };
        };
        expect(list(turnedPanel)).toEqual(list(fixed));
      }),
      { numRuns: 40 },
    );
  });
});

describe('strips', () => {
  it('pair up at every crossing: one is cut from above, the other from below, together as deep as the lap allows', () => {
    fc.assert(
      fc.property(panels, ({ panel }) => {
        const { families, region } = panelRegion(panel);
        const parts = stripParts(panel, families, region);
        const weave = weaveOf(panel.grid, families, parts);
        const cutsAt = new Map<string, { from: string; depth: number }[]>();
        for (const part of parts) {
          for (const run of notchesOf(weave, part)) {
            for (const place of placesOfRun(run)) {
              const { x, y } = pointOnLine(part.lines, part.index, part.start + place);
              const pair = [headingOf(part.lines.family.direction), headingOf(part.lines.family.direction + run.angle)]
                .map((each) => each.toFixed(3))
                .sort()
                .join();
              const key = `${x.toFixed(2)} ${y.toFixed(2)} ${pair}`.replaceAll('-0.00', '0.00');
              cutsAt.set(key, [...(cutsAt.get(key) ?? []), run]);
            }
          }
        }
        for (const cuts of cutsAt.values()) {
          expect(cuts.map(({ from }) => from).sort()).toEqual(['above', 'below']);
          const depth = cuts.reduce((sum, cut) => sum + cut.depth, 0);
          expect(depth).toBeGreaterThan(ash.depth - 1e-9);
        }
      }),
      { numRuns: 60 },
    );
  });
});
