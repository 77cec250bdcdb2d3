/** A long shape on a short page: both ends at their true scale, the middle left out between break lines. */
import { maximum, minimum } from '../../geometry/numbers.ts';
import type { Point } from '../../geometry/point.ts';
import type { PageItem } from '../page/page-model.ts';
import { openLine } from './sheet-lines.ts';

/** Part of the shape that is shown, millimetres from its end 1, and where its start lies on the page. */
export interface ShownPart {
  readonly from: number;
  readonly to: number;
  readonly left: number;
}

export interface BrokenAxis {
  readonly scale: number;
  readonly parts: readonly ShownPart[];
  /** Width taken on the page. */
  readonly width: number;
}

/** White space between the two break lines. */
const breakGap = 7;

/**
 * The axis of a shape of `length` drawn at `scale` from `left` on, in at most `room` paper millimetres. `features`
 * are stretches of the shape, from and to, that no break may cut.
 */
export function brokenAxis(
  length: number,
  scale: number,
  left: number,
  room: number,
  features: readonly (readonly [from: number, to: number])[],
): BrokenAxis {
  if (length * scale <= room) return { scale, parts: [{ from: 0, to: length, left }], width: length * scale };
  const half = (room - breakGap) / 2 / scale;
  const cutBy = (place: number) => features.filter(([from, to]) => from < place && to > place);
  const first = Math.min(half, minimum(cutBy(half).map(([from]) => from)));
  const last = Math.max(length - half, maximum(cutBy(length - half).map(([, to]) => to)));
  const width = (first + length - last) * scale + breakGap;
  return {
    scale,
    parts: [
      { from: 0, to: first, left },
      { from: last, to: length, left: left + first * scale + breakGap },
    ],
    width,
  };
}

/** Where a place of the shape lies on the page, or null if it is left out. */
export function onPage({ parts, scale }: BrokenAxis, place: number): number | null {
  const part = parts.find(({ from, to }) => place >= from && place <= to);
  return part ? part.left + (place - part.from) * scale : null;
}

/** The break lines of a view between two heights, standing out a little. */
export function breakLines({ parts, scale }: BrokenAxis, top: number, bottom: number): PageItem[] {
  return parts.slice(1).flatMap((after, index) => {
    const before = parts[index];
    return before
      ? [zigzag(before.left + (before.to - before.from) * scale, top, bottom), zigzag(after.left, top, bottom)]
      : [];
  });
}

const standOut = 2;

/** ISO 128's narrow line with a zigzag. */
function zigzag(x: number, top: number, bottom: number): PageItem {
  const middle = (top + bottom) / 2;
  const points: Point[] = [
    { x, y: top - standOut },
    { x, y: middle - 1.2 },
    { x: x - 1, y: middle - 0.5 },
    { x: x + 1, y: middle + 0.5 },
    { x, y: middle + 1.2 },
    { x, y: bottom + standOut },
  ];
  return openLine('thin', points);
}
