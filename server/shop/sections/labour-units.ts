/** How many of a unit one step of the job has, in the whole edition: its own pieces, strips, mixes and metres only. */
import type { StepName } from '../../design/names/step-names.ts';
import type { LabourRate } from '../../design/work-model.ts';
import { sum } from '../../geometry/numbers.ts';
import { keysOf } from '../jigs/key-share.ts';
import type { MarkedKinds } from '../marks/marked-kinds.ts';
import type { ShopPlan } from '../shop-plan.ts';
import { stepOfStock } from '../stock/stock-step.ts';

/** What the units are counted from. */
export type CountedPlan = Pick<
  ShopPlan,
  | 'copies'
  | 'panels'
  | 'blanks'
  | 'pieces'
  | 'strips'
  | 'settings'
  | 'stock'
  | 'bands'
  | 'pours'
  | 'frames'
  | 'boards'
  | 'work'
  | 'kit'
>;

const millimetresPerMetre = 1000;

/** Spares are counted where they are made: not where a lattice is put together or filled. */
export function unitsOf(per: LabourRate['per'], step: StepName, plan: CountedPlan, kinds: MarkedKinds): number {
  const settings = plan.settings.filter((setting) => setting.step === step);
  switch (per) {
    case 'work':
      return 1;
    case 'copy':
      return plan.copies;
    case 'setting':
      return settings.length;
    case 'pass':
      return sum(settings.map(({ notching, pieces, flip }) => notching?.passes ?? pieces * (flip ? 2 : 1)));
    case 'piece':
      return piecesOf(step, plan, kinds);
    case 'strip':
      return step === 'bend bands' ? laminationsOf(plan) : stripsOf(step, plan);
    case 'cell':
      return cellsFilled(plan);
    case 'mix':
      return sum(castIn(step, plan).flatMap(({ layers }) => layers.map(({ mixes }) => mixes)));
    case 'metre':
      return metresOf(step, plan);
  }
}

function piecesOf(step: StepName, plan: CountedPlan, kinds: MarkedKinds): number {
  const keys = (): number => sum(kinds.pieces.map((kind) => keysOf(kind).pieces));
  switch (step) {
    case 'mill strips':
      return stripsOf(step, plan) + totalOf(plan.pieces) + membersOf(plan) + laminationsOf(plan);
    case 'notch strips':
    case 'cut to length':
    case 'assemble':
    case 'flush':
    case 'measure':
      return stripsOf(step, plan);
    case 'frame':
      return membersOf(plan);
    case 'cut infill':
      return totalOf(plan.pieces) - keys();
    case 'cut keys':
      return keys();
    case 'fill the lattice':
      return sum(plan.pieces.map(({ make }) => make));
    case 'pour':
    case 'flatten':
    case 'cast bodies':
      return sum(castIn(step, plan).map(({ castings }) => castings));
    case 'register templates':
    case 'saw outlines':
      return sum(sawnPanels(plan).map(({ quantity }) => quantity));
    case 'bend bands':
      return laminationsOf(plan);
    case 'cut boards':
      return sum(plan.boards.map(({ quantity }) => quantity));
    case 'fill the bags':
    case 'pack':
      return totalOf(plan.pieces);
    case 'fit shapes':
    case 'finish':
    case 'mount':
      return partsOf(plan);
  }
}

const totalOf = (kinds: readonly { readonly total: number }[]): number => sum(kinds.map(({ total }) => total));

/** A lattice is put together of the strips it needs; spares stay beside. */
const stripsOf = (step: StepName, { strips }: CountedPlan): number =>
  ['assemble', 'flush', 'measure'].includes(step) ? sum(strips.map(({ make }) => make)) : totalOf(strips);

const membersOf = ({ frames }: CountedPlan): number =>
  sum(frames.flatMap(({ members, groovePieces }) => [...members, ...groovePieces].map(({ make }) => make)));

const laminationsOf = ({ bands }: CountedPlan): number =>
  sum(bands.map(({ quantity, laminations }) => quantity * sum(laminations.map(({ pieces }) => pieces.length))));

/** Lattices are poured and flattened, bodies cast. */
const castIn = (step: StepName, { pours }: CountedPlan): ShopPlan['pours'] =>
  pours.filter(({ kind }) => kind === (step === 'cast bodies' ? 'body' : 'blank'));

const sawnPanels = ({ panels }: CountedPlan): ShopPlan['panels'] => panels.filter(({ edge }) => edge === 'sawn');

/** What the work is put together of; everything made where nothing is placed. */
function partsOf({ work, copies, panels, boards }: CountedPlan): number {
  return work
    ? copies * sum(work.parts.map(({ placed }) => placed))
    : sum([...panels, ...boards].map(({ quantity }) => quantity));
}

/** Of panels that are made themselves, and of blanks in the place of those sawn from them. */
function cellsFilled({ panels, blanks }: CountedPlan): number {
  const sawn = (panel: string): number =>
    sum(blanks.map(({ copies, places }) => copies * places.filter((place) => place.panel === panel).length));
  const own = panels.map(
    ({ name, quantity, cells }) => Math.max(0, quantity - sawn(name)) * sum(cells.map(({ needed }) => needed)),
  );
  return sum([...own, ...blanks.map(({ copies, cells }) => copies * cells)]);
}

/** Of edge to saw, of band to bend, of strip to notch or to lay, or of the sticks that are cut in the step. */
function metresOf(step: StepName, plan: CountedPlan): number {
  const { bands, boards, stock, strips } = plan;
  const laid = (): number[] => strips.map(({ make, lengthMm }) => make * lengthMm);
  const ofStep: Partial<Record<StepName, () => number[]>> = {
    'saw outlines': () => sawnPanels(plan).map(({ quantity, perimeterMm }) => quantity * perimeterMm),
    'cut boards': () => boards.map(({ quantity, perimeterMm }) => quantity * perimeterMm),
    'bend bands': () =>
      bands.map(({ quantity, laminations }) => quantity * sum(laminations.map(({ lengthMm }) => lengthMm))),
    'notch strips': () => strips.map(({ total, lengthMm }) => total * lengthMm),
    assemble: laid,
    flush: laid,
    measure: laid,
    'mill strips': () => stock.map(({ stickMm }) => stickMm),
  };
  const cut = (): number[] =>
    stock.filter((each) => stepOfStock(each.stock, plan) === step).map(({ stickMm }) => stickMm);
  return sum((ofStep[step] ?? cut)()) / millimetresPerMetre;
}
