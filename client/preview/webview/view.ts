/** Where the drawing lies on the page: pure arithmetic of zoom and pan. Page lengths are CSS pixels, y down. */
import type { Drawing } from '../../../server/drawing/drawing.ts';
import type { View } from '../webview-messages.ts';

export interface PageSize {
  readonly width: number;
  readonly height: number;
}

export interface PagePoint {
  readonly x: number;
  readonly y: number;
}

type Bounds = Drawing['bounds'];

/** CSS pixels a millimetre at real size: an inch is 96 of them (CSS Values and Units). */
export const realSize = 96 / 25.4;

const margin = 28;
const smallestScale = realSize / 100;
const largestScale = realSize * 40;

const limited = (scale: number): number => Math.min(Math.max(scale, smallestScale), largestScale);

/** The whole drawing, with a margin round it, in the middle of the page. */
export function fitted({ left, bottom, right, top }: Bounds, { width, height }: PageSize): View {
  const across = Math.max(width - 2 * margin, 1) / Math.max(right - left, 1);
  const up = Math.max(height - 2 * margin, 1) / Math.max(top - bottom, 1);
  return { scale: limited(Math.min(across, up)), x: (left + right) / 2, y: (bottom + top) / 2 };
}

/** The view enlarged by `factor` (within limits) so that what lies under `at` stays there. */
export function zoomed(view: View, factor: number, at: PagePoint, size: PageSize): View {
  const scale = limited(view.scale * factor);
  const fixed = onPanel(view, at, size);
  return {
    scale,
    x: fixed.x - (at.x - size.width / 2) / scale,
    y: fixed.y + (at.y - size.height / 2) / scale,
  };
}

/** The view moved with the paper by `dx`, `dy` pixels. */
export function panned(view: View, dx: number, dy: number): View {
  return { scale: view.scale, x: view.x - dx / view.scale, y: view.y + dy / view.scale };
}

/** The point of the panel, in mm, that lies under a point of the page. */
export function onPanel({ scale, x, y }: View, at: PagePoint, { width, height }: PageSize): PagePoint {
  return { x: x + (at.x - width / 2) / scale, y: y - (at.y - height / 2) / scale };
}

/** The point of the page over a point of the panel. */
export function onPage({ scale, x, y }: View, at: PagePoint, { width, height }: PageSize): PagePoint {
  return { x: width / 2 + (at.x - x) * scale, y: height / 2 - (at.y - y) * scale };
}
