/**
 * The best place of a piece along a line, every place of it considered: the line meets each no-fit polygon in stretches,
 * and in a stretch the overlap is counted as the way to its nearer end, so the least sum lies at an end of a stretch
 * (J. Egeblad, B. K. Nielsen, A. Odgaard, European Journal of Operational Research 183, 2007; S. Umetani and others,
 * International Transactions in Operational Research 16, 2009).
 */
import type { Layout } from './layout.ts';
import { edgeSize, type NoFit } from './no-fit-table.ts';

/** A line through x, y along a unit vector, between two distances from there. */
export interface SearchLine {
  readonly x: number;
  readonly y: number;
  readonly alongX: number;
  readonly alongY: number;
  readonly low: number;
  readonly high: number;
}

export class LineSearch {
  private readonly layout: Layout;
  private starts = new Float64Array(64);
  private ends = new Float64Array(64);
  private weights = new Float64Array(64);
  private count = 0;
  private crossings = new Float64Array(64);

  constructor(layout: Layout) {
    this.layout = layout;
  }

  /** How far along the line a piece overlaps least, as one of its variants. */
  best(piece: number, variant: number, line: SearchLine): number {
    this.gather(piece, variant, line);
    const { low, high } = line;
    let [bestAt, least] = [low, this.sumAt(low, Infinity)];
    const offer = (at: number): void => {
      if (least === 0 || at < low || at > high) return;
      const sum = this.sumAt(at, least);
      if (sum < least) [bestAt, least] = [at, sum];
    };
    offer(high);
    for (let index = 0; index < this.count; index++) {
      offer(this.starts[index] ?? 0);
      offer(this.ends[index] ?? 0);
    }
    return bestAt;
  }

  private sumAt(at: number, limit: number): number {
    let sum = 0;
    for (let index = 0; index < this.count && sum < limit; index++) {
      const [after, before] = [at - (this.starts[index] ?? 0), (this.ends[index] ?? 0) - at];
      if (after > 0 && before > 0) sum += (after < before ? after : before) * (this.weights[index] ?? 1);
    }
    return sum;
  }

  private gather(piece: number, variant: number, line: SearchLine): void {
    const { layout } = this;
    this.count = 0;
    for (let other = 0; other < layout.size; other++) {
      if (other === piece) continue;
      const [x, y] = [line.x - (layout.x[other] ?? 0), line.y - (layout.y[other] ?? 0)];
      const noFit = layout.noFit(other, variant);
      if (misses(noFit, x, y, line)) continue;
      this.gatherFrom(noFit, x, y, line, layout.weights[piece * layout.size + other] ?? 1);
    }
  }

  private gatherFrom({ edges }: NoFit, x: number, y: number, line: SearchLine, weight: number): void {
    const { alongX, alongY, low, high } = line;
    if (this.crossings.length < edges.length) this.crossings = new Float64Array(2 * edges.length);
    const { crossings } = this;
    let met = 0;
    for (let at = 0; at < edges.length; at += edgeSize) {
      const [offX, offY] = [(edges[at] ?? 0) - x, (edges[at + 1] ?? 0) - y];
      const [edgeX, edgeY] = [edges[at + 2] ?? 0, edges[at + 3] ?? 0];
      const side = alongX * offY - alongY * offX;
      const across = alongX * edgeY - alongY * edgeX;
      if (side >= 0 === side + across >= 0) continue;
      const place = alongX * offX + alongY * offY - (side / across) * (alongX * edgeX + alongY * edgeY);
      let slot = met++;
      for (; slot > 0 && (crossings[slot - 1] ?? 0) > place; slot--) crossings[slot] = crossings[slot - 1] ?? 0;
      crossings[slot] = place;
    }
    for (let index = 0; index + 1 < met; index += 2) {
      const [start, end] = [crossings[index] ?? 0, crossings[index + 1] ?? 0];
      if (start < high && end > low) this.push(start, end, weight);
    }
  }

  private push(start: number, end: number, weight: number): void {
    if (this.count === this.starts.length) {
      this.starts = twiceAsLong(this.starts);
      this.ends = twiceAsLong(this.ends);
      this.weights = twiceAsLong(this.weights);
    }
    this.starts[this.count] = start;
    this.ends[this.count] = end;
    this.weights[this.count] = weight;
    this.count += 1;
  }
}

/** Whether the bounds of a no-fit polygon lie wholly beside the stretch of a line along an axis. */
function misses({ left, right, bottom, top }: NoFit, x: number, y: number, line: SearchLine): boolean {
  const { alongX, alongY, low, high } = line;
  if (alongY === 0) return y <= bottom || y >= top || x + high <= left || x + low >= right;
  if (alongX === 0) return x <= left || x >= right || y + high <= bottom || y + low >= top;
  return false;
}

function twiceAsLong(values: Float64Array): Float64Array<ArrayBuffer> {
  const longer = new Float64Array(2 * values.length);
  longer.set(values);
  return longer;
}
