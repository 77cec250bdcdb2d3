/**
 * A folder of files, each of them whole at any moment. A new folder is made beside its place and renamed into it; in one
 * that is there, all files are made first and then take their places one right after the other, since no system can
 * exchange two folders at once. A run that is killed between two of those leaves what it had not yet placed, so
 * that the next can tell.
 */
import { renameSync } from 'node:fs';
import { lstat, mkdir, readdir, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { reasonOf } from '../machine/reason.ts';
import { isStaged, settleFolder, stagedPath, stageFile, sweepStaged } from './staged-files.ts';
import { checkReplaceable, standingTarget, type StandingTarget } from './standing-target.ts';
import type { Destination } from './write-output.ts';
import { WrongUsage } from './wrong-usage.ts';

/** Throws WrongUsage, before any work is done, unless `destination` is a folder that may be made or replaced: one that holds nothing but `names`. */
export async function checkFolder({ path, force }: Destination, names: readonly string[]): Promise<string> {
  if (path === null) throw new WrongUsage('these are several files: name a folder for them with -o');
  const target = await folderAt(path);
  if (target.kind === 'nothing') return path;
  const present = await namesIn(path);
  if (!force) {
    const left = present.some(isStaged) ? ', and a run that was stopped left it half replaced' : '';
    throw new WrongUsage(`${path} is there already${left}: give --force to replace it`);
  }
  for (const name of present.filter((each) => !isStaged(each))) {
    if (!names.includes(name)) throw new WrongUsage(`${path} holds other things (${name}): name another folder`);
    const stats = await lstat(join(path, name));
    if (!stats.isFile()) throw new WrongUsage(`${join(path, name)} is no plain file: name another folder`);
    await checkReplaceable(join(path, name), join(path, name), stats);
  }
  return path;
}

/** Writes `files`, name to text, as the folder `path`. A failure leaves what was there and throws WrongUsage. */
export async function writeFolder(path: string, files: Readonly<Record<string, string>>): Promise<void> {
  const target = await folderAt(path);
  const isNew = target.kind === 'nothing';
  const around = isNew ? dirname(target.path) : target.path;
  const staged = stagedPath(around);
  try {
    await mkdir(around, { recursive: true });
    await sweepStaged(around);
    await mkdir(staged);
    for (const [name, text] of Object.entries(files)) {
      const like = isNew ? null : await lstat(join(target.path, name)).catch(() => null);
      await stageFile(join(staged, name), text, like);
    }
    await settleFolder(staged);
    if (isNew) await rename(staged, target.path);
    else placeAll(Object.keys(files), staged, target.path);
  } catch (error) {
    await rm(staged, { recursive: true, force: true }).catch(() => undefined);
    throw new WrongUsage(`cannot write ${path}: ${reasonOf(error)}`);
  }
  if (!isNew) await rm(staged, { recursive: true, force: true }).catch(() => undefined);
  await settleFolder(around);
}

/** Nothing comes between two renames: this is the one moment at which tables of two runs stand side by side. */
function placeAll(names: readonly string[], from: string, to: string): void {
  for (const name of names) renameSync(join(from, name), join(to, name));
}

async function folderAt(path: string): Promise<StandingTarget> {
  const target = await standingTarget(path);
  if (target.kind !== 'nothing' && target.kind !== 'folder') throw new WrongUsage(`${path} is no folder: name another`);
  return target;
}

async function namesIn(path: string): Promise<string[]> {
  return readdir(path).catch((error: unknown) => {
    throw new WrongUsage(`${path} cannot be used as a folder: ${reasonOf(error)}`);
  });
}
