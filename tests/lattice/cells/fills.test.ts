/**
 * Which cells the fills of a panel come to. The counts are worked out by hand from the shapes of the panels; the
 * numbers of a checkerboard, of square rings and of triangles in a hexagon (6n²) are elementary.
 */
import { describe, expect, test } from 'vitest';
import type { CellMap, FillCondition, Panel, PanelFill, PanelShape } from '../../../server/design/design-model.ts';
import type { LaidCell } from '../../../server/lattice/laid-panel.ts';
import { layOutPanel } from '../../../server/lattice/lay-out-panel.ts';
import {
  atCorner,
  basketGrid,
  cellsShape,
  circleContour,
  fillOf,
  gridOf,
  hemp,
  hexagonShape,
  motifOf,
  outlineShape,
  panelOf,
  pieceFrom,
  polygonContour,
  stripStock,
} from '../../design-builder.ts';
import { told } from '../../told.ts';

const ash = stripStock('ash', 3);
const diagonal = motifOf('diagonal', 'square', { pieces: [pieceFrom('brace', atCorner(1), atCorner(3))] });
const other = motifOf('other', 'square', { pieces: [pieceFrom('brace', atCorner(2), atCorner(4))] });
const star = { ...hemp, name: 'star' };
const squares = gridOf('square', 40, ash);
const mesh = gridOf('three_way', 40, ash);

/** The n-th phrase of a file: fills are told apart by where they stand. */
const at = (n: number) => ({ range: { start: n, end: n + 1 } });

const square = (n: number, motif = diagonal, where: readonly FillCondition[] = [], more: Partial<PanelFill> = {}) =>
  fillOf('square', motif, ash, { where, ...at(n), ...more });
const triangle = (n: number, motif = hemp, where: readonly FillCondition[] = [], more: Partial<PanelFill> = {}) =>
  fillOf('triangle', motif, ash, { where, ...at(n), ...more });

function lay(panel: Panel) {
  const { panel: laid, problems } = layOutPanel(panel);
  if (!laid) throw new Error(`the panel was refused: ${problems.map((problem) => told(problem)).join()}`);
  return { cells: [...laid.filledCells()], laid, problems };
}

const framed = (fills: readonly PanelFill[], shape: PanelShape = cellsShape(5, 4), more: Partial<Panel> = {}) =>
  lay(panelOf(more.grid ?? squares, shape, { edge: 'framed', fills, ...more }));

const places = (cells: readonly LaidCell[], motif: string): string[] =>
  cells
    .filter((cell) => cell.motif === motif)
    .map(({ row, column }) => `${row}/${column}`)
    .sort();

