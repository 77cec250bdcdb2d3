/** What the cases of the page work with. */
import { answerFor, designText } from './answers.ts';
import { type Browser, openPage, type PreviewPage } from './page-host.ts';
import type { ThemeClass } from './themes.ts';

export interface Stage {
  readonly browser: Browser;
  /** The checkout, built. */
  readonly root: string;
  /** Where pictures are left. */
  readonly pictures: string;
}

export interface Opening {
  /** Name of a file in tests/page/designs. */
  readonly design?: string;
  /** In place of that: texts, one version after the other. */
  readonly texts?: readonly string[];
  readonly view?: string | null;
  readonly theme?: ThemeClass;
}

/** Opens a page that shows a view, hands it to `look`, and closes it. */
export async function withPage(
  { browser, root }: Stage,
  { design = 'leaf.lap', texts, view = null, theme = 'vscode-light' }: Opening,
  look: (page: PreviewPage) => Promise<void>,
): Promise<void> {
  const page = await openPage(browser, root, theme);
  try {
    await page.send({ type: 'show', answer: await answerFor(texts ?? [designText(root, design)], view) });
    await look(page);
  } finally {
    await page.page.close();
  }
}
