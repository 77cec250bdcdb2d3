/** Figures as a bench reads them: lengths to a tenth of a millimetre, angles to half a degree. */

export const millimetres = (value: number): string => value.toFixed(1);

/** To a twentieth of a millimetre, as finely as a key is shaved. */
export const keyMillimetres = (value: number): string => (Math.round(value * 20) / 20).toFixed(2);

/** Empty where there is none. */
export const optional = (length: number | null): string => (length === null ? '' : millimetres(length));

export function halfDegrees(angle: number): string {
  return String(Math.round(angle * 2) / 2);
}

/** A titled part of the plan; none where its body is empty. */
export const section = (title: string, body: string): string[] => (body === '' ? [] : [`${title}\n\n${body}`]);

/** Every line set in by `by`. */
export const indented = (text: string, by: string): string =>
  text
    .split('\n')
    .map((line) => (line === '' ? '' : by + line))
    .join('\n');

/** Marks in order, three or more in a row as one: "S1–S4 S7". */
export function markRuns(marks: readonly string[]): string {
  const runs: { letters: string; first: number; last: number }[] = [];
  const plain: string[] = [];
  for (const mark of [...marks].sort((a, b) => a.localeCompare(b, 'en', { numeric: true }))) {
    const [, letters = '', digits = ''] = /^(.*?)(\d*)$/.exec(mark) ?? [];
    const number = Number(digits);
    const last = runs.at(-1);
    if (digits === '') plain.push(mark);
    else if (last?.letters === letters && last.last === number - 1) last.last = number;
    else runs.push({ letters, first: number, last: number });
  }
  const written = runs.map(({ letters, first, last }) => {
    const ends = first === last ? [first] : [first, last];
    return ends.map((number) => `${letters}${number}`).join(last - first > 1 ? '–' : ' ');
  });
  return [...plain, ...written].join(' ');
}
