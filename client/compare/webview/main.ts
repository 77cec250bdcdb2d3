/** The page of a comparison: sets the report, changes between the versions, follows rows to their words. */
import type { MessageToEditor, ShowReport } from '../webview-messages.ts';

declare function acquireVsCodeApi(): { postMessage(message: MessageToEditor): void };

const editor = acquireVsCodeApi();
const nonce = (document.currentScript as HTMLScriptElement).nonce;
const looks = document.getElementById('looks') as HTMLFormElement;
const swipe = document.getElementById('swipe') as HTMLInputElement;
const report = document.getElementById('report') as HTMLElement;
lookAt('both');

type Look = 'both' | 'old' | 'new' | 'swipe';

function lookAt(look: Look): void {
  document.body.dataset['look'] = look;
  const choice = looks.elements.namedItem('look') as RadioNodeList;
  choice.value = look;
}

/** The new version after the old one, the old one after any other look. */
const flip = (): void => lookAt(document.body.dataset['look'] === 'old' ? 'new' : 'old');

const showSwipe = (): void => report.style.setProperty('--old', `${swipe.value}%`);

/**
 * Sets the server's markup. Its styles carry the page's own nonce, without which the content policy refuses them; it
 * holds no scripts, and the policy would not run any.
 */
function show({ body, ...followed }: ShowReport): void {
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

looks.addEventListener('change', () => lookAt(new FormData(looks).get('look') as Look));
looks.addEventListener('submit', (event) => event.preventDefault());
swipe.addEventListener('input', showSwipe);
document.getElementById('flip')?.addEventListener('click', flip);
window.addEventListener('keydown', (event) => {
  if (event.key.toLowerCase() === 'f' && !event.ctrlKey && !event.metaKey && !event.altKey) flip();
});
report.addEventListener('click', ({ target }) => {
  if (!(target instanceof HTMLButtonElement)) return;
  const { side, subject } = target.dataset;
  if ((side === 'old' || side === 'new') && subject !== undefined)
    editor.postMessage({ type: 'reveal', side, subject });
});
window.addEventListener('message', ({ data }: MessageEvent<ShowReport>) => show(data));
editor.postMessage({ type: 'ready' });
