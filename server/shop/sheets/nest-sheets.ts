/** The boards of a design on the sheets they are sawn from: any place, the turns that the sheet allows, never mirrored. */
import type { Design } from '../../design/design.ts';
import type { SheetStock } from '../../design/material-model.ts';
import type { Board } from '../../design/work-model.ts';
import { ringWithin } from '../../geometry/coarser-ring.ts';
import { flattenContour } from '../../geometry/flatten-path.ts';
import { grownRings } from '../../geometry/grow-rings.ts';
import { sum } from '../../geometry/numbers.ts';
import type { Point } from '../../geometry/point.ts';
import { areaOf } from '../../geometry/polygons.ts';
import { arithmeticTolerance, marginTolerance, nestingTolerances, placeDecimals } from '../../geometry/tolerance.ts';
import { oneCurrency } from '../money.ts';
import { innerFit, type NestKind, type Room, variantsOf } from './nest-kind.ts';
import { packSheets, type SheetSize, type SheetsPacking } from './pack-sheets.ts';

/** One sheet stock with the boards that are sawn from it. */
export interface NestedSheet {
  readonly sheet: SheetStock;
  /** Boards that go on at least one size; the kinds of the packing. */
  readonly boards: readonly NestedBoard[];
  /** Boards larger than every size. */
  readonly homeless: readonly Board[];
  /** What the value of the packing counts: money where every size has a price in one currency. */
  readonly objective: 'cost' | 'sheets';
  readonly packing: SheetsPacking;
}

export interface NestedBoard {
  readonly board: Board;
  /** Of the edition. */
  readonly count: number;
}

/** Whole units to a millimetre. */
export const unitsPerMm = 10 ** placeDecimals;
/** Chords of the round corners that keep the saw cut, units. */
const cutTolerance = 10;
/** Corners of a curved outline that are worth their time: the work grows with the product of those of two. */
const fewCorners = 32;
/** Moves of pieces while cheaper sheets are looked for. */
export const usualSteps = 3000;

/** Sheet stocks that boards are sawn from, in the order of the file; one without sizes is left out. In stages. */
export function* nestSheets(design: Design, steps = usualSteps): Generator<void, NestedSheet[]> {
  const nested: NestedSheet[] = [];
  for (const sheet of design.sheets) {
    const own = design.boards.filter((board) => board.sheet === sheet);
    if (own.length > 0 && sheet.sizes.length > 0)
      nested.push(yield* nestSheet(sheet, own, design.work?.copies ?? 1, steps));
  }
  return nested;
}

function* nestSheet(
  sheet: SheetStock,
  all: readonly Board[],
  workCopies: number,
  steps: number,
): Generator<void, NestedSheet> {
  const { sizes, objective } = sizesOf(sheet);
  const fits = (board: Board): boolean => sizes.some(({ room }) => fitsIn(kindOf(board, sheet, 1), room));
  const boards = all.filter(fits).map((board): NestedBoard => ({ board, count: board.copies * workCopies }));
  const packing = yield* packSheets({
    kinds: boards.map(({ board, count }) => kindOf(board, sheet, count)),
    sizes,
    gap: { width: Math.round(sheet.kerf * unitsPerMm), arcTolerance: cutTolerance },
    need: sum(boards.map(({ board, count }) => count * areaWithCut(board, sheet))),
    steps,
  });
  return { sheet, boards, homeless: all.filter((board) => !fits(board)), objective, packing };
}

const fitsIn = (kind: NestKind, room: Room): boolean => variantsOf([kind]).some((variant) => innerFit(variant, room));

/** Whether a board goes on one of its sheet's sizes, in a turn that the sheet allows. */
export const boardFits = (board: Board): boolean =>
  sizesOf(board.sheet).sizes.some(({ room }) => fitsIn(kindOf(board, board.sheet, 1), room));

function sizesOf({
  sizes,
  margin,
  kerf,
}: SheetStock): Pick<NestedSheet, 'objective'> & { readonly sizes: SheetSize[] } {
  const prices = sizes.flatMap(({ price }) => price ?? []);
  const isPriced = prices.length === sizes.length && !oneCurrency(prices).mixed;
  return {
    objective: isPriced ? 'cost' : 'sheets',
    sizes: sizes.map(({ width, height, price }) => ({
      room: {
        left: units(margin - marginTolerance),
        right: units(width - margin + marginTolerance),
        bottom: units(margin - marginTolerance),
        top: units(height - margin + marginTolerance),
      },
      worth: isPriced && price ? price.amount : 1,
      // Half of each saw cut is its board's own; those along the margin lie half outside.
      area: Math.max(0, width - 2 * margin + kerf) * Math.max(0, height - 2 * margin + kerf),
    })),
  };
}

const units = (mm: number): number => Math.round(mm * unitsPerMm);

function kindOf(board: Board, { turns }: SheetStock, count: number): NestKind {
  const ring = nestedRing(board).map(({ x, y }) => ({ x: units(x), y: units(y) }));
  return { name: board.name, ring, count, turns };
}

/** The outer line as a polygon that holds it; a polygon is its own. Holes stay out of it: nothing is put into them. */
function nestedRing({ outline: { contours } }: Board): Point[] {
  const [outer = []] = contours;
  const ring = flattenContour(outer);
  if (outer.every(({ kind }) => kind === 'line')) return ring;
  const coarser = nestingTolerances.map((tolerance) => {
    const [grown] = grownRings([ring], tolerance, 'sharp');
    return ringWithin(grown ?? ring, tolerance);
  });
  return coarser.find(({ length }) => length <= fewCorners) ?? coarser.at(-1) ?? ring;
}

/** Of the board and half of the saw cut about it, mm²: no packing that leaves holes empty gives it less. */
function areaWithCut({ outline: { contours } }: Board, { kerf }: SheetStock): number {
  const ring = flattenContour(contours[0] ?? []);
  return areaOf(kerf > arithmeticTolerance ? grownRings([ring], kerf / 2, 'round') : [ring]);
}
