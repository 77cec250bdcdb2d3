/** Words in a row, as a sentence has them. */

/** "a", "a or b", "a, b or c". */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1) ?? ''}`;

/** Each word in backticks, the way messages show what is typed. */
export const typed = (words: readonly string[]): string[] => words.map((word) => `\`${word}\``);
