/** Something known of single cells of a panel, such as their sign in its map. */
import type { LatticeMember } from '../grid/scan-lattice.ts';

export class CellLabels<Label> {
  /** Class → lattice row → column → label. */
  private readonly labels = new Map<number, Map<number, Map<number, Label>>>();

  set(classIndex: number, { row, column }: LatticeMember, label: Label): void {
    const rows = this.labels.get(classIndex) ?? new Map<number, Map<number, Label>>();
    this.labels.set(classIndex, rows);
    const columns = rows.get(row) ?? new Map<number, Label>();
    rows.set(row, columns);
    columns.set(column, label);
  }

  of(classIndex: number, { row, column }: LatticeMember): Label | undefined {
    return this.labels.get(classIndex)?.get(row)?.get(column);
  }

  /** Lattice columns of the labelled cells of a row. */
  columnsOf(classIndex: number, row: number): number[] {
    return [...(this.labels.get(classIndex)?.get(row)?.keys() ?? [])];
  }
}
