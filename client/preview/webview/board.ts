/** The drawing board: the canvas, how it is looked at, and what is lit, pointed at and measured on it. */
import type { LengthUnit } from '../../../server/language/preview-messages.ts';
import type { Camera } from '../webview-messages.ts';
import { Backdrop } from './backdrop.ts';
import { onPage, onPanel, type PagePoint, type PageSize, panned, readable, zoomed } from './camera.ts';
import { type Measuring, measuringNothing, pointedAt, pointSet } from './measure.ts';
import { paintOverlay } from './overlay.ts';
import type { Picture } from './painter.ts';
import { type Palette, readPalette } from './palette.ts';
import { type Picked, pick } from './pick.ts';
import type { PreparedDrawing, PreparedKind } from './prepared-drawing.ts';
import { snapAt } from './snap.ts';
import type { Spot } from './spots.ts';

/** Pixels within which a node or an end holds the pointer. */
const snapReach = 12;
/** An arrow key moves the measuring cross by this share of a pan. */
const crossShare = 1 / 12;

export class Board {
  palette: Palette = readPalette(document.body);
  /** Null while the whole drawing is fitted to the page. */
  camera: Camera | null;
  units: LengthUnit = 'mm';
  hidden: ReadonlySet<string>;
  spots: readonly Spot[] = [];
  pointed: Picked | null = null;
  measuring: Measuring | null = null;
  private prepared: PreparedDrawing | null = null;
  private isLit: (kind: PreparedKind) => boolean = () => false;
  /** What is lit, written out: the picture is painted anew only when that changes. */
  private litKey = '';
  private edition = 0;
  private frameIsDue = false;
  private readonly backdrop = new Backdrop(() => this.paintSoon());
  private readonly canvas: HTMLCanvasElement;
  private readonly context: CanvasRenderingContext2D;
  private readonly onPaint: (camera: Camera | null) => void;

  /** `onPaint` is told after every frame how the drawing was looked at. */
  constructor(
    canvas: HTMLCanvasElement,
    camera: Camera | null,
    hidden: ReadonlySet<string>,
    onPaint: (camera: Camera | null) => void,
  ) {
    const context = canvas.getContext('2d');
    if (!context) throw new Error('This browser draws no canvas');
    this.canvas = canvas;
    this.context = context;
    this.camera = camera;
    this.hidden = hidden;
    this.onPaint = onPaint;
  }

  get drawing(): PreparedDrawing | null {
    return this.prepared;
  }

  /** Shows another drawing; `isSameView` keeps the last picture until the new one is ready. */
  show(drawing: PreparedDrawing | null, isSameView: boolean): void {
    this.prepared = drawing;
    this.pointed = null;
    if (!isSameView || drawing === null) this.backdrop.clear();
    this.renew();
  }

  /** The colours may have changed. */
  readColours(): void {
    this.palette = readPalette(document.body);
    this.renew();
  }

  hide(hidden: ReadonlySet<string>): void {
    this.hidden = hidden;
    this.renew();
  }

  /** Lights the kinds that `isLit` names. */
  light(isLit: (kind: PreparedKind) => boolean): void {
    this.isLit = isLit;
    const kinds = this.prepared?.layers.flatMap((layer) => layer.kinds) ?? [];
    const key = kinds.map((kind) => (isLit(kind) ? '1' : '0')).join('');
    if (key === this.litKey) return;
    this.litKey = key;
    this.renew();
  }

  private renew(): void {
    this.edition++;
    this.paintSoon();
  }

  get size(): PageSize {
    return { width: this.canvas.clientWidth, height: this.canvas.clientHeight };
  }

  get currentCamera(): Camera | null {
    return this.camera ?? (this.prepared && readable(this.prepared.drawing, this.size));
  }

  zoomBy(factor: number, at: PagePoint | null): void {
    const { size, currentCamera: camera } = this;
    if (camera) this.lookFrom(zoomed(camera, factor, at ?? { x: size.width / 2, y: size.height / 2 }, size));
  }

  panBy(dx: number, dy: number): void {
    const camera = this.currentCamera;
    if (camera) this.lookFrom(panned(camera, dx, dy));
  }

  lookFrom(camera: Camera | null): void {
    this.camera = camera;
    this.paintSoon();
  }

  /** The thing under a point of the page. */
  thingAt(at: PagePoint): Picked | null {
    const camera = this.currentCamera;
    return camera && this.prepared && pick(this.context, this.prepared, this.hidden, camera, this.size, at);
  }

  pointTo(thing: Picked | null): void {
    if (thing?.kind === this.pointed?.kind && thing?.index === this.pointed?.index) return;
    this.pointed = thing;
    this.paintSoon();
  }

  /** Begins measuring, or gives it up. */
  measure(isOn: boolean): void {
    this.measuring = isOn ? measuringNothing : null;
    this.pointTo(null);
    this.paintSoon();
  }

  /** Brings the measuring cross to a point of the page, held by a node or an end near it. */
  measureAt(at: PagePoint | null): void {
    const camera = this.currentCamera;
    if (!this.measuring || !camera || !this.prepared) return;
    const point = at && onPanel(camera, at, this.size);
    const snap = point && snapAt(this.prepared.drawing, this.hidden, point, snapReach / camera.scale);
    this.measuring = pointedAt(this.measuring, point, snap);
    this.paintSoon();
  }

  /** Moves the measuring cross as an arrow key says; from the middle of the page at first. */
  moveCross(dx: number, dy: number): void {
    const camera = this.currentCamera;
    if (!this.measuring || !camera) return;
    const at = this.measuring.at ? onPage(camera, this.measuring.at, this.size) : this.middle;
    const [across, down] = [-dx * crossShare, -dy * crossShare];
    // far enough to leave what holds it
    const reach = this.measuring.snap === null ? 1 : (snapReach + 1) / Math.max(Math.hypot(across, down), 1);
    this.measureAt({ x: at.x + across * reach, y: at.y + down * reach });
  }

  /** Sets a point of the measurement where the cross is. */
  setPoint(): void {
    if (this.measuring) this.measuring = pointSet(this.measuring);
    this.paintSoon();
  }

  private get middle(): PagePoint {
    return { x: this.size.width / 2, y: this.size.height / 2 };
  }

  /** What is seen, to be painted elsewhere. */
  picture(): Picture | null {
    const { prepared, size, palette, hidden, isLit, currentCamera: camera } = this;
    return camera && prepared && { prepared, camera, size, density: window.devicePixelRatio, palette, hidden, isLit };
  }

  paintSoon(): void {
    if (this.frameIsDue) return;
    this.frameIsDue = true;
    requestAnimationFrame(() => this.paintNow());
  }

  private paintNow(): void {
    this.frameIsDue = false;
    const { canvas, context } = this;
    const density = window.devicePixelRatio;
    const width = Math.round(this.size.width * density);
    const height = Math.round(this.size.height * density);
    if (canvas.width !== width) canvas.width = width;
    if (canvas.height !== height) canvas.height = height;
    context.reset();
    const picture = this.picture();
    if (picture && width > 0 && height > 0) {
      this.backdrop.show(context, picture, this.edition);
      const { units, pointed, spots, measuring } = this;
      paintOverlay(context, { ...picture, units, pointed, spots, measuring });
    }
    canvas.setAttribute('aria-busy', String(this.backdrop.isBusy));
    this.onPaint(this.currentCamera);
  }
}
