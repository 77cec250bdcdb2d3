/** Where the drawing lies on the page: pure arithmetic of zoom and pan. Page lengths are CSS pixels, y down. */
import type { Drawing } from '../../../server/drawing/drawing.ts';
import type { Camera } from '../webview-messages.ts';

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
export function fitted({ left, bottom, right, top }: Bounds, { width, height }: PageSize): Camera {
  const across = Math.max(width - 2 * margin, 1) / Math.max(right - left, 1);
  const up = Math.max(height - 2 * margin, 1) / Math.max(top - bottom, 1);
  return { scale: limited(Math.min(across, up)), x: (left + right) / 2, y: (bottom + top) / 2 };
}

/** Letters are read with ease from this size on, in pixels. */
const readableLetters = 11;

/**
 * As `fitted`, but near enough to read the words, as far as the page's width allows: a drawing that is then too tall
 * begins at its top.
 */
export function readable({ bounds, texts }: Pick<Drawing, 'bounds' | 'texts'>, size: PageSize): Camera {
  const whole = fitted(bounds, size);
  if (texts.length === 0) return whole;
  const smallest = texts.reduce((least, text) => Math.min(least, text.size), Infinity);
  const across = fitted({ ...bounds, bottom: bounds.top }, size).scale;
  const scale = Math.max(whole.scale, Math.min(across, limited(readableLetters / smallest)));
  const isTooTall = (bounds.top - bounds.bottom) * scale > size.height - 2 * margin;
  return { ...whole, scale, y: isTooTall ? bounds.top - (size.height / 2 - margin) / scale : whole.y };
}

/** The camera brought nearer by `factor` (within limits), so that what lies under `at` stays there. */
export function zoomed(camera: Camera, factor: number, at: PagePoint, size: PageSize): Camera {
  const scale = limited(camera.scale * factor);
  const fixed = onPanel(camera, at, size);
  return {
    scale,
    x: fixed.x - (at.x - size.width / 2) / scale,
    y: fixed.y + (at.y - size.height / 2) / scale,
  };
}

/** The camera moved with the paper by `dx`, `dy` pixels. */
export function panned(camera: Camera, dx: number, dy: number): Camera {
  return { scale: camera.scale, x: camera.x - dx / camera.scale, y: camera.y + dy / camera.scale };
}

/** The point of the panel, in mm, that lies under a point of the page. */
export function onPanel({ scale, x, y }: Camera, at: PagePoint, { width, height }: PageSize): PagePoint {
  return { x: x + (at.x - width / 2) / scale, y: y - (at.y - height / 2) / scale };
}

/** The point of the page over a point of the panel. */
export function onPage({ scale, x, y }: Camera, at: PagePoint, { width, height }: PageSize): PagePoint {
  return { x: width / 2 + (at.x - x) * scale, y: height / 2 - (at.y - y) * scale };
}
