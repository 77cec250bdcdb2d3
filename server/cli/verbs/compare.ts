/** `halflap compare`: what changed from one version of a design to another. */
import { analyse } from '../../analyse.ts';
import { type ChangeReport, changeReport } from '../../compare/change-report.ts';
import { compareDesigns } from '../../compare/compare-designs.ts';
import type { ComparedDesign } from '../../compare/compared-design.ts';
import type { DesignChange, WrittenChange } from '../../compare/design-change.ts';
import { changedOverlays, overlaysOf } from '../../compare/overlays-of.ts';
import { allCut, planReuse } from '../../compare/plan-reuse.ts';
import { readCutList } from '../../compare/read-cut-list.ts';
import type { MarkCount, ReusePlan } from '../../compare/reuse-plan.ts';
import { writeOverlaySvg } from '../../compare/overlay-svg.ts';
import { writeChangeHtml } from '../../compare/write-change-html.ts';
import { writeChangeMarkdown, writeChangeText } from '../../compare/write-change-text.ts';
import { oneOf, readArguments } from '../arguments.ts';
import { solverAtHand, usualEffort } from '../../machine/search-effort.ts';
import { planDesign } from '../../plan-design.ts';
import { destinationOf, outputHelp, outputOptions } from '../output-options.ts';
import { problemLines } from '../problem-lines.ts';
import { readSource } from '../read-source.ts';
import { readVersion, type Version } from '../read-version.ts';
import type { Terminal } from '../terminal.ts';
import type { Verb } from '../verb.ts';
import { checkDestination, writeOutput } from '../write-output.ts';
import { WrongUsage } from '../wrong-usage.ts';

const formats = ['text', 'json', 'markdown', 'html', 'svg'] as const;
type Format = (typeof formats)[number];

/** Exit codes as `diff` has them. */
const verdict = { same: 0, different: 1, trouble: 2 } as const;

export const compare: Verb = {
  summary: 'say what changed from one version of a design to another',
  help: `halflap compare OLD NEW [--as text|json|markdown|html|svg] [--cut all|FILE] [--panel NAME] [-o PATH] [--force]

Says what a change of the text means in wood: which pieces get longer, shorter, other bevels or
another count, which are new or gone, how the panels, settings and sticks differ. Exit code 0: the same; 1:
different; 2: trouble, which includes errors in a file that may hide a difference.

  OLD, NEW            a .lap file, - for standard input, or REVISION:path for the file as git has it
                      (an existing file of that name wins; the path counts from the top of the
                      repository, or from here with ./; :path is what is staged)
  --as text|json|…    text is the default; markdown for a pull request; svg lays the two versions of
                      the panels over one another
  --cut all|FILE      what of the old version is already cut, to see what serves in the new one: all,
                      or a list (CSV with mark,count, or JSON; - for standard input)
  --at PATH           the versions are copies of the file at PATH: files they use are read beside it
  --panel NAME        draw this panel alone (html and svg)
${outputHelp}`,
  async run(args, terminal) {
    const { values, positionals } = readArguments(args, {
      ...outputOptions,
      cut: { type: 'string' },
      panel: { type: 'string' },
      at: { type: 'string' },
    });
    const format = oneOf('--as', values.as, formats, 'text');
    const destination = destinationOf(values);
    const [old, now] = await bothVersions(positionals, values, terminal);
    for (const source of [old, now]) await checkDestination(destination, source);
    const [before, after] = [await designOf(old, terminal), await designOf(now, terminal)];
    const cut = await cutCounts(values.cut, before, terminal);
    const change = compareDesigns(before, after);
    const reuse = cut && (await reuseOf(before, after, cut, terminal));
    await writeOutput(written(format, { change, reuse, before, after, panel: values.panel }), destination, terminal);
    if (!change.same) return verdict.different;
    return before.incomplete || after.incomplete ? verdict.trouble : verdict.same;
  },
};

async function bothVersions(
  positionals: readonly string[],
  { cut, at }: { readonly cut?: string; readonly at?: string },
  terminal: Terminal,
): Promise<[Version, Version]> {
  const [old, now, ...others] = positionals;
  if (old === undefined || now === undefined) throw new WrongUsage('name the old version and the new one');
  if (others.length > 0) throw new WrongUsage(`two versions at a time, but ${positionals.length} were given`);
  if ([old, now, cut].filter((each) => each === '-').length > 1) throw new WrongUsage('“-” can be read only once');
  return [await readVersion(old, at, terminal), await readVersion(now, at, terminal)];
}

async function designOf(source: Version, terminal: Terminal): Promise<ComparedDesign> {
  const read = analyse(source.text, source.place);
  const errors = read.problems.filter(({ severity }) => severity === 'error');
  terminal.writeError(problemLines(source, errors, read.files));
  return planDesign(read, source.name, usualEffort());
}

/** What is cut, or null where nothing was said of it. */
async function cutCounts(
  option: string | undefined,
  old: ComparedDesign,
  terminal: Terminal,
): Promise<readonly MarkCount[] | null> {
  if (option === undefined) return null;
  const all = allCut(old);
  if (option === 'all') return all;
  const { name, text } = await readSource(option, terminal);
  const { counts, fault } = readCutList(
    text,
    all.map(({ mark }) => mark),
  );
  if (counts === null) throw new WrongUsage(`--cut ${name}: ${fault}`);
  return counts;
}

async function reuseOf(
  old: ComparedDesign,
  now: ComparedDesign,
  cut: readonly MarkCount[],
  terminal: Terminal,
): Promise<ReusePlan | null> {
  const plan = await planReuse(old, now, cut, await solverAtHand());
  if (!plan) terminal.writeError('halflap compare: no plan of re-use was found; the comparison follows without it\n');
  return plan;
}

interface Compared {
  readonly change: DesignChange;
  readonly reuse: ReusePlan | null;
  readonly before: ComparedDesign;
  readonly after: ComparedDesign;
  readonly panel: string | undefined;
}

function written(format: Format, { change, reuse, before, after, panel }: Compared): string {
  if (format === 'json') return `${JSON.stringify({ ...change, reuse } satisfies WrittenChange, null, 2)}\n`;
  const report = changeReport(change, reuse);
  if (format === 'text') return writeChangeText(report);
  if (format === 'markdown') return writeChangeMarkdown(report);
  const overlay = overlayOf(report, before, after, panel);
  return format === 'svg' ? overlay : writeChangeHtml(report, overlay);
}

function overlayOf(
  { versions }: ChangeReport,
  before: ComparedDesign,
  after: ComparedDesign,
  panel: string | undefined,
): string {
  const overlays = overlaysOf(before, after);
  const chosen =
    panel === undefined ? changedOverlays(overlays) : overlays.filter(({ names }) => names.includes(panel));
  if (panel !== undefined && chosen.length === 0) {
    throw new WrongUsage(
      `no panel is called ${panel}; there is ${overlays.flatMap(({ names }) => names).join(', ') || 'none'}`,
    );
  }
  return writeOverlaySvg(chosen, versions);
}
