/** The page of the preview: keeps the last answer and what the person chose, and passes both between board and words. */
import type { DrawingAnswer } from '../../../server/language/preview-messages.ts';
import { type MessageToEditor, type MessageToPage, type PageState, readPageState } from '../webview-messages.ts';
import { Board } from './board.ts';
import { realSize } from './camera.ts';
import { setText, writeCaptions, writeProgress } from './captions.ts';
import { cardWords, writeCard } from './card.ts';
import { listenForExports } from './export-menu.ts';
import { listenForGestures } from './gestures.ts';
import { writeLayers } from './layer-list.ts';
import { markLedger, narrowLedger, revealRow, writeLedger } from './ledger.ts';
import { measuredText } from './measure.ts';
import { pageElements } from './page-elements.ts';
import { prepared, type PreparedKind } from './prepared-drawing.ts';
import { spotsOf } from './spots.ts';
import { listenForTabs, viewBeside, writeTabs } from './view-tabs.ts';
import { watchScreen } from './watch-screen.ts';

interface Editor {
  postMessage(message: MessageToEditor): void;
  getState(): unknown;
  setState(state: PageState): void;
}
declare function acquireVsCodeApi(): Editor;

const editor = acquireVsCodeApi();
const elements = pageElements();
const kept = readPageState(editor.getState());

let answer: DrawingAnswer | null = null;
let view: string | null = kept?.view ?? null;
let selected: string | null = kept?.selected ?? null;
let tabled = kept?.tabled ?? false;
let locked = kept?.locked ?? false;
let cursor: number | null = null;
/** The mark pointed at in the table. */
let listed: string | null = null;

const board = new Board(elements.canvas, kept?.camera ?? null, new Set(kept?.hidden), (camera) => {
  setText(elements.zoom, camera ? `${Math.round((camera.scale / realSize) * 100)} %` : '');
});

function keepState(): void {
  if (!answer) return;
  const { camera, hidden } = board;
  editor.setState({ uri: answer.uri, locked, view, camera, selected, hidden: [...hidden], tabled });
}

function show(next: DrawingAnswer): void {
  const isSameView = answer === null ? next.view === view : answer.uri === next.uri && answer.view === next.view;
  if (!isSameView) board.camera = null;
  answer = next;
  view = next.view ?? view;
  if (!next.cards.some(({ mark }) => mark === selected)) selected = null;
  const drawing = next.drawing && prepared(next.drawing);
  board.units = next.units;
  board.spots = drawing ? spotsOf(drawing, next.problems) : [];
  board.show(drawing, isSameView);
  writeTabs(elements.views, next.views, next.view, chooseView);
  writeCaptions(elements, next);
  writeLedger(elements.table, next.table, { onPoint: pointInList, onChoose: choose });
  narrowLedger(elements.table, elements.find.value);
  writeForms();
  refresh();
  keepState();
}

/** Which of picture and table stands, and what the tools say. */
function writeForms(): void {
  const hasDrawing = answer?.drawing !== null;
  document.body.classList.toggle('tabled', tabled || !hasDrawing);
  document.body.classList.toggle('undrawn', !hasDrawing);
  elements.tabled.setAttribute('aria-pressed', String(tabled || !hasDrawing));
  elements.tabled.disabled = !hasDrawing;
  elements.measure.setAttribute('aria-pressed', String(board.measuring !== null));
  document.body.classList.toggle('measuring', board.measuring !== null);
  elements.lock.setAttribute('aria-pressed', String(locked));
  setText(elements.measured, board.measuring && answer ? measuredText(board.measuring, answer.units) : '');
}

/** Brings light, card and list in line with what is selected and pointed at. */
function refresh(): void {
  board.light(isLit);
  writeLayers(elements.layerList, board.drawing, board.hidden, board.palette, switchLayer);
  writeCard(elements.card, cardContent(), { onReveal: revealSelected, onDrop: drop });
  const lit = new Set(board.drawing?.layers.flatMap(({ kinds }) => kinds.filter(isAtCursor).map(markOf)));
  markLedger(elements.table, selected, (mark) => lit.has(mark));
}

const markOf = ({ kind }: PreparedKind): string => kind.mark;

function isLit(kind: PreparedKind): boolean {
  if (listed !== null) return kind.kind.mark === listed;
  return (selected !== null && kind.kind.mark === selected) || isAtCursor(kind);
}

