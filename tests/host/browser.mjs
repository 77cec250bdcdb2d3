/** A headless Chromium that reaches nothing but the loopback address. */
import { chromium } from 'playwright-core';
import { findBrowser } from './find-browser.mjs';

/** Starts Chromium with its profile in `profile`; the debugging port is written there as DevToolsActivePort. */
export function launchBrowser(profile, environment) {
  const executablePath = findBrowser();
  if (!executablePath) throw new Error('No Chromium found: install it, or name it in CHROMIUM_PATH');
  return chromium.launchPersistentContext(profile, {
    executablePath,
    headless: true,
    viewport: { width: 1400, height: 900 },
    env: { ...process.env, ...environment },
    handleSIGINT: false,
    handleSIGTERM: false,
    handleSIGHUP: false,
    args: [
      ...['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking'],
      ...['--disable-component-update', '--disable-sync', '--remote-debugging-port=0'],
      '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost',
    ],
  });
}

/** Aborts and notes requests that leave `authority`, and answers the two that only a hosted server would. */
export async function keepInside(context, authority, log) {
  await context.route(
    (url) => url.host !== authority && /^(https?|wss?):$/.test(url.protocol),
    (route) => {
      log('outside', route.request().url());
      return route.abort();
    },
  );
  await context.route(`http://${authority}/mint-key`, (route) =>
    route.fulfill({ body: Buffer.alloc(32, 7), contentType: 'application/octet-stream' }),
  );
  await context.route(`http://${authority}/update/check`, (route) => route.fulfill({ json: { isLatest: true } }));
}
