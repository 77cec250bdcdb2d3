/** What stands at the path an output shall go to; links are followed, never replaced. */
import type { Stats } from 'node:fs';
import { access, constants, lstat, realpath, stat } from 'node:fs/promises';
import { resolve } from 'node:path';
import { hasCode, reasonOf } from '../machine/reason.ts';
import { WrongUsage } from './wrong-usage.ts';

/** `path` is where the bytes go at last, every link followed. */
export type StandingTarget =
  | { readonly kind: 'nothing' | 'folder'; readonly path: string }
  | { readonly kind: 'file'; readonly path: string; readonly stats: Stats }
  /** A pipe, a terminal, a device that takes bytes one after the other: written through, there is nothing to replace. */
  | { readonly kind: 'stream'; readonly path: string };

/** Throws WrongUsage where nothing may be written: a link to nothing, a disk, a socket. */
export async function standingTarget(named: string): Promise<StandingTarget> {
  const stats = await statsAt(named);
  if (stats === null) {
    if (await isLink(named)) throw new WrongUsage(`${named} is a link to nothing: remove it, or name another file`);
    return { kind: 'nothing', path: resolve(named) };
  }
  if (stats.isCharacterDevice() || stats.isFIFO()) return { kind: 'stream', path: named };
  const path = await realpath(named).catch((error: unknown) => {
    throw new WrongUsage(`cannot write ${named}: ${reasonOf(error)}`);
  });
  if (stats.isDirectory()) return { kind: 'folder', path };
  if (stats.isFile()) return { kind: 'file', path, stats };
  throw new WrongUsage(`${named} is a ${stats.isBlockDevice() ? 'disk' : 'socket'}: name a file`);
}

/** Throws WrongUsage for a file that cannot be replaced as it is: one that may not be written, or one with other names. */
export async function checkReplaceable(named: string, path: string, { nlink }: Stats): Promise<void> {
  if (nlink > 1) {
    throw new WrongUsage(
      `${named} has ${nlink} names (hard links), and the others would keep what was there: remove it first, or name another file`,
    );
  }
  await access(path, constants.W_OK).catch((error: unknown) => {
    throw new WrongUsage(`cannot write ${named}: ${reasonOf(error)}`);
  });
}

/** Null where nothing is; what cannot be looked at otherwise is left to the writing to tell. */
async function statsAt(path: string): Promise<Stats | null> {
  try {
    return await stat(path);
  } catch (error) {
    if (hasCode(error, 'ENOENT')) return null;
    throw new WrongUsage(`cannot write ${path}: ${reasonOf(error)}`);
  }
}

async function isLink(path: string): Promise<boolean> {
  const own = await lstat(path).catch(() => null);
  return own?.isSymbolicLink() ?? false;
}
