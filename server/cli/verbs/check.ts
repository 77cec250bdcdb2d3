/** `halflap check`: says what is wrong in each file. */
import { analyse } from '../../analyse.ts';
import { readArguments } from '../arguments.ts';
import { eachFile } from '../each-file.ts';
import { problemLines } from '../problem-lines.ts';
import { withProgressLine } from '../progress-line.ts';
import { placeOf } from '../read-source.ts';
import type { Verb } from '../verb.ts';
import { exitCode } from '../wrong-usage.ts';

export const check: Verb = {
  summary: 'say what is wrong in each file',
  help: `halflap check FILE…

Prints every problem as file:line:column: severity CODE message.
Exit code 0: no errors (there may be warnings); 1: errors; 2: a file could not be read; the others
are checked all the same.

  FILE     a .lap file, or - for standard input
  --help   this text
`,
  async run(args, terminal) {
    const { positionals } = readArguments(args, {});
    return eachFile('check', positionals, terminal, async (source) => {
      const { problems, files } = withProgressLine(terminal, `checking ${source.name}`, () =>
        analyse(source.text, placeOf(source)),
      );
      await terminal.write(problemLines(source, problems, files));
      const failed = problems.some(({ severity }) => severity === 'error');
      return failed ? exitCode.designHasErrors : exitCode.fine;
    });
  },
};
