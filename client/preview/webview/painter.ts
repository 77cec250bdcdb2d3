/** Paints a prepared drawing on a canvas, sharp at any pixel density, in small steps between which others have their turn. */
import type { DrawingLayer } from '../../../server/drawing/drawing.ts';
import { arithmeticTolerance } from '../../../server/geometry/tolerance.ts';
import type { Camera } from '../webview-messages.ts';
import { onPage, type PageSize } from './camera.ts';
import type { Paint, Palette } from './palette.ts';
import {
  placeAt,
  placeCount,
  type PreparedDrawing,
  type PreparedKind,
  type PreparedLayer,
} from './prepared-drawing.ts';
import { drawingMatrix, isOutOfSight, matrixOf } from './transforms.ts';

type Context = CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D;

/** Everything one picture is made of. */
export interface Picture {
  readonly prepared: PreparedDrawing;
  readonly camera: Camera;
  readonly size: PageSize;
  /** Device pixels a CSS pixel. */
  readonly density: number;
  readonly palette: Palette;
  /** Names of the layers that are not shown. */
  readonly hidden: ReadonlySet<string>;
  readonly isLit: (kind: PreparedKind) => boolean;
}

const outlineWidth = 1.75;
const litWidth = 2.25;
const widestLine = 1;
/** A piece's line is no wider than this many millimetres on the wood, so that small pieces keep their colour. */
const lineOnWood = 0.35;
/** How much of the lattice beyond the outline still shows: it is sawn away. */
const veil = 0.62;
/** Pixels across a piece below which its edges, and then its lines, are left out. */
const edgesFrom = 1.6;
const linesFrom = 5;
const linesShow = 0.4;
/** Pixels across a piece from which its mark stands in it, and the size of those letters. */
const markFrom = 13;
const markLetters = 0.62;
const largestLetters = 13;
/** Letters smaller than this are left out. */
const smallestLetters = 4.5;
const resinShows = 0.42;
/** Shapes painted between two looks at the clock. */
const stepLength = 150;

/** Paints over a cleared canvas; each step leaves the canvas ready for the next. */
export function* paintSteps(context: Context, picture: Picture): Generator<void> {
  for (const layer of picture.prepared.layers) {
    if (picture.hidden.has(layer.layer.name)) continue;
    context.save();
    if (layer.clip) {
      context.setTransform(...drawingMatrix(picture.camera, picture.size, picture.density));
      context.clip(layer.clip, 'evenodd');
    }
    yield* paintLayer(context, picture, layer);
    context.restore();
  }
  paintTexts(context, picture);
}

function* paintLayer(context: Context, picture: Picture, layer: PreparedLayer): Generator<void> {
  const { palette } = picture;
  for (const kind of layer.kinds) {
    switch (layer.layer.kind) {
      case 'region':
        yield* paintKind(context, picture, kind, { fill: palette.ground, line: null, width: 0 });
        break;
      case 'outline':
        paintVeil(context, picture, kind);
        yield* paintKind(context, picture, kind, { fill: null, line: palette.outline, width: outlineWidth });
        break;
      case 'note':
        yield* paintKind(context, picture, kind, { fill: null, line: palette.outline, width: 1 });
        break;
      case 'resin':
        context.globalAlpha = resinShows;
        yield* paintKind(context, picture, kind, { ...resinPaint(palette, layer.layer), width: outlineWidth });
        context.globalAlpha = 1;
        break;
      case 'board':
        yield* paintWood(context, picture, kind, palette.paintOf(layer.layer), outlineWidth, false);
        break;
      case 'strip':
      case 'piece':
      case 'trimmed':
      case 'offcut':
        yield* paintWood(context, picture, kind, palette.paintOf(layer.layer), widestPieceLine(picture));
    }
  }
}

/** A layer of resin is named by its colour in place of a wood. */
const resinPaint = ({ resin, clear }: Picture['palette'], { wood }: DrawingLayer): Paint =>
  wood === null || wood === 'clear' ? clear : resin;

interface Brush {
  readonly fill: string | null;
  readonly line: string | null;
  /** CSS pixels. */
  readonly width: number;
}

const widestPieceLine = ({ camera }: Picture): number => Math.min(widestLine, lineOnWood * camera.scale);

function* paintWood(
  context: Context,
  picture: Picture,
  kind: PreparedKind,
  wood: Paint,
  lineWidth: number,
  isMarked = true,
): Generator<void> {
  const lit = picture.isLit(kind);
  const { fill, line } = lit ? picture.palette.marked : wood;
  const across = kind.thickness * picture.camera.scale;
  const width = lit ? litWidth : lineWidth;
  const brush = { fill, line: across < edgesFrom ? null : line, width };
  yield* paintKind(context, picture, kind, brush, across < linesFrom ? null : line, isMarked);
}

