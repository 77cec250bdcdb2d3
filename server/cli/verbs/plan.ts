/** `halflap plan`: the shop plan of a design. */
import { analyse, type Analysis } from '../../analyse.ts';
import { usualEffort } from '../../machine/search-effort.ts';
import { planDesign, type Planned } from '../../plan-design.ts';
import { writeHtml } from '../../drawing/page/write-html.ts';
import { writePdf } from '../../drawing/page/write-pdf.ts';
import type { PrintPaper } from '../../drawing/print/page-frame.ts';
import { printSheet } from '../../drawing/print/print-sheet.ts';
import type { ShopPlan } from '../../shop/shop-plan.ts';
import { planCsvFiles, writePlanCsv } from '../../shop/writers/write-plan-csv.ts';
import { writePlanText } from '../../shop/writers/write-plan-text.ts';
import { oneOf, onlyFile, readArguments } from '../arguments.ts';
import { destinationOf, outputHelp, outputOptions, refuseBytesOnTerminal } from '../output-options.ts';
import { problemLines } from '../problem-lines.ts';
import { withLiveLine, withProgressLine } from '../progress-line.ts';
import { placeOf, readSource, type Source } from '../read-source.ts';
import type { Terminal } from '../terminal.ts';
import type { Verb } from '../verb.ts';
import { loadTypefaces } from '../../machine/typefaces.ts';
import { checkFolder, writeFolder } from '../write-folder.ts';
import { checkDestination, type Destination, writeOutput } from '../write-output.ts';
import { exitCode, WrongUsage } from '../wrong-usage.ts';

const formats = ['json', 'text', 'csv', 'html', 'pdf'] as const;
type Format = (typeof formats)[number];

export const plan: Verb = {
  summary: 'count every strip and piece',
  help: `halflap plan FILE [--as json|text|csv|html|pdf] [--paper A4|letter] [-o PATH] [--force]

Writes the shop plan: every kind of strip with its notches, every kind of infill piece with its
length and bevels, how many of each, the sticks to cut them from and the settings. Problems of the file go to standard error; with errors in
it, what can be planned is planned, "incomplete" is set, and the exit code is 1.

  FILE                a .lap file, or - for standard input
  --as FORMAT         json is the default for files and pipes, text on a terminal; csv makes PATH
                      a folder of tables for a spreadsheet; html and pdf are the shop sheet to print
  --paper A4|letter   of the shop sheet, A4 if nothing is said; print it at 100 %, not fitted to the page
${outputHelp}`,
  async run(args, terminal) {
    const { values, positionals } = readArguments(args, { ...outputOptions, paper: { type: 'string' } });
    const destination = destinationOf(values);
    const onTerminal = destination.path === null && terminal.outputIsTerminal;
    const format = oneOf('--as', values.as, formats, onTerminal ? 'text' : 'json');
    const paper = paperFor(format, values.paper);
    if (format === 'pdf') refuseBytesOnTerminal('--as pdf', destination, terminal);
    const source = await readSource(onlyFile(positionals), terminal);
    const write = await writerFor(format, paper, destination, source, terminal);
    const analysis = withProgressLine(terminal, `planning ${source.name}`, () => analyse(source.text, placeOf(source)));
    terminal.writeError(problemLines(source, analysis.problems, analysis.files));
    await write(await plannedUnderTheirEyes(analysis, source, terminal));
    return analysis.incomplete ? exitCode.designHasErrors : exitCode.fine;
  },
};

/** Searches with a line that tells how it stands; Ctrl-C ends the search, and the best plans so far are written. */
async function plannedUnderTheirEyes(analysis: Analysis, { name }: Source, terminal: Terminal): Promise<Planned> {
  const stopping = new AbortController();
  const leave = terminal.onInterrupt(() => stopping.abort());
  try {
    return await withLiveLine(terminal, (say) =>
      planDesign(analysis, name, usualEffort({ signal: stopping.signal, onProgress: say })),
    );
  } finally {
    leave();
  }
}

/** The paper of a printed sheet; asked for with another format, it is WrongUsage. */
function paperFor(format: Format, paper: string | undefined): PrintPaper {
  if (paper !== undefined && format !== 'html' && format !== 'pdf') {
    throw new WrongUsage(`--paper is for --as html and --as pdf, not for ${format}`);
  }
  return oneOf('--paper', paper, ['A4', 'letter'], 'A4');
}

/** What will write the plan; throws WrongUsage at once if the destination may not be written. */
async function writerFor(
  format: Format,
  paper: PrintPaper,
  destination: Destination,
  source: Source,
  terminal: Terminal,
): Promise<(planned: Planned) => Promise<void>> {
  if (format === 'csv') {
    const folder = await checkFolder(destination, planCsvFiles);
    return ({ plan: made }) => writeFolder(folder, writePlanCsv(made));
  }
  await checkDestination(destination, source);
  if (format === 'html' || format === 'pdf') {
    return async (planned) => {
      const typefaces = await loadTypefaces();
      const sheet = printSheet(planned.plan, planned, paper, typefaces);
      const written = format === 'html' ? writeHtml(sheet, typefaces) : await writePdf(sheet, typefaces);
      await writeOutput(written, destination, terminal);
    };
  }
  const textOf = format === 'text' ? writePlanText : (made: ShopPlan): string => `${JSON.stringify(made, null, 2)}\n`;
  return ({ plan: made }) => writeOutput(textOf(made), destination, terminal);
}
