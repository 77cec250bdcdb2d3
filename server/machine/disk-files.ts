/** Files on disk, read only below one folder. */
import { readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { isAbsolute, join, relative, sep } from 'node:path';
import type { FileRead } from '../design/files/source-file.ts';

export function isBelow(root: string, path: string): boolean {
  const way = relative(root, path);
  return way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way);
}

/** The path of a file below a folder, its folders parted by `/`. */
export const pathBelow = (root: string, file: string): string => relative(root, file).split(sep).join('/');

/** A file on disk, if links lead nowhere outside the folder. */
export function readBelow(root: string, file: string): FileRead {
  try {
    if (!isBelow(realpathSync(root), realpathSync(file))) return { kind: 'outside' };
    if (!statSync(file).isFile()) return { kind: 'unreadable', reason: 'it is no file' };
    return { kind: 'text', text: new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(file)) };
  } catch (error) {
    if (error instanceof TypeError) return { kind: 'unreadable', reason: 'it is not UTF-8 text' };
    const code = error instanceof Error && 'code' in error ? error.code : null;
    if (code === 'ENOENT' || code === 'ENOTDIR') return { kind: 'missing' };
    return { kind: 'unreadable', reason: code === 'EACCES' ? 'permission denied' : 'the disk refuses it' };
  }
}

/** So many folders are searched for files; a workspace of designs has a handful. */
const mostFolders = 2000;

/** Paths of all .lap files below a folder, hidden folders and installed packages left out. */
export function lapFilesBelow(root: string): string[] {
  const found: string[] = [];
  const folders = [root];
  for (let searched = 0; searched < mostFolders; searched++) {
    const folder = folders.shift();
    if (folder === undefined) break;
    for (const entry of entriesOf(folder)) {
      const path = join(folder, entry.name);
      if (entry.isFile() && entry.name.endsWith('.lap')) found.push(path);
      else if (entry.isDirectory() && !entry.name.startsWith('.') && entry.name !== 'node_modules') folders.push(path);
    }
  }
  return found;
}

function entriesOf(folder: string) {
  try {
    return readdirSync(folder, { withFileTypes: true });
  } catch {
    return [];
  }
}
