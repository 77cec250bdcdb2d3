/** Syntax tree → design: names resolved, quantities computed, everything that is sound. */
import { problemAt } from '../../grammar/problem-catalogue.ts';
import type { Problem } from '../../grammar/problem.ts';
import type {
  Declaration,
  LetDeclaration,
  MotifDeclaration,
  Name,
  SyntaxTree,
  TitleDeclaration,
  UnitsDeclaration,
} from '../../grammar/syntax-tree.ts';
import { buildGrid } from './build-grid.ts';
import { buildMotif } from './build-motif.ts';
import { buildOutline } from './build-outline.ts';
import { buildPanel } from './build-panel.ts';
import { buildBench, buildStrip } from './build-stock.ts';
import { checkNames } from './check-names.ts';
import type { DesignContext } from './design-context.ts';
import type { Design, Motif, Named } from './design-model.ts';
import { emptyDesign } from './empty-design.ts';
import { evaluateExpression, piNumber } from './evaluate-expression.ts';
import { indexNames } from './name-index.ts';
import type { Quantity } from './quantity.ts';

/** What a tree says. Never throws: whatever is broken is reported once and left out, with all that depends on it. */
export function buildDesign(tree: SyntaxTree): { design: Design; problems: Problem[] } {
  const problems = checkNames(tree, indexNames(tree));
  const report = (problem: Problem): void => void problems.push(problem);
  const title = single<TitleDeclaration>(tree, 'title', report)?.text.text ?? null;
  const units = single<UnitsDeclaration>(tree, 'units', report)?.unit ?? 'mm';
  const numbers = numberReader(declared(tree, 'let'), { units, report });
  const context: DesignContext = { units, report, numberNamed: numbers };
  for (const { name } of declared(tree, 'let')) numbers(name.text);
  const strips = declared(tree, 'strip').flatMap((strip) => buildStrip(strip, context) ?? []);
  const stripsByName = byName(strips);
  const grids = declared(tree, 'grid').flatMap((grid) => buildGrid(grid, stripsByName, context) ?? []);
  const motifs = buildMotifs(declared(tree, 'motif'), context);
  const outlines = declared(tree, 'outline').flatMap((outline) => buildOutline(outline, context) ?? []);
  const parts = { strips: stripsByName, grids: byName(grids), motifs: byName(motifs), outlines: byName(outlines) };
  const panels = declared(tree, 'panel').flatMap((panel) => buildPanel(panel, parts, context) ?? []);
  const benches = declared(tree, 'bench').map((bench) => buildBench(bench, context));
  return {
    design: { ...emptyDesign, title, units, strips, benches, grids, motifs, outlines, panels },
    problems,
  };
}

/** The declarations of a kind; of those with one name, the first. */
function declared<Kind extends Exclude<Declaration['kind'], 'title' | 'units'>>(
  tree: SyntaxTree,
  kind: Kind,
): Extract<Declaration, { readonly kind: Kind }>[] {
  const found = new Map<string, Extract<Declaration, { readonly kind: Kind }>>();
  for (const declaration of tree.declarations) {
    if (!isKind(declaration, kind) || !('name' in declaration)) continue;
    if (!found.has(declaration.name.text)) found.set(declaration.name.text, declaration);
  }
  return [...found.values()];
}

const isKind = <Kind extends Declaration['kind']>(
  declaration: Declaration,
  kind: Kind,
): declaration is Extract<Declaration, { readonly kind: Kind }> => declaration.kind === kind;

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

const byName = <Thing extends Named>(things: readonly Thing[]): ReadonlyMap<string, Thing> =>
  new Map(things.map((thing) => [thing.name, thing]));

/** Computes each `let` once, when it is first asked for. */
function numberReader(
  lets: readonly LetDeclaration[],
  { units, report }: Pick<DesignContext, 'units' | 'report'>,
): DesignContext['numberNamed'] {
  const known = new Map<string, Quantity | null>([['pi', piNumber]]);
  const path: LetDeclaration[] = [];
  const numberNamed = (name: string): Quantity | null => {
    const before = known.get(name);
    if (before !== undefined) return before;
    const declaration = lets.find((candidate) => candidate.name.text === name);
    if (!declaration) return null;
    const loop = path.slice(path.indexOf(declaration));
    if (path.includes(declaration)) {
      report(
        cycle(
          declaration.name,
          loop.map((member) => member.name),
          'computed from',
        ),
      );
      return null;
    }
    path.push(declaration);
    const value = evaluateExpression(declaration.value, { units, report, numberNamed });
    path.pop();
    known.set(name, value);
    return value;
  };
  return numberNamed;
}

/** Builds each motif once, those it is filled with first. */
function buildMotifs(declarations: readonly MotifDeclaration[], context: DesignContext): Motif[] {
  const built = new Map<string, Motif>();
  const path: MotifDeclaration[] = [];
  const build = (declaration: MotifDeclaration): Motif => {
    const before = built.get(declaration.name.text);
    if (before) return before;
    path.push(declaration);
    const motif = buildMotif(declaration, find, context);
    path.pop();
    built.set(motif.name, motif);
    return motif;
  };
  const find = (name: Name): Motif | null => {
    const declaration = declarations.find((candidate) => candidate.name.text === name.text);
    if (!declaration) return null;
    if (!path.includes(declaration)) return build(declaration);
    const loop = path.slice(path.indexOf(declaration)).map((member) => member.name);
    context.report(cycle(name, loop, 'filled with'));
    return null;
  };
  return declarations.map(build);
}

/** A name that leads back to itself through the names of `loop`. */
function cycle(at: Name, loop: readonly Name[], relation: string): Problem {
  const way = [...loop.map(({ text }) => text), at.text].map((text) => `\`${text}\``).join(' → ');
  const related = loop
    .filter((name) => name !== at)
    .map(({ text, range }) => ({ range, message: `\`${text}\` is given here.` }));
  return problemAt('cyclicName', at.range, `\`${at.text}\` is ${relation} itself: ${way}. Break the loop.`, related);
}
