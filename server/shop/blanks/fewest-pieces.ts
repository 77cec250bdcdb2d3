/** The second aim of a packing: on the same number of blanks, places that share more infill pieces. */
import type { BlankPacking, FilledBlank, Place } from './cut-out.ts';
import type { PackingTask } from './packing-task.ts';

/** The infill pieces of a place, by where they lie in the blank: equal keys are one piece. */
export type PiecesOf = (place: Place) => ReadonlySet<string>;

/** Rounds over all cut-outs of a blank; it ends before when none helps. */
const mostRounds = 12;

/**
 * Each cut-out of each blank moved where most of its pieces are those of the others, one after the other, until no move
 * saves a piece. Blanks stay as many as they were; that no other packing takes fewer pieces is not proven.
 */
export const withFewestPieces = (task: PackingTask, packing: BlankPacking, piecesOf: PiecesOf): BlankPacking => ({
  ...packing,
  blanks: packing.blanks.map((filled) => ({ ...filled, places: crowded(task, filled, piecesOf) })),
});

function crowded(task: PackingTask, { places }: FilledBlank, piecesOf: PiecesOf): readonly Place[] {
  let taken = places.map((place) => task.places.indexOf(place));
  for (let round = 0; round < mostRounds; round += 1) {
    const before = taken;
    for (const index of taken.keys()) taken = withBetterPlace(task, taken, index, piecesOf);
    if (before.every((place, index) => place === taken[index])) break;
  }
  return taken.flatMap((place) => task.places[place] ?? []);
}

/** The places with one of them put where it shares most with the others; left where it is unless that shares more. */
function withBetterPlace(task: PackingTask, taken: readonly number[], moved: number, piecesOf: PiecesOf): number[] {
  const others = taken.filter((_, index) => index !== moved);
  const held = new Set(others.flatMap((other) => pieceKeys(task, other, piecesOf)));
  const shared = (place: number): number => pieceKeys(task, place, piecesOf).filter((key) => held.has(key)).length;
  const kind = task.kinds[taken[moved] ?? 0];
  let best = taken[moved] ?? 0;
  let most = shared(best);
  task.places.forEach((_, place) => {
    if (task.kinds[place] !== kind || others.some((other) => task.conflict(other, place))) return;
    const more = shared(place);
    if (more > most) [best, most] = [place, more];
  });
  return taken.map((place, index) => (index === moved ? best : place));
}

function pieceKeys(task: PackingTask, index: number, piecesOf: PiecesOf): string[] {
  const place = task.places[index];
  return place ? [...piecesOf(place)] : [];
}
