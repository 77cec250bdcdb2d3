/** Things laid out for show: each with words under it, in rows, read like a page. Millimetres, y up. */
import { maximum, minimum } from '../../geometry/numbers.ts';
import type { Drawing, DrawingLayer, DrawnKind, DrawnText, LayerKind } from '../drawing.ts';
import { drawingBounds } from '../drawing-bounds.ts';
import { textWidth } from '../svg-caption.ts';

/** One shape of a tile, in the tile's own frame: x from 0, y from the shape's axis. */
export interface TileShape {
  readonly layer: LayerKind;
  readonly wood: string | null;
  readonly kind: Omit<DrawnKind, 'placements'>;
  /** Where its origin comes to; the tile's origin where it is left out. */
  readonly at?: { readonly x: number; readonly y: number };
}

export interface Tile {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly TileShape[];
  /** Over the shape, in larger letters. */
  readonly heading: string;
  readonly lines: readonly string[];
  /** Words at places of their own, in the frame of the shapes. */
  readonly texts: readonly Omit<DrawnText, 'size'>[];
}

export interface TileOptions {
  /** Height of the letters, mm. */
  readonly letters: number;
  /** One tile a row, whatever its width. */
  readonly stacked: boolean;
}

interface Sized {
  readonly tile: Tile;
  readonly width: number;
  readonly height: number;
}

const lineHeight = 1.5;
const headingSize = 1.4;
/** Letters left free round a tile. */
const gap = 2.2;
/** Width over height that a page of tiles aims at: that of a preview beside its text. */
const pageShape = 1.3;

/** The layers, words and bounds of a page of tiles, begun in the upper left. */
export function layOutTiles(
  tiles: readonly Tile[],
  { letters, stacked }: TileOptions,
): Pick<Drawing, 'bounds' | 'layers' | 'texts'> {
  const sized = tiles.map((tile) => sizedTile(tile, letters));
  const area = sized.reduce((total, { width, height }) => total + width * height, 0);
  const widest = Math.max(0, maximum(sized.map(({ width }) => width)));
  const room = stacked ? 0 : Math.max(widest, Math.sqrt(area * pageShape));
  const placed = flow(sized, room);
  const texts = placed.flatMap(({ sized: { tile }, x, y }) => textsOf(tile, x, y, letters));
  const layers = layersOf(placed.map(({ sized: { tile }, x, y }) => ({ tile, x, y: axisOf(tile, y, letters) })));
  const bounds = drawingBounds(layers);
  const right = Math.max(bounds.right, maximum(placed.map(({ sized: { width }, x }) => x + width - gap * letters)));
  const bottom = Math.min(bounds.bottom, minimum(placed.map(({ sized: { height }, y }) => y - height + gap * letters)));
  return { layers, texts, bounds: { left: Math.min(0, bounds.left), right, bottom, top: Math.max(0, bounds.top) } };
}

function sizedTile(tile: Tile, letters: number): Sized {
  const widths = [
    ...tile.lines.map((line) => textWidth(line, letters)),
    textWidth(tile.heading, letters * headingSize),
  ];
  return {
    tile,
    width: Math.max(tile.width, maximum(widths)) + gap * letters,
    height: tile.height + letters * (headingSize * lineHeight + lineHeight * (tile.lines.length + 1) + gap),
  };
}

/** Left to right while there is room, then the next row; `room` 0 gives every tile a row of its own. */
function flow(tiles: readonly Sized[], room: number): { sized: Sized; x: number; y: number }[] {
  let [x, y, rowHeight] = [0, 0, 0];
  return tiles.map((sized) => {
    if (x > 0 && x + sized.width > room) [x, y, rowHeight] = [0, y - rowHeight, 0];
    const placed = { sized, x, y };
    x += sized.width;
    rowHeight = Math.max(rowHeight, sized.height);
    return placed;
  });
}

/** Height of the tile's axis, the tile's upper left corner being at `top`. */
const axisOf = (tile: Tile, top: number, letters: number): number =>
  top - letters * headingSize * lineHeight - letters / 2 - tile.height / 2;

function textsOf(tile: Tile, x: number, top: number, letters: number): DrawnText[] {
  const axis = axisOf(tile, top, letters);
  const first = axis - tile.height / 2 - letters * lineHeight;
  return [
    { x, y: top - letters * headingSize, size: letters * headingSize, anchor: 'start', text: tile.heading },
    ...tile.lines.map((text, index): DrawnText => {
      return { x, y: first - index * letters * lineHeight, size: letters, anchor: 'start', text };
    }),
    ...tile.texts.map((text): DrawnText => ({ ...text, x: x + text.x, y: axis + text.y, size: letters })),
  ];
}

/** Shapes of one kind of layer and one wood together, in the order they are met. */
function layersOf(placed: readonly { readonly tile: Tile; readonly x: number; readonly y: number }[]): DrawingLayer[] {
  const layers = new Map<string, DrawingLayer & { kinds: DrawnKind[] }>();
  for (const { tile, x, y } of placed) {
    for (const { layer: kind, wood, kind: drawn, at = { x: 0, y: 0 } } of tile.shapes) {
      const key = JSON.stringify([kind, wood]);
      const layer = layers.get(key) ?? {
        name: wood === null ? kind : `${kind} ${wood}`,
        kind,
        level: 0,
        wood,
        kinds: [],
      };
      layers.set(key, layer);
      layer.kinds.push({ ...drawn, placements: [x + at.x, y + at.y, 0] });
    }
  }
  const order: readonly LayerKind[] = ['offcut', 'strip', 'piece', 'trimmed', 'note'];
  return [...layers.values()].sort((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind));
}
