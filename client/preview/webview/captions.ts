/** The words round the drawing: what it comes to, whether it is up to date, what is being worked on. */
import type { DrawingAnswer } from '../../../server/language/preview-messages.ts';
import type { PageElements } from './page-elements.ts';

/** Writes everything that a new answer says in words. Parts that stay the same are left alone, so that they aren't read out anew. */
export function writeCaptions(elements: PageElements, answer: DrawingAnswer): void {
  setText(elements.stale, staleText(answer));
  elements.stale.hidden = !answer.stale;
  elements.empty.hidden = answer.drawing !== null || answer.table !== null;
  setText(elements.empty, 'Nothing to draw yet: a panel needs a grid and a shape.');
  elements.canvas.setAttribute('aria-label', answer.drawing ? `Drawing of ${answer.drawing.heading}` : 'No drawing');
  const label = answer.views.find(({ id }) => id === answer.view)?.label ?? 'Nothing to draw';
  elements.sheet.setAttribute('aria-label', label);
  writeLines(elements.summary, answer.summary);
}

function staleText({ stale, drawing, problems }: DrawingAnswer): string {
  if (!stale) return '';
  const errors = problems.filter(({ severity }) => severity === 'error');
  const [first] = errors;
  const more = errors.length > 1 ? ` (and ${errors.length - 1} more)` : '';
  const reason = first ? ` Line ${first.line + 1}: ${first.message}${more}` : '';
  return `${drawing ? 'Last good drawing: the text has errors.' : 'The text has errors.'}${reason}`;
}

/** Says what is being worked on, or (null) that nothing is. */
export function writeProgress(elements: PageElements, doing: string | null): void {
  elements.progress.hidden = doing === null;
  setText(elements.doing, doing ?? '');
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
