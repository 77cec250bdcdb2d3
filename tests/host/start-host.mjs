/** Opens a VS Code server in a headless browser and ends both, leaving nothing behind. */
import crypto from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import util from 'node:util';
import { keepInside, launchBrowser } from './browser.mjs';
import { endMarkedProcesses, makeRunFolder, pause, signalIfRunning, sweepRunFolders } from './leftovers.mjs';
import { writeOutcomeWrapper } from './outcome-wrapper.mjs';
import { quietSettings } from './quiet-settings.mjs';
import { installExtension, startVscodeServer } from './vscode-server.mjs';

/**
 * @typedef {object} Host
 * @property {import('playwright-core').Page} page the window
 * @property {import('playwright-core').BrowserContext} context
 * @property {Promise<number>} exit the tests' code; 70 page crashed, 71 browser gone, 72 server gone, 73 extension host gone
 * @property {() => Promise<void>} close
 * @property {string} userData
 */

/**
 * @param {object} options
 * @param {string[]} [options.extensionDevelopmentPaths] absolute folders
 * @param {string} [options.packedExtension] a .vsix to install first
 * @param {string} [options.extensionTestsPath] absolute CommonJS module with run()
 * @param {string} [options.folder]
 * @param {object} [options.settings] laid over the quiet ones
 * @param {(type: string, text: string) => void} [options.log]
 * @returns {Promise<Host>}
 */
export async function startHost({
  extensionDevelopmentPaths = [],
  packedExtension,
  extensionTestsPath,
  folder,
  settings,
  log = () => {},
}) {
  sweepRunFolders();
  const run = makeRunFolder();
  const mark = { VSCODE_HOST_RUN: crypto.randomUUID() };
  const profile = path.join(run, 'browser');
  const userData = layOutUserData(run, settings);
  const tests = extensionTestsPath ? writeOutcomeWrapper(run, extensionTestsPath) : null;
  const started = { server: null, context: null };
  const close = once(() => closeAll(started, mark, run));
  try {
    started.context = launchBrowser(profile, mark);
    started.context.catch(() => {}); // awaited below; a failure of the server may come first
    const sockets = path.join(run, 't'); // a short path: Unix sockets allow 107 characters
    fs.mkdirSync(sockets);
    const environment = { ...mark, TMPDIR: sockets, XDG_RUNTIME_DIR: sockets, VSCODE_HOST_BROWSER: profile };
    const folders = { userData, serverData: path.join(run, 'server'), extensions: path.join(run, 'extensions') };
    if (packedExtension) log('server', installExtension({ ...folders, environment, file: packedExtension }));
    const { child, port } = startVscodeServer({ ...folders, environment, log });
    started.server = child;
    const authority = `127.0.0.1:${await port}`;
    const context = await started.context;
    await keepInside(context, authority, log);
    const page = context.pages()[0] ?? (await context.newPage());
    const end = await watchForEnd({ page, context, server: child, tests, log });
    await page.goto(addressOf({ authority, extensionDevelopmentPaths, testsPath: tests?.wrapper, folder }));
    return { page, context, exit: end.exit, close, userData };
  } catch (error) {
    await close();
    throw error;
  }
}

function once(action) {
  let result;
  return () => (result ??= action());
}

function layOutUserData(run, settings) {
  const userData = path.join(run, 'user-data');
  fs.mkdirSync(path.join(userData, 'User'), { recursive: true });
  fs.mkdirSync(path.join(userData, 'logs'));
  fs.mkdirSync(path.join(run, 'extensions'));
  const text = JSON.stringify({ ...quietSettings, ...settings }, null, 2);
  fs.writeFileSync(path.join(userData, 'User/settings.json'), text);
  return userData;
}

/** Sets up every way a run can end. The promise is wrapped, so that awaiting this call doesn't wait for the end. */
async function watchForEnd({ page, context, server, tests, log }) {
  let finish;
  const exit = new Promise((resolve) => (finish = resolve));
  page.on('crash', () => finish(70));
  context.on('close', () => finish(71));
  server.on('exit', () => finish(72));
  await page.exposeFunction('codeAutomationLog', (type, values) => log(type, util.format(...values)));
  await page.exposeFunction('codeAutomationExit', (code) => {
    const diedUnderTests = code === 0 && tests !== null && tests.outcome() !== 'passed';
    finish(diedUnderTests ? 73 : code);
  });
  return { exit };
}

function addressOf({ authority, extensionDevelopmentPaths, testsPath, folder }) {
  const remote = (file) =>
    `vscode-remote://${authority}${path.resolve(file).split(path.sep).map(encodeURIComponent).join('/')}`;
  const payload = [
    ...extensionDevelopmentPaths.map((file) => ['extensionDevelopmentPath', remote(file)]),
    ...(testsPath ? [['extensionTestsPath', remote(testsPath)]] : []),
    ['skipWelcome', 'true'],
    ['skipReleaseNotes', 'true'],
  ];
  const query = new URLSearchParams({ payload: JSON.stringify(payload) });
  query.set(...(folder ? ['folder', path.resolve(folder)] : ['ew', 'true']));
  return `http://${authority}/?${query}`;
}

async function closeAll({ server, context }, mark, run) {
  const browser = await Promise.race([Promise.resolve(context).catch(() => null), pause(10_000)]);
  if (browser) await Promise.race([browser.close().catch(() => {}), pause(5_000)]);
  if (server?.pid) {
    const running = server.exitCode === null && server.signalCode === null;
    const ended = running ? new Promise((resolve) => server.once('exit', resolve)) : Promise.resolve();
    signalIfRunning(-server.pid, 'SIGTERM');
    await Promise.race([ended, pause(3_000)]);
    signalIfRunning(-server.pid, 'SIGKILL');
  }
  await endMarkedProcesses(`VSCODE_HOST_RUN=${mark.VSCODE_HOST_RUN}`);
  fs.rmSync(run, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
}
