/** The line: text → syntax tree → design → lattice → plan. One call a version of a file; never throws. */
import type { SyntaxTree } from '../grammar/tree/syntax-tree.ts';
import { inOrderOfPlace } from '../grammar/problems/problem.ts';
import { buildFiles } from './design/builders/build-files.ts';
import type { Design } from './design/design.ts';
import { loadFiles } from './design/files/load-files.ts';
import type { NameIndex } from './design/names/name-index.ts';
import { nowhere, type SourceFile, type SourceFiles, type SourcePlace } from './design/files/source-file.ts';
import { benchProblems } from './lattice/checks/bench-checks.ts';
import { panelQuantity } from './design/values/panel-quantity.ts';
import { frameProblems } from './lattice/checks/frame-checks.ts';
import { layOutPanel } from './lattice/lay-out-panel.ts';
import type { LaidPanel } from './lattice/laid-panel.ts';
import { missedStrips } from './lattice/checks/missed-strips.ts';
import { collisionProblems } from './lattice/checks/strip-collisions.ts';
import { stripProblems } from './lattice/checks/strip-checks.ts';
import { problemsHere } from './lattice/checks/problems-here.ts';
import { raisedAt } from './lattice/checks/raised-problem.ts';
import type { MarkedKinds } from './shop/marks/marked-kinds.ts';
import { objectProblems } from './shop/object-problems.ts';
import { lastOf } from './shop/stages.ts';
import { textFingerprint } from './shop/text-fingerprint.ts';
import { stickProblems } from './shop/stock/stick-checks.ts';
import { placementProblems } from './shop/work/placement-problems.ts';
import { markKinds } from './shop/marks/mark-kinds.ts';
import { unknownWoods } from './shop/wood/unknown-woods.ts';
import { type NestedBlank, nestBlanks, withBlanks } from './shop/blanks/nest-blanks.ts';
import { writeProblems, type WrittenProblem } from './words/write-words.ts';

export interface Analysis {
  readonly text: string;
  /** Names this state of the text and of all the files it uses. */
  readonly revision: string;
  /** The text itself first, then the files it uses; ranges of file n are counted from n times `fileStride`. */
  readonly files: SourceFiles;
  readonly tree: SyntaxTree;
  readonly names: NameIndex;
  readonly design: Design;
  /** Panels that could be laid out; one with an error of its own is left out. */
  readonly panels: readonly LaidPanel[];
  /** Blanks with the panels that are sawn from them. */
  readonly blanks: readonly NestedBlank[];
  /** Equal pieces and strips over all panels, each with its mark and numbers. */
  readonly kinds: MarkedKinds;
  /** In order of place, each in the text itself; only a related place may be in a used file. */
  readonly problems: readonly WrittenProblem[];
  /** True when an error keeps part of the design out of the plan. */
  readonly incomplete: boolean;
}

/** Analyses a text that stands at `place`, from where the files it uses are read. */
export const analyse = (text: string, place: SourcePlace = nowhere): Analysis => lastOf(analyseByStages(text, place));

/** The analysis in stages, each told in words before it is done: who has no more use for it leaves the rest undone. */
export function* analyseByStages(text: string, place: SourcePlace = nowhere): Generator<string, Analysis> {
  yield 'reading';
  const files = loadFiles(text, place);
  const { tree } = files[0].parsed;
  const { design, names, problems: designProblems } = buildFiles(files);
  const laid: ReturnType<typeof layOutPanel>[] = [];
  for (const panel of design.panels) {
    yield `laying out panel ${panel.name}`;
    laid.push(layOutPanel(panel, panelQuantity(design, panel)));
  }
  if (design.blanks.length > 0) yield 'packing blanks';
  const nested = nestBlanks(design);
  const panels = withBlanks(
    laid.flatMap((result) => (result.panel ? [result.panel] : [])),
    nested.blanks,
  );
  yield 'marking pieces';
  const kinds = markMade(panels, nested.blanks, design);
  yield 'checking';
  const raised = [
    ...laid.flatMap((result) => result.problems),
    ...stripProblems(panels),
    ...missedStrips(panels),
    ...collisionProblems(panels),
    ...frameProblems(panels),
    ...benchProblems(design.benches, design.grids, panels),
    ...raisedAt(null, [
      ...nested.problems,
      ...objectProblems(design),
      ...placementProblems(design, panels),
      ...stickProblems({ design, panels, kinds }),
      ...unknownWoods(names),
    ]),
  ];
  const here = problemsHere(raised, files[0]);
  const problems = inOrderOfPlace(writeProblems([...designProblems, ...here], design.units));
  return {
    text,
    revision: textFingerprint(files.flatMap(textsOf).join('\0')),
    files,
    tree,
    names,
    design,
    panels,
    blanks: nested.blanks,
    kinds,
    problems,
    incomplete: problems.some((problem) => problem.severity === 'error'),
  };
}

/** All that a file says: its own text, and those of the drawings it takes outlines from. */
const textsOf = ({ text, drawings }: SourceFile): string[] => [
  text,
  ...[...drawings.values()].flatMap((drawing) => (drawing.kind === 'text' ? [drawing.text] : [])),
];

/** The analysis with its blanks packed otherwise: other counts of what they are made of. */
export const repacked = (analysis: Analysis, blanks: readonly NestedBlank[]): Analysis => ({
  ...analysis,
  blanks,
  kinds: markMade(analysis.panels, blanks, analysis.design),
});

const markMade = (panels: readonly LaidPanel[], blanks: readonly NestedBlank[], { kits }: Design): MarkedKinds =>
  markKinds([...panels, ...blanks.flatMap(({ laid }) => laid)], kits);
