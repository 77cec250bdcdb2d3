/** DXF files read back by an independent reader: what is a line stays a line, what is an arc stays an arc. */
import Parser, {
  type IArcEntity,
  type ICircleEntity,
  type ILineEntity,
  type IPolylineEntity,
  type ITextEntity,
} from 'dxf-parser';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { DxfLayer } from '../../../server/drawing/dxf/dxf-drawing.ts';
import { writeDxf } from '../../../server/drawing/dxf/write-dxf.ts';
import { circularArc } from '../../../server/geometry/flatten-path.ts';
import type { PathSegment } from '../../../server/geometry/path.ts';
import { circleContour, polygonContour } from '../../design-builder.ts';

const layerOf = (more: Partial<DxfLayer>): DxfLayer => ({
  name: 'finished line',
  broken: false,
  paths: [],
  rings: [],
  texts: [],
  ...more,
});

function read(...layers: DxfLayer[]) {
  const file = new Parser().parseSync(writeDxf({ layers }));
  if (!file) throw new Error('the reader finds no drawing');
  return file;
}

describe('a file', () => {
  test('names its release and its layers, which one neutral colour leaves to their names; broken lines are called so', () => {
    const file = read(layerOf({}), layerOf({ name: 'saw line', broken: true }));
    expect(file.header['$ACADVER']).toBe('AC1009');
    expect(Object.keys(file.tables.layer.layers)).toEqual(['FINISHED_LINE', 'SAW_LINE']);
    for (const layer of Object.values(file.tables.layer.layers)) expect(layer.colorIndex).toBe(7);
    expect(writeDxf({ layers: [layerOf({ broken: true })] })).toMatch(/ {2}0\r\nLAYER\r\n[^]*? {2}6\r\nBROKEN\r\n/);
  });

  test('keeps layers apart whose names come out equal', () => {
    const file = read(layerOf({ name: 'leaf 1' }), layerOf({ name: 'leaf-1' }));
    expect(Object.keys(file.tables.layer.layers)).toEqual(['LEAF_1', 'LEAF_1_2']);
  });

  test('holds nothing that came after release 12, and ends its lines as the format does', () => {
    const text = writeDxf({ layers: [layerOf({ paths: [circleContour(20)], rings: [[{ x: 0, y: 0 }]] })] });
    const lines = text.split('\r\n');
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    expect(lines.filter((_, index) => index % 2 === 0).map((code) => code.trim())).not.toContain('100');
    expect(text).not.toMatch(/LWPOLYLINE|ELLIPSE|SPLINE/);
  });
});

describe('entities', () => {
  test('a rectangle is four lines of its lengths', () => {
    const corners = [
      { x: 0, y: 0 },
      { x: 80, y: 0 },
      { x: 80, y: 50.25 },
      { x: 0, y: 50.25 },
    ];
    const lines = read(layerOf({ paths: [polygonContour(corners)] })).entities as ILineEntity[];
    const lengthOf = ({ vertices: [first, second] }: ILineEntity) =>
      Math.hypot((second?.x ?? NaN) - (first?.x ?? NaN), (second?.y ?? NaN) - (first?.y ?? NaN));
    expect(lines.map(({ type }) => type)).toEqual(['LINE', 'LINE', 'LINE', 'LINE']);
    expect(lines.map(lengthOf)).toEqual([80, 50.25, 80, 50.25]);
  });

  test('arcs keep centre, radius and ends, whichever way they run', () => {
    const angle = fc.double({ min: -720, max: 720, noNaN: true });
    const turn = fc.double({ min: 1, max: 359, noNaN: true });
    const size = fc.double({ min: 1, max: 900, noNaN: true });
    const radians = (degrees: number) => (degrees * Math.PI) / 180;
    fc.assert(
      fc.property(angle, turn, fc.boolean(), size, (from, by, left, radius) => {
        const at = (degrees: number) => ({
          x: 3 + radius * Math.cos(radians(degrees)),
          y: -7 + radius * Math.sin(radians(degrees)),
        });
        const to = left ? from + by : from - by;
        const arc = circularArc(at(from), at(to), { x: 3, y: -7 }, to - from);
        const [drawn] = read(layerOf({ paths: [[arc]] })).entities as [IArcEntity];
        expect(drawn.type).toBe('ARC');
        expect(drawn.radius).toBeCloseTo(radius, 5);
        expect(drawn.center).toMatchObject({ x: 3, y: -7 });
        const [first, last] = left ? [from, to] : [to, from];
        // The reader gives radians.
        expect(Math.cos(drawn.startAngle)).toBeCloseTo(Math.cos(radians(first)), 5);
        expect(Math.sin(drawn.endAngle)).toBeCloseTo(Math.sin(radians(last)), 5);
      }),
      { numRuns: 100 },
    );
  });

  test('a whole turn is a circle', () => {
    const whole = circularArc({ x: 20, y: 0 }, { x: 20, y: 0 }, { x: 0, y: 0 }, 360);
    const [circle] = read(layerOf({ paths: [[whole]] })).entities as [ICircleEntity];
    expect([circle.type, circle.radius]).toEqual(['CIRCLE', 20]);
  });

  test('a curve is an open chain from end to end, a ring a closed one', () => {
    const curve: PathSegment = {
      kind: 'cubic',
      from: { x: 0, y: 0 },
      control1: { x: 0, y: 40 },
      control2: { x: 60, y: 40 },
      to: { x: 60, y: 0 },
    };
    const triangle = [
      { x: 0, y: 0 },
      { x: 30, y: 0 },
      { x: 0, y: 40 },
    ];
    const [open, closed] = read(layerOf({ paths: [[curve]], rings: [triangle] })).entities as [
      IPolylineEntity,
      IPolylineEntity,
    ];
    expect([open.type, open.shape]).toEqual(['POLYLINE', false]);
    expect(open.vertices.at(0)).toMatchObject({ x: 0, y: 0 });
    expect(open.vertices.at(-1)).toMatchObject({ x: 60, y: 0 });
    // Middle of a cubic: (P0 + 3 P1 + 3 P2 + P3) / 8.
    expect(Math.max(...open.vertices.map(({ y }) => y))).toBeCloseTo(30, 2);
    expect([closed.shape, closed.vertices.length]).toEqual([true, 3]);
  });

  test('letters beyond ASCII are written by their code', () => {
    const text = { at: { x: 5, y: 6 }, height: 4, turn: 90, text: 'Blätter' };
    expect(writeDxf({ layers: [layerOf({ texts: [text] })] })).toContain('Bl\\U+00E4tter');
    const [written] = read(layerOf({ texts: [text] })).entities as [ITextEntity];
    expect(written).toMatchObject({ type: 'TEXT', startPoint: { x: 5, y: 6 }, textHeight: 4 });
  });
});
