/** What is made out of panels: blanks, bands, pours, boards, the work and kits. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { SyntaxTree } from '../../../grammar/tree/syntax-tree.ts';
import type { WorkDeclaration } from '../../../grammar/tree/work-syntax.ts';
import { buildBand } from './build-band.ts';
import { buildBlank, checkTakes } from './build-blank.ts';
import { buildBoard } from './build-board.ts';
import { buildKit } from './build-kit.ts';
import { buildPour } from './build-pour.ts';
import { buildWork } from './build-work.ts';
import { byName, declared } from '../names/declared.ts';
import type { DesignContext } from '../design-context.ts';
import type { Design } from '../design.ts';
import type { Given } from '../names/given.ts';

export type Objects = Pick<Design, 'blanks' | 'bands' | 'pours' | 'boards' | 'work' | 'kits'>;

/** The objects a tree declares out of `base`, with what is given. Broken declarations are left out. */
export function buildObjects(
  tree: SyntaxTree,
  base: Pick<Design, 'grids' | 'outlines' | 'panels' | 'strips' | 'sheets' | 'resins' | 'finishes'>,
  { design: others }: Given,
  context: DesignContext,
): Objects {
  const parts = {
    grids: byName(base.grids),
    outlines: byName(base.outlines),
    panels: byName(base.panels),
    strips: byName(base.strips),
    sheets: byName(base.sheets),
    resins: byName(base.resins),
    finishes: byName(base.finishes),
  };
  const isWhole = wholeNames(tree);
  const own = declared(tree, 'blank').flatMap((blank) => buildBlank(blank, { ...parts, isWhole }, context) ?? []);
  checkTakes(own, isWhole).forEach(context.report);
  const blanks = [...others.blanks, ...own];
  const bands = [...others.bands, ...declared(tree, 'band').flatMap((band) => buildBand(band, parts, context) ?? [])];
  const blankParts = { ...parts, blanks: byName(blanks) };
  const pours = [
    ...others.pours,
    ...declared(tree, 'pour').flatMap((pour) => buildPour(pour, blankParts, context) ?? []),
  ];
  const boards = [
    ...others.boards,
    ...declared(tree, 'board').flatMap((board) => buildBoard(board, parts, context) ?? []),
  ];
  const work = onlyWork(tree, context);
  const placed = { ...parts, boards: byName(boards), pours: byName(pours), isWhole };
  return {
    blanks,
    bands,
    pours,
    boards,
    work: work ? buildWork(work, placed, context) : null,
    kits: [...others.kits, ...declared(tree, 'kit').flatMap((kit) => buildKit(kit, parts.panels, context) ?? [])],
  };
}

/** Whether everything of a name could be read: what seems amiss with a thing of which a line is broken may be in that line. */
function wholeNames(tree: SyntaxTree): (name: string) => boolean {
  const broken = new Set(
    tree.declarations.flatMap((each) => ('properties' in each && each.incomplete ? [each.name.text] : [])),
  );
  return (name) => !broken.has(name);
}

/** The work of the file; a second one is reported. */
function onlyWork(tree: SyntaxTree, context: DesignContext): WorkDeclaration | undefined {
  const [first, ...others] = tree.declarations.filter((declaration) => declaration.kind === 'work');
  for (const other of others) {
    const related = first ? [{ range: first.name.range, message: 'The work is given here.' }] : [];
    const message =
      'A file has one work, and this is a second. Move it into a file of its own, which may use this one.';
    context.report(problemAt('secondWork', other.keyword, message, related));
  }
  return first;
}
