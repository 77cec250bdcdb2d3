/** Pieces in rooms while they are being nested: they may overlap, and each pair that does has a weight. Whole units. */
import { innerFit, type NestKind, type Room, type Variant } from './nest-kind.ts';
import { depthIn, type NoFit, type NoFitTable } from './no-fit-table.ts';

/** No-fit polygons are drawn a little wide, so a place this deep in one is still free: it lets sums of roundings pass. */
export const freeDepth = 2;

/** A place that a piece may take. */
export interface Spot {
  readonly variant: number;
  readonly x: number;
  readonly y: number;
}

export class Layout {
  readonly table: NoFitTable;
  /** The kind of each piece. */
  readonly kinds: readonly number[];
  /** Variants by kind. */
  readonly choices: readonly (readonly number[])[];
  rooms: readonly Room[];
  readonly variant: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly weights: Float64Array;

  constructor(kinds: readonly NestKind[], table: NoFitTable, rooms: readonly Room[], spots: readonly Spot[]) {
    this.table = table;
    this.rooms = rooms;
    this.kinds = kinds.flatMap(({ count }, kind) => Array.from({ length: count }, () => kind));
    this.choices = kinds.map((_, kind) => table.variants.flatMap((each, index) => (each.kind === kind ? [index] : [])));
    this.variant = Int32Array.from(spots, (spot) => spot.variant);
    this.x = Float64Array.from(spots, (spot) => spot.x);
    this.y = Float64Array.from(spots, (spot) => spot.y);
    this.weights = new Float64Array(this.size * this.size).fill(1);
  }

  get size(): number {
    return this.kinds.length;
  }

  spot(piece: number): Spot {
    return { variant: this.variant[piece] ?? 0, x: this.x[piece] ?? 0, y: this.y[piece] ?? 0 };
  }

  put(piece: number, { variant, x, y }: Spot): void {
    this.variant[piece] = variant;
    this.x[piece] = x;
    this.y[piece] = y;
  }

  spots(): Spot[] {
    return this.kinds.map((_, piece) => this.spot(piece));
  }

  putAll(spots: readonly Spot[]): void {
    spots.forEach((spot, piece) => this.put(piece, spot));
  }

  variantAt(index: number): Variant {
    const variant = this.table.variants[index];
    if (!variant) throw new RangeError(`no variant ${index}`);
    return variant;
  }

  /** Where the origin of a variant may lie, room by room; rooms that are too small left out. */
  fits(variant: number): Room[] {
    return this.rooms.flatMap((room) => innerFit(this.variantAt(variant), room) ?? []);
  }

  /** The no-fit polygon of another piece, for a variant. */
  noFit(other: number, variant: number): NoFit {
    return this.table.between(this.variant[other] ?? 0, variant);
  }

  depth(piece: number, other: number, { variant, x, y }: Spot): number {
    const depth = depthIn(this.noFit(other, variant), x - (this.x[other] ?? 0), y - (this.y[other] ?? 0));
    return depth > freeDepth && piece !== other ? depth : 0;
  }

  /** Weighted depths of a piece in all others, were it at `spot`; counting stops at `limit`. */
  overlapAt(piece: number, spot: Spot, limit: number): number {
    const row = piece * this.size;
    let total = 0;
    for (let other = 0; other < this.size && total < limit; other++) {
      const depth = this.depth(piece, other, spot);
      if (depth > 0) total += depth * (this.weights[row + other] ?? 1);
    }
    return total;
  }
}
