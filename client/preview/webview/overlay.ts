/** What lies over the picture in every frame: the thing pointed at, places of problems, the measure, the scale bar. */
import type { LengthUnit } from '../../../server/language/preview-messages.ts';
import type { Camera } from '../webview-messages.ts';
import { onPage, type PagePoint, type PageSize } from './camera.ts';
import type { Measuring } from './measure.ts';
import type { Palette } from './palette.ts';
import type { Picked } from './pick.ts';
import { placeAt, placeCount } from './prepared-drawing.ts';
import type { Spot } from './spots.ts';
import { scaleBar } from './scale-bar.ts';
import { type SignLines, snapSign } from './snap-signs.ts';
import { isOutOfSight, matrixOf } from './transforms.ts';

export interface Overlay {
  readonly camera: Camera;
  readonly size: PageSize;
  readonly density: number;
  readonly palette: Palette;
  readonly units: LengthUnit;
  readonly pointed: Picked | null;
  readonly spots: readonly Spot[];
  /** Null while nothing is being measured. */
  readonly measuring: Measuring | null;
}

const pointedWidth = 2;
const spotWidth = 2.5;
const spotDash = [6, 4];
/** Spots beyond this many placements are not outlined one by one. */
const mostOutlined = 400;
const badgeRadius = 9;
const crossSize = 7;
const barRoom = 140;
const barInset = 14;
const tick = 5;

type Context = CanvasRenderingContext2D;

export function paintOverlay(context: Context, overlay: Overlay): void {
  for (const spot of overlay.spots) paintSpot(context, overlay, spot);
  if (overlay.pointed) outlineThing(context, overlay, overlay.pointed);
  plainly(context, overlay);
  if (overlay.measuring) paintMeasure(context, overlay, overlay.measuring);
  paintScaleBar(context, overlay);
}

/** Back to CSS pixels of the page. */
function plainly(context: Context, { density }: Overlay): void {
  context.setTransform(density, 0, 0, density, 0, 0);
  context.setLineDash([]);
}

function outlineThing(context: Context, overlay: Overlay, { kind, index }: Picked): void {
  const { camera, size, density, palette } = overlay;
  context.setTransform(...matrixOf(placeAt(kind, index), camera, size, density));
  context.lineJoin = 'round';
  context.strokeStyle = palette.paper;
  context.lineWidth = (2 * pointedWidth) / camera.scale;
  context.stroke(kind.path);
  context.strokeStyle = palette.marked.line;
  context.lineWidth = pointedWidth / camera.scale;
  context.stroke(kind.path);
}

/** A dashed outline round what the words made, and a badge at the first of it in sight. */
function paintSpot(context: Context, overlay: Overlay, { kind, severity, hasSign }: Spot): void {
  const { camera, size, density, palette } = overlay;
  const colour = severity === 'error' ? palette.error : palette.warning;
  let badge: PagePoint | null = null;
  for (let index = 0; index < Math.min(placeCount(kind), mostOutlined); index++) {
    const place = placeAt(kind, index);
    if (isOutOfSight(place, kind.reach, camera, size)) continue;
    const { x, y, cosine, sine } = place;
    badge ??= onPage(camera, { x: x + kind.middle * cosine, y: y + kind.middle * sine }, size);
    context.setTransform(...matrixOf(place, camera, size, density));
    context.setLineDash(spotDash.map((length) => length / camera.scale));
    context.lineWidth = spotWidth / camera.scale;
    context.strokeStyle = colour;
    context.stroke(kind.path);
  }
  plainly(context, overlay);
  if (badge && hasSign) paintBadge(context, palette, badge, colour, severity === 'error' ? '!' : '?');
}

function paintBadge(context: Context, palette: Palette, { x, y }: PagePoint, colour: string, sign: string): void {
  context.beginPath();
  context.arc(x, y, badgeRadius, 0, 2 * Math.PI);
  context.fillStyle = colour;
  context.fill();
  context.lineWidth = 1.5;
  context.strokeStyle = palette.paper;
  context.stroke();
  context.fillStyle = palette.paper;
  context.font = `700 13px ${palette.font}`;
  context.textAlign = 'center';
  context.textBaseline = 'middle';
  context.fillText(sign, x, y);
}

function paintMeasure(context: Context, overlay: Overlay, { from, to, at, snap }: Measuring): void {
  const { camera, size, palette } = overlay;
  const end = to ?? at;
  context.strokeStyle = palette.outline;
  context.lineWidth = 1.5;
  if (from && end) {
    const [start, stop] = [onPage(camera, from, size), onPage(camera, end, size)];
    context.setLineDash(to ? [] : [5, 4]);
    context.beginPath();
    context.moveTo(start.x, start.y);
    context.lineTo(stop.x, stop.y);
    context.stroke();
    context.setLineDash([]);
  }
  for (const point of [from, to]) if (point) paintCross(context, onPage(camera, point, size));
  if (at && !to) {
    const place = onPage(camera, at, size);
    if (snap) paintSign(context, snapSign(snap.what, place));
    else paintCross(context, place);
  }
}

function paintCross(context: Context, { x, y }: PagePoint): void {
  context.beginPath();
  context.moveTo(x - crossSize, y);
  context.lineTo(x + crossSize, y);
  context.moveTo(x, y - crossSize);
  context.lineTo(x, y + crossSize);
  context.stroke();
}

function paintSign(context: Context, lines: SignLines): void {
  context.beginPath();
  for (const [first, ...others] of lines) {
    if (first) context.moveTo(first.x, first.y);
    for (const { x, y } of others) context.lineTo(x, y);
  }
  context.stroke();
}

function paintScaleBar(context: Context, { camera, size, palette, units }: Overlay): void {
  const { pixels, words } = scaleBar(units, camera.scale, barRoom);
  const right = size.width - barInset;
  const base = size.height - barInset;
  const line = (): void => {
    context.beginPath();
    context.moveTo(right - pixels, base - tick);
    context.lineTo(right - pixels, base);
    context.lineTo(right, base);
    context.lineTo(right, base - tick);
    context.stroke();
  };
  context.lineJoin = 'miter';
  context.strokeStyle = palette.paper;
  context.lineWidth = 5;
  line();
  context.strokeStyle = palette.text;
  context.lineWidth = 1.5;
  line();
  context.font = `11px ${palette.font}`;
  context.textAlign = 'center';
  context.textBaseline = 'alphabetic';
  context.lineWidth = 4;
  context.strokeStyle = palette.paper;
  context.strokeText(words, right - pixels / 2, base - tick - 2);
  context.fillStyle = palette.text;
  context.fillText(words, right - pixels / 2, base - tick - 2);
}
