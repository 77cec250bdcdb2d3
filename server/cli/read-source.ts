/** A .lap text from a file or from standard input, and where it finds the files it uses. */
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { homedir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import type { SourcePlace } from '../design/files/source-file.ts';
import { pathBelow, readBelow } from '../machine/disk-files.ts';
import type { Terminal } from './terminal.ts';
import { reasonOf } from '../machine/reason.ts';
import { WrongUsage } from './wrong-usage.ts';

export interface Source {
  /** As the person named it; `<stdin>` for standard input. */
  readonly name: string;
  readonly text: string;
  /** Path on disk, null where there is none: standard input, a revision that git keeps. */
  readonly path: string | null;
}

/** Reads `file`, `-` being standard input. What cannot be read, or is not UTF-8, throws WrongUsage. */
export async function readSource(file: string, terminal: Terminal): Promise<Source> {
  if (file === '-') return { name: '<stdin>', text: decoded(await terminal.readInput(), '<stdin>'), path: null };
  return { name: file, text: decoded(await fileBytes(file), file), path: file };
}

/**
 * Where a source stands: its workspace folder is the nearest one around it that holds `.git`, else its own. Standard
 * input stands in the current folder. A file right in a home folder or at the top of the disk uses only what lies beside it.
 */
export function placeOf({ path }: Pick<Source, 'path'>): SourcePlace {
  const file = resolve(path ?? 'standard-input.lap');
  const own = dirname(file);
  const root = folderUnderGit(own) ?? own;
  const onlyBeside = holdsEverything(root);
  return {
    path: pathBelow(root, file),
    read: (wanted) => (onlyBeside && wanted.includes('/') ? { kind: 'outside' } : readBelow(root, join(root, wanted))),
  };
}

function folderUnderGit(folder: string): string | null {
  for (let above = folder; !holdsEverything(above); above = dirname(above)) {
    if (existsSync(join(above, '.git'))) return above;
  }
  return null;
}

/** The top of a disk or a home folder: what lies below is no one's workspace. */
const holdsEverything = (folder: string): boolean => folder === dirname(folder) || folder === homedir();

async function fileBytes(file: string): Promise<Uint8Array> {
  try {
    return await readFile(file);
  } catch (error) {
    throw new WrongUsage(`cannot read ${file}: ${reasonOf(error)}`);
  }
}

/** UTF-8 bytes as text; anything else throws WrongUsage. */
export function decoded(bytes: Uint8Array, name: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new WrongUsage(`${name} is not UTF-8 text: save it as UTF-8`);
  }
}
