/** From a shape's own frame to pixels, and what of it is in sight. */
import type { Camera } from '../webview-messages.ts';
import { onPage, type PageSize } from './camera.ts';
import type { Place } from './prepared-drawing.ts';

export type Matrix = [number, number, number, number, number, number];

/** From a shape's own frame (mm, y up) to device pixels (y down), as the canvas takes it. */
export function matrixOf(place: Place, camera: Camera, size: PageSize, density: number): Matrix {
  const along = place.cosine * camera.scale * density;
  const across = place.sine * camera.scale * density;
  const at = onPage(camera, place, size);
  return [along, -across, -across, -along, at.x * density, at.y * density];
}

/** From the drawing's own frame to device pixels. */
export const drawingMatrix = (camera: Camera, size: PageSize, density: number): Matrix =>
  matrixOf({ x: 0, y: 0, cosine: 1, sine: 0 }, camera, size, density);

/** Whether nothing within `reach` mm of `place` shows on the page. */
export function isOutOfSight({ x, y }: Place, reach: number, camera: Camera, size: PageSize): boolean {
  const across = (Math.abs(x - camera.x) - reach) * camera.scale;
  const up = (Math.abs(y - camera.y) - reach) * camera.scale;
  return across > size.width / 2 || up > size.height / 2;
}