describe('rows and columns', () => {
  test('row 1 is the top one, column 1 the left one', () => {
    const { cells } = framed([square(1, diagonal, [{ kind: 'rows', first: 1, last: 1, every: 1 }])]);
    expect(places(cells, 'diagonal')).toEqual(['1/1', '1/2', '1/3', '1/4', '1/5']);
    const ys = cells.flatMap(({ opening }) => opening.map(({ y }) => y));
    expect(Math.min(...ys)).toBeGreaterThan(40);
    const left = framed([square(1, diagonal, [{ kind: 'columns', first: 1, last: 1, every: 1 }])]).cells;
    expect(places(left, 'diagonal')).toEqual(['1/1', '2/1', '3/1', '4/1']);
    expect(Math.max(...left.flatMap(({ opening }) => opening.map(({ x }) => x)))).toBeLessThan(-60);
  });

  test('every so many, from one to another', () => {
    const every = framed([square(1, diagonal, [{ kind: 'columns', first: 2, last: Infinity, every: 2 }])]).cells;
    expect([...new Set(every.map(({ column }) => column))].sort()).toEqual([2, 4]);
    const some = framed([square(1, diagonal, [{ kind: 'columns', first: 2, last: 4, every: 1 }])]).cells;
    expect([...new Set(some.map(({ column }) => column))].sort()).toEqual([2, 3, 4]);
    const rows = framed([square(1, diagonal, [{ kind: 'rows', first: 2, last: 4, every: 2 }])]).cells;
    expect([...new Set(rows.map(({ row }) => row))].sort()).toEqual([2, 4]);
  });

  test('a row of a three-way hexagon of 3 cells has 7, 9, 11, 11, 9, 7 triangles', () => {
    const count = (row: number): number =>
      framed([triangle(1, hemp, [{ kind: 'rows', first: row, last: row, every: 1 }])], hexagonShape(3), { grid: mesh })
        .cells.length;
    expect([1, 2, 3, 4, 5, 6].map(count)).toEqual([7, 9, 11, 11, 9, 7]);
  });

  test('in a wide panel rules that repeat come to the same cells as asking every cell', () => {
    const conditions: FillCondition[] = [
      { kind: 'columns', first: 5, last: 37, every: 4 },
      { kind: 'share', by: 'cell', place: 1, of: 3 },
    ];
    const shape = outlineShape(circleContour(1000));
    const all = framed([square(1)], shape).cells;
    const some = framed([square(1, diagonal, conditions)], shape).cells;
    const expected = all.filter(
      ({ row, column }) => column >= 5 && column <= 37 && (column - 5) % 4 === 0 && (row - 1 + column - 1) % 3 === 1,
    );
    expect(places(some, 'diagonal')).toEqual(places(expected, 'diagonal'));
    expect(some.length).toBeGreaterThan(100);
  });
});

describe('which fill counts', () => {
  test('the last one that speaks of a cell', () => {
    const { cells } = framed([square(1), square(2, other, [{ kind: 'rows', first: 2, last: 2, every: 1 }])]);
    expect(places(cells, 'other')).toEqual(['2/1', '2/2', '2/3', '2/4', '2/5']);
    expect(places(cells, 'diagonal')).toHaveLength(15);
  });

  test('one that comes to no cell is a warning', () => {
    const { problems } = framed([square(1, other, [{ kind: 'rows', first: 2, last: 2, every: 1 }]), square(2)]);
    expect(problems.map(({ code, range }) => [code, range.start])).toEqual([['LAP0703', 1]]);
  });
});

describe('taking turns', () => {
  const share = (by: 'cell' | 'row' | 'column', place: number, of = 2): FillCondition[] => [
    { kind: 'share', by, place, of },
  ];

  test('cell by cell makes a checkerboard that begins at the top left', () => {
    const { cells } = framed([square(1, diagonal, share('cell', 0)), square(1, other, share('cell', 1))]);
    expect(places(cells, 'diagonal')).toHaveLength(10);
    expect(cells.every(({ row, column, motif }) => (motif === 'diagonal') === ((row + column) % 2 === 0))).toBe(true);
  });

  test('row by row and column by column', () => {
    const rows = framed([square(1, diagonal, share('row', 0, 3)), square(1, other, share('row', 1, 3))]).cells;
    expect(places(rows, 'diagonal').map((place) => place[0])).toEqual(Array.from('1111144444'));
    expect(places(rows, 'other')).toHaveLength(5);
    const columns = framed([square(1, diagonal, share('column', 1))]).cells;
    expect([...new Set(columns.map(({ column }) => column))].sort()).toEqual([2, 4]);
  });

  test('on a three-way grid triangles pointing up and down take turns', () => {
    const { cells } = framed(
      [triangle(1, hemp, share('cell', 0)), triangle(1, star, share('cell', 1))],
      hexagonShape(3),
      {
        grid: mesh,
      },
    );
    const pointsUp = ({ opening }: LaidCell): boolean => {
      const ys = opening.map(({ y }) => y).sort((a, b) => a - b);
      return (ys[1] ?? 0) - (ys[0] ?? 0) < 1;
    };
    const ups = new Set(cells.filter(pointsUp).map(({ motif }) => motif));
    const downs = new Set(cells.filter((cell) => !pointsUp(cell)).map(({ motif }) => motif));
    expect(ups.size).toBe(1);
    expect(downs.size).toBe(1);
    expect([...ups]).not.toEqual([...downs]);
    expect(cells).toHaveLength(54);
  });
});

