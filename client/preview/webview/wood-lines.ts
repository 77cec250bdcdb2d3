/** Lines that tell woods and fates apart where colour does not: along the axis for a wood, slanted for what is sawn off. */
import type { Rings } from '../../../server/drawing/drawing.ts';

/** How a wood's lines run: how many along a strip, and their dashes in mm (none: unbroken). */
export interface WoodPattern {
  readonly lines: number;
  readonly dash: readonly number[];
}

const known: Readonly<Record<string, WoodPattern>> = {
  ash: { lines: 2, dash: [] },
  basswood: { lines: 0, dash: [] },
  beech: { lines: 2, dash: [1.5, 1.5] },
  birch: { lines: 1, dash: [4, 2] },
  cedar: { lines: 3, dash: [] },
  cherry: { lines: 2, dash: [5, 1.5] },
  cypress: { lines: 1, dash: [] },
  maple: { lines: 1, dash: [1, 2.5] },
  oak: { lines: 3, dash: [3, 1] },
  pine: { lines: 1, dash: [8, 2] },
  poplar: { lines: 2, dash: [1, 3] },
  spruce: { lines: 3, dash: [1, 2] },
  walnut: { lines: 4, dash: [] },
};

const others: readonly WoodPattern[] = [
  { lines: 4, dash: [2, 1] },
  { lines: 3, dash: [6, 2] },
  { lines: 4, dash: [1, 1.5] },
];

/** The pattern of `wood` by its last word that is known ("white_ash" is ash); each other name keeps one of a few. */
export function woodPattern(wood: string | null): WoodPattern {
  if (wood === null) return { lines: 0, dash: [] };
  const found = wood
    .split('_')
    .reverse()
    .map((word) => known[word])
    .find((pattern) => pattern !== undefined);
  const sum = Array.from(wood).reduce((total, letter) => total + (letter.codePointAt(0) ?? 0), 0);
  return found ?? others[sum % others.length] ?? { lines: 4, dash: [] };
}

const boardSpacing = 9;
const slantSpacing = 1.6;
const slant = (52 * Math.PI) / 180;

/** Lines along the axis of the shape, inside it; null for a wood that has none. On a board they keep one spacing. */
export function woodLines(rings: Rings, wood: string | null, isBoard: boolean): Path2D | null {
  const { lines, dash } = woodPattern(wood);
  const [low, high] = extent(rings, 1);
  const count = isBoard ? Math.floor((high - low) / boardSpacing) : lines;
  if (count === 0) return null;
  const path = new Path2D();
  for (let index = 1; index <= count; index++) {
    const y = low + ((high - low) * index) / (count + 1);
    for (const [from, to] of spans(rings, y)) dashed(path, from, to, isBoard ? [] : dash, (x) => [x, y]);
  }
  return path;
}

/** Lines across the shape at a slant, inside it. */
export function slantedLines(rings: Rings): Path2D {
  const [cosine, sine] = [Math.cos(slant), Math.sin(slant)];
  const laid = rings.map((ring) => mapped(ring, (x, y) => [x * cosine + y * sine, y * cosine - x * sine]));
  const [low, high] = extent(laid, 1);
  const path = new Path2D();
  for (let y = low + slantSpacing / 2; y < high; y += slantSpacing) {
    for (const [from, to] of spans(laid, y)) {
      dashed(path, from, to, [], (x) => [x * cosine - y * sine, x * sine + y * cosine]);
    }
  }
  return path;
}

function dashed(
  path: Path2D,
  from: number,
  to: number,
  dash: readonly number[],
  place: (x: number) => [number, number],
): void {
  const [drawn = to - from, left = 0] = dash;
  for (let start = from; start < to; start += drawn + left) {
    path.moveTo(...place(start));
    path.lineTo(...place(Math.min(start + drawn, to)));
    if (drawn + left <= 0) return;
  }
}

/** Where the line at height `y` runs inside the rings, even-odd. */
export function spans(rings: Rings, y: number): [from: number, to: number][] {
  const crossings = rings.flatMap((ring) => crossingsOf(ring, y)).sort((a, b) => a - b);
  return Array.from({ length: Math.floor(crossings.length / 2) }, (_, index) => [
    crossings[2 * index] ?? 0,
    crossings[2 * index + 1] ?? 0,
  ]);
}

function crossingsOf(ring: readonly number[], y: number): number[] {
  const crossings: number[] = [];
  for (let index = 0; index + 1 < ring.length; index += 2) {
    const next = (index + 2) % ring.length;
    const [x1, y1] = [ring[index] ?? 0, ring[index + 1] ?? 0];
    const [x2, y2] = [ring[next] ?? 0, ring[next + 1] ?? 0];
    if (y1 <= y !== y2 <= y) crossings.push(x1 + ((x2 - x1) * (y - y1)) / (y2 - y1));
  }
  return crossings;
}

function extent(rings: Rings, offset: 0 | 1): [low: number, high: number] {
  let [low, high] = [Infinity, -Infinity];
  for (const ring of rings) {
    for (let index = offset; index < ring.length; index += 2) {
      low = Math.min(low, ring[index] ?? 0);
      high = Math.max(high, ring[index] ?? 0);
    }
  }
  return [low, high];
}

function mapped(ring: readonly number[], move: (x: number, y: number) => [number, number]): number[] {
  const moved: number[] = [];
  for (let index = 0; index + 1 < ring.length; index += 2) moved.push(...move(ring[index] ?? 0, ring[index + 1] ?? 0));
  return moved;
}
