/** The window that the tests run in, seen from outside: its picture, its keys, and the page inside the preview. */
import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

/** The little of Playwright's page that the tests need; expressions are evaluated in the page. */
export interface Frame {
  url(): string;
  evaluate<Value>(expression: string): Promise<Value>;
  click(selector: string): Promise<void>;
}

export interface Page extends Frame {
  frames(): Frame[];
  readonly keyboard: { press(key: string): Promise<void>; type(text: string): Promise<void> };
  readonly mouse: { move(x: number, y: number): Promise<void>; wheel(dx: number, dy: number): Promise<void> };
  screenshot(options: { path: string }): Promise<unknown>;
}

interface Playwright {
  readonly chromium: {
    connectOverCDP(address: string): Promise<{ contexts(): { pages(): Page[] }[] }>;
  };
}

interface WebviewFinder {
  webviewFrame(page: Page, options: { extensionId: string }): Promise<Frame>;
}

/** A setting that the runner must have given. */
export function given(name: string): string {
  const value = process.env[name];
  if (value === undefined) throw new Error(`${name} is not set: start the tests by tests/extension/run.mjs`);
  return value;
}

let connected: Promise<Page> | undefined;

/** The window's page, by way of the browser's debugging port that the host left in its profile folder. */
export function windowPage(): Promise<Page> {
  connected ??= connect();
  return connected;
}

async function connect(): Promise<Page> {
  const [port] = readFileSync(join(given('VSCODE_HOST_BROWSER'), 'DevToolsActivePort'), 'utf8').split('\n');
  const { chromium } = createRequire(join(given('HALFLAP_HOST'), 'package.json'))('playwright-core') as Playwright;
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port ?? ''}`);
  const page = browser.contexts()[0]?.pages()[0];
  if (!page) throw new Error('The browser has no page');
  return page;
}

/** The page inside the preview. */
export async function previewFrame(): Promise<Frame> {
  const finder = (await import(pathToFileURL(join(given('HALFLAP_HOST'), 'webview-frame.mjs')).href)) as WebviewFinder;
  return finder.webviewFrame(await windowPage(), { extensionId: 'halflap.halflap' });
}

/** Keeps a picture of the window as `name`.png. */
export async function takePicture(name: string): Promise<void> {
  const folder = given('HALFLAP_PICTURES');
  mkdirSync(folder, { recursive: true });
  const page = await windowPage();
  await page.screenshot({ path: join(folder, `${name.replaceAll(/[^\p{L}\p{N}]+/gu, '-')}.png`) });
}
