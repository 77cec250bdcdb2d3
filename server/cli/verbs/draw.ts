/** `halflap draw`: one panel at full size, one piece or strip with its dimensions, or the placement chart of a panel. */
import { analyse, type Analysis } from '../../analyse.ts';
import { drawChart } from '../../drawing/draw-chart.ts';
import { drawPanel } from '../../drawing/draw-panel.ts';
import { drawPiece } from '../../drawing/draw-piece.ts';
import { drawStrip } from '../../drawing/draw-strip.ts';
import type { PageFile } from '../../drawing/page/page-model.ts';
import { writePageSvg } from '../../drawing/page/write-page-svg.ts';
import { writePdf } from '../../drawing/page/write-pdf.ts';
import { panelPage } from '../../drawing/panel-page.ts';
import { writeSvg } from '../../drawing/write-svg.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import { oneOf, onlyFile, readArguments } from '../arguments.ts';
import { destinationOf, outputHelp, outputOptions, refuseBytesOnTerminal } from '../output-options.ts';
import { problemLines } from '../problem-lines.ts';
import { withProgressLine } from '../progress-line.ts';
import { loadTypefaces } from '../../language/typefaces.ts';
import { writePng } from '../write-png.ts';
import { placeOf, readSource } from '../read-source.ts';
import type { Verb } from '../verb.ts';
import { checkDestination, writeOutput } from '../write-output.ts';
import { exitCode, WrongUsage } from '../wrong-usage.ts';

const formats = ['svg', 'pdf', 'png'] as const;
type Format = (typeof formats)[number];

export const draw: Verb = {
  summary: 'draw a panel at full size, a piece with its dimensions, or a placement chart',
  help: `halflap draw FILE [--panel NAME | --piece MARK | --chart NAME] 
             [--as svg|pdf|png] [-o PATH] [--force]

Draws one panel, seen from the front, one drawn millimetre to the millimetre. Every strip and every
piece is a path of its own that carries its mark. Problems of the file go to standard error; the
exit code is 1 if there are errors among them.

  FILE                a .lap file, or - for standard input
  --panel NAME        which panel; may be left out where there is only one
  --piece MARK        one infill piece or one strip instead, by its mark: a sheet with its dimensions
  --chart NAME        the placement chart of a panel instead: which motif goes where, and which way
                      it is turned, from the front and from the back
  --as svg|pdf|png    the kind of drawing; a PDF has one page as large as the drawing, a PNG 200 dots an inch
${outputHelp}`,
  async run(args, terminal) {
    const { values, positionals } = readArguments(args, { ...outputOptions, ...subjectOptions });
    const format = oneOf('--as', values.as, formats, 'svg');
    const subject = subjectOf(values);
    const destination = destinationOf(values);
    if (format !== 'svg') refuseBytesOnTerminal(`--as ${format}`, destination, terminal);
    const source = await readSource(onlyFile(positionals), terminal);
    await checkDestination(destination, source);
    const analysis = withProgressLine(terminal, `drawing ${source.name}`, () => analyse(source.text, placeOf(source)));
    terminal.writeError(problemLines(source, analysis.problems, analysis.files));
    const picture = drawn(analysis, subject, `${source.name}, text ${analysis.revision}`);
    if (picture === null) {
      terminal.writeError(
        `halflap draw: nothing is drawn, because the ${subject.kind === 'piece' ? 'file' : 'panel'} has errors\n`,
      );
      return exitCode.designHasErrors;
    }
    await writeOutput(await written(picture, format), destination, terminal);
    return analysis.incomplete ? exitCode.designHasErrors : exitCode.fine;
  },
};

const subjectOptions = {
  panel: { type: 'string' },
  piece: { type: 'string' },
  chart: { type: 'string' },
} as const;

/** What is to be drawn; a panel without a name is the only one there is. */
type Subject =
  | { readonly kind: 'panel'; readonly name: string | undefined }
  | { readonly kind: 'piece' | 'chart'; readonly name: string };

function subjectOf(values: Partial<Record<keyof typeof subjectOptions, string>>): Subject {
  const { panel, piece, chart } = values;
  if ([panel, piece, chart].filter((value) => value !== undefined).length > 1)
    throw new WrongUsage('give only one of --panel, --piece and --chart');
  if (piece !== undefined) return { kind: 'piece', name: piece };
  if (chart !== undefined) return { kind: 'chart', name: chart };
  return { kind: 'panel', name: panel };
}

/** A drawing before it has a format: the panel's SVG has patterns of its own, which a page does not know. */
interface Picture {
  readonly svg: () => string;
  readonly page: () => PageFile;
}

const ofPage = (page: PageFile): Picture => ({ svg: () => writePageSvg(page), page: () => page });

async function written(picture: Picture, format: Format): Promise<string | Uint8Array> {
  if (format === 'svg') return picture.svg();
  const typefaces = await loadTypefaces();
  return format === 'png' ? writePng(picture.svg(), typefaces) : writePdf(picture.page(), typefaces);
}

/** The picture, or null where the design's errors leave nothing to draw. */
function drawn(analysis: Analysis, subject: Subject, source: string): Picture | null {
  if (subject.kind === 'piece') return drawnPiece(analysis, subject.name, source);
  const laid = chosenPanel(analysis, subject.name);
  if (!laid) return null;
  if (subject.kind === 'chart') return ofPage(drawChart(analysis, laid, source));
  const drawing = drawPanel(laid, analysis.kinds, analysis.design.title);
  return { svg: () => writeSvg(drawing, source), page: () => panelPage(drawing, source) };
}

function drawnPiece(analysis: Analysis, mark: string, source: string): Picture | null {
  const { pieces, strips } = analysis.kinds;
  const piece = pieces.find((each) => each.mark === mark);
  if (piece) return ofPage(drawPiece(analysis, piece, source));
  const strip = strips.find((each) => each.mark === mark);
  if (strip) return ofPage(drawStrip(analysis, strip, source));
  if (analysis.incomplete) return null;
  const marks = [...pieces, ...strips].map((each) => each.mark);
  throw new WrongUsage(
    marks.length === 0
      ? 'the file has no piece to draw'
      : `no piece has the mark ${mark}; there is ${marks.join(', ')}`,
  );
}

/** The panel asked for, or null if it is in the file but could not be laid out. A name that is not there is WrongUsage. */
function chosenPanel({ design, panels, incomplete }: Analysis, name: string | undefined): LaidPanel | null {
  const names = design.panels.map((panel) => panel.name);
  const wanted = name ?? (names.length === 1 ? names[0] : undefined);
  if (names.length === 0 && incomplete) return null;
  if (names.length === 0) throw new WrongUsage('the file has no panel to draw');
  if (wanted === undefined) throw new WrongUsage(`choose one with --panel: ${names.join(', ')}`);
  if (!names.includes(wanted)) throw new WrongUsage(`no panel is called ${wanted}; there is ${names.join(', ')}`);
  return panels.find(({ panel }) => panel.name === wanted) ?? null;
}
