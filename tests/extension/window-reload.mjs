/** A window from outside, as a person uses it: file, command, zoom; then a reload, and all must be as it was. */
import assert from 'node:assert/strict';
import path from 'node:path';
import { pause } from '../host/leftovers.mjs';
import { startHost } from '../host/start-host.mjs';
import { webviewFrame } from '../host/webview-frame.mjs';

/** @param {{ root: string, folder: string, pictures: string }} options  Throws where the preview is not restored. */
export async function previewSurvivesReload({ root, folder, pictures }) {
  const host = await startHost({ extensionDevelopmentPaths: [root], folder });
  try {
    const { page } = host;
    await page.locator('.explorer-folders-view').getByText('disc.lap').dblclick();
    await page.locator('.view-lines').getByText('motif').first().waitFor();
    await page.getByRole('button', { name: 'Open Preview to the Side' }).first().click();
    const before = await preview(page);
    await before.locator(tray).click();
    await before.locator('#summary').getByText('Panel tray').waitFor();
    await before.locator('#zoom-in').click();
    await before.locator('#zoom-in').click();
    const zoom = await restingZoom(before);

    await savedState(page, zoom);
    await page.reload();
    const after = await preview(page);
    await after.locator('#summary').getByText('Panel tray').waitFor();
    assert.equal(await after.locator(tray).getAttribute('aria-selected'), 'true');
    assert.equal(await restingZoom(after), zoom);
    await page.screenshot({ path: path.join(pictures, 'after-reload.png') });
  } catch (error) {
    await host.page.screenshot({ path: path.join(pictures, 'failed-reload.png') });
    throw error;
  } finally {
    await host.close();
  }
}

/** The tab of the panel called tray. */
const tray = '[role=tab][data-view="panel tray"]';

async function preview(page) {
  const frame = await webviewFrame(page, { extensionId: 'halflap.halflap' });
  await frame.locator('#summary').getByText('Panel').first().waitFor();
  return frame;
}

/** The zoom shown, after the picture due has been painted. */
async function restingZoom(frame) {
  await frame.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));
  return frame.locator('#zoom').innerText();
}

/**
 * Waits until the window has written down its editors with the preview's panel and the zoom shown: in a browser it
 * does so every few seconds, and not at the reload itself.
 */
async function savedState(page, zoom) {
  const end = Date.now() + 60_000;
  while (!(await page.evaluate(isInStorage, Number.parseInt(zoom, 10)))) {
    if (Date.now() > end) throw new Error('The window never wrote down its editors');
    await pause(250);
  }
}

/** Runs in the page: true when a stored value holds the preview's state with this zoom in per cent of real size. */
async function isInStorage(percent) {
  const pixelsAMillimetre = 96 / 25.4;
  const finished = (request) =>
    new Promise((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  const isState = (value) => {
    const [, scale] = /scale[\\"]+:([\d.]+)/.exec(value) ?? [];
    const holdsPanel = value.includes('halflap.preview') && value.includes('tray');
    return holdsPanel && Math.round((Number(scale) / pixelsAMillimetre) * 100) === percent;
  };
  for (const { name } of await indexedDB.databases()) {
    const database = await finished(indexedDB.open(name));
    const tables = [...database.objectStoreNames].filter((table) => table === 'ItemTable');
    const values = await Promise.all(
      tables.map((table) => finished(database.transaction(table).objectStore(table).getAll())),
    );
    database.close();
    if (values.flat().some((value) => isState(String(value)))) return true;
  }
  return false;
}
