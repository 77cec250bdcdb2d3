/** What a text says arrives in the design: defaults, units, places written out, motifs inside motifs. */
import { describe, expect, test } from 'vitest';
import { parseDocument } from '../../../grammar/reading/parse-document.ts';
import { buildDesign } from '../../../server/design/builders/build-design.ts';
import { basketGrid, diamondGrid } from '../../design-builder.ts';
import { designOf, only } from '../design-of.ts';

const stock = 'strip ash { section face 3 depth 10 }\n';

describe('a strip', () => {
  test('is in millimetres and fractions, whatever the units', () => {
    const text =
      'units in\nstrip ash { wood white_ash section face 1/8in depth 0.5 lengths 24, 1m flush 0.3mm rejects 15% spare 8% }';
    expect(only(designOf(text).strips)).toMatchObject({
      wood: 'white_ash',
      face: 3.175,
      depth: 12.7,
      lengths: [
        { length: 24 * 25.4, price: null },
        { length: 1000, price: null },
      ],
      flush: 0.3,
      rejects: 0.15,
      spare: 0.08,
    });
  });

  test('has no wood, lengths or spares unless said', () => {
    expect(only(designOf(stock).strips)).toMatchObject({ wood: null, lengths: [], flush: 0, rejects: 0, spare: null });
  });
});

describe('a grid', () => {
  test('three-way has families at 0°, 60° and 120°, a triangle height apart, from the back', () => {
    const { families, side, fit, bothSlants } = only(designOf(`${stock}grid mesh { three_way side 40 of ash }`).grids);
    expect(families.map(({ direction, offset, layer }) => [direction, offset, layer])).toEqual([
      [0, 0, 0],
      [60, 0, 1],
      [120, 0, 2],
    ]);
    for (const { spacing } of families) expect(spacing).toBeCloseTo(34.641016151, 8);
    expect([side, fit, bothSlants]).toEqual([40, 0, false]);
  });

  test('square has families at 0° and 90°, a pitch apart, and turns as a whole', () => {
    const grid = only(designOf(`${stock}grid mesh { square pitch 36 of ash turn 15 fit -0.05 }`).grids);
    expect(grid.families.map(({ direction, spacing }) => [direction, spacing])).toEqual([
      [15, 36],
      [105, 36],
    ]);
    expect([grid.turn, grid.fit, grid.side]).toEqual([15, -0.05, 36]);
  });
});

describe('grids that name more', () => {
  const ash = only(designOf(stock).strips);
  const familiesOf = (properties: string): unknown =>
    only(designOf(`${stock}grid mesh { ${properties} of ash }`).grids).families;

  test.each([30, 60, 90, 120])('a diamond of %i° has two families at half of it either way', (angle) => {
    const families = diamondGrid(40, angle, ash, 10).families.map((family) => ({
      ...family,
      range: expect.anything() as unknown,
      spacing: expect.closeTo(family.spacing, 9) as unknown,
    }));
    expect(familiesOf(`diamond ${String(angle)}deg side 40 turn 10`)).toEqual(families);
  });

  test('a basket weave has its third family half a spacing off', () => {
    const families = basketGrid(30, ash).families.map((family) => ({
      ...family,
      range: expect.anything() as unknown,
      spacing: expect.closeTo(family.spacing, 9) as unknown,
      offset: expect.closeTo(family.offset, 9) as unknown,
    }));
    expect(familiesOf('kagome side 30')).toEqual(families);
  });
});

