/** Blanks read from a text: who makes the strips and the infill, what neighbours share, and what finds no place. */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import { movedPoint, undone } from '../../../server/lattice/grid/grid-symmetries.ts';
import type { ShopPlan } from '../../../server/shop/shop-plan.ts';
import { schemaFaults } from '../plan-schema.ts';
import { planAtSight } from '../../plan-at-sight.ts';

const shop = `
strip ash { section face 3 depth 10  lengths 900 }
strip bass { section face 3 depth 10  lengths 600 }
grid squares { square  pitch 40  of ash }
motif cross for square {
  divider diagonal from corner 1 to corner 3
}
outline plate { rectangle 76 x 76 }
panel tile { grid squares  centred node  shape plate  edge sawn  fill square with cross of bass  copies 3 }
`;

const planned = (text: string): { plan: ShopPlan; analysis: ReturnType<typeof analyse> } => {
  const analysis = analyse(shop + text);
  return { plan: planAtSight(analysis, 'tiles.lap'), analysis };
};

describe('three tiles from one blank', () => {
  const { plan, analysis } = planned('blank cast { grid squares  shape 300 x 160  allowance 1.5  gap 1  take tile 3 }');
  const [blank] = plan.blanks;

  test('keep to the schema and find no fault', () => {
    expect(analysis.problems).toEqual([]);
    expect(schemaFaults(plan)).toEqual([]);
  });

  test('are all sawn from it, by whole steps of the grid', () => {
    expect(plan.blanks).toHaveLength(1);
    expect(blank).toMatchObject({ name: 'cast', copies: 1, bound: 1, proven: true });
    expect(blank?.places.map(({ panel, outline }) => [panel, outline])).toEqual(Array(3).fill(['tile', 'plate']));
    for (const { move } of blank?.places ?? []) {
      expect(move.dx / 40).toBeCloseTo(Math.round(move.dx / 40), 6);
      expect(move.dy / 40).toBeCloseTo(Math.round(move.dy / 40), 6);
    }
  });

  test('make nothing themselves: strips run over the whole blank, infill is counted by the blank', () => {
    // Lines at 0, ±40, … within ±150 and ±80 of the middle: 7 upright, and 5 across where the face still meets the edge.
    expect(plan.strips.map(({ lengthMm, make }) => [lengthMm, make])).toEqual([
      [320 + 2 * 6, 5],
      [160 + 2 * 6, 7],
    ]);
    expect(plan.strips.every(({ panels }) => Object.keys(panels).join() === 'cast')).toBe(true);
    expect(plan.pieces.every(({ panels }) => Object.keys(panels).join() === 'cast')).toBe(true);
  });

  test('a piece that two neighbours share is made once', () => {
    const alone = analysis.blanks.flatMap(({ cutOuts }) => cutOuts.map(({ laid }) => laid));
    const ofOne = alone[0]?.pieces.reduce((sum, { count }) => sum + count, 0) ?? 0;
    const middles = analysis.blanks
      .flatMap(({ laid }) => laid)
      .flatMap(({ pieces }) => pieces.flatMap((group) => [...group.placements()].map(({ at }) => `${at.x} ${at.y}`)));
    expect(new Set(middles).size).toBe(middles.length);
    expect(blank?.infill.make).toBe(middles.length);
    expect(blank?.infill.make).toBeLessThanOrEqual(3 * ofOne);
    expect(blank?.infill.make).toBe(plan.pieces.reduce((sum, { make }) => sum + make, 0));
  });
});

test('copies of the work need more blanks, and what is left over is made by the panel itself', () => {
  const { plan } = planned(`blank cast { grid squares  shape 180 x 180  take tile 2 }
work tiles { copies 5 }`);
  const sawn = plan.blanks.reduce((sum, { copies, places }) => sum + copies * places.length, 0);
  expect(sawn).toBe(10);
  expect(plan.panels[0]?.quantity).toBe(15);
  const byPanel = plan.strips.reduce((sum, { panels }) => sum + (panels['tile'] ?? 0), 0);
  const ofOne = plan.panels[0]?.strips ?? 0;
  expect(byPanel).toBe(5 * ofOne);
});

test('every piece of a mirrored cut-out lies where the panel has it, seen from behind', () => {
  const { analysis } = planned(`outline wedge { start 0, 0  line to 150, 0  line to 60, 110  line to start }
panel shard { grid squares  centred node  shape wedge  edge sawn  fill square with cross of bass }
blank cast { grid squares  shape 190 x 150  turns 180  from_back  take shard 1 }`);
  expect(analysis.problems).toEqual([]);
  const [nested] = analysis.blanks;
  const place = nested?.packing.blanks[0]?.places[0];
  const [cutOut] = nested?.cutOuts ?? [];
  if (!nested || !place || !cutOut) throw new Error('nothing is placed');
  const inPanel = cutOut.laid.pieces.flatMap((group) => [...group.placements()]).map(({ at }) => at);
  const inBlank = nested.laid.flatMap(({ pieces }) => pieces.flatMap((group) => [...group.placements()]));
  const back = undone(place.move);
  expect(inBlank).toHaveLength(inPanel.length);
  for (const { at } of inBlank) {
    const there = movedPoint(at, back);
    expect(Math.min(...inPanel.map(({ x, y }) => Math.hypot(x - there.x, y - there.y)))).toBeLessThan(1e-6);
  }
});

test('a cut-out larger than the blank is an error at its line, and the rest is planned', () => {
  const { plan, analysis } = planned(`outline beam { rectangle 400 x 40 }
panel long { grid squares  shape beam  edge sawn }
blank cast { grid squares  shape 180 x 180  take tile 3  take long 1 }`);
  expect(analysis.problems.map(({ code }) => code)).toEqual(['LAP0905']);
  expect(analysis.problems[0]?.message).toContain('403 × 43 mm');
  expect(plan.incomplete).toBe(true);
  expect(plan.blanks.flatMap(({ places }) => places.map(({ panel }) => panel))).toContain('tile');
});
