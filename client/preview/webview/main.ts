/** The page of the preview: keeps the last drawing and the view on it, and paints when either changes. */
import type { DrawingAnswer } from '../../../server/language/preview-messages.ts';
import {
  type MessageToEditor,
  type MessageToPage,
  type PageState,
  readPageState,
  type View,
} from '../webview-messages.ts';
import { setText, writeCaptions, writeKinds } from './captions.ts';
import { listenForGestures } from './gestures.ts';
import { pageElements } from './page-elements.ts';
import { paint } from './painter.ts';
import { readPalette } from './palette.ts';
import { pick } from './pick.ts';
import { prepared, type PreparedDrawing, type PreparedKind } from './prepared-drawing.ts';
import { fitted, type PagePoint, type PageSize, panned, realSize, zoomed } from './view.ts';

interface Editor {
  postMessage(message: MessageToEditor): void;
  getState(): unknown;
  setState(state: PageState): void;
}
declare function acquireVsCodeApi(): Editor;

const editor = acquireVsCodeApi();
const elements = pageElements();
const context = contextOf(elements.canvas);
const kept = readPageState(editor.getState());

let answer: DrawingAnswer | null = null;
let drawing: PreparedDrawing | null = null;
let palette = readPalette(document.body);
/** Null while the whole panel is fitted to the page. */
let ownView: View | null = kept?.view ?? null;
let shownPanel: string | null = kept?.panel ?? null;
let cursor: number | null = null;
let pointed: PreparedKind | null = null;
let paintIsDue = false;

function contextOf(canvas: HTMLCanvasElement): CanvasRenderingContext2D {
  const found = canvas.getContext('2d');
  if (!found) throw new Error('This browser draws no canvas');
  return found;
}

const pageSize = (): PageSize => ({ width: elements.canvas.clientWidth, height: elements.canvas.clientHeight });

function currentView(): View | null {
  return ownView ?? (drawing && fitted(drawing.drawing.bounds, pageSize()));
}

function isMarked(kind: PreparedKind): boolean {
  if (pointed) return kind.kind.mark === pointed.kind.mark;
  const { start, end } = kind.kind.range;
  return cursor !== null && answer?.stale === false && start <= cursor && cursor <= end;
}

function paintSoon(): void {
  if (paintIsDue) return;
  paintIsDue = true;
  requestAnimationFrame(paintNow);
}

function paintNow(): void {
  paintIsDue = false;
  const size = pageSize();
  const density = window.devicePixelRatio;
  const width = Math.round(size.width * density);
  const height = Math.round(size.height * density);
  if (elements.canvas.width !== width) elements.canvas.width = width;
  if (elements.canvas.height !== height) elements.canvas.height = height;
  const view = currentView();
  setText(elements.zoom, view ? `${Math.round((view.scale / realSize) * 100)} %` : '');
  context.reset();
  if (view && drawing) paint(context, { prepared: drawing, view, size, density, palette, isMarked });
}

function lookFrom(view: View | null): void {
  ownView = view;
  keepState();
  paintSoon();
}

function keepState(): void {
  editor.setState({ uri: document.body.dataset['document'] ?? '', panel: shownPanel, view: ownView });
}

function show(next: DrawingAnswer): void {
  if (shownPanel !== null && next.panel !== null && next.panel !== shownPanel) ownView = null;
  answer = next;
  shownPanel = next.panel ?? shownPanel;
  drawing = next.drawing && prepared(next.drawing);
  point(null);
  writeCaptions(elements, next);
  writeKinds(elements.kinds, drawing, { onPoint: point, onChoose: reveal });
  keepState();
  paintSoon();
}

function point(kind: PreparedKind | null): void {
  pointed = kind;
  elements.pointed.textContent = kind?.kind.label ?? '';
  paintSoon();
}

function pieceAt(at: PagePoint): PreparedKind | null {
  const view = currentView();
  return view && drawing && pick(context, drawing, view, pageSize(), at);
}

function reveal({ kind }: PreparedKind): void {
  editor.postMessage({ type: 'reveal', start: kind.range.start, end: kind.range.end });
}

listenForGestures(elements, {
  onZoom: (factor, at) => {
    const view = currentView();
    const size = pageSize();
    if (view) lookFrom(zoomed(view, factor, at ?? { x: size.width / 2, y: size.height / 2 }, size));
  },
  onPan: (dx, dy) => {
    const view = currentView();
    if (view) lookFrom(panned(view, dx, dy));
  },
  onFit: () => lookFrom(null),
  onPoint: (at) => {
    const kind = at && pieceAt(at);
    if (kind?.kind.mark !== pointed?.kind.mark) point(kind);
  },
  onChoose: (at) => {
    const kind = pieceAt(at);
    if (kind) reveal(kind);
  },
});
elements.panel.addEventListener('change', () => {
  editor.postMessage({ type: 'choosePanel', panel: elements.panel.value });
});
window.addEventListener('message', ({ data }: MessageEvent<MessageToPage>) => {
  if (data.type === 'show') show(data.answer);
  else {
    cursor = data.offset;
    paintSoon();
  }
});
new ResizeObserver(paintSoon).observe(elements.canvas);
new MutationObserver(() => {
  palette = readPalette(document.body);
  paintSoon();
}).observe(document.body, { attributes: true, attributeFilter: ['class'] });
watchDensity();
editor.postMessage({ type: 'ready' });

/** Repaints when the window comes to a screen of another pixel density. */
function watchDensity(): void {
  window.matchMedia(`(resolution: ${window.devicePixelRatio}dppx)`).addEventListener(
    'change',
    () => {
      paintSoon();
      watchDensity();
    },
    { once: true },
  );
}
