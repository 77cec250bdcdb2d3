/** Finds the page inside a webview. */
import { pause } from './leftovers.mjs';

/**
 * It lies two frames deep: VS Code's own frame, then an iframe that gets the id "active-frame" once shown. The
 * inner one is found by its element, since a frame keeps its first name ("pending-frame") for good.
 * @param {import('playwright-core').Page} page
 * @param {{ extensionId: string, timeout?: number }} options the timeout in milliseconds
 * @returns {Promise<import('playwright-core').Frame>}
 */
export async function webviewFrame(page, { extensionId, timeout = 20_000 }) {
  const end = Date.now() + timeout;
  do {
    for (const outer of page.frames()) {
      const frame = belongsTo(outer, extensionId) ? await activeFrame(outer) : null;
      if (frame) return frame;
    }
    await pause(50);
  } while (Date.now() < end);
  throw new Error(
    `No webview frame among:\n${page
      .frames()
      .map((frame) => frame.url())
      .join('\n')}`,
  );
}

function belongsTo(frame, extensionId) {
  if (!frame.url().includes('/webview/browser/pre/index.html')) return false;
  return new URL(frame.url()).searchParams.get('extensionId')?.toLowerCase() === extensionId.toLowerCase();
}

async function activeFrame(outer) {
  try {
    return (await (await outer.$('iframe#active-frame'))?.contentFrame()) ?? null;
  } catch {
    return null; // a frame that went away meanwhile
  }
}
