/** One version of a design: a file, standard input, or a file as a revision of git has it. */
import { existsSync } from 'node:fs';
import type { SourcePlace } from '../design/files/source-file.ts';
import { readRevision, revisionPathOf } from './git-revision.ts';
import { decoded, placeOf, readSource, type Source } from './read-source.ts';
import type { Terminal } from './terminal.ts';

export interface Version extends Source {
  readonly place: SourcePlace;
}

/**
 * Reads `name`; an existing file of that name goes before a revision. The files it uses are read beside it, or beside the path
 * `standsAt`, where a copy of it was handed over. Throws WrongUsage.
 */
export async function readVersion(name: string, standsAt: string | undefined, terminal: Terminal): Promise<Version> {
  const revision = revisionPathOf(name);
  if (revision !== null && !existsSync(name)) {
    const { bytes, place } = readRevision(revision, process.cwd());
    return { name, text: decoded(bytes, name), path: null, place };
  }
  const source = await readSource(name, terminal);
  return { ...source, place: placeOf(standsAt === undefined ? source : { path: standsAt }) };
}
