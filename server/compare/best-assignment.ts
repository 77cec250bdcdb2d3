/** The cheapest way to pair the members of two lists, each at most once. */

/**
 * For each row the column it is paired with, or null. The sum over all pairs of (cost − limit) is as small as can be,
 * so a pair is made only where it costs less than `limit`. The method is the Hungarian one by shortest augmenting
 * paths (Jonker and Volgenant 1987), a column of its own standing for each row's "unpaired"; rows² × columns steps.
 */
export function bestAssignment(costs: readonly (readonly number[])[], limit: number): (number | null)[] {
  const rows = costs.length;
  const real = costs[0]?.length ?? 0;
  const columns = real + rows;
  const never = limit * (rows + 1) + 1;
  const costOf = (row: number, column: number): number => {
    if (column >= real) return column - real === row ? limit : never;
    const cost = costs[row]?.[column] ?? never;
    return cost < limit ? cost : never;
  };
  const rowPrices = new Float64Array(rows);
  const columnPrices = new Float64Array(columns);
  const rowOfColumn = new Int32Array(columns).fill(-1);
  for (let row = 0; row < rows; row++) augment(row);
  const paired = new Array<number | null>(rows).fill(null);
  for (let column = 0; column < real; column++) {
    const row = rowOfColumn[column] ?? -1;
    if (row >= 0) paired[row] = column;
  }
  return paired;

  /** Gives `start` a column by the cheapest chain of re-pairings. */
  function augment(start: number): void {
    const distances = new Float64Array(columns).fill(Infinity);
    const before = new Int32Array(columns).fill(-1);
    const isDone = new Uint8Array(columns);
    const done: number[] = [];
    let row = start;
    let column = -1;
    let reached = 0;
    do {
      let next = -1;
      for (let each = 0; each < columns; each++) {
        if (isDone[each] === 1) continue;
        const distance = reached + costOf(row, each) - (rowPrices[row] ?? 0) - (columnPrices[each] ?? 0);
        if (distance < (distances[each] ?? Infinity)) {
          distances[each] = distance;
          before[each] = column;
        }
        if (next < 0 || (distances[each] ?? Infinity) < (distances[next] ?? Infinity)) next = each;
      }
      reached = distances[next] ?? 0;
      isDone[next] = 1;
      done.push(next);
      column = next;
      row = rowOfColumn[next] ?? -1;
    } while (row >= 0);
    rowPrices[start] = (rowPrices[start] ?? 0) + reached;
    for (const each of done.slice(0, -1)) {
      const slack = reached - (distances[each] ?? 0);
      const owner = rowOfColumn[each] ?? start;
      rowPrices[owner] = (rowPrices[owner] ?? 0) + slack;
      columnPrices[each] = (columnPrices[each] ?? 0) - slack;
    }
    for (let each = column; each >= 0;) {
      const previous = before[each] ?? -1;
      rowOfColumn[each] = previous < 0 ? start : (rowOfColumn[previous] ?? start);
      each = previous;
    }
  }
}
