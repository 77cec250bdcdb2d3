/** Starts the VS Code 1.100 server that stands in v1.100/node_modules, with no gallery and no telemetry. */
import { execFileSync, spawn } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const here = path.dirname(fileURLToPath(import.meta.url));
const serverRoot = path.join(here, 'v1.100/node_modules/code-server/lib/vscode');
const serverMain = path.join(serverRoot, 'out/server-main.js');
const startLimit = 60_000;

/** Makes the two links under which the browser page fetches the server's modules. Throws when not installed. */
function prepareInstallation() {
  if (!fs.existsSync(serverMain)) {
    throw new Error(`The VS Code test host is not installed: run "npm ci" in ${here} and in ${here}/v1.100`);
  }
  for (const name of ['node_modules', 'node_modules.asar']) {
    const link = path.join(serverRoot, name);
    if (!fs.existsSync(link)) fs.symlinkSync('../../..', link, 'junction');
  }
}

function serverEnvironment(extra) {
  const inherited = Object.entries({ ...process.env, ...extra }).filter(
    ([name]) => !/^(VSCODE_(?!HOST_)|ELECTRON_|CODE_SERVER_)/.test(name),
  );
  const gallery = { serviceUrl: '', itemUrl: '', resourceUrlTemplate: '', controlUrl: '', recommendationsUrl: '' };
  return { ...Object.fromEntries(inherited), EXTENSIONS_GALLERY: JSON.stringify(gallery) };
}

/**
 * Starts the server in a process group of its own and waits for its port.
 * @param {{ userData: string, serverData: string, extensions: string, environment: Record<string, string>,
 *           log: (type: string, text: string) => void }} options
 * @returns {{ child: import('node:child_process').ChildProcess, port: Promise<number> }}
 */
export function startVscodeServer({ userData, serverData, extensions, environment, log }) {
  prepareInstallation();
  const flags = [
    ...['--host', '127.0.0.1', '--port', '0', '--without-connection-token', '--accept-server-license-terms'],
    ...['--telemetry-level', 'off', '--disable-telemetry', '--disable-workspace-trust'],
    ...['--disable-getting-started-override', '--enable-smoke-test-driver'],
    ...['--user-data-dir', userData, '--server-data-dir', serverData, '--extensions-dir', extensions],
  ];
  const child = spawn(process.execPath, ['-r', path.join(here, 'orphan-guard.cjs'), serverMain, ...flags], {
    stdio: ['pipe', 'pipe', 'pipe'],
    detached: true,
    env: serverEnvironment({ ...environment, VSCODE_HOST_GUARD: String(process.pid) }),
  });
  return { child, port: portOf(child, log) };
}

/** Installs a packed extension (.vsix) into the folder `extensions`, by the server's own command line; gives what it says. */
export function installExtension({ userData, serverData, extensions, environment, file }) {
  prepareInstallation();
  const folders = ['--user-data-dir', userData, '--server-data-dir', serverData, '--extensions-dir', extensions];
  const flags = ['--install-extension', file, '--force', '--accept-server-license-terms', ...folders];
  return execFileSync(process.execPath, [serverMain, ...flags], {
    env: serverEnvironment(environment),
    encoding: 'utf8',
  });
}

function portOf(child, log) {
  return new Promise((resolve, reject) => {
    let output = '';
    const timer = setTimeout(() => reject(new Error(`The server gave no port:\n${output}`)), startLimit);
    const read = (chunk) => {
      output += chunk;
      log('server', String(chunk).trimEnd());
      const port = /agent listening on (\d+)/.exec(output)?.[1];
      if (port === undefined) return;
      clearTimeout(timer);
      resolve(Number(port));
    };
    child.stdout.on('data', read);
    child.stderr.on('data', read);
    child.once('exit', (code, signal) => {
      clearTimeout(timer);
      reject(new Error(`The server ended (${code ?? signal}):\n${output}`));
    });
  });
}
