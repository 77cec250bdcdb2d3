/** A folder of files written whole or not at all: made beside its place first, then renamed into it. */
import { randomUUID } from 'node:crypto';
import { mkdir, readdir, realpath, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { reasonOf } from '../language/reason.ts';
import type { Destination } from './write-output.ts';
import { WrongUsage } from './wrong-usage.ts';

/** Throws WrongUsage, before any work is done, unless `destination` is a folder that may be made or replaced: one that holds nothing but `names`. */
export async function checkFolder({ path, force }: Destination, names: readonly string[]): Promise<string> {
  if (path === null) throw new WrongUsage('these are several files: name a folder for them with -o');
  const present = await filesIn(path);
  if (present === null) return path;
  if (!force) throw new WrongUsage(`${path} is there already: give --force to replace it`);
  const others = present.filter((name) => !names.includes(name));
  if (others.length > 0) throw new WrongUsage(`${path} holds other things (${others[0] ?? ''}): name another folder`);
  return path;
}

/** Writes `files`, name to text, as the folder `path`. A failure leaves what was there and throws WrongUsage. */
export async function writeFolder(path: string, files: Readonly<Record<string, string>>): Promise<void> {
  const target = await realpath(path).catch(() => resolve(path));
  const made = join(dirname(target), `.halflap-${randomUUID()}.tmp`);
  const replaced = `${made}-replaced`;
  try {
    await mkdir(made, { recursive: true });
    for (const [name, text] of Object.entries(files)) await writeFile(join(made, name), text, 'utf8');
    if ((await filesIn(target)) === null) await rename(made, target);
    else await exchange(target, made, replaced);
  } catch (error) {
    await rm(made, { recursive: true, force: true }).catch(() => undefined);
    throw new WrongUsage(`cannot write ${path}: ${reasonOf(error)}`);
  }
}

/** Puts `made` in the place of `target`; if that fails, `target` is put back. */
async function exchange(target: string, made: string, replaced: string): Promise<void> {
  await rename(target, replaced);
  try {
    await rename(made, target);
  } catch (error) {
    await rename(replaced, target);
    throw error;
  }
  await rm(replaced, { recursive: true, force: true });
}

/** Names in the folder, null if nothing is there; something that is no folder throws WrongUsage. */
async function filesIn(path: string): Promise<string[] | null> {
  try {
    return await readdir(path);
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return null;
    throw new WrongUsage(`${path} cannot be used as a folder: ${reasonOf(error)}`);
  }
}
