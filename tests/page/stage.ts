/** What the cases of the page work with. */
import { answerFor, sampleText } from './answers.ts';
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
  /** Name of a sample. */
  readonly sample?: string;
  /** In place of a sample: texts, one version after the other. */
  readonly texts?: readonly string[];
  readonly view?: string | null;
  readonly theme?: ThemeClass;
}

/** Opens a page that shows a view, hands it to `look`, and closes it. */
export async function withPage(
  { browser, root }: Stage,
  { sample = 'ginkgo.lap', texts, view = null, theme = 'vscode-light' }: Opening,
  look: (page: PreviewPage) => Promise<void>,
): Promise<void> {
  const page = await openPage(browser, root, theme);
  try {
    await page.send({ type: 'show', answer: await answerFor(texts ?? [sampleText(root, sample)], view) });
    await look(page);
  } finally {
    await page.page.close();
  }
}
