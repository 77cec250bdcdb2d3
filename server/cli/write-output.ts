/** Output written whole or not at all: to a temporary neighbour first, then renamed into place. */
import { randomUUID } from 'node:crypto';
import { mkdir, realpath, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { reasonOf } from '../language/reason.ts';
import type { Source } from './read-source.ts';
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
  const real = await realPathOf(path);
  if (real === null) return;
  if ((await stat(real)).isDirectory()) throw new WrongUsage(`${path} is a folder: name a file in it`);
  if (source.path !== null && real === (await realPathOf(source.path))) {
    throw new WrongUsage(`${path} is the design itself: write somewhere else`);
  }
  if (!force) throw new WrongUsage(`${path} is there already: give --force to replace it`);
}

/** Writes a text or bytes to their destination; folders on the way are made. A failure leaves nothing behind and throws WrongUsage. */
export async function writeOutput(
  content: string | Uint8Array,
  destination: Destination,
  terminal: Terminal,
): Promise<void> {
  if (destination.path === null) {
    await terminal.write(content);
    return;
  }
  const target = (await realPathOf(destination.path)) ?? resolve(destination.path);
  const temporary = join(dirname(target), `.halflap-${randomUUID()}.tmp`);
  try {
    await mkdir(dirname(target), { recursive: true });
    await writeFile(temporary, content, { encoding: 'utf8', flag: 'wx' });
    await rename(temporary, target);
  } catch (error) {
    await rm(temporary, { force: true }).catch(() => undefined);
    throw new WrongUsage(`cannot write ${destination.path}: ${reasonOf(error)}`);
  }
}

/** The path with every link followed, or null if there is nothing there. */
async function realPathOf(path: string): Promise<string | null> {
  try {
    return await realpath(path);
  } catch {
    return null;
  }
}