function* paintKind(
  context: Context,
  picture: Picture,
  kind: PreparedKind,
  brush: Brush,
  linesColour: string | null = null,
  isMarked = false,
): Generator<void> {
  const { camera, size, density } = picture;
  const isWide = kind.thickness * camera.scale >= markFrom && linesColour !== null;
  // a ring has nothing in its middle to write on
  const hasMark = isMarked && isWide && kind.kind.mark !== '' && kind.kind.rings.length === 1;
  const alpha = context.globalAlpha;
  for (let index = 0; index < placeCount(kind); index++) {
    if (index % stepLength === stepLength - 1) yield;
    const place = placeAt(kind, index);
    if (isOutOfSight(place, kind.reach, camera, size)) continue;
    context.setTransform(...matrixOf(place, camera, size, density));
    context.lineWidth = brush.width / camera.scale;
    context.lineJoin = 'round';
    if (brush.fill !== null) {
      context.fillStyle = brush.fill;
      context.fill(kind.path, 'evenodd');
    }
    if (brush.line !== null) {
      context.strokeStyle = brush.line;
      context.stroke(kind.path);
    }
    if (linesColour !== null && kind.lines !== null) {
      context.globalAlpha = alpha * linesShow;
      context.strokeStyle = linesColour;
      context.lineWidth = widestPieceLine(picture) / camera.scale;
      context.stroke(kind.lines);
      context.globalAlpha = alpha;
    }
    if (hasMark) paintMark(context, picture, kind, index, brush);
  }
}

/** The mark in the middle of a piece, along it, never upside down, where there is room for it. */
function paintMark(context: Context, picture: Picture, kind: PreparedKind, index: number, { fill, line }: Brush): void {
  const { camera, size, density, palette, prepared } = picture;
  const letters = Math.min(largestLetters, kind.thickness * camera.scale * markLetters);
  if (prepared.drawing.texts.length > 0 || kind.kind.mark.length * letters > kind.length * camera.scale) return;
  const { x, y, cosine, sine } = placeAt(kind, index);
  const at = onPage(camera, { x: x + kind.middle * cosine, y: y + kind.middle * sine }, size);
  const upright =
    cosine < -arithmeticTolerance || (Math.abs(cosine) <= arithmeticTolerance && sine < 0) ? -density : density;
  context.setTransform(
    upright * cosine,
    -upright * sine,
    upright * sine,
    upright * cosine,
    at.x * density,
    at.y * density,
  );
  writeText(context, kind.kind.mark, letters, palette, 'center', { fill, line });
}

function writeText(
  context: Context,
  text: string,
  letters: number,
  palette: Palette,
  align: CanvasTextAlign,
  halo: { readonly fill: string | null; readonly line: string | null },
): void {
  context.font = `600 ${letters}px ${palette.font}`;
  context.textAlign = align;
  context.textBaseline = align === 'center' ? 'middle' : 'alphabetic';
  if (halo.fill !== null) {
    context.strokeStyle = halo.fill;
    context.lineWidth = letters / 3;
    context.strokeText(text, 0, 0);
  }
  context.fillStyle = halo.line ?? palette.text;
  context.fillText(text, 0, 0);
}

const alignments = { start: 'left', middle: 'center', end: 'right' } as const;

function paintTexts(context: Context, { prepared, camera, size, density, palette }: Picture): void {
  for (const { x, y, size: height, anchor, text } of prepared.drawing.texts) {
    const letters = height * camera.scale;
    const at = onPage(camera, { x, y }, size);
    if (letters < smallestLetters || at.y < -letters || at.y > size.height + letters) continue;
    context.setTransform(density, 0, 0, density, at.x * density, at.y * density);
    context.font = `${letters}px ${palette.font}`;
    context.textAlign = alignments[anchor];
    context.textBaseline = 'alphabetic';
    context.fillStyle = palette.text;
    context.fillText(text, 0, 0);
  }
}

/** Pales what lies outside the outline. */
function paintVeil(context: Context, { camera, size, density, palette }: Picture, kind: PreparedKind): void {
  for (let index = 0; index < placeCount(kind); index++) {
    const outside = new Path2D();
    outside.rect(0, 0, size.width, size.height);
    outside.addPath(kind.path, new DOMMatrix(matrixOf(placeAt(kind, index), camera, size, 1)));
    context.setTransform(density, 0, 0, density, 0, 0);
    context.globalAlpha = veil;
    context.fillStyle = palette.paper;
    context.fill(outside, 'evenodd');
    context.globalAlpha = 1;
  }
}

/** Paints the whole picture at once. */
export function paintAtOnce(context: Context, picture: Picture): void {
  const steps = paintSteps(context, picture);
  while (steps.next().done !== true);
}
