/** The preview's page in a plain browser, with a stand-in for the editor round it: messages in, messages out. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pageMarkup } from '../../client/page-markup.ts';
import { previewContent } from '../../client/preview/preview-markup.ts';
import type { MessageToEditor, MessageToPage } from '../../client/preview/webview-messages.ts';
import { type ThemeClass, themes } from './themes.ts';

/** The little of Playwright that the cases need; expressions are evaluated in the page. */
export interface BrowserPage {
  goto(address: string): Promise<unknown>;
  route(address: string, answer: (route: Route) => Promise<void>): Promise<void>;
  addInitScript(script: string): Promise<void>;
  evaluate<Value>(expression: string): Promise<Value>;
  click(selector: string): Promise<void>;
  fill(selector: string, text: string): Promise<void>;
  focus(selector: string): Promise<void>;
  setViewportSize(size: { width: number; height: number }): Promise<void>;
  screenshot(options?: { path?: string }): Promise<Buffer>;
  close(): Promise<void>;
  readonly keyboard: { press(key: string): Promise<void> };
  readonly mouse: {
    move(x: number, y: number, options?: { steps: number }): Promise<void>;
    down(): Promise<void>;
    up(): Promise<void>;
    click(x: number, y: number): Promise<void>;
    wheel(dx: number, dy: number): Promise<void>;
  };
}

interface Route {
  request(): { url(): string };
  fulfill(answer: { contentType: string; body: string }): Promise<void>;
}

export interface Browser {
  newPage(): Promise<BrowserPage>;
  close(): Promise<void>;
}

const origin = 'http://preview.test';
const standIn = `(() => {
  let state;
  window.sent = [];
  window.acquireVsCodeApi = () => ({
    postMessage: (message) => window.sent.push(message),
    getState: () => state,
    setState: (next) => { state = next; window.keptState = next; },
  });
})()`;

/** A page of its own, in the colours of `theme`; `root` is the checkout, built. */
export async function openPage(browser: Browser, root: string, theme: ThemeClass): Promise<PreviewPage> {
  const page = await browser.newPage();
  await page.setViewportSize({ width: 1000, height: 640 });
  await page.addInitScript(standIn);
  await page.route(`${origin}/**`, (route) => route.fulfill(resource(route.request().url(), root, theme)));
  await page.goto(`${origin}/`);
  await page.evaluate(`document.body.classList.add('${theme}')`);
  return new PreviewPage(page);
}

function resource(url: string, root: string, theme: ThemeClass): { contentType: string; body: string } {
  const path = new URL(url).pathname;
  if (path === '/preview.js')
    return { contentType: 'text/javascript', body: readFileSync(join(root, 'dist/preview.js'), 'utf8') };
  if (path === '/preview.css') {
    const colours = Object.entries(themes[theme]).map(([name, value]) => `${name}: ${value};`);
    const body = `html { ${colours.join(' ')} }\n${readFileSync(join(root, 'dist/preview.css'), 'utf8')}`;
    return { contentType: 'text/css', body };
  }
  const sources = { styles: "'self'", nonce: 'given', script: '/preview.js', style: '/preview.css' };
  return { contentType: 'text/html', body: pageMarkup(previewContent, sources) };
}

export class PreviewPage {
  readonly page: BrowserPage;

  constructor(page: BrowserPage) {
    this.page = page;
  }

  /** Sends a message as the editor does, and waits for the picture it leads to. */
  async send(message: MessageToPage): Promise<void> {
    await this.page.evaluate(`window.postMessage(${JSON.stringify(message)}, '*')`);
    await this.settled();
  }

  /** Waits until the picture due has been painted. */
  async settled(): Promise<void> {
    await this.page.evaluate(`new Promise((resolve) => {
      let calm = 0;
      const look = () => {
        calm = document.querySelector('#drawing').getAttribute('aria-busy') === 'true' ? 0 : calm + 1;
        if (calm > 2) resolve(); else requestAnimationFrame(look);
      };
      requestAnimationFrame(look);
    })`);
  }

  /** What the page has sent to the editor, of one type. */
  async sent<Type extends MessageToEditor['type']>(type: Type): Promise<Extract<MessageToEditor, { type: Type }>[]> {
    return this.page.evaluate(`window.sent.filter((message) => message.type === '${type}')`);
  }

  text(id: string): Promise<string> {
    return this.page.evaluate(
      `(() => { const part = document.getElementById('${id}'); return part.hidden ? '' : part.innerText; })()`,
    );
  }

  /** Where the middle of the canvas lies on the page. */
  middle(): Promise<{ x: number; y: number; width: number; height: number }> {
    return this.page.evaluate(`(() => {
      const { left, top, width, height } = document.querySelector('#drawing').getBoundingClientRect();
      return { x: left + width / 2, y: top + height / 2, width, height };
    })()`);
  }
}
