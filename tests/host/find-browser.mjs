/** Where a Chromium stands on this machine, and how one comes to it. */
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';

const usual = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** Path of a Chromium: CHROMIUM_PATH if that is set, else the first of the usual places; undefined where none stands. */
export function findBrowser() {
  const places = process.env.CHROMIUM_PATH ? [process.env.CHROMIUM_PATH] : usual;
  return places.find((place) => fs.existsSync(place));
}

/** Finds a Chromium, or installs Debian's where this may (as root, with apt-get). Returns false, having said what to do, where it can't. */
export function provideBrowser() {
  if (findBrowser()) return true;
  const mayInstall = process.getuid?.() === 0 && spawnSync('apt-get', ['--version']).status === 0;
  if (mayInstall && !process.env.CHROMIUM_PATH) {
    const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    const run = (...words) =>
      spawnSync('apt-get', words, { env: environment, stdio: ['ignore', 'ignore', 'inherit'] }).status === 0;
    console.log('Installing Chromium for the extension tests');
    if (run('update', '-qq') && run('install', '-y', '-qq', 'chromium') && findBrowser()) return true;
  }
  console.log('The extension tests need Chromium: install it, or name it in CHROMIUM_PATH.');
  return false;
}
