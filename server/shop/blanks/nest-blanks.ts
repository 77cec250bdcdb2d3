/** Blanks of a design: their cut-outs, the packing, and what each filled blank is made of. */
import { measure, words } from '../../../grammar/words.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Design } from '../../design/design.ts';
import type { Blank } from '../../design/work-model.ts';
import { sum } from '../../geometry/numbers.ts';
import { boundsOf } from '../../geometry/polygons.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import { panelRegion } from '../../lattice/grid/panel-region.ts';
import type { LinearSolver } from '../stock/linear-solver.ts';
import { shareOf, type Watch } from '../stock/watch.ts';
import { cellClash } from './cell-clash.ts';
import type { BlankPacking, BlankRoom, CutOut, Place } from './cut-out.ts';
import { cutOutOfPanel, type PanelCutOut } from './cut-out-of-panel.ts';
import { type PiecesOf, withFewestPieces } from './fewest-pieces.ts';
import { layOutBlank, panelOfBlank, placedPieces } from './lay-out-blank.ts';
import { packBlanks, packQuickly } from './pack-blanks.ts';
import { packingTask, type PackingTask } from './packing-task.ts';

/** A blank with its cut-outs in place: one laid blank for each way in which blanks are filled. */
export interface NestedBlank {
  readonly blank: Blank;
  readonly cutOuts: readonly PanelCutOut[];
  readonly task: PackingTask;
  readonly packing: BlankPacking;
  readonly laid: readonly LaidPanel[];
}

/** Every blank packed at once, without search; `problems` tells of cut-outs that find no place. */
export function nestBlanks(design: Design): { readonly blanks: NestedBlank[]; readonly problems: Problem[] } {
  const blanks = design.blanks.map((blank) => nestBlank(blank, design));
  return {
    blanks,
    problems: blanks.flatMap(({ blank, packing }) => packing.homeless.map((cutOut) => withoutPlace(blank, cutOut))),
  };
}

function nestBlank(blank: Blank, design: Design): NestedBlank {
  const workCopies = design.work?.copies ?? 1;
  const cutOuts = blank.takes.flatMap(
    ({ panel, count }) => cutOutOfPanel(panel, blank, design, count * workCopies) ?? [],
  );
  const task = packingTask(cutOuts, roomOf(blank, design), cellClash(cutOuts));
  return laidOut({ blank, cutOuts, task, packing: packQuickly(task), laid: [] });
}

/** The blank with what its packing is made of. */
export const laidOut = (nested: NestedBlank): NestedBlank => ({
  ...nested,
  laid: nested.packing.blanks.flatMap((filled) => layOutBlank(nested.blank, nested.cutOuts, filled) ?? []),
});

/** The same blanks with the best packings that are found while the watch lasts. */
export async function packWell(
  blanks: readonly NestedBlank[],
  solver: LinearSolver,
  watch: Watch,
): Promise<NestedBlank[]> {
  const packed: NestedBlank[] = [];
  for (const [done, nested] of blanks.entries()) {
    const packing = await packBlanks(nested.task, solver, shareOf(watch, blanks.length - done));
    packed.push(laidOut({ ...nested, packing: withFewestPieces(nested.task, packing, piecesInBlank(nested.cutOuts)) }));
  }
  return packed;
}

/** Each place's pieces are worked out when first asked for. */
function piecesInBlank(cutOuts: readonly PanelCutOut[]): PiecesOf {
  const known = new Map<Place, ReadonlySet<string>>();
  return (place) => {
    const before = known.get(place);
    if (before) return before;
    const cutOut = cutOuts.find((each) => each === place.cutOut);
    const keys = new Set(cutOut ? placedPieces(cutOut, place.move).map(({ key }) => key) : []);
    known.set(place, keys);
    return keys;
  };
}

/** Two saw lines keep the width of the cut between them, and the gap that the blank asks for. */
function roomOf(blank: Blank, design: Design): BlankRoom {
  const { grid, width, height, margin, gap, turns, fromBack, matchLaps } = blank;
  const sawCut = design.benches.find(({ bandKerf }) => bandKerf !== null)?.bandKerf ?? 0;
  const stocks = new Set(grid.families.map(({ stock }) => stock.name));
  return {
    width,
    height,
    margin,
    gap: Math.max(gap, sawCut),
    families: panelRegion(panelOfBlank(blank)).families,
    rules: { wood: stocks.size > 1, laps: matchLaps || stocks.size > 1 },
    turns,
    fromBack,
  };
}

/** The panels with as many of each as are sawn from blanks taken off what they make themselves. */
export const withBlanks = (panels: readonly LaidPanel[], blanks: readonly NestedBlank[]): LaidPanel[] =>
  panels.map((laid) => {
    const cutOuts = blanks.flatMap((nested) => nested.cutOuts);
    const taken = sum(cutOuts.filter(({ panel }) => panel === laid.panel).map(({ count }) => count));
    return taken === 0 ? laid : { ...laid, taken, quantity: Math.max(0, laid.quantity - taken) };
  });

function withoutPlace(blank: Blank, cutOut: CutOut): Problem {
  const take = blank.takes.find(({ panel }) => panel.name === cutOut.name);
  const { left, right, bottom, top } = boundsOf(cutOut.sawLine.flat());
  const size = measure.size([right - left, top - bottom]);
  const room = measure.size([blank.width - 2 * blank.margin, blank.height - 2 * blank.margin]);
  const message = words`Panel ${cutOut.name} finds no place in blank ${blank.name}: its saw line measures ${size}, and between the margins there are ${room} for it to lie in by a move that keeps the pattern. Make the blank larger, or allow more turns.`;
  return problemAt('cutOutWithoutPlace', take?.range ?? blank.nameRange, message);
}