describe('rings', () => {
  const ring = (first: number, last = first): FillCondition[] => [{ kind: 'rings', first, last }];

  test('of 5 × 4 cells have 14 and 6', () => {
    expect(framed([square(1, diagonal, ring(1))]).cells).toHaveLength(14);
    expect(places(framed([square(1, diagonal, ring(2))]).cells, 'diagonal')).toEqual([
      '2/2',
      '2/3',
      '2/4',
      '3/2',
      '3/3',
      '3/4',
    ]);
    expect(framed([square(1, diagonal, ring(1, 2))]).cells).toHaveLength(20);
  });

  test('sawn, the outer strips stay with the panel, and the rings are the same', () => {
    expect(lay(panelOf(squares, cellsShape(5, 4), { fills: [square(1, diagonal, ring(1))] })).cells).toHaveLength(14);
  });

  test('of a hexagon of 3 cells: the 18 triangles on its sides, then those next to them', () => {
    const count = (n: number): number =>
      framed([triangle(1, hemp, ring(n))], hexagonShape(3), { grid: mesh }).cells.length;
    expect([1, 2, 3, 4, 5].map(count)).toEqual([18, 12, 12, 6, 6]);
  });

  test('a hole has its own first ring', () => {
    const hole = [
      ...polygonContour([
        { x: -50, y: -50 },
        { x: -50, y: 50 },
        { x: 50, y: 50 },
        { x: 50, y: -50 },
      ]),
    ];
    const outer = polygonContour([
      { x: -200, y: -200 },
      { x: 200, y: -200 },
      { x: 200, y: 200 },
      { x: -200, y: 200 },
    ]);
    const cells = framed([square(1, diagonal, ring(1))], outlineShape(outer, hole)).cells;
    const nearHole = cells.filter(({ opening }) => opening.every(({ x, y }) => Math.hypot(x, y) < 120));
    expect(nearHole.length).toBeGreaterThan(0);
  });

  test('nothing is left beyond the innermost ring', () => {
    const { problems } = framed([square(1, diagonal, ring(3))]);
    expect(problems.map(({ code }) => code)).toEqual(['LAP0703']);
  });
});

describe('regions', () => {
  const disc = { ...outlineShape(circleContour(130)) } as Extract<PanelShape, { kind: 'outline' }>;
  const wide = outlineShape(circleContour(600));

  test('inside and outside part the cells by their middles', () => {
    const middleDistance = ({ opening }: LaidCell): number =>
      Math.hypot(opening.reduce((sum, { x }) => sum + x, 0) / 4, opening.reduce((sum, { y }) => sum + y, 0) / 4);
    const all = framed([square(1)], wide).cells;
    const inside = framed([square(1, diagonal, [{ kind: 'region', outline: disc.outline, inside: true }])], wide).cells;
    const outside = framed(
      [square(1, diagonal, [{ kind: 'region', outline: disc.outline, inside: false }])],
      wide,
    ).cells;
    expect(inside).toHaveLength(all.filter((cell) => middleDistance(cell) <= 130).length);
    expect(inside.every((cell) => middleDistance(cell) <= 130)).toBe(true);
    expect(inside.length + outside.length).toBe(all.length);
  });

  test('within and beyond a distance of a line', () => {
    const margin = (within: boolean): FillCondition[] => [{ kind: 'margin', of: disc.outline, reach: 50, within }];
    const middle = ({ opening }: LaidCell): number =>
      Math.hypot(opening.reduce((sum, { x }) => sum + x, 0) / 4, opening.reduce((sum, { y }) => sum + y, 0) / 4);
    const all = framed([square(1)], wide).cells;
    const near = framed([square(1, diagonal, margin(true))], wide).cells;
    const far = framed([square(1, diagonal, margin(false))], wide).cells;
    expect(near).toHaveLength(all.filter((cell) => Math.abs(middle(cell) - 130) <= 50).length);
    expect(near.length).toBeGreaterThan(10);
    expect(near.length + far.length).toBe(all.length);
  });

  test('within a distance of the panel’s own edge', () => {
    const { cells } = framed([square(1, diagonal, [{ kind: 'margin', of: null, reach: 30, within: true }])]);
    expect(cells).toHaveLength(14);
  });
});

