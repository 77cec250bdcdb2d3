/** Files that come with the program: beside it once it is bundled, in their packages when it runs from its source. */
import { existsSync, realpathSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import carriedFiles from './carried-files.json' with { type: 'json' };
import { reasonOf } from './reason.ts';

/** Where `name` lies beside the bundled program, or null when it runs from its source. */
export function besideTheProgram(name: string): string | null {
  const program = programFile();
  if (program === null) return null;
  const path = join(dirname(program), name);
  return existsSync(path) ? path : null;
}

/** A file that the program brings along; the bundle copies each from its package, see .config/bundle.mjs. */
export type CarriedFile = keyof typeof carriedFiles;

/** The bytes of a file that comes with the program. */
export async function readCarried(name: CarriedFile): Promise<Uint8Array> {
  const path = besideTheProgram(name) ?? inItsPackage(carriedFiles[name]);
  if (path === null) throw new Error(`${name}, which belongs beside the program, is missing`);
  return readFile(path);
}

function inItsPackage(specifier: string): string | null {
  const program = programFile();
  if (program === null) return null;
  try {
    return createRequire(program).resolve(specifier);
  } catch (error) {
    throw new Error(`${specifier} is missing: ${reasonOf(error)}`, { cause: error });
  }
}

function programFile(): string | null {
  const program = process.argv[1];
  return program !== undefined && existsSync(program) ? realpathSync(program) : null;
}
