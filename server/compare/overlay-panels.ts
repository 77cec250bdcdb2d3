/** Two versions of a panel laid over one another: which shapes lie in both in one place, and which in one alone. */
import type { DrawnKind, LayerKind, Rings } from '../drawing/drawing.ts';
import { drawPanel } from '../drawing/draw-panel.ts';
import type { MarkedDesign } from '../drawing/kind-marks.ts';
import { placedRings } from '../drawing/placed-rings.ts';
import { isZeroLength } from '../geometry/tolerance.ts';
import type { LaidPanel } from '../lattice/laid-panel.ts';

/** A panel with the marks of its design. */
export interface MarkedPanel {
  readonly laid: LaidPanel;
  readonly design: MarkedDesign;
}

/** One strip, piece or outline where it lies: mm, y up. */
export interface PlacedShape {
  readonly kind: LayerKind;
  readonly mark: string;
  readonly label: string;
  readonly rings: Rings;
}

export interface Overlay {
  /** As the new version marks them. */
  readonly same: readonly PlacedShape[];
  readonly onlyOld: readonly PlacedShape[];
  readonly onlyNew: readonly PlacedShape[];
}

const nothing: Overlay = { same: [], onlyOld: [], onlyNew: [] };

/** The overlay of two versions; a panel of one version alone lies wholly in that one. */
export function overlayPanels(old: MarkedPanel | null, now: MarkedPanel | null): Overlay {
  if (!old || !now) return { ...nothing, onlyOld: old ? shapesOf(old) : [], onlyNew: now ? shapesOf(now) : [] };
  const before = new ShapeTable(shapesOf(old));
  const same: PlacedShape[] = [];
  const onlyNew: PlacedShape[] = [];
  for (const shape of shapesOf(now)) (before.take(shape) ? same : onlyNew).push(shape);
  return { same, onlyOld: before.left(), onlyNew };
}

/** Everything drawn but the ground, back to front. */
function shapesOf({ laid, design }: MarkedPanel): PlacedShape[] {
  const layers = drawPanel(laid, design, null).layers.filter(({ kind }) => kind !== 'region' && kind !== 'note');
  return layers.flatMap(({ kind, kinds: drawn }) => drawn.flatMap((each) => placedShapes(kind, each)));
}

const placedShapes = (kind: LayerKind, drawn: DrawnKind): PlacedShape[] =>
  [...placedRings(drawn)].map((rings) => ({ kind, mark: drawn.mark, label: drawn.label, rings }));

/** Side of the table's cells in mm: coarse against rounding, fine against pieces. */
const cellSize = 1;

/** Shapes filed by their middle, so that one in the same place is found at once. */
class ShapeTable {
  private readonly cells = new Map<string, PlacedShape[]>();
  private readonly order: readonly PlacedShape[];

  constructor(shapes: readonly PlacedShape[]) {
    this.order = shapes;
    for (const shape of shapes) {
      const key = keyAt(...cellOf(shape));
      this.cells.set(key, [...(this.cells.get(key) ?? []), shape]);
    }
  }

  /** Takes out a shape that lies as `shape` lies; false when there is none. */
  take(shape: PlacedShape): boolean {
    const [column, row] = cellOf(shape);
    for (const [right, up] of neighbours) {
      const cell = this.cells.get(keyAt(column + right, row + up)) ?? [];
      const index = cell.findIndex((other) => liesAs(other, shape));
      if (index < 0) continue;
      cell.splice(index, 1);
      return true;
    }
    return false;
  }

  left(): PlacedShape[] {
    const rest = new Set([...this.cells.values()].flat());
    return this.order.filter((shape) => rest.has(shape));
  }
}

/** The cell itself first: rounding seldom puts a shape into the next. */
const neighbours = [0, 1, -1].flatMap((right) => [0, 1, -1].map((up) => [right, up] as const));

const keyAt = (column: number, row: number): string => `${column} ${row}`;

function cellOf({ rings }: PlacedShape): [column: number, row: number] {
  const [ring = []] = rings;
  const corners = Math.max(1, ring.length / 2);
  let [x, y] = [0, 0];
  ring.forEach((value, index) => {
    if (index % 2 === 0) x += value;
    else y += value;
  });
  return [Math.round(x / corners / cellSize), Math.round(y / corners / cellSize)];
}

/** Whether two shapes have every corner in common, wherever their rings begin. A piece kept whole and one sawn later differ. */
const liesAs = (a: PlacedShape, b: PlacedShape): boolean =>
  a.kind === b.kind &&
  a.rings.length === b.rings.length &&
  a.rings.every((ring, index) => sameCorners(ring, b.rings[index] ?? []));

function sameCorners(a: readonly number[], b: readonly number[]): boolean {
  if (a.length !== b.length) return false;
  const startsAt = (offset: number): boolean =>
    a.every((value, index) => isZeroLength(value - (b[(index + offset) % b.length] ?? 0)));
  for (let offset = 0; offset < b.length; offset += 2) if (startsAt(offset)) return true;
  return b.length === 0;
}
