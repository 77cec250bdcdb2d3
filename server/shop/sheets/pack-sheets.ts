/**
 * Pieces on the cheapest sheets that were found: sheet after sheet filled piece by piece in several orders, then cheaper
 * choices of sheets tried, in which the pieces overlap at first and are moved apart.
 */
import { heldIn } from './best-spot.ts';
import { Layout, type Spot } from './layout.ts';
import { innerFit, type NestKind, type NestPlace, type Room, variantsOf } from './nest-kind.ts';
import type { NestGap } from './no-fit-polygon.ts';
import { NoFitTable } from './no-fit-table.ts';
import { type Random, seededRandom } from './seeded-random.ts';
import { separate } from './separate.ts';
import { areaOfChoice, boundByArea, choicesFor, type SheetChoice, type SheetWorth, worthOf } from './sheet-bound.ts';
import { type FilledSheet, fillSheets, roomsInRow } from './fill-sheets.ts';

/** A size of sheet: its free inside, and what it counts for by cost and by area. */
export interface SheetSize extends SheetWorth {
  readonly room: Room;
}

export interface SheetsTask {
  readonly kinds: readonly NestKind[];
  readonly sizes: readonly SheetSize[];
  readonly gap: NestGap;
  /** The area that all pieces need with their share of the gaps, in the unit of the sizes' areas. */
  readonly need: number;
  /** Moves of a piece; the same result with the same steps. */
  readonly steps: number;
}

export interface SheetsPacking {
  readonly sheets: readonly FilledSheet[];
  /** What the sheets count for together. */
  readonly value: number;
  /** No sheets that hold everything count for less. */
  readonly bound: number;
}

/** How much larger than need be the choices of sheets are that are tried. */
const slacks = [1, 1.05, 1.1, 1.2, 1.35, 1.6] as const;
/** Choices without success, and the most pieces that are moved apart. */
const mostFailures = 2;
const mostPieces = 120;

/** In stages; every kind must go into one of the sizes. */
export function* packSheets(task: SheetsTask): Generator<void, SheetsPacking> {
  const { kinds, sizes, gap, need } = task;
  if (kinds.length === 0 || sizes.length === 0) return { sheets: [], value: 0, bound: 0 };
  const table = new NoFitTable(variantsOf(kinds), gap);
  const bound = boundByArea(need, sizes);
  const first = yield* fillSheets(kinds, sizes, table, bound);
  const value = worthOf(chosen(first, sizes), sizes);
  const number = kinds.reduce((sum, { count }) => sum + count, 0);
  if (value <= bound || number > mostPieces) return { sheets: first, value, bound };
  const better = yield* cheaperSheets(task, table, value);
  return better
    ? { sheets: better, value: worthOf(chosen(better, sizes), sizes), bound }
    : { sheets: first, value, bound };
}

const chosen = (sheets: readonly FilledSheet[], sizes: readonly SheetSize[]): SheetChoice =>
  sizes.map((_, size) => sheets.reduce((sum, sheet) => sum + (sheet.size === size ? sheet.count : 0), 0));

/** The cheapest choice into which the pieces can be moved; the roomiest are tried first, for they are easier. */
function* cheaperSheets(
  { kinds, sizes, need, steps }: SheetsTask,
  table: NoFitTable,
  value: number,
): Generator<void, FilledSheet[] | null> {
  const random = seededRandom(1);
  let best: FilledSheet[] | null = null;
  let limit = value;
  const choices = slacks
    .flatMap((slack) => choicesFor(need * slack, sizes))
    .filter((choice) => worthOf(choice, sizes) < value)
    .sort((one, other) => areaOfChoice(other, sizes) - areaOfChoice(one, sizes));
  const failed: SheetChoice[] = [];
  for (const choice of choices) {
    const isHopeless = failed.some((larger) => choice.every((count, size) => count <= (larger[size] ?? 0)));
    if (isHopeless || worthOf(choice, sizes) >= limit || failed.length === mostFailures) continue;
    const sheets = yield* movedInto(choice, kinds, sizes, table, Math.round(steps / mostFailures), random);
    if (sheets) [best, limit] = [sheets, worthOf(choice, sizes)];
    else failed.push(choice);
  }
  return best;
}

function* movedInto(
  choice: SheetChoice,
  kinds: readonly NestKind[],
  sizes: readonly SheetSize[],
  table: NoFitTable,
  steps: number,
  random: Random,
): Generator<void, FilledSheet[] | null> {
  const order = choice.flatMap((count, size) => Array.from({ length: count }, () => size));
  const rooms = roomsInRow(order.flatMap((size) => sizes[size]?.room ?? []));
  const pieces = kinds.flatMap(({ count }, kind) => Array.from({ length: count }, () => kind));
  const spots = pieces.map((kind) => anywhere(kind, rooms, table, random));
  if (spots.some((spot) => spot === null)) return null;
  const layout = new Layout(
    kinds,
    table,
    rooms,
    spots.filter((spot) => spot !== null),
  );
  if (!(yield* separate(layout, { left: steps }, random))) return null;
  return order.map((size, index) => ({ size, count: 1, places: placesIn(layout, rooms[index], sizes[size]?.room) }));
}

/** Somewhere in one of the rooms that are large enough. */
function anywhere(kind: number, rooms: readonly Room[], table: NoFitTable, random: Random): Spot | null {
  const fits = table.variants.flatMap((variant, index) =>
    variant.kind === kind ? rooms.flatMap((room) => ({ index, fit: innerFit(variant, room) })) : [],
  );
  const whole = fits.filter(({ fit }) => fit !== null);
  const { index, fit } = whole[Math.floor(random() * whole.length)] ?? {};
  if (index === undefined || !fit) return null;
  const spot = {
    variant: index,
    x: fit.left + random() * (fit.right - fit.left),
    y: fit.bottom + random() * (fit.top - fit.bottom),
  };
  return heldIn(spot, fit);
}

/** The pieces of one room, in the frame of its sheet. */
function placesIn(layout: Layout, room: Room | undefined, own: Room | undefined): NestPlace[] {
  if (!room || !own) return [];
  return layout.spots().flatMap(({ variant, x, y }): NestPlace[] => {
    const { kind, turn, bounds } = layout.variantAt(variant);
    const isHere = x + bounds.left >= room.left && x + bounds.right <= room.right;
    return isHere ? [{ kind, turn, x: Math.round(x - room.left + own.left), y: Math.round(y) }] : [];
  });
}
