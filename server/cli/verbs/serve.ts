/** `halflap serve`: the language server, for any editor that speaks the protocol. */
import { readArguments } from '../arguments.ts';
import type { Verb } from '../verb.ts';
import { exitCode, WrongUsage } from '../wrong-usage.ts';

export const serve: Verb = {
  summary: 'run the language server on standard input and output',
  help: `halflap serve

Runs the language server (LSP) on standard input and output until the editor ends it.

  --stdio   accepted, for editors that always give it
  --help    this text
`,
  async run(args, terminal) {
    const { positionals } = readArguments(args, { stdio: { type: 'boolean' } });
    if (positionals.length > 0) throw new WrongUsage('serve takes no files: the editor sends them');
    await terminal.serveEditor();
    return exitCode.fine;
  },
};
