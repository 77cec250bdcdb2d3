/** Used files read from a folder, or out of a table, for tests. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { FileReader } from '../../server/design/files/source-file.ts';

/** Reads files below `folder`. */
export const readFrom =
  (folder: string): FileReader =>
  (path) =>
    existsSync(join(folder, path))
      ? { kind: 'text', text: readFileSync(join(folder, path), 'utf8') }
      : { kind: 'missing' };

/** Reads the texts of a table, by their paths. */
export const readTable =
  (texts: Readonly<Record<string, string>>): FileReader =>
  (path) => {
    const text = texts[path];
    return text === undefined ? { kind: 'missing' } : { kind: 'text', text };
  };
