/** The preview's page in a plain browser: started by tests/extension/run.mjs, `node page-suite.mjs ROOT RESULTS PICTURES`. */
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { runCases } from '../extension/case-list.ts';
import { accessCases } from './access-cases.ts';
import { boardCases } from './board-cases.ts';
import { lookCases } from './look-cases.ts';
import type { Browser } from './page-host.ts';

const [root, results, pictures] = process.argv.slice(2);
if (root === undefined || results === undefined || pictures === undefined)
  throw new Error('usage: page-suite ROOT RESULTS PICTURES');

interface Playwright {
  readonly chromium: { launch(options: { executablePath: string; args: string[] }): Promise<Browser> };
}

const host = join(root, 'tests/host');
const { chromium } = createRequire(join(host, 'package.json'))('playwright-core') as Playwright;
const { findBrowser } = (await import(pathToFileURL(join(host, 'find-browser.mjs')).href)) as {
  findBrowser: () => string | undefined;
};
const browser = await chromium.launch({
  executablePath: findBrowser() ?? '',
  args: ['--no-sandbox', '--disable-gpu', '--font-render-hinting=none'],
});
try {
  const stage = { browser, root, pictures };
  await runCases([...boardCases(stage), ...accessCases(stage), ...lookCases(stage)], results, () => Promise.resolve());
} finally {
  await browser.close();
}
