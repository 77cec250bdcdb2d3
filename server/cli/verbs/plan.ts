/** `halflap plan`: the shop plan of a design. */
import { analyse } from '../../analyse.ts';
import { buildPlan } from '../../shop/build-plan.ts';
import type { ShopPlan } from '../../shop/shop-plan.ts';
import { writePlanText } from '../../shop/write-plan-text.ts';
import { oneOf, onlyFile, readArguments } from '../arguments.ts';
import { destinationOf, outputHelp, outputOptions } from '../output-options.ts';
import { problemLines } from '../problem-lines.ts';
import { withProgressLine } from '../progress-line.ts';
import { readSource } from '../read-source.ts';
import type { Verb } from '../verb.ts';
import { checkDestination, writeOutput } from '../write-output.ts';
import { exitCode } from '../wrong-usage.ts';

const writers = {
  json: (plan: ShopPlan): string => `${JSON.stringify(plan, null, 2)}\n`,
  text: writePlanText,
} as const;

const formats = ['json', 'text'] as const;

export const plan: Verb = {
  summary: 'count every strip and piece',
  help: `halflap plan FILE [--as json|text] [-o PATH] [--force]

Writes the shop plan: every kind of strip with its notches, every kind of infill piece with its
length and bevels, and how many of each. Problems of the file go to standard error; with errors in
it, what can be planned is planned, "incomplete" is set, and the exit code is 1.

  FILE                a .lap file, or - for standard input
  --as json|text      json is the default for files and pipes, text on a terminal
${outputHelp}`,
  async run(args, terminal) {
    const { values, positionals } = readArguments(args, outputOptions);
    const destination = destinationOf(values);
    const onTerminal = destination.path === null && terminal.outputIsTerminal;
    const format = oneOf('--as', values.as, formats, onTerminal ? 'text' : 'json');
    const source = await readSource(onlyFile(positionals), terminal);
    await checkDestination(destination, source);
    const analysis = withProgressLine(terminal, `planning ${source.name}`, () => analyse(source.text));
    terminal.writeError(problemLines(source, analysis.problems));
    await writeOutput(writers[format](buildPlan(analysis, source.name)), destination, terminal);
    return analysis.incomplete ? exitCode.designHasErrors : exitCode.fine;
  },
};
