#!/usr/bin/env node
/**
 * Speaks the part of the desktop program's command line that @vscode/test-electron uses, so that extension tests
 * run where no desktop VS Code can be had. Ends with the tests' code, or 124 when no result came in time.
 * VSCODE_HOST_TIMEOUT seconds (300), VSCODE_HOST_ARTIFACTS folder for a failure's picture and logs, VSCODE_HOST_VERBOSE.
 */
import fs from 'node:fs';
import path from 'node:path';
import { startHost } from './start-host.mjs';

const arguments_ = process.argv.slice(2);
const valuesOf = (name) =>
  arguments_.filter((argument) => argument.startsWith(`--${name}=`)).map((argument) => argument.slice(name.length + 3));
const folder = arguments_.find((argument) => !argument.startsWith('--'));
const limit = Number(process.env.VSCODE_HOST_TIMEOUT ?? 300) * 1000;
const verbose = Boolean(process.env.VSCODE_HOST_VERBOSE);

const startUpNoise = new RegExp(
  '^(' +
    [
      ...['Ignoring fetching additional', 'Creation of workbench contribution', '\\[reconnection-grace-time\\]'],
      ...['Resolv(ing|ed) connection token', 'Creating a socket', 'Updating additional builtin extensions cache'],
      ...['Loading development extension', 'Started local extension host', '\\[(Service Worker|perf)', 'Invalidating'],
      ...['Completed', 'Auto updating', 'ChatSessionStore:', 'ComputeTargetPlatform', 'The web worker extension host'],
    ].join('|') +
    ')',
);

function log(type, text) {
  if (verbose) process.stderr.write(`[${type}] ${text}\n`);
  else if (type === 'outside') process.stderr.write(`Stopped a request to the outside: ${text}\n`);
  else if (type !== 'server' && !startUpNoise.test(text)) {
    (type === 'error' || type === 'warn' ? process.stderr : process.stdout).write(`${text}\n`);
  }
}

let host;
let ending;

/** Closes the host and leaves with `code`; a second call waits for the first. */
function end(code, reason) {
  return (ending ??= endOnce(code, reason));
}

async function endOnce(code, reason) {
  if (reason) process.stderr.write(`${reason}\n`);
  const artifacts = process.env.VSCODE_HOST_ARTIFACTS;
  if (host && code !== 0 && artifacts) {
    fs.mkdirSync(artifacts, { recursive: true });
    await host.page.screenshot({ path: path.join(artifacts, 'window.png'), timeout: 5000 }).catch(() => {});
    fs.cpSync(path.join(host.userData, 'logs'), path.join(artifacts, 'logs'), { recursive: true });
  }
  await host?.close();
  process.stdout.write('', () => process.exit(code));
}

for (const [signal, code] of Object.entries({ SIGINT: 130, SIGTERM: 143, SIGHUP: 129 })) {
  process.on(signal, () => void end(code, `Got ${signal}`));
}
const parent = process.ppid;
setInterval(() => {
  if (process.ppid !== parent) void end(143, 'The parent process went away');
}, 1000).unref();
process.stdout.on('error', () => void end(143));
process.stderr.on('error', () => {});
setTimeout(() => void end(124, `No result after ${limit / 1000} s`), limit).unref();

try {
  host = await startHost({
    extensionDevelopmentPaths: valuesOf('extensionDevelopmentPath'),
    extensionTestsPath: valuesOf('extensionTestsPath').at(-1),
    folder,
    log,
  });
  await end(await host.exit);
} catch (error) {
  await end(1, error.stack);
}
