/** The words round the drawing: which panel, what it comes to, whether it is up to date, and a list of its kinds. */
import type { LayerKind } from '../../../server/drawing/drawing.ts';
import type { DrawingAnswer } from '../../../server/language/preview-messages.ts';
import type { PageElements } from './page-elements.ts';
import type { PreparedDrawing, PreparedKind } from './prepared-drawing.ts';

/** Writes everything that a new answer says in words. Parts that stay the same are left alone, so that they aren't read out anew. */
export function writeCaptions(elements: PageElements, answer: DrawingAnswer): void {
  writeChoice(elements.panel, answer);
  setText(elements.stale, staleText(answer));
  elements.stale.hidden = !answer.stale;
  elements.empty.hidden = answer.drawing !== null;
  elements.canvas.setAttribute(
    'aria-label',
    answer.drawing ? `Drawing of panel ${answer.drawing.panel}` : 'No drawing',
  );
  writeLines(elements.summary, answer.drawing?.summary ?? []);
}

function staleText({ stale, drawing, errors }: DrawingAnswer): string {
  if (!stale) return '';
  const [first] = errors;
  const more = errors.length > 1 ? ` (and ${errors.length - 1} more)` : '';
  const reason = first ? ` Line ${first.line + 1}: ${first.message}${more}` : '';
  return `${drawing ? 'Last good drawing: the text has errors.' : 'The text has errors.'}${reason}`;
}

function writeChoice(select: HTMLSelectElement, { panels, panel }: DrawingAnswer): void {
  const present = Array.from(select.options, ({ value }) => value);
  if (present.join('\n') !== panels.join('\n')) select.replaceChildren(...panels.map((name) => new Option(name, name)));
  select.value = panel ?? '';
  select.disabled = panels.length < 2;
}

function writeLines(parent: HTMLElement, lines: readonly string[]): void {
  const present = Array.from(parent.children, ({ textContent }) => textContent);
  if (present.join('\n') === lines.join('\n')) return;
  parent.replaceChildren(
    ...lines.map((line) => {
      const paragraph = document.createElement('p');
      paragraph.textContent = line;
      return paragraph;
    }),
  );
}

/** Writes `text` where it differs, so that a reader is not told the same again. */
export function setText(element: HTMLElement, text: string): void {
  if (element.textContent !== text) element.textContent = text;
}

/** What happens to an entry of the list of kinds. */
export interface KindListeners {
  /** The pointer or the focus comes to an entry, or (null) leaves it. */
  readonly onPoint: (kind: PreparedKind | null) => void;
  readonly onChoose: (kind: PreparedKind) => void;
}

interface Entry {
  readonly kind: PreparedKind;
  readonly layerKind: LayerKind;
}

const inMarkOrder = new Intl.Collator('en', { numeric: true });

/** Lists every mark as a button, in the order of the marks; an empty list for no drawing. The focus stays on its entry. */
export function writeKinds(list: HTMLUListElement, drawing: PreparedDrawing | null, listeners: KindListeners): void {
  const focused = list.contains(document.activeElement) ? document.activeElement?.textContent : null;
  const items = entriesOf(drawing).map((entry) => entryElement(entry, listeners));
  list.replaceChildren(...items);
  const same = items.find(({ textContent }) => textContent === focused);
  same?.querySelector('button')?.focus();
}

function entriesOf(drawing: PreparedDrawing | null): Entry[] {
  const byMark = new Map<string, Entry>();
  for (const { layer, kinds } of drawing?.layers ?? []) {
    if (layer.kind !== 'strip' && layer.kind !== 'piece' && layer.kind !== 'trimmed') continue;
    for (const kind of kinds)
      if (!byMark.has(kind.kind.mark)) byMark.set(kind.kind.mark, { kind, layerKind: layer.kind });
  }
  return [...byMark.values()].sort((first, second) => inMarkOrder.compare(first.kind.kind.mark, second.kind.kind.mark));
}

function entryElement({ kind, layerKind }: Entry, { onPoint, onChoose }: KindListeners): HTMLLIElement {
  const item = document.createElement('li');
  const button = document.createElement('button');
  button.type = 'button';
  button.className = layerKind;
  button.textContent = kind.kind.label;
  button.title = 'Shows it in the drawing; click to select its words';
  for (const event of ['pointerenter', 'focus']) button.addEventListener(event, () => onPoint(kind));
  for (const event of ['pointerleave', 'blur']) button.addEventListener(event, () => onPoint(null));
  button.addEventListener('click', () => onChoose(kind));
  item.append(button);
  return item;
}
