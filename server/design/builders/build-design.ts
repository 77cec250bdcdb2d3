/** Syntax tree → design: names resolved, quantities computed, everything that is sound. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import type { Name, TextLiteral } from '../../../grammar/tree/syntax-nodes.ts';
import type { SyntaxTree, TitleDeclaration, UnitsDeclaration } from '../../../grammar/tree/syntax-tree.ts';
import { buildGrid } from './build-grid.ts';
import { buildMotif } from './build-motif.ts';
import { buildOnce } from './build-once.ts';
import { buildOutline } from './build-outline.ts';
import { buildObjects } from './build-objects.ts';
import { buildPanel } from './build-panel.ts';
import { buildShop } from './build-shop.ts';
import { checkNames } from '../names/check-names.ts';
import { byName, declared } from '../names/declared.ts';
import type { DesignContext } from '../design-context.ts';
import type { Design } from '../design.ts';
import { type Given, nothingGiven } from '../names/given.ts';
import { indexNames, type NameIndex } from '../names/name-index.ts';
import { readNumbers } from '../values/named-numbers.ts';
import { checkCurrencies } from '../values/read-money.ts';
import type { Quantity } from '../values/quantity.ts';
import type { DrawingRead } from '../files/source-file.ts';

export interface BuiltDesign {
  /** What the tree declares and what it was given. */
  readonly design: Design;
  readonly problems: readonly Problem[];
  readonly names: NameIndex;
  /** The value of every `let`, given ones included; those without a value left out. */
  readonly numbers: ReadonlyMap<string, Quantity>;
}

/**
 * What a tree says, with what the files it uses give it. Never throws: whatever is broken is reported once and left out,
 * with all that depends on it.
 */
export function buildDesign(
  tree: SyntaxTree,
  given: Given = nothingGiven,
  drawings: ReadonlyMap<TextLiteral, DrawingRead> = new Map(),
): BuiltDesign {
  const names = indexNames(tree, given.definitions);
  const problems = [...checkNames(tree, names, given), ...checkCurrencies(tree, given.design)];
  const report = (problem: Problem): void => void problems.push(problem);
  const title = single<TitleDeclaration>(tree, 'title', report)?.text.text ?? null;
  const units = single<UnitsDeclaration>(tree, 'units', report)?.unit ?? 'mm';
  const { numbers, ...reader } = readNumbers(declared(tree, 'let'), given.numbers, { units, report });
  const context: DesignContext = { units, report, drawings, ...reader };
  const { design: others } = given;
  const shop = buildShop(tree, given, context);
  const stripsByName = byName(shop.strips);
  const grids = [
    ...others.grids,
    ...declared(tree, 'grid').flatMap((grid) => buildGrid(grid, stripsByName, context) ?? []),
  ];
  const motifs = [
    ...others.motifs,
    ...buildOnce(
      declared(tree, 'motif'),
      others.motifs,
      { build: (motif, find) => buildMotif(motif, find, context), relation: 'filled with' },
      context,
    ),
  ];
  const outlines = [
    ...others.outlines,
    ...buildOnce(
      declared(tree, 'outline'),
      others.outlines,
      { build: (outline, find) => buildOutline(outline, find, context), relation: 'made of' },
      context,
    ),
  ];
  const parts = {
    strips: stripsByName,
    grids: byName(grids),
    motifs: byName(motifs),
    outlines: byName(outlines),
    meant: ({ range }: Name) => names.references.find(({ range: at }) => at.start === range.start)?.definition ?? null,
  };
  const panels = [
    ...others.panels,
    ...declared(tree, 'panel').flatMap((panel) => buildPanel(panel, parts, context) ?? []),
  ];
  const base = { ...others, title, units, ...shop, grids, motifs, outlines, panels };
  const design = { ...base, ...buildObjects(tree, base, given, context) };
  return { design, problems, names, numbers };
}

/** The only declaration of a kind; later ones are reported. */
function single<Found extends TitleDeclaration | UnitsDeclaration>(
  tree: SyntaxTree,
  kind: Found['kind'],
  report: DesignContext['report'],
): Found | undefined {
  const [first, ...others] = tree.declarations.filter((found): found is Found => found.kind === kind);
  for (const other of others) {
    const related = first ? [{ range: first.range, message: 'It is given here first.' }] : [];
    const message = `The file already has its ${kind}. Keep one of the two.`;
    report(problemAt('repeatedProperty', other.keyword, message, related));
  }
  return first;
}
