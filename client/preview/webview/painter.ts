/** Paints a prepared drawing on a canvas, sharp at any pixel density. */
import type { View } from '../webview-messages.ts';
import type { Paint, Palette } from './palette.ts';
import {
  type Place,
  placesOf,
  type PreparedDrawing,
  type PreparedKind,
  type PreparedLayer,
} from './prepared-drawing.ts';
import { onPage, type PageSize } from './view.ts';

/** Everything one picture is made of. */
export interface Picture {
  readonly prepared: PreparedDrawing;
  readonly view: View;
  readonly size: PageSize;
  /** Device pixels a CSS pixel. */
  readonly density: number;
  readonly palette: Palette;
  readonly isMarked: (kind: PreparedKind) => boolean;
}

const outlineWidth = 1.75;
const widestLine = 1;
/** A piece's line is no wider than this many millimetres on the panel, so that small pieces keep their colour. */
const lineOnPanel = 0.35;
/** How much of the lattice beyond the outline still shows: it is sawn away. */
const veil = 0.62;

/** Paints over a cleared canvas. */
export function paint(context: CanvasRenderingContext2D, picture: Picture): void {
  const { prepared, palette } = picture;
  for (const layer of prepared.layers) paintLayer(context, picture, layer, palette);
}

function paintLayer(context: CanvasRenderingContext2D, picture: Picture, layer: PreparedLayer, palette: Palette): void {
  switch (layer.layer.kind) {
    case 'region':
      for (const kind of layer.kinds) paintKind(context, picture, kind, { fill: palette.ground, line: null, width: 0 });
      break;
    case 'outline':
      for (const kind of layer.kinds) paintOutline(context, picture, kind);
      break;
    case 'note':
      for (const kind of layer.kinds)
        paintKind(context, picture, kind, { fill: null, line: palette.outline, width: 1 });
      break;
    default:
      for (const kind of layer.kinds) paintWood(context, picture, kind, palette.paintOf(layer.layer));
  }
}

interface Brush {
  readonly fill: string | null;
  readonly line: string | null;
  /** CSS pixels. */
  readonly width: number;
}

function paintWood(context: CanvasRenderingContext2D, picture: Picture, kind: PreparedKind, wood: Paint): void {
  const { fill, line } = picture.isMarked(kind) ? picture.palette.marked : wood;
  paintKind(context, picture, kind, { fill, line, width: Math.min(widestLine, lineOnPanel * picture.view.scale) });
}

/** Veils what lies outside the outline, then draws its line. */
function paintOutline(context: CanvasRenderingContext2D, picture: Picture, kind: PreparedKind): void {
  const { view, size, density, palette } = picture;
  for (const place of placesOf(kind.kind)) {
    const outside = new Path2D();
    outside.rect(0, 0, size.width, size.height);
    outside.addPath(kind.path, new DOMMatrix(matrixOf(place, view, size, 1)));
    context.setTransform(density, 0, 0, density, 0, 0);
    context.globalAlpha = veil;
    context.fillStyle = palette.paper;
    context.fill(outside, 'evenodd');
    context.globalAlpha = 1;
  }
  paintKind(context, picture, kind, { fill: null, line: palette.outline, width: outlineWidth });
}

function paintKind(context: CanvasRenderingContext2D, picture: Picture, kind: PreparedKind, brush: Brush): void {
  const { view, size, density } = picture;
  if (brush.fill !== null) context.fillStyle = brush.fill;
  if (brush.line !== null) context.strokeStyle = brush.line;
  context.lineWidth = brush.width / view.scale;
  context.lineJoin = 'round';
  for (const place of placesOf(kind.kind)) {
    if (isOutOfSight(place, kind.reach, view, size)) continue;
    context.setTransform(...matrixOf(place, view, size, density));
    if (brush.fill !== null) context.fill(kind.path, 'evenodd');
    if (brush.line !== null) context.stroke(kind.path);
  }
}

function isOutOfSight(place: Place, reach: number, view: View, size: PageSize): boolean {
  const at = onPage(view, place, size);
  const pixels = reach * view.scale + outlineWidth;
  return at.x + pixels < 0 || at.x - pixels > size.width || at.y + pixels < 0 || at.y - pixels > size.height;
}

/** From a shape's own frame (mm, y up) to device pixels (y down), as the canvas takes it. */
export function matrixOf(
  place: Place,
  view: View,
  size: PageSize,
  density: number,
): [number, number, number, number, number, number] {
  const along = Math.cos(place.turn) * view.scale * density;
  const across = Math.sin(place.turn) * view.scale * density;
  const at = onPage(view, place, size);
  return [along, -across, -across, -along, at.x * density, at.y * density];
}
