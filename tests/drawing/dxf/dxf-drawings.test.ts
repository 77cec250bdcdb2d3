/** Panels, pieces, strips and blanks as DXF, read back by an independent reader. */
import Parser, { type IArcEntity, type ILineEntity, type IPolylineEntity, type ITextEntity } from 'dxf-parser';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import { drawnSubject, type Subject } from '../../../server/cli/draw-subject.ts';
import { writeDxf } from '../../../server/drawing/dxf/write-dxf.ts';

const text = `title "Star"
strip ash { wood white_ash  section face 3 depth 10 }
strip bass { wood basswood  section face 3 depth 10 }
grid mesh { three_way  side 40  of ash  fit 0.05 }
motif hemp for triangle { node hub at incentre  piece arm from corner to hub, every corner }
outline disc { circle radius 150 }
panel star { grid mesh  shape disc  edge sawn  fill triangle with hemp of bass }
`;
const analysis = analyse(text);

function entitiesOf(subject: Subject, of = analysis) {
  const drawing = drawnSubject(of, subject, 'star.lap')?.dxf?.();
  if (!drawing) throw new Error('nothing is drawn');
  const file = new Parser().parseSync(writeDxf(drawing));
  if (!file) throw new Error('the reader finds no drawing');
  return file.entities;
}

const lengthOf = ({ vertices: [from, to] }: ILineEntity): number =>
  Math.hypot((to?.x ?? NaN) - (from?.x ?? NaN), (to?.y ?? NaN) - (from?.y ?? NaN));

describe('a panel', () => {
  const entities = entitiesOf({ kind: 'panel', name: 'star' });
  const rings = entities.filter(({ type }) => type === 'POLYLINE') as IPolylineEntity[];

  test('has every piece and every strip as a closed ring on a layer of its kind', () => {
    // 276 whole and 66 trimmed arms in a circle of 150 about a node: counted by brute force, see the lattice's tests.
    const on = (layer: string) => rings.filter((ring) => ring.layer === layer);
    expect(on('PIECES_WHOLE')).toHaveLength(276);
    expect(on('PIECES_TRIMMED')).toHaveLength(66);
    const strips = analysis.panels[0]?.strips.flatMap(({ placements }) => placements).length;
    expect([1, 2, 3].flatMap((level) => on(`STRIPS_${level}`))).toHaveLength(strips ?? NaN);
    expect(rings.every(({ shape }) => shape)).toBe(true);
  });

  test('keeps its round outline as arcs, and marks what is drawn', () => {
    const arcs = entities.filter(({ layer }) => layer === 'OUTLINE') as IArcEntity[];
    expect(arcs.map(({ type, radius }) => [type, radius])).toEqual(arcs.map(() => ['ARC', 150]));
    const marks = new Set((entities.filter(({ type }) => type === 'TEXT') as ITextEntity[]).map((each) => each.text));
    for (const { mark } of [...analysis.kinds.pieces, ...analysis.kinds.strips]) expect(marks).toContain(mark);
  });
});

describe('a piece', () => {
  test('lies along x, tip to tip s/√3 − t and its edges shorter by (t/2)(cot 30° + cot 60°)', () => {
    const edges = entitiesOf({ kind: 'piece', name: 'A' }).filter(({ layer }) => layer === 'EDGES') as ILineEntity[];
    expect(edges.every(({ type }) => type === 'LINE')).toBe(true);
    const xs = edges.flatMap(({ vertices }) => vertices.map(({ x }) => x));
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(40 / Math.sqrt(3) - 3, 5);
    const long = edges.map(lengthOf).sort((a, b) => b - a);
    expect(long[0]).toBeCloseTo(16.6299, 4);
    expect(long[1]).toBeCloseTo(16.6299, 4);
  });

  test('that is a strip has its notches on layers by the side they are cut from', () => {
    const [strip] = analysis.kinds.strips;
    const entities = entitiesOf({ kind: 'piece', name: strip?.mark ?? '' });
    const notches = strip?.groups[0]?.group.notches ?? [];
    for (const side of ['above', 'below'] as const) {
      const expected = notches.filter(({ from }) => from === side).reduce((sum, { count }) => sum + count, 0);
      expect(entities.filter(({ layer }) => layer === `NOTCHES_FROM_${side.toUpperCase()}`)).toHaveLength(expected);
    }
  });
});

describe('a blank', () => {
  const discs = (measured: string): string => `units mm
strip ash { section face 3 depth 10 }
bench shop { kerf 3  band_blade 6 cuts 1 curve 16 }
grid mesh { square  side 20  of ash ${measured} }
outline disc { circle radius 36 }
panel plate { grid mesh  shape disc  edge sawn  centred node  copies 4 }
blank cast { grid mesh  shape 330 x 100  take plate 4  gap 2  allowance 1.5 }
`;
  const read = (measured: string) => {
    const entities = entitiesOf({ kind: 'blank', name: 'cast' }, analyse(discs(measured)));
    const on = (layer: string) => entities.filter((entity) => entity.layer === layer);
    const arcs = on('SAW_LINE') as IArcEntity[];
    return { on, arcs, centres: [...new Set(arcs.map(({ center: { x, y } }) => `${x.toFixed(3)} ${y.toFixed(3)}`))] };
  };

  test('has every saw line as arcs of the radius and what is left to sand, about nodes 80 mm apart', () => {
    const { arcs, centres } = read('');
    expect(arcs.map(({ type, radius }) => [type, radius.toFixed(6)])).toEqual(arcs.map(() => ['ARC', '37.500000']));
    const [first, second] = centres.map((centre) => centre.split(' ').map(Number));
    expect(centres.length).toBeGreaterThan(1);
    for (const centre of centres) for (const part of centre.split(' ')) expect(Number(part) % 20).toBeCloseTo(0, 6);
    expect(Math.hypot((first?.[0] ?? 0) - (second?.[0] ?? 0), (first?.[1] ?? 0) - (second?.[1] ?? 0))).toBe(80);
  });

  test('has its edge, the middles of its strips, names, and three nodes to register by', () => {
    const { on } = read('');
    const [edge] = on('BLANK_EDGE') as IPolylineEntity[];
    const corners = edge?.vertices.map(({ x, y }) => [Math.abs(x), Math.abs(y)]);
    expect(corners).toEqual(Array.from({ length: 4 }, () => [165, 50]));
    // Lines at 0, ±20, …, ±160 across 330 mm and at 0, ±20, ±40 across 100 mm.
    expect(on('MIDDLES_OF_STRIPS')).toHaveLength(17 + 5);
    const texts = (layer: string) =>
      (on(layer).filter(({ type }) => type === 'TEXT') as ITextEntity[]).map((t) => t.text);
    expect(texts('NAMES')).toEqual(texts('NAMES').map(() => 'plate'));
    expect(texts('REGISTER')).toEqual(['1', '2', '3']);
    const nodes = on('REGISTER').filter(({ type }) => type === 'CIRCLE') as IArcEntity[];
    for (const { center } of nodes) expect([center.x % 20, center.y % 20].map(Math.abs)).toEqual([0, 0]);
  });

  test('moves with the lattice as it was measured, while the outlines keep their size', () => {
    const [drawn, stretched] = [read(''), read('measured 10 cells 202')];
    expect(stretched.arcs.every(({ radius }) => Math.abs(radius - 37.5) < 1e-6)).toBe(true);
    const grown = drawn.centres.map((centre) =>
      centre
        .split(' ')
        .map((part) => (Number(part) * 1.01).toFixed(3))
        .join(' '),
    );
    expect(stretched.centres).toEqual(grown);
  });
});
