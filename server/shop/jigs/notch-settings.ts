/** Notching: fence, pin, first stop and blade height for every row of equal notches, in the order with the fewest changes. */
import { radians } from '../../geometry/point.ts';
import { arithmeticTolerance, sameAngle, sameLength } from '../../geometry/tolerance.ts';
import type { NotchRun } from '../../lattice/laid-panel.ts';
import { kindsOfValues } from './distinct-values.ts';
import { fewestChanges } from './fewest-changes.ts';
import type { NotchSetting } from './setting.ts';

/** Equal strips to notch. */
export interface StripBatch {
  readonly mark: string;
  readonly strips: number;
  readonly notches: readonly NotchRun[];
}

/** The notching saw: width of its cut in mm, null while not stated, and how many strips are pushed side by side. */
export interface NotchingSaw {
  readonly kerf: number | null;
  readonly gang: number;
}

/** One row of notches at one setting; `angle` between strip and blade, seen with the notched face on the table. */
export interface NotchRow {
  readonly angle: number;
  readonly notching: NotchSetting;
  readonly marks: readonly string[];
  readonly strips: number;
}

export interface NotchOrder {
  readonly rows: readonly NotchRow[];
  /** How often the pin is set anew, which is what can spoil the closing. */
  readonly pinChanges: number;
  /** Changes of pin, fence, blade height and first stop together. */
  readonly changes: number;
  readonly bound: number;
  readonly proven: boolean;
}

/**
 * Pushes over the blade for `strips` strips of `notches` notches each `width` wide: whole gangs × notches × cuts side
 * by side, ceil(strips / gang) · notches · ceil(width / kerf).
 */
export function passesFor(strips: number, notches: number, width: number, { kerf, gang }: NotchingSaw): number | null {
  if (kerf === null) return null;
  return Math.ceil(strips / gang) * notches * Math.ceil(width / kerf - arithmeticTolerance);
}

/** Fence, pin, blade height and first stop. */
const thingsBesidePin = 3;

/**
 * Rows of `batches` in an order that changes the pin least often and, among such orders, the rest least often: minimal
 * for a saw whose pin, fence, blade and first stop are set apart from each other.
 */
export function notchSettings(batches: readonly StripBatch[], saw: NotchingSaw): NotchOrder {
  const rows = sharedRows(batches.flatMap((batch) => batch.notches.map((run) => rowOf(batch, run, saw))));
  const pins = pinsOf(rows);
  const kinds = [
    kindsOfValues(
      rows.map(({ angle }) => angle),
      sameAngle,
    ),
    kindsOfValues(
      rows.map(({ notching }) => notching.bladeHeightMm),
      sameLength,
    ),
    kindsOfValues(
      rows.map(({ notching }) => notching.firstStopMm),
      sameLength,
    ),
  ];
  const pinWeight = thingsBesidePin * rows.length + 1;
  const { order, cost, bound, proven } = fewestChanges(
    rows.map((_, index) => ({ settings: [pins, ...kinds].map((kind) => kind[index] ?? 0), after: [] })),
    [pinWeight, 1, 1, 1],
  );
  const pinChanges = Math.floor(cost / pinWeight);
  return {
    rows: order.flatMap((row) => rows[row] ?? []),
    pinChanges,
    changes: pinChanges + (cost % pinWeight),
    bound: Math.floor(bound / pinWeight) + (bound % pinWeight),
    proven,
  };
}

/** The strip lies with the notched face on the table: turned over for a cut from above, and so slanting the other way. */
function rowOf({ mark, strips }: StripBatch, run: NotchRun, saw: NotchingSaw): NotchRow {
  const { first, step, count, width, depth, from } = run;
  const sine = Math.sin(radians(run.angle));
  return {
    angle: from === 'above' ? 180 - run.angle : run.angle,
    notching: {
      from,
      firstStopMm: first - width / sine / 2,
      pinPitchMm: count > 1 ? step : null,
      pinSquareMm: count > 1 ? step * sine : null,
      notches: count,
      notchWidthMm: width,
      bladeHeightMm: depth,
      passes: passesFor(strips, count, width, saw),
    },
    marks: [mark],
    strips,
  };
}

/** A single notch leaves the pin where it is: it goes with the first pitch there is. */
function pinsOf(rows: readonly NotchRow[]): number[] {
  const pitches = rows.map(({ notching }) => notching.pinPitchMm);
  const some = pitches.find((pitch) => pitch !== null) ?? 0;
  return kindsOfValues(
    pitches.map((pitch) => pitch ?? some),
    sameLength,
  );
}

/** Rows that ask for the very same as one; their strips and passes add up. */
function sharedRows(rows: readonly NotchRow[]): NotchRow[] {
  const shared: NotchRow[] = [];
  for (const row of rows) {
    const index = shared.findIndex((known) => sameRow(known, row));
    const known = shared[index];
    if (!known) shared.push(row);
    else shared[index] = together(known, row);
  }
  return shared;
}

/** A mark that comes twice has two such rows on one strip, and its strips are counted once. */
function together(known: NotchRow, row: NotchRow): NotchRow {
  const isNew = row.marks.some((mark) => !known.marks.includes(mark));
  const [one, two] = [known.notching.passes, row.notching.passes];
  return {
    ...known,
    notching: { ...known.notching, passes: one === null || two === null ? null : one + two },
    marks: [...new Set([...known.marks, ...row.marks])],
    strips: known.strips + (isNew ? row.strips : 0),
  };
}

function sameRow(a: NotchRow, b: NotchRow): boolean {
  const [one, two] = [a.notching, b.notching];
  return (
    sameAngle(a.angle, b.angle) &&
    one.from === two.from &&
    one.notches === two.notches &&
    sameLength(one.firstStopMm, two.firstStopMm) &&
    sameLength(one.pinPitchMm ?? 0, two.pinPitchMm ?? 0) &&
    sameLength(one.bladeHeightMm, two.bladeHeightMm) &&
    sameLength(one.notchWidthMm, two.notchWidthMm)
  );
}
