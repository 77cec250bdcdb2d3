/** How the plan as text is laid out. */

/** A titled part of the plan; none where its body is empty. */
export const section = (title: string, body: string): string[] => (body === '' ? [] : [`${title}\n\n${body}`]);

/** Every line set in by `by`. */
export const indented = (text: string, by: string): string =>
  text
    .split('\n')
    .map((line) => (line === '' ? '' : by + line))
    .join('\n');
