/**
 * The picture kept ready behind the page: painted a little larger than the page, in slices, so that a pan only moves it
 * and no edit or zoom holds up the page. While a new one is in work the last one is shown, moved and scaled.
 */
import { onPage, type PageSize } from './camera.ts';
import { paintSteps, type Picture } from './painter.ts';

/** Milliseconds of painting in one frame. */
const slice = 7;
/** Painted beyond each edge of the page, as a share of the page. */
const surplus = 0.3;

interface Sheet {
  readonly canvas: OffscreenCanvas;
  readonly picture: Picture;
  /** Counts up with everything but the camera's place that the picture shows. */
  readonly edition: number;
}

interface Work extends Sheet {
  readonly steps: Generator<void>;
  readonly context: OffscreenCanvasRenderingContext2D;
}

export class Backdrop {
  private sheet: Sheet | null = null;
  private work: Work | null = null;
  private readonly onProgress: () => void;

  /** `onProgress` is called when a frame should be shown, or another slice is due. */
  constructor(onProgress: () => void) {
    this.onProgress = onProgress;
  }

  get isBusy(): boolean {
    return this.work !== null;
  }

  /** Nothing to show any more. */
  clear(): void {
    this.sheet = null;
    this.work = null;
  }

  /** Brings the picture closer to `wanted` for one slice of time, and draws what there is on `context`. */
  show(context: CanvasRenderingContext2D, wanted: Picture, edition: number): void {
    const serving = this.work ?? this.sheet;
    if (serving === null || !serves(serving, wanted, edition)) this.work = beginWork(wanted, edition);
    if (this.work) this.carryOn(this.work);
    const shown = this.sheet ?? this.work;
    if (shown) drawSheet(context, shown, wanted);
  }

  private carryOn(work: Work): void {
    const end = performance.now() + slice;
    do {
      if (work.steps.next().done === true) {
        this.sheet = work;
        this.work = null;
        return;
      }
      work.context.getImageData(0, 0, 1, 1); // makes the canvas paint now, so that the clock tells the truth
    } while (performance.now() < end);
    this.onProgress();
  }
}

/** Whether `sheet` shows the same at the same size, and reaches over the page. */
function serves({ picture, edition }: Sheet, wanted: Picture, wantedEdition: number): boolean {
  const { camera, size } = wanted;
  if (edition !== wantedEdition || picture.camera.scale !== camera.scale || picture.density !== wanted.density)
    return false;
  const across = Math.abs(picture.camera.x - camera.x) * camera.scale;
  const up = Math.abs(picture.camera.y - camera.y) * camera.scale;
  return across <= (picture.size.width - size.width) / 2 && up <= (picture.size.height - size.height) / 2;
}

function beginWork(wanted: Picture, edition: number): Work {
  const { density } = wanted;
  const pixels = (length: number): number => 2 * Math.ceil(((length * (1 + 2 * surplus)) / 2) * density);
  const canvas = new OffscreenCanvas(pixels(wanted.size.width), pixels(wanted.size.height));
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) throw new Error('This browser draws no canvas');
  const size: PageSize = { width: canvas.width / density, height: canvas.height / density };
  const picture = { ...wanted, size };
  return { canvas, picture, edition, context, steps: paintSteps(context, picture) };
}

/** Draws the sheet where its camera's place lies on the page; at its own size it is moved by whole pixels, to stay sharp. */
function drawSheet(context: CanvasRenderingContext2D, { canvas, picture }: Sheet, wanted: Picture): void {
  const { camera, size, density } = wanted;
  const ratio = (camera.scale / picture.camera.scale) * (density / picture.density);
  const middle = onPage(camera, picture.camera, size);
  const left = middle.x * density - (canvas.width * ratio) / 2;
  const top = middle.y * density - (canvas.height * ratio) / 2;
  context.setTransform(1, 0, 0, 1, 0, 0);
  if (ratio === 1) context.drawImage(canvas, Math.round(left), Math.round(top));
  else context.drawImage(canvas, left, top, canvas.width * ratio, canvas.height * ratio);
}
