/** `halflap draw`: one panel at full size, one piece or strip with its dimensions, the placement chart of a panel, a template to cut by. */
import { analyse } from '../../analyse.ts';
import { writeDxf } from '../../drawing/dxf/write-dxf.ts';
import { type PaperName, paperSizes } from '../../drawing/page/paper-sizes.ts';
import { writePdf } from '../../drawing/page/write-pdf.ts';
import { usualEffort } from '../../machine/search-effort.ts';
import { loadTypefaces } from '../../machine/typefaces.ts';
import { packDesign } from '../../plan-design.ts';
import { oneOf, onlyFile, readArguments } from '../arguments.ts';
import { drawnSubject, type Picture, type Subject, subjectOf, subjectOptions } from '../draw-subject.ts';
import { destinationOf, outputHelp, outputOptions, refuseBytesOnTerminal } from '../output-options.ts';
import { problemLines } from '../problem-lines.ts';
import { withLiveLine, withProgressLine } from '../progress-line.ts';
import { placeOf, readSource } from '../read-source.ts';
import type { Verb } from '../verb.ts';
import { checkDestination, writeOutput } from '../write-output.ts';
import { writePng } from '../write-png.ts';
import { exitCode, WrongUsage } from '../wrong-usage.ts';

const formats = ['svg', 'pdf', 'png', 'dxf'] as const;
type Format = (typeof formats)[number];

export const draw: Verb = {
  summary:
    'draw a panel at full size, a piece with its dimensions, a placement chart, a blank, a sheet, the assembled work, or a template to cut by',
  help: `halflap draw FILE [--panel NAME | --piece MARK | --chart NAME | --blank NAME | --sheet NAME |
             --work | --template NAME]
             [--as svg|pdf|png|dxf] [--paper A4|A3|letter|tabloid] [--from-back] [-o PATH] [--force]

Draws one panel, seen from the front, one drawn millimetre to the millimetre. Every strip and every
piece is a path of its own that carries its mark. Problems of the file go to standard error; the
exit code is 1 if there are errors among them.

  FILE                a .lap file, or - for standard input
  --panel NAME        which panel; may be left out where there is only one
  --piece MARK        one infill piece or one strip instead, by its mark: a sheet with its dimensions
  --chart NAME        the placement chart of a panel instead: which motif goes where, and which way
                      it is turned, from the front and from the back
  --blank NAME        a blank with the cut-outs that are sawn from it, instead; where blanks are filled in
                      several ways, NAME_1, NAME_2, …
  --sheet NAME        a sheet with the boards that are sawn from it, instead; where sheets are cut in several
                      ways, NAME_1, NAME_2, …
  --work              the assembled work, seen from the front, instead: what lies over what, its bands, boards
                      and casts, with its size over all; every part carries its name, every piece its mark
  --template NAME     an outline, panel or board to cut by instead: finished, sand and saw line, the
                      middles of the strips, three numbered nodes to lay it on the lattice as measured;
                      of a band the caul that presses it, of a work that hangs what to drill by
  --from-back         the template as it is laid on the back
  --as FORMAT         svg, png (200 dots an inch), dxf (DXF in millimetres, a layer for each kind of
                      line), or pdf: one page as large as the drawing, but a template on sheets to glue
  --paper NAME        of a template's sheets, A4 if nothing is said; print them at 100 %, not fitted
${outputHelp}`,
  async run(args, terminal) {
    const { values, positionals } = readArguments(args, {
      ...outputOptions,
      ...subjectOptions,
      paper: { type: 'string' },
    });
    const format = oneOf('--as', values.as, formats, 'svg');
    const subject = subjectOf(values);
    const paper = paperFor(format, subject, values.paper);
    const destination = destinationOf(values);
    if (format === 'pdf' || format === 'png') refuseBytesOnTerminal(`--as ${format}`, destination, terminal);
    const source = await readSource(onlyFile(positionals), terminal);
    await checkDestination(destination, source);
    const read = withProgressLine(terminal, `drawing ${source.name}`, () => analyse(source.text, placeOf(source)));
    terminal.writeError(problemLines(source, read.problems, read.files));
    // Packed as for the plan: blanks and marks are then those of its tables.
    const analysis = await withLiveLine(terminal, (say) => packDesign(read, usualEffort({ onProgress: say })));
    const picture = drawnSubject(analysis, subject, `${source.name}, text ${analysis.revision}`);
    if (picture === null) {
      terminal.writeError(
        `halflap draw: nothing is drawn, because the ${subject.kind === 'panel' || subject.kind === 'chart' ? 'panel' : 'file'} has errors\n`,
      );
      return exitCode.designHasErrors;
    }
    await writeOutput(await written(picture, format, paper), destination, terminal);
    return analysis.incomplete ? exitCode.designHasErrors : exitCode.fine;
  },
};

const paperNames = Object.keys(paperSizes) as PaperName[];

/** The paper of a template's sheets; asked for where nothing is tiled, it is WrongUsage, as is a DXF of what has no lines to cut. */
function paperFor(format: Format, { kind }: Subject, paper: string | undefined): PaperName {
  if (format === 'dxf' && (kind === 'chart' || kind === 'sheet' || kind === 'work'))
    throw new WrongUsage(`--as dxf draws what is cut, not ${kind === 'work' ? 'the assembled work' : `a ${kind}`}`);
  if (paper !== undefined && (format !== 'pdf' || kind !== 'template')) {
    throw new WrongUsage('--paper is for --template NAME --as pdf');
  }
  return oneOf('--paper', paper, paperNames, 'A4');
}

async function written(picture: Picture, format: Format, paper: PaperName): Promise<string | Uint8Array> {
  if (format === 'dxf' && picture.dxf) return writeDxf(picture.dxf());
  const typefaces = await loadTypefaces();
  if (format === 'pdf') return writePdf(picture.pages(typefaces, paper), typefaces);
  return format === 'png' ? writePng(picture.svg(typefaces), typefaces) : picture.svg(typefaces);
}
