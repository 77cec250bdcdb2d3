/** The word someone may have meant. */

/**
 * Damerau-Levenshtein distance, optimal string alignment: insertions, deletions, exchanges and swaps of
 * neighbours, by the dynamic programme of Wagner and Fischer (1974).
 */
export function editDistance(first: string, second: string): number {
  const a = Array.from(first);
  const b = Array.from(second);
  let beforeLast: number[] = [];
  let last = b.map((_, column) => column).concat(b.length);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    for (let column = 1; column <= b.length; column++) {
      const same = a[row - 1] === b[column - 1];
      let best = Math.min(
        (last[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + (same ? 0 : 1),
      );
      if (row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1]) {
        best = Math.min(best, (beforeLast[column - 2] ?? 0) + 1);
      }
      current.push(best);
    }
    beforeLast = last;
    last = current;
  }
  return last[b.length] ?? 0;
}

/** The candidate nearest to `word`, when at most a third of its letters (one at least) differ; else null. */
export function nearestWord(word: string, candidates: Iterable<string>): string | null {
  let best: string | null = null;
  let least = Math.max(1, Math.floor(Array.from(word).length / 3)) + 1;
  for (const candidate of candidates) {
    const distance = editDistance(word.toLowerCase(), candidate.toLowerCase());
    if (distance < least) {
      best = candidate;
      least = distance;
    }
  }
  return best;
}

/** Parts of names shorter than this are in too many of them to tell what was meant. */
const shortestPart = 3;

/** Among names, the nearest word; else the shortest name of which `name` is a part, or that is a part of it, from `_` to `_`. */
export function nearestName(name: string, candidates: readonly string[]): string | null {
  const holds = (whole: string, part: string): boolean =>
    part.length >= shortestPart && `_${whole}_`.toLowerCase().includes(`_${part}_`.toLowerCase());
  const fitting = candidates.filter((candidate) => holds(candidate, name) || holds(name, candidate));
  const shortest = [...fitting].sort((first, second) => first.length - second.length)[0];
  return nearestWord(name, candidates) ?? shortest ?? null;
}
