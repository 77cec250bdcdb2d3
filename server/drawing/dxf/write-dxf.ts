/**
 * A drawing as DXF R12 (AC1009), in millimetres. Lines stay lines and circular arcs stay arcs; curves and arcs of
 * ellipses, which that release does not know, become open chains of lines within the flattening tolerance.
 */
import { flattenSegment } from '../../geometry/flatten-path.ts';
import type { ArcSegment, PathSegment } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { arithmeticTolerance, rounded } from '../../geometry/tolerance.ts';
import type { DxfDrawing, DxfLayer, DxfText } from './dxf-drawing.ts';

/** A group code and its value: one pair of lines in the file. */
type Pair = readonly [number, string | number];

/** Decimals of a coordinate: finer than any tolerance of ours. */
const decimals = 6;

/** The whole file. Line ends are CR LF, letters beyond ASCII are written as \U+XXXX. */
export function writeDxf({ layers }: DxfDrawing): string {
  const named = withNames(layers);
  const pairs: Pair[] = [
    ...section('HEADER', [
      [9, '$ACADVER'],
      [1, 'AC1009'],
    ]),
    ...section('TABLES', [
      ...table('LTYPE', [...lineType('CONTINUOUS', 'Solid line', []), ...lineType('BROKEN', 'Dashes', [3, -1.5])], 2),
      ...table('LAYER', named.flatMap(layerEntry), named.length),
    ]),
    ...section('ENTITIES', named.flatMap(entities)),
    [0, 'EOF'],
  ];
  return pairs.map(([code, value]) => `${String(code).padStart(3)}\r\n${written(value)}\r\n`).join('');
}

const section = (name: string, content: readonly Pair[]): Pair[] => [
  [0, 'SECTION'],
  [2, name],
  ...content,
  [0, 'ENDSEC'],
];

const table = (name: string, entries: readonly Pair[], count: number): Pair[] => [
  [0, 'TABLE'],
  [2, name],
  [70, count],
  ...entries,
  [0, 'ENDTAB'],
];

/** `dashes` drawn and, where negative, left out, mm. 65 is the code of the letter A, which the format asks for. */
const lineType = (name: string, words: string, dashes: readonly number[]): Pair[] => [
  [0, 'LTYPE'],
  [2, name],
  [70, 0],
  [3, words],
  [72, 65],
  [73, dashes.length],
  [40, dashes.reduce((length, dash) => length + Math.abs(dash), 0)],
  ...dashes.map((dash): Pair => [49, dash]),
];

/** The colour of every layer, by its number in the format's index: drawn dark on light and light on dark. Names tell layers apart. */
const neutral = 7;

interface NamedLayer {
  readonly name: string;
  readonly layer: DxfLayer;
}

/** Names as R12 takes them: capitals, digits, `_`, at most 31; two that come out equal get a number. */
function withNames(layers: readonly DxfLayer[]): NamedLayer[] {
  const taken = new Set<string>();
  return layers.map((layer) => {
    const plain = layer.name
      .toUpperCase()
      .replace(/[^A-Z0-9]+/g, '_')
      .slice(0, 27);
    let name = plain;
    for (let count = 2; taken.has(name); count += 1) name = `${plain}_${String(count)}`;
    taken.add(name);
    return { name, layer };
  });
}

const layerEntry = ({ name, layer }: NamedLayer): Pair[] => [
  [0, 'LAYER'],
  [2, name],
  [70, 0],
  [62, neutral],
  [6, layer.broken ? 'BROKEN' : 'CONTINUOUS'],
];

const entities = ({ name, layer }: NamedLayer): Pair[] => [
  ...layer.paths.flat().flatMap((segment) => segmentEntity(segment, name)),
  ...layer.rings.flatMap((ring) => chain(ring, true, name)),
  ...layer.texts.flatMap((text) => textEntity(text, name)),
];

function segmentEntity(segment: PathSegment, layer: string): Pair[] {
  if (segment.kind === 'line') return [[0, 'LINE'], [8, layer], ...place(segment.from, 0), ...place(segment.to, 1)];
  if (segment.kind === 'arc' && isCircular(segment)) return arcEntity(segment, layer);
  return chain([...flattenSegment(segment), segment.to], false, layer);
}

const isCircular = ({ radiusX, radiusY }: ArcSegment): boolean =>
  Math.abs(radiusX - radiusY) <= arithmeticTolerance * Math.max(radiusX, radiusY);

/** Arcs run counter-clockwise in the format, from 50 to 51; a whole turn is a circle. */
function arcEntity({ centre, radiusX, tilt, startAngle, sweep }: ArcSegment, layer: string): Pair[] {
  const [first, last] = sweep > 0 ? [startAngle, startAngle + sweep] : [startAngle + sweep, startAngle];
  const round: Pair[] = [[8, layer], ...place(centre, 0), [40, radiusX]];
  if (Math.abs(sweep) >= 360 - arithmeticTolerance) return [[0, 'CIRCLE'], ...round];
  return [[0, 'ARC'], ...round, [50, wholeTurn(first + tilt)], [51, wholeTurn(last + tilt)]];
}

const wholeTurn = (angle: number): number => ((angle % 360) + 360) % 360;

function chain(points: readonly Point[], closed: boolean, layer: string): Pair[] {
  return [
    [0, 'POLYLINE'],
    [8, layer],
    [66, 1],
    ...place({ x: 0, y: 0 }, 0),
    [70, closed ? 1 : 0],
    ...points.flatMap((point): Pair[] => [[0, 'VERTEX'], [8, layer], ...place(point, 0)]),
    [0, 'SEQEND'],
    [8, layer],
  ];
}

const textEntity = ({ at, height, turn, text }: DxfText, layer: string): Pair[] => [
  [0, 'TEXT'],
  [8, layer],
  ...place(at, 0),
  [40, height],
  [1, text],
  [50, turn],
];

/** The codes of a point: 10, 20, 30 for the first of an entity, 11, 21, 31 for the second. */
const place = ({ x, y }: Point, nth: 0 | 1): Pair[] => [
  [10 + nth, x],
  [20 + nth, y],
  [30 + nth, 0],
];

/** Numbers in decimal notation, never with an exponent; letters beyond ASCII by their code. */
function written(value: string | number): string {
  if (typeof value === 'number') return String(rounded(value, decimals));
  return value.replace(
    /[^\x20-\x7e]/g,
    (letter) => `\\U+${letter.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`,
  );
}
