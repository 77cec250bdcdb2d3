/** Files as the editor names them: documents by their address, paths below the workspace folder, texts open or on disk. */
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { isLibraryPath, libraryAddress } from '../design/files/built-in-libraries.ts';
import { nowhere, type SourcePlace } from '../design/files/source-file.ts';
import { isBelow, lapFilesBelow, pathBelow, readBelow } from '../machine/disk-files.ts';

/** The text of a document that is open in the editor, null where it isn't. */
type OpenText = (uri: string) => string | null;

/** Path on disk of a document, null where it lies on none (an unsaved text, another machine). */
export function diskPath(uri: string): string | null {
  if (!uri.startsWith('file:')) return null;
  try {
    return fileURLToPath(uri);
  } catch {
    return null;
  }
}

/** The last part of a document's address, as people call it. */
export const documentName = (uri: string): string => decodeURIComponent(uri.slice(uri.lastIndexOf('/') + 1));

/** One way to write the address of a document, whatever way an editor has of writing it. */
export function plainAddress(uri: string): string {
  const path = diskPath(uri);
  return path === null ? uri : pathToFileURL(path).href;
}

export class WorkspaceFiles {
  private roots: readonly string[] = [];
  private readonly openText: OpenText;

  constructor(openText: OpenText) {
    this.openText = openText;
  }

  /** The folders that the editor has open, by their addresses. */
  openFolders(uris: readonly string[]): void {
    this.roots = uris.flatMap((uri) => diskPath(uri) ?? []);
  }

  /** The workspace folder of a document: the innermost one that holds it, else its own folder. */
  rootOf(uri: string): string | null {
    const path = diskPath(uri);
    if (path === null) return null;
    const holding = this.roots.filter((root) => isBelow(root, path)).sort((a, b) => b.length - a.length);
    return holding[0] ?? dirname(path);
  }

  /** Where a document stands; `noteRead` is told the address of every file asked for. */
  placeOf(uri: string, noteRead: (address: string) => void): SourcePlace {
    const root = this.rootOf(uri);
    const own = diskPath(uri);
    if (root === null || own === null) return nowhere;
    return {
      path: pathBelow(root, own),
      read: (path) => {
        const file = join(root, path);
        const address = pathToFileURL(file).href;
        noteRead(address);
        const open = this.openText(address);
        return open === null ? readBelow(root, file) : { kind: 'text', text: open };
      },
    };
  }

  /** Addresses of all .lap files in the workspace folder of `uri`. */
  filesBeside(uri: string): string[] {
    const root = this.rootOf(uri);
    return root === null ? [] : lapFilesBelow(root).map((file) => pathToFileURL(file).href);
  }

  /** Addresses of all .lap files in the folders that the editor has open, once each. */
  files(): string[] {
    return [...new Set(this.roots.flatMap(lapFilesBelow))].map((file) => pathToFileURL(file).href);
  }

  /** Paths of all .lap files in the workspace folder of `uri`, as `placeOf` counts them. */
  pathsBeside(uri: string): string[] {
    const root = this.rootOf(uri);
    return root === null ? [] : lapFilesBelow(root).map((file) => pathBelow(root, file));
  }

  /** The text of a file on disk, null where it cannot be read. */
  textAt(address: string): string | null {
    const [path, root] = [diskPath(address), this.rootOf(address)];
    const read = path === null || root === null ? null : readBelow(root, path);
    return read?.kind === 'text' ? read.text : null;
  }

  /** The address of a file that `uri` uses, by its path below the workspace folder. */
  addressOf(path: string, uri: string): string {
    if (isLibraryPath(path)) return libraryAddress(path);
    const root = this.rootOf(uri);
    return root === null || path === '' ? uri : pathToFileURL(join(root, path)).href;
  }
}
