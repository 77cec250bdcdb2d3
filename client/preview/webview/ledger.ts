/** The view as a table beside the picture: every mark in it can be pointed at and selected; a word narrows it down. */
import type { PreviewTable } from '../../../server/language/preview-messages.ts';

export interface LedgerListeners {
  /** The pointer or the focus comes to a row's mark, or (null) leaves it. */
  readonly onPoint: (mark: string | null) => void;
  readonly onChoose: (mark: string) => void;
}

/** Writes the table anew where it differs from what stands there. The focus stays on its mark. */
export function writeLedger(table: HTMLTableElement, content: PreviewTable | null, listeners: LedgerListeners): void {
  const written = JSON.stringify(content);
  if (table.dataset['written'] === written) return;
  table.dataset['written'] = written;
  const focused = document.activeElement instanceof HTMLElement ? document.activeElement.dataset['mark'] : undefined;
  const hadFocus = table.contains(document.activeElement);
  table.replaceChildren(...(content ? [caption(content), head(content), body(content, listeners)] : []));
  if (hadFocus && focused !== undefined) buttonOf(table, focused)?.focus();
}

/** Shows the rows that hold every word of `wanted`, and says how many there are. */
export function narrowLedger(table: HTMLTableElement, wanted: string): number {
  const words = wanted.toLocaleLowerCase().split(/\s+/).filter(Boolean);
  const rows = [...table.tBodies].flatMap((section) => [...section.rows]);
  for (const row of rows) {
    const text = Array.from(row.cells, (cell) => cell.textContent)
      .join(' ')
      .toLocaleLowerCase();
    row.hidden = !words.every((word) => text.includes(word));
  }
  return rows.filter((row) => !row.hidden).length;
}

/** Marks the rows of the selected mark and of those lit by the cursor. */
export function markLedger(table: HTMLTableElement, selected: string | null, isLit: (mark: string) => boolean): void {
  for (const button of table.querySelectorAll<HTMLButtonElement>('button[data-mark]')) {
    const mark = button.dataset['mark'] ?? '';
    button.setAttribute('aria-pressed', String(mark === selected));
    button.closest('tr')?.classList.toggle('lit', mark === selected || isLit(mark));
  }
}

const buttonOf = (table: HTMLElement, mark: string): HTMLButtonElement | null =>
  table.querySelector(`button[data-mark="${CSS.escape(mark)}"]`);

/** Brings the row of `mark` into sight. */
export function revealRow(table: HTMLElement, mark: string): void {
  buttonOf(table, mark)?.scrollIntoView({ block: 'nearest' });
}

function caption({ caption: words }: PreviewTable): HTMLTableCaptionElement {
  const element = document.createElement('caption');
  element.textContent = words;
  return element;
}

function head({ columns }: PreviewTable): HTMLTableSectionElement {
  const section = document.createElement('thead');
  const row = section.insertRow();
  for (const { title, isFigure } of columns) {
    const cell = document.createElement('th');
    cell.scope = 'col';
    cell.textContent = title;
    if (isFigure) cell.className = 'figure';
    row.append(cell);
  }
  return section;
}

function body({ columns, rows }: PreviewTable, listeners: LedgerListeners): HTMLTableSectionElement {
  const section = document.createElement('tbody');
  for (const { mark, cells } of rows) {
    const row = section.insertRow();
    for (const [index, text] of cells.entries()) {
      const isHead = index === 0;
      const cell = document.createElement(isHead ? 'th' : 'td');
      if (isHead) cell.scope = 'row';
      if (columns[index]?.isFigure === true) cell.className = 'figure';
      if (isHead && mark !== null) cell.append(markButton(mark, text, listeners));
      else cell.textContent = text;
      row.append(cell);
    }
    if (mark === null) continue;
    row.addEventListener('pointerenter', () => listeners.onPoint(mark));
    row.addEventListener('pointerleave', () => listeners.onPoint(null));
  }
  return section;
}

function markButton(mark: string, text: string, { onPoint, onChoose }: LedgerListeners): HTMLButtonElement {
  const button = document.createElement('button');
  button.type = 'button';
  button.dataset['mark'] = mark;
  button.textContent = text;
  button.title = 'Shows it in the picture and selects its words';
  button.addEventListener('focus', () => onPoint(mark));
  button.addEventListener('blur', () => onPoint(null));
  button.addEventListener('click', () => onChoose(mark));
  return button;
}
