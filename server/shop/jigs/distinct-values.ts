/** Numbers for settings: values that a bench can't tell apart get the same one. */

/** For each of `values` the number of its kind under `same`, from 0 in rising order of value. */
export function kindsOfValues(values: readonly number[], same: (a: number, b: number) => boolean): number[] {
  const firsts: number[] = [];
  for (const value of [...values].sort((a, b) => a - b)) {
    const last = firsts.at(-1);
    if (last === undefined || !same(last, value)) firsts.push(value);
  }
  return values.map((value) => firsts.filter((first) => first <= value).length - 1);
}
