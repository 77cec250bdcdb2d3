/** One origin for all shapes of a panel, and places of a free grid that count from the corner of its box. Figures by hand. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import { boundsOf } from '../../../server/geometry/polygons.ts';
import { rounded } from '../../../server/geometry/tolerance.ts';
import { planAtSight } from '../../plan-at-sight.ts';

const stock = 'units mm\nstrip ash { wood white_ash section face 3 depth 10 }\n';

function analysed(text: string) {
  const analysis = analyse(stock + text);
  const [panel] = analysis.panels;
  if (!panel) throw new Error(analysis.problems.map(({ message }) => message).join('\n'));
  return { analysis, panel };
}

describe('0, 0 of a panel', () => {
  const squares = 'grid sq { square pitch 40 of ash }\n';

  it.each([
    ['cells', `${squares}panel p { grid sq shape 5 x 4 cells edge sawn }`],
    ['a size', `${squares}panel p { grid sq shape 203 x 163 edge sawn }`],
    ['a hexagon', 'grid tri { three_way side 40 of ash }\npanel p { grid tri shape hexagon 3 cells }'],
    ['leaning cells', 'grid tri { three_way side 40 of ash turn 10deg }\npanel p { grid tri shape 4 x 3 cells }'],
    ['cells in a size', `${squares}panel p { grid sq shape fit 5 x 4 cells in 300 x 240 by pitch }`],
  ])('is the middle of its box: %s', (_, text) => {
    const { left, right, bottom, top } = boundsOf(analysed(text).panel.region.flat());
    expect(left + right).toBeCloseTo(0, 6);
    expect(bottom + top).toBeCloseTo(0, 6);
  });

  it('is where an outline has it', () => {
    const outline = 'outline o { rectangle 200 x 100 at 150, 70 }\n';
    const { left, bottom } = boundsOf(analysed(`${squares}${outline}panel p { grid sq shape o }`).panel.region.flat());
    expect([left, bottom]).toEqual([50, 20]);
  });

  it.each(['5 x 4 cells', '203 x 163'])('balances a board about 0, 0 with a panel of %s on it', (shape) => {
    const { analysis } = analysed(
      `${squares}sheet ply { thick 6 size 610 x 300 density 700 }\noutline ov { rectangle 210 x 170 at 0, 0 }\n` +
        `board bo { shape ov of ply }\npanel p { grid sq shape ${shape} edge sawn }\nwork w { place bo at 0, 0 place p at 0, 0 }`,
    );
    expect(planAtSight(analysis, 'p.lap').mass.centre).toEqual({ xMm: 0, yMm: 0 });
  });

  it('is what `inside` counts from: of 180 × 100 about it, 4 × 2 cells have their middles within', () => {
    // 12 × 8 cells: middles at odd multiples of 20, so |x| ≤ 80 of ±20, ±60 … and |y| ≤ 40 of ±20: 4 × 2
    const { panel } = analysed(
      `${squares}motif brace for square { piece brace from corner 1 to corner 3 }\noutline middle { rectangle 180 x 100 }\n` +
        'panel p { grid sq shape 12 x 8 cells fill inside middle square with brace of ash }',
    );
    const filled = [...panel.filledCells()];
    expect(filled).toHaveLength(8);
    const { left, right, bottom, top } = boundsOf(filled.flatMap(({ opening }) => opening));
    [left, right, bottom, top].forEach((side, index) =>
      expect(side).toBeCloseTo([-78.5, 78.5, -38.5, 38.5][index] ?? 0, 6),
    );
  });
});

describe('places of a free grid', () => {
  const strips = (text: string) => {
    const { analysis, panel } = analysed(text);
    const places = panel.strips.flatMap(({ family, placements }) => placements.map(({ at }) => ({ family, ...at })));
    const of = (family: number, way: 'x' | 'y'): number[] =>
      places
        .filter((each) => each.family === family)
        .map((each) => rounded(each[way], 3))
        .sort((a, b) => a - b);
    return { problems: analysis.problems, of };
  };
  const grid = (families: string, more = ''): string => `grid own { free ${families} of ash ${more} }\n`;

  it('count up from the lower left corner for level strips, to the right for upright ones; those that miss are told', () => {
    const text = `${grid('family 0deg at 20, 60, 100, 140, 180 family 90deg at 20, 60, 100')}panel p { grid own shape 200 x 120 edge framed }`;
    const { problems, of } = strips(text);
    expect(of(1, 'y')).toEqual([-40, 0, 40]);
    expect(of(2, 'x')).toEqual([-80, -40, 0]);
    expect(problems.map(({ code, severity }) => `${severity} ${code}`)).toEqual(['warning LAP0409', 'warning LAP0409']);
    expect(problems.map(({ range }) => (stock + text).slice(range.start, range.end))).toEqual(['140', '180']);
  });

  it.each([30, 150, -30, 200])(
    'count up for strips at %i°: the line passes 50 from the corner, above it',
    (heading) => {
      const families = `family ${String(heading)}deg at 50 family 90deg spacing 60`;
      const { panel } = analysed(`${grid(families)}panel p { grid own shape 200 x 120 edge framed }`);
      const [at] = panel.strips
        .filter(({ family }) => family === 1)
        .flatMap(({ placements }) => placements.map((p) => p.at));
      const slope = Math.tan((heading * Math.PI) / 180);
      // where the line passes over x = −100, measured square to it
      const above = (at?.y ?? 0) + (-100 - (at?.x ?? 0)) * slope + 60;
      expect(above * Math.abs(Math.cos((heading * Math.PI) / 180))).toBeCloseTo(50, 6);
    },
  );

  it('are the same strips where the grid and the panel are turned together', () => {
    const lines = 'family 0deg at 20, 50, 100 family 90deg at 20, 90';
    const lengths = (text: string): string[] =>
      analysed(text)
        .panel.strips.flatMap(({ length, placements }) => placements.map(() => length.toFixed(3)))
        .sort();
    const upright = 'outline o { rectangle 200 x 120 at 0, 0 rounded 20 }\npanel p { grid own shape o edge framed }';
    const turned =
      'outline o { rectangle 200 x 120 at 0, 0 rounded 20  turn 35deg }\npanel p { grid own shape o edge framed }';
    expect(lengths(grid(lines, 'turn 35deg') + turned)).toEqual(lengths(grid(lines) + upright));
  });

  it('move with `node at` as one, and cells begin with the first of them', () => {
    const lines = 'family 0deg at 10, 50, 100 family 90deg at 10, 40, 100';
    const { of } = strips(`${grid(lines)}panel p { grid own shape 2 x 2 cells edge sawn }`);
    // 30 and 60 from the left, 40 and 50 from below, in a box of 90 × 90 about 0, 0
    expect(of(2, 'x')).toEqual([-45, -15, 45]);
    expect(of(1, 'y')).toEqual([-45, -5, 45]);
    const moved = strips(`${grid(lines)}panel p { grid own node at 0, 0 shape 400 x 400 edge framed }`);
    expect(moved.of(1, 'y')).toHaveLength(3);
    expect(moved.of(1, 'y')).toContain(0);
  });

  it('lie in the same layers however the grid is turned', () => {
    const plan = (turn: number) => {
      const { panel } = analysed(
        `${grid('family 33deg spacing 60 family 94deg at 0, 47, 96 family 151deg at 23, 74, 131', `fit 0.05 turn ${turn}deg`)}outline o { circle at 0, 0 radius 90 }\npanel p { grid own node at 0, 0 shape o edge sawn }`,
      );
      return panel.strips
        .map(({ family, layer, length, placements }) => [family, layer, length.toFixed(3), placements.length].join())
        .sort();
    };
    for (const turn of [33, 90, 180, 200]) expect(plan(turn)).toEqual(plan(0));
  });
});

describe('columns of cells', () => {
  /** Middles of a row's filled cells by column, the spaces between them in sides of 40. */
  const columnsOf = (kind: string, shapes: readonly string[]) => {
    const { panel } = analysed(
      `grid g { ${kind} side 40 of ash }\nmotif bar3 for triangle { piece bar from corner 1 to mid edge 2 }\nmotif bar6 for hexagon { piece bar from corner 1 to corner 4 }\n` +
        `panel p { grid g shape 900 x 400 ${shapes.map((shape) => `fill ${shape} with bar${shape === 'hexagon' ? 6 : 3} of ash`).join(' ')} }`,
    );
    const inRow = [...panel.filledCells()].filter(({ row, inside }) => row === 3 && inside);
    const middles = new Map(
      inRow.map(({ column, opening }) => {
        const { left, right } = boundsOf(opening);
        return [column, (left + right) / 2];
      }),
    );
    const columns = [...middles.keys()].sort((a, b) => a - b);
    return columns
      .slice(1)
      .map((column, index) => ((middles.get(column) ?? 0) - (middles.get(columns[index] ?? 0) ?? 0)) / 40);
  };

  it('of a three-way grid are half a triangle wide', () => {
    for (const step of columnsOf('three_way', ['triangle'])) expect(step).toBeCloseTo(0.5, 6);
  });

  it('of a basket weave are a side wide: hexagons and triangles take turns', () => {
    const steps = columnsOf('kagome', ['triangle', 'hexagon']);
    expect(steps.length).toBeGreaterThan(5);
    for (const step of steps) expect(step).toBeCloseTo(1, 6);
  });
});
