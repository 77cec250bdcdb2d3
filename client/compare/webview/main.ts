/** The page of a comparison: sets the report, changes between the versions, follows rows to their words. */
import type { Look, PageState } from '../comparison-state.ts';
import type { MessageToEditor, MessageToPage, ShowReport } from '../webview-messages.ts';

declare function acquireVsCodeApi(): {
  postMessage(message: MessageToEditor): void;
  getState(): Partial<PageState> | undefined;
  setState(state: Partial<PageState>): void;
};

const editor = acquireVsCodeApi();
const nonce = (document.currentScript as HTMLScriptElement).nonce;
const byId = (id: string): HTMLElement => document.getElementById(id) as HTMLElement;
const looks = byId('looks') as HTMLFormElement;
const swipe = byId('swipe') as HTMLInputElement;
const cut = byId('cut') as HTMLSelectElement;
const listed = byId('listed') as HTMLOptionElement;
const fault = byId('fault');
const report = byId('report');

/** The editor keeps it over a reload of the window. */
const keep = (part: Partial<PageState>): void => editor.setState({ ...editor.getState(), ...part });

function lookAt(look: Look): void {
  document.body.dataset['look'] = look;
  const choice = looks.elements.namedItem('look') as RadioNodeList;
  choice.value = look;
  keep({ look });
}

/** The new version after the old one, the old one after any other look. */
const flip = (): void => lookAt(document.body.dataset['look'] === 'old' ? 'new' : 'old');

function swipeTo(place: string): void {
  swipe.value = place;
  report.style.setProperty('--old', `${place}%`);
  keep({ swipe: place });
}

function tell(words: string | null): void {
  fault.textContent = words;
  fault.hidden = words === null;
}

/**
 * Sets the server's markup. Its styles carry the page's own nonce, without which the content policy refuses them; it
 * holds no scripts, and the policy would not run any.
 */
function show({ body, cutFault, ...followed }: ShowReport): void {
  tell(cutFault);
  const parsed = new DOMParser().parseFromString(body, 'text/html');
  for (const style of parsed.querySelectorAll('style')) style.nonce = nonce;
  for (const figure of parsed.querySelectorAll('figure')) {
    const overlay = figure.querySelector('svg');
    if (overlay) figure.append(overlay.cloneNode(true));
  }
  for (const row of parsed.querySelectorAll<HTMLTableRowElement>('tr')) addLinks(row, followed);
  report.replaceChildren(...document.adoptNode(parsed.body).childNodes);
}

/** Buttons that lead to the words of a row's subject in each version that has it. */
function addLinks(row: HTMLTableRowElement, followed: Readonly<Record<'old' | 'new', readonly string[]>>): void {
  const { sort } = row.dataset;
  if (sort === undefined) return;
  const cell = row.insertCell();
  for (const side of ['old', 'new'] as const) {
    const subject = `${sort} ${row.dataset[side] ?? ''}`;
    if (!followed[side].includes(subject)) continue;
    const button = row.ownerDocument.createElement('button');
    button.type = 'button';
    button.textContent = side;
    button.title = `Show ${subject} in the ${side} text`;
    button.dataset['side'] = side;
    button.dataset['subject'] = subject;
    cell.append(button);
  }
}

function receive(message: MessageToPage): void {
  if (message.type === 'show') show(message);
  else if (message.type === 'fault') tell(message.words);
  else {
    const { state, cutName } = message;
    listed.hidden = cutName === null;
    listed.textContent = cutName === null ? '' : `what ${cutName} says`;
    cut.value = typeof state.cut === 'string' ? state.cut : 'listed';
    keep(state);
  }
}

const before = editor.getState() ?? {};
lookAt(before.look ?? 'both');
swipeTo(before.swipe ?? swipe.value);
looks.addEventListener('change', ({ target }) => {
  if (target !== cut) lookAt(new FormData(looks).get('look') as Look);
});
looks.addEventListener('submit', (event) => event.preventDefault());
swipe.addEventListener('input', () => swipeTo(swipe.value));
cut.addEventListener('change', () => {
  const { value } = cut;
  if (value === 'nothing' || value === 'all' || value === 'list') editor.postMessage({ type: 'cut', cut: value });
});
byId('flip').addEventListener('click', flip);
window.addEventListener('keydown', (event) => {
  const isTyped = event.target instanceof HTMLSelectElement;
  if (!isTyped && event.key.toLowerCase() === 'f' && !event.ctrlKey && !event.metaKey && !event.altKey) flip();
});
report.addEventListener('click', ({ target }) => {
  if (!(target instanceof HTMLButtonElement)) return;
  const { side, subject } = target.dataset;
  if ((side === 'old' || side === 'new') && subject !== undefined)
    editor.postMessage({ type: 'reveal', side, subject });
});
window.addEventListener('message', ({ data }: MessageEvent<MessageToPage>) => receive(data));
editor.postMessage({ type: 'ready' });
