/** How many parts of each sort a plan makes, and how long they are together: what minutes are counted by. Lengths mm. */
import type { Words } from '../../../grammar/words.ts';
import { sum } from '../../geometry/numbers.ts';
import { keysOf } from '../jigs/key-share.ts';
import type { MarkedKinds } from '../marks/marked-kinds.ts';
import type { ShopPlan } from '../shop-plan.ts';

/** What is counted. */
export type CountedPlan = Pick<
  ShopPlan<Words>,
  | 'copies'
  | 'panels'
  | 'blanks'
  | 'pieces'
  | 'strips'
  | 'settings'
  | 'stock'
  | 'mill'
  | 'bands'
  | 'pours'
  | 'frames'
  | 'boards'
  | 'work'
  | 'kit'
>;

export const totalOf = (kinds: readonly { readonly total: number }[]): number => sum(kinds.map(({ total }) => total));

/** With spares. */
export const stripsCut = ({ strips }: CountedPlan): number => totalOf(strips);
export const notchedRun = ({ strips }: CountedPlan): number =>
  sum(strips.map(({ total, lengthMm }) => total * lengthMm));

/** A lattice is put together of the strips it needs; spares stay beside. */
export const stripsLaid = ({ strips }: CountedPlan): number => sum(strips.map(({ make }) => make));
export const laidRun = ({ strips }: CountedPlan): number => sum(strips.map(({ make, lengthMm }) => make * lengthMm));

export const sticksRun = ({ stock }: Pick<CountedPlan, 'stock'>): number => sum(stock.map(({ stickMm }) => stickMm));

/** Rejects are milled too; what lies in the rack is milled already. */
export const milledRun = ({ mill }: CountedPlan): number => sum(mill.map(({ millMm }) => millMm ?? 0));

export const membersCut = ({ frames }: CountedPlan): number =>
  sum(frames.flatMap(({ members, groovePieces }) => [...members, ...groovePieces].map(({ make }) => make)));

export const keysToCut = ({ pieces }: MarkedKinds): number => sum(pieces.map((kind) => keysOf(kind).pieces));
export const infillToCut = ({ pieces }: CountedPlan, kinds: MarkedKinds): number => totalOf(pieces) - keysToCut(kinds);
/** Spares are not filled in. */
export const infillMade = ({ pieces }: CountedPlan): number => sum(pieces.map(({ make }) => make));

export const laminationsBent = ({ bands }: CountedPlan): number =>
  sum(bands.map(({ quantity, laminations }) => quantity * sum(laminations.map(({ pieces }) => pieces.length))));
export const bandRun = ({ bands }: CountedPlan): number =>
  sum(bands.map(({ quantity, laminations }) => quantity * sum(laminations.map(({ lengthMm }) => lengthMm))));

/** Pours into lattices, or into moulds of their own. */
const poursInto = (kind: 'blank' | 'body', { pours }: CountedPlan): ShopPlan<Words>['pours'] =>
  pours.filter((pour) => pour.kind === kind);
const castingsOf = (pours: ShopPlan<Words>['pours']): number => sum(pours.map(({ castings }) => castings));
const mixesOf = (pours: ShopPlan<Words>['pours']): number =>
  sum(pours.flatMap(({ layers }) => layers.map(({ mixes }) => mixes)));
export const latticesPoured = (plan: CountedPlan): number => castingsOf(poursInto('blank', plan));
export const latticeMixes = (plan: CountedPlan): number => mixesOf(poursInto('blank', plan));
export const bodiesCast = (plan: CountedPlan): number => castingsOf(poursInto('body', plan));
export const bodyMixes = (plan: CountedPlan): number => mixesOf(poursInto('body', plan));

const sawnPanels = ({ panels }: CountedPlan): ShopPlan<Words>['panels'] => panels.filter(({ edge }) => edge === 'sawn');
export const panelsSawn = (plan: CountedPlan): number => sum(sawnPanels(plan).map(({ quantity }) => quantity));
export const sawnRun = (plan: CountedPlan): number =>
  sum(sawnPanels(plan).map(({ quantity, perimeterMm }) => quantity * perimeterMm));

export const boardsCut = ({ boards }: CountedPlan): number => sum(boards.map(({ quantity }) => quantity));
export const boardRun = ({ boards }: CountedPlan): number =>
  sum(boards.map(({ quantity, perimeterMm }) => quantity * perimeterMm));

/** What the work is put together of; everything made where nothing is placed. */
export const partsPlaced = ({ work, copies, panels, boards }: CountedPlan): number =>
  work
    ? copies * sum(work.parts.map(({ placed }) => placed))
    : sum([...panels, ...boards].map(({ quantity }) => quantity));

/** Of panels that are made themselves, and of blanks in the place of those sawn from them. */
export function cellsFilled({ panels, blanks }: CountedPlan): number {
  const sawn = (panel: string): number =>
    sum(blanks.map(({ copies, places }) => copies * places.filter((place) => place.panel === panel).length));
  const own = panels.map(
    ({ name, quantity, cells }) => Math.max(0, quantity - sawn(name)) * sum(cells.map(({ needed }) => needed)),
  );
  return sum([...own, ...blanks.map(({ copies, cells }) => copies * cells)]);
}
