/** Views beside the panel: pieces and strips at true size, sticks with their cuts, the work put together. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../server/analyse.ts';
import type { Work } from '../../server/design/work-model.ts';
import { displayMembers, memberKinds } from '../../server/drawing/displays/member-display.ts';
import { displayPieces, displayStrips } from '../../server/drawing/displays/mark-display.ts';
import { displaySticks } from '../../server/drawing/displays/stick-display.ts';
import { displayWork } from '../../server/drawing/displays/work-display.ts';
import { drawPanel } from '../../server/drawing/draw-panel.ts';
import type { Drawing } from '../../server/drawing/drawing.ts';
import { drawingBounds } from '../../server/drawing/drawing-bounds.ts';
import { placedRings } from '../../server/drawing/placed-rings.ts';
import { withSlivers } from '../../server/drawing/sliver-layer.ts';
import { writeSvg } from '../../server/drawing/write-svg.ts';
import { planBands } from '../../server/shop/bands/plan-bands.ts';
import type { PlanStock } from '../../server/shop/shop-plan.ts';
import { handMadeDesign, handMadeKinds, handMadePanel } from '../hand-made-panel.ts';
import { disc } from '../protocol/disc.ts';
import { planAtSight } from '../plan-at-sight.ts';

const range = { start: 0, end: 0 };
const handMadeDrawing = drawPanel(handMadePanel, { design: handMadeDesign, kinds: handMadeKinds, blanks: [] }, null);
const texts = ({ texts: words }: Drawing): string[] => words.map(({ text }) => text);

/** Length and height of everything drawn of one mark. */
function sizeOf({ layers }: Drawing, mark: string): { width: number; height: number } {
  const kinds = layers.map((layer) => ({ ...layer, kinds: layer.kinds.filter((kind) => kind.mark === mark) }));
  const { left, right, top, bottom } = drawingBounds(kinds);
  return { width: right - left, height: top - bottom };
}

describe('pieces and strips', () => {
  it('stand at their true size, with lengths, edges, bevels and numbers', () => {
    const drawing = displayPieces(handMadeKinds, 'mm', 'Tray');
    const { width, height } = sizeOf(drawing, 'A&1');
    expect([width, height]).toEqual([20, 3]);
    expect(texts(drawing)).toEqual([
      'A&1',
      'arm of spoke',
      '20.0 mm long, edges 17.0',
      'bass, face 3.00, 10.0 deep',
      'end 1 45°/45°, end 2 90°/90°',
      '4 to make and 1 spare: 5 to cut',
    ]);
  });

  it('show the notches that are seen from the front', () => {
    const drawing = displayStrips(handMadeKinds, 'mm', 'Tray');
    expect(sizeOf(drawing, 'S1').width).toBe(72);
    const mouths = drawing.layers.filter(({ kind }) => kind === 'note').flatMap(({ kinds }) => kinds);
    // S1 is notched from above, S2 from below
    expect(mouths.map(({ mark, rings }) => [mark, rings.length])).toEqual([['S1', 1]]);
    expect(mouths[0]?.rings[0]?.[0]).toBeCloseTo(36 - 3.05 / 2, 9);
  });

  it('do not lie over one another, nor do their words', () => {
    const { kinds } = analyse(disc.replace('radius 150', 'radius 90'));
    const { layers } = displayStrips(kinds, 'mm', 'Disc');
    const rows = layers
      .filter(({ kind }) => kind === 'strip')
      .flatMap((layer) => layer.kinds)
      .map(({ placements }) => placements[1] ?? 0)
      .sort((a, b) => a - b);
    expect(rows.length).toBe(kinds.strips.length);
    const gaps = rows.slice(1).map((row, index) => row - (rows[index] ?? 0));
    expect(Math.min(...gaps)).toBeGreaterThan(10);
  });
});

