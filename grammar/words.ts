/**
 * What a stage says, as data: words with measures and names in them. Lengths are mm, areas mm², angles degrees, masses g,
 * volumes mL, times minutes. No figure is text before `server/words` writes it, in the units of the file.
 */

/**
 * How finely a length is told. `length`: as the bench measures, 0.1 mm; `fine`: notches, kerfs, faces, 0.01 mm; `key`:
 * keys and what they are compared with, 0.05 mm; `pin`: what adds up from notch to notch, 0.02 mm; `given`: as finely as
 * the file may say it, without trailing zeros; `size`: bought stock, boards, sizes over all, without trailing zeros.
 */
export type LengthPrecision = 'length' | 'fine' | 'key' | 'pin' | 'given' | 'size';

/** Names that a comparison may find changed while all else is the same. */
export type NamedSort = 'panel' | 'blank' | 'board' | 'band' | 'pour' | 'motif' | 'strip' | 'mark';

export type Measure =
  /** One length, or several with one unit behind the last; `bare` leaves the unit to the sheet, where that is mm. */
  | { kind: 'length'; mm: readonly number[]; between: string; precision: LengthPrecision; bare: boolean }
  /** A length as it is to be written into the file. */
  | { kind: 'written'; mm: number }
  /** A point of the drawing, as `x, y`. */
  | { kind: 'place'; x: number; y: number }
  | { kind: 'area'; mm2: number; large: boolean }
  | { kind: 'angle'; degrees: number; fine: boolean }
  /** Of wood and works; resin, which is weighed on a bench scale, stays in g in any file. */
  | { kind: 'mass'; g: number }
  | { kind: 'resin'; g: number }
  | { kind: 'volume'; ml: number }
  | { kind: 'money'; amount: number; currency: string | null }
  | { kind: 'hours'; min: number }
  | { kind: 'number'; value: number; decimals: number }
  | { kind: 'name'; of: NamedSort; name: string };

/** Text and measures in turn. */
export interface Said {
  readonly said: readonly (string | Measure)[];
}

/** Text alone, or text with measures in it. */
export type Words = string | Said;

const lengths =
  (precision: LengthPrecision) =>
  (mm: number | readonly number[], between = ' × '): Measure => ({
    kind: 'length',
    mm: typeof mm === 'number' ? [mm] : mm,
    between,
    precision,
    bare: false,
  });

/** The measures by their kind: `measure.fine(3.05)`, `measure.size([420, 297])`. */
export const measure = {
  length: lengths('length'),
  fine: lengths('fine'),
  key: lengths('key'),
  pin: lengths('pin'),
  given: lengths('given'),
  size: lengths('size'),
  written: (mm: number): Measure => ({ kind: 'written', mm }),
  place: ({ x, y }: { readonly x: number; readonly y: number }): Measure => ({ kind: 'place', x, y }),
  /** What is lost or overlaps: mm², or square inches. */
  area: (mm2: number): Measure => ({ kind: 'area', mm2, large: false }),
  /** What is coated or covered: m², or square feet. */
  surface: (mm2: number): Measure => ({ kind: 'area', mm2, large: true }),
  /** To half a degree, as a jig is named. */
  angle: (degrees: number): Measure => ({ kind: 'angle', degrees, fine: false }),
  /** To a tenth of a degree. */
  fineAngle: (degrees: number): Measure => ({ kind: 'angle', degrees, fine: true }),
  mass: (g: number): Measure => ({ kind: 'mass', g }),
  resin: (g: number): Measure => ({ kind: 'resin', g }),
  volume: (ml: number): Measure => ({ kind: 'volume', ml }),
  money: (amount: number, currency: string | null): Measure => ({ kind: 'money', amount, currency }),
  hours: (min: number): Measure => ({ kind: 'hours', min }),
  /** A plain number to at most so many decimals, without trailing zeros. */
  number: (value: number, decimals: number): Measure => ({ kind: 'number', value, decimals }),
  name: (of: NamedSort, name: string): Measure => ({ kind: 'name', of, name }),
} as const;

const withoutUnit =
  (of: (mm: number | readonly number[], between?: string) => Measure) =>
  (mm: number | readonly number[], between?: string): Measure =>
    ({ ...of(mm, between), bare: true }) as Measure;

/** The same lengths where the sheet says the unit once for all: `figure.length(36)`. */
export const figure = {
  length: withoutUnit(measure.length),
  fine: withoutUnit(measure.fine),
  key: withoutUnit(measure.key),
  pin: withoutUnit(measure.pin),
  given: withoutUnit(measure.given),
  size: withoutUnit(measure.size),
} as const;

/** Words with measures, names and other words in them; a plain number is a count. */
export function words(texts: TemplateStringsArray, ...values: readonly (Words | Measure | number)[]): Words {
  return joined(
    texts.flatMap((text, index) => {
      const value = values[index];
      return value === undefined ? [text] : [text, typeof value === 'number' ? String(value) : value];
    }),
    '',
  );
}

/** Several as one, with `between` between them. */
export function joined(all: readonly (Words | Measure)[], between: string): Words {
  const merged: (string | Measure)[] = [];
  const add = (part: string | Measure): void => {
    const last = merged.at(-1);
    if (typeof part === 'string' && typeof last === 'string') merged[merged.length - 1] = last + part;
    else if (part !== '') merged.push(part);
  };
  all.forEach((each, index) => {
    if (index > 0) add(between);
    for (const part of partsOf(each)) add(part);
  });
  return merged.every((part) => typeof part === 'string') ? merged.join('') : { said: merged };
}

const partsOf = (each: Words | Measure): readonly (string | Measure)[] =>
  typeof each === 'string' || 'kind' in each ? [each] : each.said;

/** Each of `all` once, in their order. */
export const distinct = (all: readonly Words[]): Words[] => [
  ...new Map(all.map((each) => [JSON.stringify(each), each])).values(),
];

/** "1 stick", "2 sticks". */
export const counted = (count: number, one: string, more = `${one}s`): string => `${count} ${count === 1 ? one : more}`;
