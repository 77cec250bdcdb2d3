/** What the shop works with: woods, sheets, resins, finishes, the bench and its strips. */
import type { SyntaxTree } from '../../../grammar/tree/syntax-tree.ts';
import { buildBench } from './build-bench.ts';
import { buildFinish, buildSheet, buildWood } from './build-materials.ts';
import { buildResin } from './build-resin.ts';
import { buildStrip } from './build-strip.ts';
import { declared } from '../names/declared.ts';
import type { DesignContext } from '../design-context.ts';
import type { Design } from '../design.ts';
import { faceFromKerf } from '../values/face-from-kerf.ts';
import type { Given } from '../names/given.ts';

export type Shop = Pick<Design, 'woods' | 'sheets' | 'resins' | 'finishes' | 'benches' | 'strips'>;

/** The shop a tree declares, with what is given. Broken declarations are left out. */
export function buildShop(tree: SyntaxTree, given: Given, context: DesignContext): Shop {
  const { design: others } = given;
  const benchBlocks = declared(tree, 'bench');
  const benches = [...others.benches, ...benchBlocks.map((bench) => buildBench(bench, context))];
  const mayBeUnread =
    given.incomplete ||
    tree.unreadNames.length > 0 ||
    tree.unnamed.includes('bench') ||
    benchBlocks.some(({ incomplete }) => incomplete);
  const faces = faceFromKerf({ benches, mayBeUnread }, declared(tree, 'grid'), context);
  return {
    woods: [...others.woods, ...declared(tree, 'wood').map((wood) => buildWood(wood, context))],
    sheets: [...others.sheets, ...declared(tree, 'sheet').flatMap((sheet) => buildSheet(sheet, context) ?? [])],
    resins: [...others.resins, ...declared(tree, 'resin').flatMap((resin) => buildResin(resin, context) ?? [])],
    finishes: [...others.finishes, ...declared(tree, 'finish').flatMap((finish) => buildFinish(finish, context) ?? [])],
    benches,
    strips: [...others.strips, ...declared(tree, 'strip').flatMap((strip) => buildStrip(strip, faces, context) ?? [])],
  };
}
