/**
 * The shortest strip of a given width that was found for all pieces: a layout made piece by piece, then again and again a
 * shorter strip, in which the pieces overlap at first and are moved apart.
 */
import { maximum, minimum } from '../../geometry/numbers.ts';
import { heldIn } from './best-spot.ts';
import { Layout, type Spot } from './layout.ts';
import { innerFit, type NestKind, type NestPlace, type Room, variantsOf } from './nest-kind.ts';
import type { NestGap } from './no-fit-polygon.ts';
import { NoFitTable } from './no-fit-table.ts';
import { placeInTurn } from './place-in-turn.ts';
import { type Random, seededRandom } from './seeded-random.ts';
import { separate, type StepBudget } from './separate.ts';
import { lastOf } from '../stages.ts';

export interface StripTask {
  readonly kinds: readonly NestKind[];
  readonly width: number;
  readonly gap: NestGap;
  /** Moves of a piece; the same result with the same steps. */
  readonly steps: number;
  readonly onShorter?: (length: number) => void;
}

export interface StripPacking {
  /** Of the strip, along x; its width is along y. */
  readonly length: number;
  readonly places: readonly NestPlace[];
}

/** The strip gets shorter by these shares: the first while that works, each later one when the one before no longer does. */
const shares = [0.02, 0.01, 0.005, 0.002, 0.001];
/** Disturbed layouts that are tried before the next share's turn. */
const mostTries = 4;

/** Null where a piece is wider than the strip. */
export function packStrip(task: StripTask): StripPacking | null {
  const table = new NoFitTable(variantsOf(task.kinds), task.gap);
  const spots = firstSpots(task, table);
  if (!spots) return null;
  const search = new StripSearch(task, new Layout(task.kinds, table, [], spots));
  search.run();
  return {
    length: search.length,
    places: search.best.map(({ variant, x, y }): NestPlace => placeOf(table, variant, x, y)),
  };
}

function placeOf(table: NoFitTable, variant: number, x: number, y: number): NestPlace {
  const { kind, turn } = table.variants[variant] ?? { kind: 0, turn: 0 };
  return { kind, turn, x: Math.round(x), y: Math.round(y) };
}

/** Orders in which pieces are put down: largest first by one measure or another. */
function firstSpots({ kinds, width }: StripTask, table: NoFitTable): Spot[] | null {
  const pieces = kinds.flatMap(({ count }, kind) => Array.from({ length: count }, () => kind));
  const choices = kinds.map((_, kind) => table.variants.flatMap((each, index) => (each.kind === kind ? [index] : [])));
  const size = (kind: number): number => {
    const bounds = table.variants[choices[kind]?.[0] ?? 0]?.bounds;
    return bounds ? (bounds.right - bounds.left) * (bounds.top - bounds.bottom) : 0;
  };
  const order = pieces
    .map((kind, piece) => ({ piece, kind, variants: choices[kind] ?? [] }))
    .sort((first, second) => size(second.kind) - size(first.kind));
  const endless = pieces.reduce((sum, kind) => {
    const bounds = table.variants[choices[kind]?.[0] ?? 0]?.bounds;
    return sum + (bounds ? bounds.right - bounds.left + bounds.top - bounds.bottom : 0);
  }, 0);
  const placed = placeInTurn(order, [{ left: 0, right: endless, bottom: 0, top: width }], table);
  if (placed.length < pieces.length) return null;
  return [...placed].sort((first, second) => first.piece - second.piece);
}

class StripSearch {
  private readonly layout: Layout;
  private readonly width: number;
  private readonly random: Random = seededRandom(1);
  private readonly budget: StepBudget;
  private readonly onShorter: (length: number) => void;
  /** No strip is shorter than its longest piece in its shortest turn. */
  private readonly shortest: number;
  best: Spot[];
  length: number;

  constructor({ width, steps, onShorter }: StripTask, layout: Layout) {
    this.layout = layout;
    this.width = width;
    this.shortest = longestPiece(layout, width);
    this.budget = { left: steps };
    this.onShorter = onShorter ?? (() => undefined);
    this.best = layout.spots();
    this.length = this.reach();
    this.onShorter(this.length);
  }

  run(): void {
    for (let stage = 0; this.budget.left > 0 && this.length > this.shortest; stage += 1)
      this.runStage(shares[stage % shares.length] ?? 0, stage >= shares.length);
  }

  /** Shortens by one share until that fails too often; every other try begins with all pieces anywhere, once `scattering`. */
  private runStage(share: number, scattering: boolean): void {
    let failed = 0;
    while (failed < mostTries && this.budget.left > 0 && this.length > this.shortest) {
      this.budget.left -= 1;
      this.layout.putAll(this.best);
      if (scattering && failed % 2 === 0) this.scatter();
      else if (failed > 0) this.swapTwo();
      this.shortenTo(Math.max(this.shortest, this.length * (1 - share)));
      if (!lastOf(separate(this.layout, this.budget, this.random))) failed += 1;
      else {
        failed = 0;
        this.length = this.reach();
        this.best = this.layout.spots();
        this.onShorter(this.length);
      }
    }
  }

  private reach(): number {
    return maximum(
      this.layout.spots().map(({ variant, x }) => Math.round(x) + this.layout.variantAt(variant).bounds.right),
    );
  }

  private shortenTo(length: number): void {
    const room: Room = { left: 0, right: length, bottom: 0, top: this.width };
    this.layout.rooms = [room];
    this.layout.spots().forEach((spot, piece) => {
      const choices = [spot.variant, ...(this.layout.choices[this.layout.kinds[piece] ?? 0] ?? [])];
      const variant = choices.find((choice) => innerFit(this.layout.variantAt(choice), room));
      const fit = variant === undefined ? null : innerFit(this.layout.variantAt(variant), room);
      if (variant !== undefined && fit) this.layout.put(piece, heldIn({ ...spot, variant }, fit));
    });
  }

  /** Every piece anywhere, in any of its turns. */
  private scatter(): void {
    this.layout.kinds.forEach((kind, piece) => {
      const choices = this.layout.choices[kind] ?? [];
      const variant = choices[Math.floor(this.random() * choices.length)] ?? 0;
      this.layout.put(piece, { variant, x: this.random() * this.length, y: this.random() * this.width });
    });
  }

  /** Two pieces change places. */
  private swapTwo(): void {
    const { size } = this.layout;
    const [first, second] = [Math.floor(this.random() * size), Math.floor(this.random() * size)];
    const [one, other] = [this.layout.spot(first), this.layout.spot(second)];
    this.layout.put(first, { ...one, x: other.x, y: other.y });
    this.layout.put(second, { ...other, x: one.x, y: one.y });
  }
}

function longestPiece({ table, choices }: Layout, width: number): number {
  const endless: Room = { left: -Infinity, right: Infinity, bottom: 0, top: width };
  const lengths = choices.map((own) =>
    own.flatMap((index) => {
      const variant = table.variants[index];
      return variant && innerFit(variant, endless) ? [variant.bounds.right - variant.bounds.left] : [];
    }),
  );
  return maximum(lengths.map((own) => minimum(own)));
}
