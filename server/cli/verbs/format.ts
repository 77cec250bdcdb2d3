/** `halflap format`: lays files out in the one canonical way. */
import { parseDocument } from '../../../grammar/reading/parse-document.ts';
import { printDocument } from '../../../grammar/writing/print-document.ts';
import { readArguments } from '../arguments.ts';
import { eachFile } from '../each-file.ts';
import { problemLines } from '../problem-lines.ts';
import type { Source } from '../read-source.ts';
import { standingTarget } from '../standing-target.ts';
import type { Terminal } from '../terminal.ts';
import { writeProblems } from '../../words/write-words.ts';
import type { Verb } from '../verb.ts';
import { writeOutput } from '../write-output.ts';
import { exitCode, WrongUsage } from '../wrong-usage.ts';

export const format: Verb = {
  summary: 'lay files out in the one way, or check that they are',
  help: `halflap format [--check] FILE…

Rewrites each file in place in the canonical layout: words and comments stay, spaces and line ends move. A file with a
syntax error is left alone and its problems are printed.
Exit code 0: done, or nothing to do; 1: with --check, a file is laid out differently, or a file could not be read as a
design; 2: a file could not be read or written; the others are laid out all the same.

  FILE     a .lap file, or - for standard input, whose layout goes to standard output
  --check  change nothing; name the files that are laid out differently
  --help   this text
`,
  async run(args, terminal) {
    const { positionals, values } = readArguments(args, { check: { type: 'boolean' } });
    return eachFile('format', positionals, terminal, async (source) => {
      const settled = await layOut(source, values.check === true, terminal);
      return settled ? exitCode.fine : exitCode.designHasErrors;
    });
  },
};

/** Whether the file is, or has been, laid out. */
async function layOut(source: Source, onlyCheck: boolean, terminal: Terminal): Promise<boolean> {
  const text = printDocument(source.text);
  if (text === null) {
    terminal.writeError(problemLines(source, writeProblems(parseDocument(source.text).problems, 'mm')));
    return false;
  }
  if (onlyCheck) {
    if (text === source.text) return true;
    await terminal.write(`${source.name} is laid out differently\n`);
    return false;
  }
  if (source.path !== null && text === source.text) return true;
  if (source.path !== null && (await standingTarget(source.path)).kind !== 'file')
    throw new WrongUsage(`${source.name} is no file to write back to: use - for standard input`);
  await writeOutput(text, { path: source.path, force: true }, terminal);
  return true;
}
