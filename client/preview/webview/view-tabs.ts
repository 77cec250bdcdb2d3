/** The row of views: one tab each, those of a group together; the arrow keys walk along it. */
import type { PreviewView } from '../../../server/language/preview-messages.ts';

/** Writes the tabs where they differ from those that stand there, and marks the one that is shown. */
export function writeTabs(
  list: HTMLElement,
  views: readonly PreviewView[],
  shown: string | null,
  onChoose: (view: string) => void,
): void {
  const written = JSON.stringify(views);
  if (list.dataset['written'] !== written) {
    list.dataset['written'] = written;
    const hadFocus = list.contains(document.activeElement);
    list.replaceChildren(...groupsOf(views, onChoose));
    if (hadFocus) tabOf(list, shown)?.focus();
  }
  for (const tab of tabsOf(list)) {
    const isShown = tab.dataset['view'] === shown;
    tab.setAttribute('aria-selected', String(isShown));
    tab.tabIndex = isShown ? 0 : -1;
  }
}

/** The view `steps` tabs further, round the ends; null without tabs. */
export function viewBeside(list: HTMLElement, shown: string | null, steps: number): string | null {
  const tabs = tabsOf(list);
  const at = tabs.findIndex((tab) => tab.dataset['view'] === shown);
  return tabs[(at + steps + tabs.length) % tabs.length]?.dataset['view'] ?? null;
}

/** Makes Left, Right, Home and End walk along the tabs. */
export function listenForTabs(list: HTMLElement, onChoose: (view: string) => void): void {
  list.addEventListener('keydown', (event) => {
    const tabs = tabsOf(list);
    const at = tabs.findIndex((tab) => tab === document.activeElement);
    const goals: Partial<Record<string, number>> = {
      ArrowLeft: at - 1,
      ArrowRight: at + 1,
      Home: 0,
      End: tabs.length - 1,
    };
    const goal = goals[event.key];
    if (goal === undefined || at < 0) return;
    event.preventDefault();
    const tab = tabs[(goal + tabs.length) % tabs.length];
    tab?.focus();
    if (tab?.dataset['view'] !== undefined) onChoose(tab.dataset['view']);
  });
}

const tabsOf = (list: HTMLElement): HTMLButtonElement[] => [...list.querySelectorAll<HTMLButtonElement>('[role=tab]')];

const tabOf = (list: HTMLElement, view: string | null): HTMLButtonElement | undefined =>
  tabsOf(list).find((tab) => tab.dataset['view'] === view);

function groupsOf(views: readonly PreviewView[], onChoose: (view: string) => void): HTMLElement[] {
  const groups = new Map<string, PreviewView[]>();
  for (const view of views) groups.set(view.group, [...(groups.get(view.group) ?? []), view]);
  return [...groups].map(([name, members]) => {
    const group = document.createElement('div');
    group.className = 'views';
    group.setAttribute('role', 'presentation');
    const title = document.createElement('span');
    title.textContent = name;
    title.setAttribute('aria-hidden', 'true');
    group.append(title, ...members.map((view) => tab(view, onChoose)));
    return group;
  });
}

function tab({ id, label, group }: PreviewView, onChoose: (view: string) => void): HTMLButtonElement {
  const button = document.createElement('button');
  button.type = 'button';
  button.setAttribute('role', 'tab');
  button.setAttribute('aria-controls', 'sheet');
  button.dataset['view'] = id;
  button.textContent = label;
  button.title = `${group}: ${label} (Page Up and Page Down go through the views)`;
  button.addEventListener('click', () => onChoose(id));
  return button;
}