describe('maps', () => {
  const mapped = (sign: string): FillCondition[] => [{ kind: 'mapped', sign }];
  const mapOf = (...rows: string[]): CellMap => {
    let place = 100;
    return {
      range: { start: 90, end: 400 },
      rows: rows.map((row) => {
        const start = place;
        const signs = row.split(' ').map((sign) => ({ sign, range: { start: place, end: (place += 2) - 1 } }));
        return { signs, range: { start, end: place } };
      }),
    };
  };
  const fills = [square(1, diagonal, mapped('d')), square(2, other, mapped('o'), { turned: 1 })];

  test('the first row is the top, signs run left to right, a sign without a fill leaves its cell open', () => {
    const map = mapOf('d o d o d', 'o . . . o', '. . . . .', 'd d d d d');
    const { cells, problems } = framed(fills, cellsShape(5, 4), { map });
    expect(problems).toEqual([]);
    expect(places(cells, 'diagonal')).toEqual(['1/1', '1/3', '1/5', '4/1', '4/2', '4/3', '4/4', '4/5']);
    expect(places(cells, 'other')).toEqual(['1/2', '1/4', '2/1', '2/5']);
    expect(new Set(cells.filter(({ motif }) => motif === 'other').map(({ turned }) => turned))).toEqual(new Set([1]));
  });

  test('has the last word over all fills', () => {
    const map = mapOf('. . . . .', '. . . . .', '. . . . .', 'd d d d d');
    const { cells, problems } = framed([...fills, square(3)], cellsShape(5, 4), { map });
    expect(cells).toHaveLength(5);
    expect(problems.map(({ code, range }) => [code, range.start])).toEqual([['LAP0703', 3]]);
  });

  test('a row of a three-way panel runs through its triangles', () => {
    const signs = [triangle(1, hemp, mapped('h')), triangle(2, star, mapped('s'))];
    const map = mapOf('h s h s', 's h s h');
    const { cells, problems } = lay(panelOf(mesh, cellsShape(2, 2), { edge: 'framed', fills: signs, map }));
    expect(problems).toEqual([]);
    expect(cells.filter(({ motif }) => motif === 'hemp')).toHaveLength(4);
    const top = cells.filter(({ row }) => row === 1).sort((a, b) => a.column - b.column);
    expect(top.map(({ motif }) => motif)).toEqual(['hemp', 'star', 'hemp', 'star']);
  });

  test('rows that do not agree are reported where they stand, the others are laid', () => {
    const map = mapOf('d d d d', 'd d d d d d', 'd d d d d', 'd d d d d', 'd d d d d');
    const { cells, problems } = framed(fills.slice(0, 1), cellsShape(5, 4), { map });
    expect(cells).toHaveLength(10);
    expect(problems.map((problem) => `${problem.code} ${told(problem)}`)).toEqual([
      'LAP0704 The panel has 4 rows of cells and the map 5. Take 1 row out.',
      'LAP0704 Row 1 of the panel has 5 cells, and the map 4 here: 1 too few. Add them.',
      'LAP0704 Row 2 of the panel has 5 cells, and the map 6 here: 1 too many. Take them out.',
    ]);
    expect(problems[2]?.range.start).toBe(100 + 4 * 2 + 5 * 2);
  });

  test('a sign for another shape of cell is an error at the sign', () => {
    const grid = basketGrid(40, ash);
    const one = motifOf('one', 'hexagon', { pieces: [pieceFrom('ray', atCorner(1), atCorner(4))] });
    const fill = fillOf('hexagon', one, ash, { where: mapped('x'), ...at(1) });
    const rows = lay(panelOf(grid, cellsShape(2, 1), { edge: 'framed', fills: [] })).laid.cells;
    expect(rows.map(({ shape, met }) => [shape, met]).sort()).toEqual([
      ['hexagon', 2],
      ['triangle', 4],
    ]);
    const map = mapOf('x x x x x x');
    const { problems } = lay(panelOf(grid, cellsShape(2, 1), { edge: 'framed', fills: [fill], map }));
    expect(problems).toHaveLength(4);
    expect(told(problems[0])).toMatch(/^`x` is `one`, for a hexagon, and this place is a triangle/);
  });
});

