/** Panels, pieces and strips as DXF, read back by an independent reader. */
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

function entitiesOf(subject: Subject) {
  const drawing = drawnSubject(analysis, subject, 'star.lap')?.dxf?.();
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