describe('a motif', () => {
  test('is written out at every corner and edge', () => {
    const text =
      'motif m for triangle { node hub at incentre  piece arm from corner to hub, every corner\n' +
      'piece ray from 0.25 along edge to mid of edge 1, every edge }';
    const { pieces } = only(designOf(text).motifs);
    expect(pieces.map(({ role, from, to }) => [role, from.place, to.name])).toEqual([
      ...[1, 2, 3].map((corner) => ['arm', { kind: 'corner', corner }, 'hub']),
      ...[1, 2, 3].map((edge) => ['ray', { kind: 'along', edge, fraction: 0.25 }, null]),
    ]);
  });

  test('with both, counts corners and edges apart', () => {
    const { pieces } = only(
      designOf('motif m for square { piece p from corner to mid edge, every corner, every edge }').motifs,
    );
    expect(pieces.length).toBe(16);
  });

  test('follows nodes to their places', () => {
    const text =
      'motif m for square { node b at between a and corner 3 at 25%  node a at between corner 1 and centroid  piece p from a to b }';
    const a = { kind: 'between', first: { kind: 'corner', corner: 1 }, second: { kind: 'centroid' }, fraction: 0.5 };
    const b = { kind: 'between', first: a, second: { kind: 'corner', corner: 3 }, fraction: 0.25 };
    expect(only(only(designOf(text).motifs).pieces)).toMatchObject({
      from: { name: 'a', place: a },
      to: { name: 'b', place: b },
    });
  });

  test('holds the motifs of its parts, in whatever order they stand', () => {
    const text =
      'motif outer for square { divider d from corner 1 to corner 3  fill halves with inner { tip 45deg at hub of the square corner  tip 30 at hub of corner 2 } }\n' +
      'motif inner for triangle { node hub at incentre  piece arm from corner to hub, every corner  fit_order arm, arm, arm key 1/16in }';
    const [outer, inner] = designOf(text).motifs;
    const fill = only(outer?.fills ?? []);
    expect(fill.motif).toEqual(inner);
    expect(fill.parts).toEqual({ kind: 'every' });
    expect(fill.tips.map(({ angle, node, corners }) => [angle, node, corners])).toEqual([
      [45, 'hub', { kind: 'square' }],
      [30, 'hub', { kind: 'number', corner: 2 }],
    ]);
    expect(inner?.fitOrder).toEqual([
      { role: 'arm', key: null },
      { role: 'arm', key: null },
      { role: 'arm', key: 1.5875 },
    ]);
  });
});

describe('a panel', () => {
  const parts = `${stock}grid mesh { square pitch 36 of ash }\n`;

  test('is framed, about a node, once, unless said', () => {
    expect(only(designOf(`${parts}panel p { grid mesh shape 5 x 4 cells }`).panels)).toMatchObject({
      edge: 'framed',
      phase: { kind: 'centred', on: 'node' },
      shape: { kind: 'cells', across: 5, up: 4 },
      stub: 0,
      tail: 6,
      copies: 1,
      fills: [],
    });
  });

  test.each([
    ['shape 10cm x 50', { kind: 'rectangle', width: 100, height: 50 }],
    ['shape n x n cells', { kind: 'cells', across: 4, up: 4 }],
    ['shape hexagon', { kind: 'outline', outline: { name: 'hexagon' } }],
    ['shape hexagon x (n * 2)', { kind: 'rectangle', width: 20, height: 8 }],
  ])('of %s', (shape, expected) => {
    const text = `${parts}let n = 4\nlet hexagon = 20\noutline hexagon { circle radius 40 }\npanel p { grid mesh ${shape} }`;
    expect(only(designOf(text).panels).shape).toMatchObject(expected);
  });

  test('of a hexagon of cells', () => {
    const text = `${stock}grid mesh { three_way side 36 of ash }\npanel p { grid mesh shape hexagon 3 cells }`;
    expect(only(designOf(text).panels).shape).toMatchObject({ kind: 'hexagonOfCells', cells: 3 });
  });

  test('keeps its place, fills and measures', () => {
    const text = `${parts}motif bar for square { piece p from mid edge 1 to mid edge 3 }
      panel p { grid mesh node at 1cm, -2 shape 2 x 2 cells edge sawn tail 4 stub 5 copies 12 / 4 fill square with bar of ash turned 3 }`;
    expect(only(designOf(text).panels)).toMatchObject({
      phase: { kind: 'nodeAt', at: { x: 10, y: -2 } },
      edge: 'sawn',
      tail: 4,
      stub: 5,
      copies: 3,
      fills: [{ shape: 'square', turned: 3, motif: { name: 'bar' }, stock: { name: 'ash' } }],
    });
  });
});

test('what is broken is left out with what depends on it, and nothing else', () => {
  const text = `${stock}strip bad { section face 0 depth 10 }
    grid mesh { square pitch 36 of ash }
    grid fine { square pitch 20 of bad }
    motif bar for square { piece p from mid edge 1 to mid edge 3  piece q from corner 9 to centroid }
    panel sound { grid mesh shape 2 x 2 cells fill square with bar of ash fill square with bar of bad }
    panel lost { grid fine shape 2 x 2 cells }`;
  const { design, problems } = buildDesign(parseDocument(text).tree);
  expect(problems.map(({ code }) => code).sort()).toEqual(['LAP0302', 'LAP0303']);
  expect(design.grids.map(({ name }) => name)).toEqual(['mesh']);
  expect(design.motifs.map(({ pieces }) => pieces.map(({ role }) => role))).toEqual([['p']]);
  expect(design.panels.map(({ name, fills }) => [name, fills.length])).toEqual([['sound', 1]]);
});
