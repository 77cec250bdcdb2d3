/** Every mark of the file once, at its true size, with its length, long edges, bevels and numbers. */
import { counted, figure, measure, words } from '../../../grammar/words.ts';
import type { LengthUnit } from '../../design/design-model.ts';
import type { NotchRun, PieceShape } from '../../lattice/laid-panel.ts';
import type { MarkedKinds, MarkedPiece, MarkedStrip } from '../../shop/marks/marked-kinds.ts';
import { radians } from '../../geometry/point.ts';
import { angleText, lengthText } from '../../words/figures.ts';
import { writeWords } from '../../words/write-words.ts';
import type { Drawing, Rings } from '../drawing.ts';
import { barRing } from '../bar-ring.ts';
import { ringOf } from '../draw-panel.ts';
import { rolesOf } from '../shared-words.ts';
import { layOutTiles, type Tile, type TileShape } from './tiles.ts';

/** Letters on a page of infill and of strips, in mm on the wood. */
const pieceLetters = 2.4;
const stripLetters = 7;

/** All kinds of infill pieces, side by side. */
export function displayPieces({ pieces }: MarkedKinds, units: LengthUnit, title: string): Drawing {
  const tiles = pieces.map((piece) => pieceTile(piece, units));
  const total = pieces.reduce((sum, piece) => sum + piece.total, 0);
  return {
    title,
    name: 'pieces',
    heading: 'infill pieces',
    units,
    ...layOutTiles(tiles, { letters: pieceLetters, stacked: false }),
    summary: [
      `Infill pieces: ${counted(pieces.length, 'kind')}, ${total} to cut`,
      'Each kind once, at its true size, seen from the front',
      'Bevels are inside the wood, from the axis, left and right looking from end 1 to end 2',
    ],
  };
}

/** All kinds of strips, one under the other. */
export function displayStrips({ strips }: MarkedKinds, units: LengthUnit, title: string): Drawing {
  const tiles = strips.flatMap((strip) => stripTile(strip, units));
  const total = strips.reduce((sum, strip) => sum + strip.total, 0);
  return {
    title,
    name: 'strips',
    heading: 'strips',
    units,
    ...layOutTiles(tiles, { letters: stripLetters, stacked: true }),
    summary: [
      `Strips: ${counted(strips.length, 'kind')}, ${total} to cut`,
      'Each kind once, at its true length, seen from the front',
      'Lines across a strip are the notches cut from above',
    ],
  };
}

/** "684 to make and 55 spare: 739 to cut". */
export const numbersText = ({ make, spare, total }: { make: number; spare: number; total: number }): string =>
  spare === 0 ? `${make} to make` : `${make} to make and ${spare} spare: ${total} to cut`;

function pieceTile(piece: MarkedPiece, units: LengthUnit): Tile {
  const { mark, shape, groups } = piece;
  const roles = rolesOf(piece).join(', ');
  const [left, right] = shape.edges;
  const lines = [
    roles,
    words`${measure.length(shape.length)} long, edges ${figure.length(left === right ? left : [left, right], ' and ')}`,
    words`${shape.stock.name}, face ${figure.fine(shape.stock.face)}, ${figure.length(shape.stock.depth)} deep`,
    `end 1 ${bevelText(shape, 0)}, end 2 ${bevelText(shape, 1)}`,
    ...(shape.notches.length > 0 ? [notchText(shape.notches)] : []),
    numbersText(piece),
  ].map((line) => writeWords(line, units));
  const range = groups[0]?.group.range ?? { start: 0, end: 0 };
  const kind = { mark, label: `${roles}, ${piece.total} to cut`, rings: [ringOf(shape.outline)], range };
  const wood: TileShape = { layer: 'piece', wood: shape.stock.wood, kind };
  const laps = notchShapes(mark, shape.notches, shape.stock.face, range);
  return { width: shape.length, height: shape.stock.face, shapes: [wood, ...laps], heading: mark, lines, texts: [] };
}

function stripTile(strip: MarkedStrip, units: LengthUnit): Tile[] {
  return strip.groups.slice(0, 1).map(({ group }) => {
    const { stock, length, notches, range, hand } = group;
    const kind = {
      mark: strip.mark,
      label: `strip ${strip.mark}, ${strip.total} to cut`,
      rings: [barRing(length, stock.face)],
      range,
    };
    return {
      width: length,
      height: stock.face,
      shapes: [
        { layer: 'strip', wood: stock.wood, kind },
        ...notchShapes(strip.mark, notches, stock.face, range),
      ] satisfies TileShape[],
      heading: strip.mark,
      lines: [
        [
          `${lengthText(length, units, 'length')} long of ${stock.name}`,
          notches.length > 0 ? notchText(notches) : 'no notches',
          ...(hand === null ? [] : [`${hand}-handed`]),
          numbersText(strip),
        ].join(' · '),
      ],
      texts: [],
    };
  });
}

/** "30°/30°": left and right of one end. */
function bevelText({ ends }: PieceShape, end: 0 | 1): string {
  const { bevels } = ends[end];
  return bevels === null ? 'fitted' : bevels.map(angleText).join('/');
}

function notchText(notches: readonly NotchRun[]): string {
  const from = (side: NotchRun['from']): number =>
    notches.filter((run) => run.from === side).reduce((total, { count }) => total + count, 0);
  const sides = [
    [from('above'), 'above'],
    [from('below'), 'below'],
  ] as const;
  return `notches ${sides
    .filter(([count]) => count > 0)
    .map(([count, side]) => `${count} from ${side}`)
    .join(', ')}`;
}

/** The mouths of the notches that are seen from the front: from above, across the whole face. */
function notchShapes(
  mark: string,
  notches: readonly NotchRun[],
  face: number,
  range: { readonly start: number; readonly end: number },
): TileShape[] {
  const rings = notches.filter((run) => run.from === 'above').flatMap((run) => mouths(run, face));
  return rings.length === 0
    ? []
    : [{ layer: 'note', wood: null, kind: { mark, label: `notches of ${mark}`, rings, range } }];
}

function mouths({ first, step, count, width, angle }: NotchRun, face: number): Rings {
  const run = width / Math.sin(radians(angle)) / 2;
  const lean = face / 2 / Math.tan(radians(angle));
  return Array.from({ length: count }, (_, index) => {
    const at = first + index * step;
    const half = face / 2;
    return [at - run - lean, -half, at + run - lean, -half, at + run + lean, half, at - run + lean, half];
  });
}
