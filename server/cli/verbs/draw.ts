/** `halflap draw`: one panel at full size. */
import { analyse, type Analysis } from '../../analyse.ts';
import { drawPanel } from '../../drawing/draw-panel.ts';
import { writeSvg } from '../../drawing/write-svg.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import { textFingerprint } from '../../shop/text-fingerprint.ts';
import { oneOf, onlyFile, readArguments } from '../arguments.ts';
import { destinationOf, outputHelp, outputOptions } from '../output-options.ts';
import { problemLines } from '../problem-lines.ts';
import { withProgressLine } from '../progress-line.ts';
import { readSource } from '../read-source.ts';
import type { Verb } from '../verb.ts';
import { checkDestination, writeOutput } from '../write-output.ts';
import { exitCode, WrongUsage } from '../wrong-usage.ts';

const formats = ['svg'] as const;

export const draw: Verb = {
  summary: 'draw a panel at full size',
  help: `halflap draw FILE [--panel NAME] [--as svg] [-o PATH] [--force]

Draws one panel, seen from the front, one drawn millimetre to the millimetre. Every strip and every
piece is a path of its own that carries its mark. Problems of the file go to standard error; the
exit code is 1 if there are errors among them.

  FILE                a .lap file, or - for standard input
  --panel NAME        which panel; may be left out where there is only one
  --as svg            the kind of drawing
${outputHelp}`,
  async run(args, terminal) {
    const { values, positionals } = readArguments(args, { ...outputOptions, panel: { type: 'string' } });
    oneOf('--as', values.as, formats, 'svg');
    const destination = destinationOf(values);
    const source = await readSource(onlyFile(positionals), terminal);
    await checkDestination(destination, source);
    const analysis = withProgressLine(terminal, `drawing ${source.name}`, () => analyse(source.text));
    terminal.writeError(problemLines(source, analysis.problems));
    const laid = chosenPanel(analysis, values.panel);
    if (!laid) {
      terminal.writeError('halflap draw: nothing is drawn, because the panel has errors\n');
      return exitCode.designHasErrors;
    }
    const svg = writeSvg(
      drawPanel(laid, analysis.kinds, analysis.design.title),
      `${source.name}, text ${textFingerprint(source.text)}`,
    );
    await writeOutput(svg, destination, terminal);
    return analysis.incomplete ? exitCode.designHasErrors : exitCode.fine;
  },
};

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