describe('mirrored', () => {
  /** From one corner to a third of the way along an edge: turned and mirrored it differs from itself. */
  const slant = motifOf('slant', 'square', {
    pieces: [pieceFrom('slant', atCorner(1), { name: null, place: { kind: 'along', edge: 2, fraction: 0.3 } })],
  });
  const one = (fill: PanelFill) => lay(panelOf(squares, cellsShape(1, 1), { edge: 'framed', fills: [fill] })).laid;
  const corners = (fill: PanelFill): string[] =>
    one(fill)
      .pieces.flatMap(({ outline, placements }) =>
        [...placements()].flatMap(({ at: place, turn }) => {
          const [c, s] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
          return outline.map(({ x, y }) => ({ x: place.x + c * x - s * y, y: place.y + s * x + c * y }));
        }),
      )
      .map(({ x, y }) => `${x.toFixed(3)},${y.toFixed(3)}`)
      .sort();

  test('the mirror stands on the line through corner 1 and the middle: in a square, x and y change places', () => {
    const plain = corners(square(1, slant));
    const swapped = plain.map((point) => point.split(',').reverse().join(',')).sort();
    expect(swapped).not.toEqual(plain);
    expect(corners(square(1, slant, [], { mirrored: true }))).toEqual(swapped);
  });

  test('a plain piece is the same piece mirrored, flipped over', () => {
    const [plain] = one(square(1, slant)).pieces;
    const [mirrored] = one(square(1, slant, [], { mirrored: true })).pieces;
    expect(mirrored?.shape.length).toBeCloseTo(plain?.shape.length ?? 0, 6);
    expect(mirrored?.shape.ends).toEqual(plain?.shape.ends);
  });

  test('hemp is its own mirror image', () => {
    const lie = (mirrored: boolean): string[] =>
      lay(panelOf(mesh, hexagonShape(1), { edge: 'framed', fills: [triangle(1, hemp, [], { mirrored })] }))
        .laid.pieces.flatMap(({ placements }) => [...placements()])
        .map(({ at: { x, y }, turn }) =>
          `${x.toFixed(2)} ${y.toFixed(2)} ${turn.toFixed(2)}`.replaceAll('-0.00', '0.00'),
        )
        .sort();
    expect(lie(true)).toEqual(lie(false));
  });

  test('is told in the cell', () => {
    const cells = [...one(square(1, slant, [], { mirrored: true, turned: 2 })).filledCells()];
    expect(cells.map(({ mirrored, turned, row, column }) => [mirrored, turned, row, column])).toEqual([
      [true, 2, 1, 1],
    ]);
  });
});

describe('cells left open', () => {
  const ring: FillCondition = { kind: 'rings', first: 1, last: 1 };
  const rows: FillCondition = { kind: 'rows', first: 1, last: 2, every: 1 };

  test('are those that meet every condition: of 5 × 4 cells 14 lie in ring 1, 7 of them in the two upper rows', () => {
    const { cells } = framed([square(1, diagonal, [{ kind: 'not open', where: [ring, rows] }])]);
    expect(cells).toHaveLength(20 - 7);
    expect(places(cells, 'diagonal')).toContain('2/2');
    expect(places(cells, 'diagonal')).not.toContain('2/1');
  });

  test('take from the fills before, not from those behind', () => {
    const { cells } = framed([square(1, diagonal, [{ kind: 'not open', where: [] }]), square(2, other, [rows])]);
    expect(places(cells, 'other')).toHaveLength(10);
    expect(places(cells, 'diagonal')).toEqual([]);
  });
});
