/** Finds and removes what a run may leave behind: processes by a mark in their environment, folders by their owner. */
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';

const folderPrefix = 'halflap-host-';

export const pause = (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds));

/** A new folder under the temporary directory; its name holds our process id, so that a later run can sweep it. */
export const makeRunFolder = () => fs.mkdtempSync(path.join(os.tmpdir(), `${folderPrefix}${process.pid}-`));

/** Removes folders of runs whose process has gone. */
export function sweepRunFolders() {
  for (const name of fs.readdirSync(os.tmpdir())) {
    const owner = Number(new RegExp(`^${folderPrefix}(\\d+)-`).exec(name)?.[1]);
    if (owner && !isRunning(owner)) fs.rmSync(path.join(os.tmpdir(), name), { recursive: true, force: true });
  }
}

function isRunning(processId) {
  try {
    process.kill(processId, 0);
    return true;
  } catch (error) {
    return error.code !== 'ESRCH';
  }
}

/** Sends `signal`; a process (or group, negative) that has already gone is no error. */
export function signalIfRunning(processId, signal) {
  try {
    process.kill(processId, signal);
  } catch (error) {
    if (error.code !== 'ESRCH') throw error;
  }
}

/** Ids of our processes whose environment holds `mark`. Linux only: elsewhere none is found. */
function markedProcesses(mark) {
  if (!fs.existsSync('/proc/self/environ')) return [];
  const ids = fs.readdirSync('/proc').filter((name) => /^\d+$/.test(name) && Number(name) !== process.pid);
  return ids.map(Number).filter((id) => readEnvironment(id).includes(mark));
}

function readEnvironment(processId) {
  try {
    return fs.readFileSync(`/proc/${processId}/environ`, 'latin1');
  } catch {
    return ''; // gone meanwhile, or another user's
  }
}

/** Waits for marked processes to end, and ends those that linger. */
export async function endMarkedProcesses(mark) {
  for (let round = 0; round < 20; round++) {
    const left = markedProcesses(mark);
    if (left.length === 0) return;
    if (round > 2) for (const id of left) signalIfRunning(id, 'SIGKILL');
    await pause(50);
  }
}