describe('sticks', () => {
  const plan: PlanStock = {
    ...{ stock: 'ash', objective: 'sticks', needMm: 144, kerfMm: 3, endTrimMm: 5 },
    ...{ sticksUsed: 2, stickMm: 1200, value: 2, bound: 1.2, proven: true, wastePct: 75, cost: null, problems: [] },
    sticks: [{ lengthMm: 600, count: 2, offcutMm: 435, cuts: [{ mark: 'S1', lengthMm: 72, n: 2 }] }],
  } as unknown as PlanStock;

  it('have their cuts one behind the other, a saw cut between, behind the end trim', () => {
    const drawing = displaySticks([plan], handMadeDesign.strips, 'mm', 'Tray');
    const cuts = drawing.layers.filter(({ kind }) => kind === 'piece').flatMap(({ kinds }) => kinds);
    expect(cuts.map(({ mark, placements }) => [mark, placements[0]])).toEqual([
      ['S1', 5],
      ['S1', 5 + 72 + 3],
    ]);
    expect(texts(drawing)).toContain('2 × ash 600 mm');
    expect(drawing.summary[0]).toBe('ash: 2 sticks, 75.0 % left over, proven fewest');
  });
});

describe('the assembled work', () => {
  const placed = (mirrored: boolean, panels = [handMadePanel]): Drawing => {
    const work: Work = {
      ...{ name: 'pair', range, nameRange: range, copies: 2, hanging: null, finish: null, moisture: null },
      placements: [
        {
          part: { kind: 'panel', panel: handMadePanel.panel },
          at: { x: 100, y: 50 },
          turn: 90,
          mirrored,
          layer: 0,
          range,
        },
      ],
    } as unknown as Work;
    return displayWork(work, { panels, blanks: [], kinds: handMadeKinds, design: { units: 'mm', bands: [] } }, 'Pair');
  };

  it('lays a panel where it is placed, turned, and sawn to its outline', () => {
    const drawing = placed(false);
    const strips = drawing.layers.filter(({ kind }) => kind === 'strip');
    // p ↦ R(90°)·p + (100, 50): the region's corner (−30, −20) comes to (120, 20)
    expect(strips[0]?.clip?.[0]?.slice(0, 2)).toEqual([120, 20]);
    const [first] = [
      ...placedRings(strips[0]?.kinds[0] ?? { ...{ mark: '', label: '', rings: [], range }, placements: [] }),
    ];
    // the strip's lower left corner (−36, −1.5)
    expect(first?.[0]?.[0]).toBeCloseTo(101.5, 9);
    expect(first?.[0]?.[1]).toBeCloseTo(14, 9);
    expect(drawing.layers.some(({ kind }) => kind === 'outline')).toBe(false);
  });

  it('mirrors before it turns', () => {
    const strips = placed(true).layers.filter(({ kind }) => kind === 'strip');
    // M: (−30, −20) ↦ (−30, 20), turned to (−20, −30), moved
    expect(strips[0]?.clip?.[0]?.slice(0, 2)).toEqual([80, 20]);
  });

  it('is written as SVG with its panels cut by their outlines', () => {
    const svg = writeSvg(placed(false), 'pair.lap');
    expect(svg).toContain('<clipPath id="layer-clip-0">');
    expect(svg).toContain('clip-path="url(#layer-clip-0)"');
    expect(svg).toContain('<title id="drawing-title">Pair, work pair</title>');
  });

  it('says which part is left out', () => {
    expect(placed(false).summary).toEqual(['Work pair, 2 copies', '1 part placed, seen from the front']);
    expect(placed(false, []).summary[2]).toBe('Not drawn, because of errors: tray <1>');
  });
});

