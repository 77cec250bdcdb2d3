/** Figures as a bench reads them: lengths to a tenth of a millimetre, angles to half a degree. */

export const millimetres = (value: number): string => value.toFixed(1);

/** To a twentieth of a millimetre, as finely as a key is shaved. */
export const keyMillimetres = (value: number): string => (Math.round(value * 20) / 20).toFixed(2);

/** A change by a tenth of a millimetre elsewhere, to 0.01 mm and with its sign; a dash where it is not known. */
export function tenthText(change: number | null): string {
  if (change === null) return '–';
  const text = Math.abs(change).toFixed(2);
  return text === '0.00' ? text : `${change < 0 ? '−' : '+'}${text}`;
}

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
