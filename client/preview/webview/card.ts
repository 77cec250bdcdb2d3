/** The card in the corner of the picture: what is pointed at, or else what is selected. */
import type { MarkCard } from '../../../server/language/preview-messages.ts';

export interface CardContent {
  readonly card: MarkCard | null;
  /** Told where there is no card: the thing has no mark. */
  readonly label: string;
  /** Whether it is the selection, which can be followed to its words and dropped. */
  readonly isSelected: boolean;
}

export interface CardListeners {
  readonly onReveal: () => void;
  readonly onDrop: () => void;
}

/** Writes the card, or hides it; written anew only where it differs. */
export function writeCard(element: HTMLElement, content: CardContent | null, listeners: CardListeners): void {
  const written = JSON.stringify(content);
  if (element.dataset['written'] === written) return;
  element.dataset['written'] = written;
  element.hidden = content === null;
  element.classList.toggle('selected', content?.isSelected ?? false);
  element.replaceChildren(...(content ? partsOf(content, listeners) : []));
}

function partsOf({ card, label, isSelected }: CardContent, listeners: CardListeners): HTMLElement[] {
  const heading = document.createElement('p');
  heading.className = 'heading';
  if (card === null) {
    heading.textContent = label;
    return [heading];
  }
  const mark = document.createElement('strong');
  mark.textContent = card.mark;
  heading.append(mark, ` ${card.heading}`);
  const facts = document.createElement('dl');
  for (const { name, value } of card.facts) {
    const [term, description] = [document.createElement('dt'), document.createElement('dd')];
    term.textContent = name;
    description.textContent = value;
    facts.append(term, description);
  }
  if (!isSelected) return [heading, facts];
  const actions = document.createElement('div');
  actions.className = 'actions';
  actions.append(button('Go to its line', listeners.onReveal), button('Drop selection', listeners.onDrop));
  return [heading, facts, actions];
}

function button(words: string, onClick: () => void): HTMLButtonElement {
  const element = document.createElement('button');
  element.type = 'button';
  element.textContent = words;
  element.addEventListener('click', onClick);
  return element;
}

/** The card in one sentence, for those who hear it. */
export const cardWords = ({ mark, heading, facts }: MarkCard): string =>
  [`${mark}, ${heading}`, ...facts.map(({ name, value }) => `${name} ${value}`)].join('; ');
