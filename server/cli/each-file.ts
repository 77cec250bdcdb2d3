/** A verb over several files: what goes wrong with one does not keep it from the others. */
import { readSource, type Source } from './read-source.ts';
import type { Terminal } from './terminal.ts';
import { exitCode, faultWords, OutputClosed, WrongUsage } from './wrong-usage.ts';

/** Reads and does one file after the other; gives the gravest exit code. */
export async function eachFile(
  verb: string,
  files: readonly string[],
  terminal: Terminal,
  act: (source: Source) => Promise<number>,
): Promise<number> {
  if (files.length === 0) throw new WrongUsage('name at least one .lap file, or “-” for standard input');
  if (files.filter((file) => file === '-').length > 1) throw new WrongUsage('“-” can be read only once');
  let gravest: number = exitCode.fine;
  for (const file of files) {
    const code = await done(file).catch((error: unknown) => {
      if (error instanceof OutputClosed) throw error;
      const isRefused = error instanceof WrongUsage;
      terminal.writeError(`halflap ${verb}: ${isRefused ? error.message : `${file}: ${faultWords(error)}`}\n`);
      return isRefused ? exitCode.wrongUsage : exitCode.fault;
    });
    gravest = Math.max(gravest, code);
  }
  return gravest;

  async function done(file: string): Promise<number> {
    return act(await readSource(file, terminal));
  }
}
