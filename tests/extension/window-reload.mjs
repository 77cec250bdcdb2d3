/** The installed extension in a window from outside, as a person uses it: then a reload, and all must be as it was. */
import assert from 'node:assert/strict';
import fs from 'node:fs';
import path from 'node:path';
import { pause } from '../host/leftovers.mjs';
import { startHost } from '../host/start-host.mjs';
import { webviewFrame } from '../host/webview-frame.mjs';

/**
 * Installs the extension packed in `file` and works with it in `folder`.
 * @param {{ file: string, folder: string, pictures: string }} options  Throws where a page is not restored.
 */
export async function pagesSurviveReload({ file, folder, pictures }) {
  const disc = fs.readFileSync(path.join(folder, 'disc.lap'), 'utf8');
  fs.writeFileSync(path.join(folder, 'other.lap'), disc.replace('side 40', 'side 42'));
  const host = await startHost({ packedExtension: file, folder });
  const { page } = host;
  try {
    await previewSurvivesReload(page);
    await page.screenshot({ path: path.join(pictures, 'after-reload.png') });
    await comparisonSurvivesReload(page);
    await page.screenshot({ path: path.join(pictures, 'comparison-after-reload.png') });
  } catch (error) {
    await page.screenshot({ path: path.join(pictures, 'failed-reload.png') });
    throw error;
  } finally {
    await host.close();
  }
}

async function openDisc(page) {
  await page.locator('.explorer-folders-view').getByText('disc.lap').dblclick();
  await page.locator('.view-lines').getByText('motif').first().waitFor();
}

async function previewSurvivesReload(page) {
  await openDisc(page);
  await page.getByRole('button', { name: 'Open Preview to the Side' }).first().click();
  const before = await preview(page);
  await before.locator(tray).click();
  await before.locator('#summary').getByText('Panel tray').waitFor();
  await before.locator('#zoom-in').click();
  await before.locator('#zoom-in').click();
  const zoom = await restingZoom(before);

  await savedState(page, { words: ['halflap.preview', 'tray'], percent: Number.parseInt(zoom, 10) });
  await page.reload();
  const after = await preview(page);
  await after.locator('#summary').getByText('Panel tray').waitFor();
  assert.equal(await after.locator(tray).getAttribute('aria-selected'), 'true');
  assert.equal(await restingZoom(after), zoom);
}

async function comparisonSurvivesReload(page) {
  await command(page, 'View: Close All Editors');
  await openDisc(page);
  await command(page, 'Halflap: Compare with File');
  await page.locator('.quick-input-list').getByText('other.lap').click();
  const before = await comparison(page);
  await before.locator('input[value=swipe]').click();
  await before.locator('#cut').selectOption('all');
  await before.getByText('What is still to cut').waitFor();
  const report = await before.locator('#report').innerText();

  await savedState(page, { words: ['halflap.compare', 'other.lap'], kept: { look: 'swipe', cut: 'all' } });
  await page.reload();
  const after = await comparison(page);
  await after.getByText('What is still to cut').waitFor();
  assert.equal(await after.locator('body').getAttribute('data-look'), 'swipe');
  assert.equal(await after.locator('#cut').inputValue(), 'all');
  assert.equal(await after.locator('#report').innerText(), report);
  await page.getByRole('tab', { name: 'disc.lap against other.lap' }).waitFor();
}

async function command(page, name) {
  await page.keyboard.press('F1');
  await page.keyboard.type(name);
  await page.locator('.quick-input-list').getByText(name).first().waitFor();
  await page.keyboard.press('Enter');
}

async function comparison(page) {
  const frame = await webviewFrame(page, { extensionId });
  await frame.locator('#report').getByText('infill pieces').first().waitFor();
  return frame;
}

const extensionId = 'halflap.halflap';

/** The tab of the panel called tray. */
const tray = '[role=tab][data-view="panel tray"]';

async function preview(page) {
  const frame = await webviewFrame(page, { extensionId });
  await frame.locator('#summary').getByText('Panel').first().waitFor();
  return frame;
}

/** The zoom shown, after the picture due has been painted. */
async function restingZoom(frame) {
  await frame.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));
  return frame.locator('#zoom').innerText();
}

/**
 * Waits until the window has written down its editors with what is `wanted`: in a browser it does so every few seconds,
 * and not at the reload itself.
 */
async function savedState(page, wanted) {
  const end = Date.now() + 60_000;
  while (!(await page.evaluate(isInStorage, wanted))) {
    if (Date.now() > end) throw new Error(`The window never wrote down ${JSON.stringify(wanted)}`);
    await pause(250);
  }
}

/** Runs in the page: true when a stored value holds these words, what a page keeps, and this zoom in per cent of real size. */
async function isInStorage({ words, kept = {}, percent = null }) {
  const pixelsAMillimetre = 96 / 25.4;
  const finished = (request) =>
    new Promise((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  const isState = (value) => {
    const [, scale] = /scale[\\"]+:([\d.]+)/.exec(value) ?? [];
    const isKept = ([key, text]) => new RegExp(`${key}[\\\\"]+:[\\\\"]+${text}`).test(value);
    return (
      words.every((word) => value.includes(word)) &&
      Object.entries(kept).every(isKept) &&
      (percent === null || Math.round((Number(scale) / pixelsAMillimetre) * 100) === percent)
    );
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
