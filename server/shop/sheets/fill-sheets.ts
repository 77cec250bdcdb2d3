/** Sheets filled one after another, piece by piece, in the best of several orders. */
import { maximum, minimum } from '../../geometry/numbers.ts';
import { signedArea } from '../../geometry/polygons.ts';
import { innerFit, type NestKind, type NestPlace, type Room, type Variant } from './nest-kind.ts';
import type { NoFitTable } from './no-fit-table.ts';
import { placeInTurn } from './place-in-turn.ts';
import type { SheetWorth } from './sheet-bound.ts';

/** Pieces that go together on a sheet of one size, and how many sheets are cut so. */
export interface FilledSheet {
  readonly size: number;
  readonly places: readonly NestPlace[];
  readonly count: number;
}

interface RoomSize extends SheetWorth {
  readonly room: Room;
}

/** What is looked at first when pieces are put in order: the largest of it goes first. */
const measures: readonly ((variant: Variant) => number)[] = [
  ({ ring }) => signedArea(ring),
  ({ bounds }) => Math.max(bounds.right - bounds.left, bounds.top - bounds.bottom),
  ({ bounds }) => bounds.right - bounds.left,
];

/** The cheapest of the fillings, every order with every size first, a filling a stage; one that counts for `enough` ends the search. */
export function* fillSheets(
  kinds: readonly NestKind[],
  sizes: readonly RoomSize[],
  table: NoFitTable,
  enough: number,
): Generator<void, FilledSheet[]> {
  let best: { sheets: FilledSheet[]; worth: number; area: number } | null = null;
  for (const measure of measures)
    for (const preferred of sizes.keys()) {
      const sheets = filledInOrder(kinds, sizes, table, orderOf(kinds, table, measure), preferred);
      const sum = (what: 'worth' | 'area'): number =>
        sheets.reduce((total, { size, count }) => total + count * (sizes[size]?.[what] ?? 0), 0);
      const [worth, area] = [sum('worth'), sum('area')];
      if (!best || worth < best.worth || (worth === best.worth && area < best.area)) best = { sheets, worth, area };
      if (best.worth <= enough && sizes.length === 1) return best.sheets;
      yield;
    }
  return best?.sheets ?? [];
}

function orderOf(
  kinds: readonly NestKind[],
  { variants }: NoFitTable,
  measure: (variant: Variant) => number,
): number[] {
  const ranks = kinds.map((_, kind) => {
    const own = variants.find((variant) => variant.kind === kind);
    return own ? measure(own) : 0;
  });
  return [...kinds.keys()].sort((first, second) => (ranks[second] ?? 0) - (ranks[first] ?? 0));
}

function filledInOrder(
  kinds: readonly NestKind[],
  sizes: readonly RoomSize[],
  table: NoFitTable,
  order: readonly number[],
  preferred: number,
): FilledSheet[] {
  const left = kinds.map(({ count }) => count);
  const sheets: FilledSheet[] = [];
  while (left.some((count) => count > 0)) {
    const filled = nextSheet(left, sizes, table, order, preferred);
    if (!filled) break;
    const held = kinds.map((_, kind) => filled.places.filter((place) => place.kind === kind).length);
    const count = minimum(held.map((each, kind) => (each > 0 ? Math.floor((left[kind] ?? 0) / each) : Infinity)));
    held.forEach((each, kind) => (left[kind] = (left[kind] ?? 0) - each * count));
    sheets.push({ ...filled, count });
  }
  return sheets;
}

/** The cheapest size that takes all that is left; else the preferred one, or the cheapest that takes anything. */
function nextSheet(
  left: readonly number[],
  sizes: readonly RoomSize[],
  table: NoFitTable,
  order: readonly number[],
  preferred: number,
): FilledSheet | null {
  const wanted = left.reduce((sum, count) => sum + count, 0);
  const byWorth = [...sizes.entries()].sort(([, one], [, other]) => one.worth - other.worth || one.area - other.area);
  const filled = new Map<number, FilledSheet>();
  for (const [size, { room }] of byWorth) {
    const sheet = { size, places: filledRoom(left, room, table, order), count: 1 };
    if (sheet.places.length === wanted) return sheet;
    if (sheet.places.length > 0) filled.set(size, sheet);
  }
  return filled.get(preferred) ?? [...filled.values()][0] ?? null;
}

function filledRoom(left: readonly number[], room: Room, table: NoFitTable, order: readonly number[]): NestPlace[] {
  const pieces = order.flatMap((kind) => {
    const variants = table.variants.flatMap((variant, index) =>
      variant.kind === kind && innerFit(variant, room) ? [index] : [],
    );
    return Array.from({ length: left[kind] ?? 0 }, () => ({ piece: kind, variants }));
  });
  return placeInTurn(pieces, [room], table).map(({ piece, variant, x, y }) => ({
    kind: piece,
    turn: table.variants[variant]?.turn ?? 0,
    x: Math.round(x),
    y: Math.round(y),
  }));
}

/** The same rooms one beside another, too far apart for their pieces to meet. */
export function roomsInRow(rooms: readonly Room[]): Room[] {
  const apart = 3 * maximum(rooms.map(({ left, right }) => right - left));
  return rooms.map((room, index) => {
    const by = index * apart;
    return { ...room, left: room.left + by, right: room.right + by };
  });
}
