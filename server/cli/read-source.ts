/** A .lap text from a file or from standard input. */
import { readFile } from 'node:fs/promises';
import type { Terminal } from './terminal.ts';
import { reasonOf } from './reason.ts';
import { WrongUsage } from './wrong-usage.ts';

export interface Source {
  /** As the person named it; `<stdin>` for standard input. */
  readonly name: string;
  readonly text: string;
  /** Path on disk, null for standard input. */
  readonly path: string | null;
}

/** Reads `file`, `-` being standard input. What cannot be read, or is not UTF-8, throws WrongUsage. */
export async function readSource(file: string, terminal: Terminal): Promise<Source> {
  if (file === '-') return { name: '<stdin>', text: decoded(await terminal.readInput(), '<stdin>'), path: null };
  return { name: file, text: decoded(await fileBytes(file), file), path: file };
}

async function fileBytes(file: string): Promise<Uint8Array> {
  try {
    return await readFile(file);
  } catch (error) {
    throw new WrongUsage(`cannot read ${file}: ${reasonOf(error)}`);
  }
}

function decoded(bytes: Uint8Array, name: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new WrongUsage(`${name} is not UTF-8 text: save it as UTF-8`);
  }
}