describe('frames and bands', () => {
  const analysis = analyse(`
strip ash { wood white_ash  section face 3 depth 10 }
strip maple { wood hard_maple  section face 20 depth 12 }
strip thin { wood walnut  section face 1 depth 12 }
grid squares { square  pitch 40  of ash }
panel tray { grid squares  shape 240 x 160  edge framed  frame { of maple  groove 6 } }
panel tile { grid squares  centred node  shape 80 x 80  edge sawn  copies 3 }
band rim { around tile  of thin  laminations 2 }
`);
  const { frames, bands } = planAtSight(analysis, '');
  const members = memberKinds(frames, bands, analysis.design);
  const drawing = displayMembers(members, 'mm', 'Tray');
  const ringOf = (mark: string): readonly number[] =>
    drawing.layers.flatMap(({ kinds }) => kinds).find((kind) => kind.mark === mark)?.rings[0] ?? [];

  it('are sound', () => {
    expect(analysis.problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  });

  it('show members mitred at 45°: the inner edge is two widths shorter, and as long as the clear inside', () => {
    const [frame] = frames;
    expect(frame?.members.length).toBe(2);
    for (const { mark, lengthMm, innerMm, ends } of frame?.members ?? []) {
      expect(ends).toEqual([45, 45]);
      const [left = 0, , right = 0, , innerRight = 0, , innerLeft = 0] = ringOf(mark);
      expect(right - left).toBeCloseTo(lengthMm, 6);
      expect(innerRight - innerLeft).toBeCloseTo(lengthMm - 2 * 20, 6);
      expect(innerRight - innerLeft).toBeCloseTo(innerMm, 6);
    }
  });

  it('show every lamination at its finished length, and say what it is cut to and how it ends', () => {
    const marks = bands.flatMap(({ laminations }) => laminations.flatMap(({ pieces }) => pieces));
    expect(marks.length).toBe(8);
    for (const { mark, lengthMm, cutMm } of marks) {
      expect(sizeOf(drawing, mark).width).toBeCloseTo(lengthMm, 6);
      const line = texts(drawing).find((text) =>
        text.includes(`${lengthMm.toFixed(1)} mm long · cut to ${cutMm.toFixed(1)}`),
      );
      expect(line).toMatch(/^band rim · .* · ends mitred 45° · 3 to make$/);
    }
  });

  it('show the mitre of a lamination on edge: at a corner of 90° the inner face is 1 mm · tan 45° shorter at each end', () => {
    const [lamination] = bands.flatMap(({ laminations }) => laminations.flatMap(({ pieces }) => pieces));
    const rings = drawing.layers.flatMap(({ kinds }) => kinds).filter(({ mark }) => mark === lamination?.mark);
    expect(rings.map(({ label }) => label.endsWith('seen on edge'))).toEqual([false, true]);
    const [left = 0, low = 0, right = 0, , outerRight = 0, high = 0, outerLeft = 0] = rings[1]?.rings[0] ?? [];
    expect(high - low).toBe(1);
    expect(outerRight - outerLeft).toBeCloseTo(lamination?.lengthMm ?? NaN, 9);
    expect(right - left).toBeCloseTo((lamination?.lengthMm ?? NaN) - 2, 9);
  });

  it('turn the mitre over in a hollow corner: there the outer face is the shorter one', () => {
    // An L: five corners of 90° that stand out, and one hollow.
    const { design } = analyse(`
strip thin { wood walnut  section face 1 depth 12 }
outline ell { start 0, 0  line to 80, 0  line to 80, 40  line to 40, 40  line to 40, 80  line to 0, 80  line to start }
band rim { around ell  of thin }
`);
    const kinds = memberKinds([], planBands(design), design);
    const insets = kinds.map(({ onEdge }) => {
      const [left = 0, , right = 0, , outerRight = 0, , outerLeft = 0] = onEdge?.outline ?? [];
      return [left - outerLeft, outerRight - right].map((inset) => Number(inset.toFixed(6)));
    });
    expect(insets.flat().filter((inset) => inset === 1)).toHaveLength(10);
    expect(insets.flat().filter((inset) => inset === -1)).toHaveLength(2);
  });
});

describe('slivers', () => {
  /** A disc that leaves little of some arms. */
  const text = disc.replace('edge sawn', 'edge sawn\n  sliver 6');
  const [laid] = analyse(text).panels;
  if (!laid) throw new Error('the disc is not laid out');

  it('are ringed where they lie, each once, and counted in words', () => {
    const marked = withSlivers(handMadeDrawing, laid);
    const rings = marked.layers.find(({ name }) => name === 'slivers')?.kinds ?? [];
    expect(laid.slivers.length).toBeGreaterThan(0);
    expect(rings.map(({ placements }) => placements.slice(0, 2))).toEqual(laid.slivers.map(({ at }) => [at.x, at.y]));
    expect(rings[0]?.label).toMatch(/^sliver: arm of hemp, row \d+, column \d+, [0-5]\.\d mm kept$/);
    expect(marked.summary.at(-1)).toMatch(
      new RegExp(`^${laid.slivers.length} slivers?, ringed: less than 6 mm is kept`),
    );
  });

  it('of a panel that has none leave the drawing as it is', () => {
    expect(withSlivers(handMadeDrawing, handMadePanel)).toBe(handMadeDrawing);
  });
});
