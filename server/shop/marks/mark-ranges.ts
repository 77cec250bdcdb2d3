/** Marks in few words: "S1–S4, S7". */

/** Marks that count on are drawn together from three on; the order is kept. */
export function markRanges(marks: readonly string[]): string {
  const runs: string[][] = [];
  for (const mark of marks) {
    const run = runs.at(-1);
    if (run && follows(run.at(-1) ?? '', mark)) run.push(mark);
    else runs.push([mark]);
  }
  return runs.flatMap((run) => (run.length < 3 ? run : [`${run[0] ?? ''}–${run.at(-1) ?? ''}`])).join(', ');
}

/** Whether `next` is `mark` with its number one higher. */
function follows(mark: string, next: string): boolean {
  const [, letters = '', number] = /^(.*?)(\d+)$/.exec(mark) ?? [];
  return number !== undefined && next === `${letters}${Number(number) + 1}`;
}
