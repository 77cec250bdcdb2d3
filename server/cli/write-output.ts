/** Output written whole or not at all: to a temporary neighbour first, then renamed into place. */
import { mkdir, open, rename, rm, stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import { reasonOf } from '../machine/reason.ts';
import type { Source } from './read-source.ts';
import { settleFolder, stagedPath, stageFile, sweepStaged } from './staged-files.ts';
import { checkReplaceable, standingTarget, type StandingTarget } from './standing-target.ts';
import type { Terminal } from './terminal.ts';
import { WrongUsage } from './wrong-usage.ts';

export interface Destination {
  /** Null writes to standard output. */
  readonly path: string | null;
  /** Replace a file that is already there. */
  readonly force: boolean;
}

/** Throws WrongUsage, before any work is done, if the destination may not be written. */
export async function checkDestination({ path, force }: Destination, source: Source): Promise<void> {
  if (path === null) return;
  const target = await standingTarget(path);
  if (source.path !== null && (await isSame(target, source.path))) {
    throw new WrongUsage(`${path} is the design itself: write somewhere else`);
  }
  await checkTarget(path, target, force);
}

/**
 * Writes a text or bytes to their destination; folders on the way are made. A file is replaced whole, with its mode and
 * owner; what is no file (a pipe, a device) is written through. A failure leaves no file behind and throws WrongUsage.
 */
export async function writeOutput(
  content: string | Uint8Array,
  { path, force }: Destination,
  terminal: Terminal,
): Promise<void> {
  if (path === null) {
    await terminal.write(content);
    return;
  }
  const target = await standingTarget(path);
  await checkTarget(path, target, force);
  try {
    if (target.kind === 'stream') await writeThrough(target.path, content);
    else await replaceWhole(target, content);
  } catch (error) {
    throw new WrongUsage(`cannot write ${path}: ${reasonOf(error)}`);
  }
}

async function checkTarget(named: string, target: StandingTarget, force: boolean): Promise<void> {
  if (target.kind === 'folder' || /[/\\]$/.test(named)) throw new WrongUsage(`${named} is a folder: name a file in it`);
  if (target.kind !== 'file') return;
  if (!force) throw new WrongUsage(`${named} is there already: give --force to replace it`);
  await checkReplaceable(named, target.path, target.stats);
}

async function writeThrough(path: string, content: string | Uint8Array): Promise<void> {
  const stream = await open(path, 'w');
  try {
    await stream.writeFile(content);
  } finally {
    await stream.close();
  }
}

async function replaceWhole(target: StandingTarget, content: string | Uint8Array): Promise<void> {
  const folder = dirname(target.path);
  const staged = stagedPath(folder);
  try {
    await mkdir(folder, { recursive: true });
    await sweepStaged(folder);
    await stageFile(staged, content, target.kind === 'file' ? target.stats : null);
    await rename(staged, target.path);
  } catch (error) {
    await rm(staged, { force: true }).catch(() => undefined);
    throw error;
  }
  await settleFolder(folder);
}

/** Whether the target is the file at `path`, under whatever name. */
async function isSame(target: StandingTarget, path: string): Promise<boolean> {
  if (target.kind !== 'file') return false;
  const other = await stat(path).catch(() => null);
  return other !== null && other.dev === target.stats.dev && other.ino === target.stats.ino;
}