function isAtCursor({ kind: { range } }: PreparedKind): boolean {
  return cursor !== null && answer?.stale === false && range.start <= cursor && cursor <= range.end;
}

function cardContent(): Parameters<typeof writeCard>[1] {
  const mark = board.pointed?.kind.kind.mark ?? listed ?? selected;
  const label = board.pointed?.kind.kind.label ?? '';
  const card = answer?.cards.find((each) => each.mark === mark) ?? null;
  if (card === null && board.pointed === null) return null;
  return { card, label, isSelected: mark === selected };
}

/** Selects a mark, says what it is, and goes to its words. */
function choose(mark: string): void {
  const card = answer?.cards.find((each) => each.mark === mark);
  if (!card) return;
  selected = mark;
  setText(elements.announced, cardWords(card));
  revealRow(elements.table, mark);
  refresh();
  keepState();
  revealSelected();
}

function revealSelected(): void {
  const card = answer?.cards.find((each) => each.mark === selected);
  if (card) editor.postMessage({ type: 'reveal', words: card.words });
}

function drop(): void {
  if (board.measuring) board.measure(false);
  else selected = null;
  writeForms();
  refresh();
  keepState();
}

function pointInList(mark: string | null): void {
  listed = mark;
  refresh();
}

function chooseView(id: string): void {
  editor.postMessage({ type: 'chooseView', view: id });
}

function switchLayer(name: string, isShown: boolean): void {
  const hidden = new Set(board.hidden);
  if (isShown) hidden.delete(name);
  else hidden.add(name);
  board.hide(hidden);
  keepState();
}

function setMeasuring(isOn: boolean): void {
  board.measure(isOn);
  if (isOn) elements.canvas.focus();
  writeForms();
}

listenForGestures(elements, {
  onZoom: (factor, at) => {
    board.zoomBy(factor, at);
    keepState();
  },
  onPan: (dx, dy) => {
    board.panBy(dx, dy);
    keepState();
  },
  onArrow: (dx, dy) => {
    if (board.measuring) board.moveCross(dx, dy);
    else board.panBy(dx, dy);
    writeForms();
    keepState();
  },
  onFit: () => {
    board.lookFrom(null);
    keepState();
  },
  onPoint: (at) => {
    if (board.measuring) board.measureAt(at);
    else board.pointTo(at && board.thingAt(at));
    if (board.measuring) writeForms();
    writeCard(elements.card, cardContent(), { onReveal: revealSelected, onDrop: drop });
  },
  onChoose: (at) => {
    if (board.measuring) {
      board.setPoint();
      writeForms();
      return;
    }
    const thing = at ? board.thingAt(at) : board.pointed;
    if (thing) choose(thing.kind.kind.mark);
    else if (at) drop();
    else revealSelected();
  },
  onStep: (steps) => {
    const next = viewBeside(elements.views, view, steps);
    if (next !== null) chooseView(next);
  },
  onMeasure: () => setMeasuring(board.measuring === null),
  onTable: () => {
    tabled = !tabled;
    writeForms();
    keepState();
  },
  onDrop: drop,
});
listenForTabs(elements.views, chooseView);
listenForExports(elements, board, (message) => editor.postMessage(message));
elements.find.addEventListener('input', () => {
  const count = narrowLedger(elements.table, elements.find.value);
  setText(elements.announced, `${count} ${count === 1 ? 'row' : 'rows'}`);
});
elements.lock.addEventListener('click', () => editor.postMessage({ type: 'lock', locked: !locked }));
elements.stop.addEventListener('click', () => editor.postMessage({ type: 'stop' }));
window.addEventListener('message', ({ data }: MessageEvent<MessageToPage>) => {
  switch (data.type) {
    case 'show':
      show(data.answer);
      break;
    case 'cursor':
      cursor = data.offset;
      refresh();
      break;
    case 'progress':
      writeProgress(elements, data.doing);
      break;
    case 'locked':
      locked = data.locked;
      writeForms();
      keepState();
      break;
  }
});
watchScreen(elements.canvas, {
  onSize: () => board.paintSoon(),
  onColours: () => {
    board.readColours();
    refresh();
  },
});
editor.postMessage({ type: 'ready' });
