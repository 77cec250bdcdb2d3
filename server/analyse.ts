/** The line: text → syntax tree → design → lattice → plan. One call a version of a file; never throws. */
import { parseDocument } from '../grammar/parse-document.ts';
import type { SyntaxTree } from '../grammar/syntax-tree.ts';
import { inOrderOfPlace, type Problem } from '../grammar/problem.ts';
import { buildDesign } from './design/build-design.ts';
import type { Design } from './design/design-model.ts';
import { benchProblems } from './lattice/bench-checks.ts';
import { layOutPanel } from './lattice/lay-out-panel.ts';
import type { LaidPanel } from './lattice/laid-panel.ts';
import type { MarkedKinds } from './shop/marked-kinds.ts';
import { markKinds } from './shop/mark-kinds.ts';

export interface Analysis {
  readonly text: string;
  readonly tree: SyntaxTree;
  readonly design: Design;
  /** Panels that could be laid out; one with an error of its own is left out. */
  readonly panels: readonly LaidPanel[];
  /** Equal pieces and strips over all panels, each with its mark and numbers. */
  readonly kinds: MarkedKinds;
  /** In order of place. */
  readonly problems: readonly Problem[];
  /** True when an error keeps part of the design out of the plan. */
  readonly incomplete: boolean;
}

export function analyse(text: string): Analysis {
  const { tree, problems: syntaxProblems } = parseDocument(text);
  const { design, problems: designProblems } = buildDesign(tree);
  const laid = design.panels.map((panel) => layOutPanel(panel, design.work?.copies));
  const panels = laid.flatMap((result) => (result.panel ? [result.panel] : []));
  const problems = inOrderOfPlace([
    ...syntaxProblems,
    ...designProblems,
    ...laid.flatMap((result) => result.problems),
    ...benchProblems(design.benches, design.grids, panels),
  ]);
  return {
    text,
    tree,
    design,
    panels,
    kinds: markKinds(panels, design.kits),
    problems,
    incomplete: problems.some((problem) => problem.severity === 'error'),
  };
}
