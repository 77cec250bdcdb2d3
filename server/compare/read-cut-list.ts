/** The list of what is already cut: CSV `mark,count`, or JSON `[{ "mark": …, "count": … }]` or `{ mark: count }`. */
import type { MarkCount } from './reuse-plan.ts';

export type CutListReading =
  | { readonly counts: readonly MarkCount[]; readonly fault: null }
  /** What is wrong, and on which line or at which entry. */
  | { readonly counts: null; readonly fault: string };

/** Reads `text`; every mark must be one of `marks`, at most once, with a whole number of pieces. */
export function readCutList(text: string, marks: readonly string[]): CutListReading {
  const entries = /^\s*[[{]/.test(text) ? jsonEntries(text) : csvEntries(text);
  if (typeof entries === 'string') return { counts: null, fault: entries };
  const counts: MarkCount[] = [];
  for (const { place, mark, count } of entries) {
    const fault = faultOf(mark, count, marks, counts);
    if (fault) return { counts: null, fault: `${place}: ${fault}` };
    counts.push({ mark, count: Number(count) });
  }
  return { counts, fault: null };
}

interface Entry {
  readonly place: string;
  readonly mark: string;
  readonly count: unknown;
}

function faultOf(mark: string, count: unknown, marks: readonly string[], known: readonly MarkCount[]): string | null {
  if (!marks.includes(mark)) return `the old version has no mark “${mark}”; it has ${marks.join(', ') || 'none'}`;
  if (known.some((each) => each.mark === mark)) return `mark ${mark} stands there twice; add the two up`;
  const isCount = (typeof count === 'number' || typeof count === 'string') && /^\d+$/.test(String(count));
  return isCount ? null : `expected a whole number of pieces of ${mark}, found “${String(count)}”`;
}

/** A first line that ends in a word is a head. Empty lines are passed over; marks hold no commas. */
function csvEntries(text: string): Entry[] | string {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  const entries: Entry[] = [];
  for (const [index, line] of lines.entries()) {
    if (line.trim() === '') continue;
    const cells = line.split(/[,;\t]/).map((cell) => cell.trim().replace(/^"(.*)"$/, '$1'));
    const [mark = '', count = ''] = cells;
    if (index === 0 && mark.toLowerCase() === 'mark') continue;
    if (cells.length !== 2) return `line ${index + 1}: expected a mark, a comma and a count`;
    entries.push({ place: `line ${index + 1}`, mark, count });
  }
  return entries;
}

function jsonEntries(text: string): Entry[] | string {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    return error instanceof Error ? `not JSON: ${error.message}` : 'not JSON';
  }
  if (!Array.isArray(value)) {
    return Object.entries(value as Record<string, unknown>).map(([mark, count]) => ({
      place: `“${mark}”`,
      mark,
      count,
    }));
  }
  const entries = value.map((item: unknown, index) => {
    const { mark, count } = (typeof item === 'object' && item !== null ? item : {}) as Record<string, unknown>;
    return { place: `entry ${index + 1}`, mark: typeof mark === 'string' ? mark : '', count };
  });
  return entries;
}
