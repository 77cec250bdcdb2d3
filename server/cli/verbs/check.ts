/** `halflap check`: says what is wrong in each file. */
import { analyse } from '../../analyse.ts';
import { readArguments } from '../arguments.ts';
import { problemLines } from '../problem-lines.ts';
import { withProgressLine } from '../progress-line.ts';
import { placeOf, readSource } from '../read-source.ts';
import type { Verb } from '../verb.ts';
import { exitCode, WrongUsage } from '../wrong-usage.ts';

export const check: Verb = {
  summary: 'say what is wrong in each file',
  help: `halflap check FILE…

Prints every problem as file:line:column: severity CODE message.
Exit code 0: no errors (there may be warnings); 1: errors; 2: the command could not be run.

  FILE     a .lap file, or - for standard input
  --help   this text
`,
  async run(args, terminal) {
    const { positionals } = readArguments(args, {});
    if (positionals.length === 0) throw new WrongUsage('name at least one .lap file, or “-” for standard input');
    if (positionals.filter((file) => file === '-').length > 1) throw new WrongUsage('“-” can be read only once');
    const sources = await Promise.all(positionals.map((file) => readSource(file, terminal)));
    let failed = false;
    for (const source of sources) {
      const { problems, files } = withProgressLine(terminal, `checking ${source.name}`, () =>
        analyse(source.text, placeOf(source)),
      );
      failed ||= problems.some(({ severity }) => severity === 'error');
      await terminal.write(problemLines(source, problems, files));
    }
    return failed ? exitCode.designHasErrors : exitCode.fine;
  },
};
