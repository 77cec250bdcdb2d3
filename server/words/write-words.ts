/** Words of the stages as text: every measure in the units of the file. */
import type { Problem } from '../../grammar/problems/problem.ts';
import type { Measure, Said, Words } from '../../grammar/words.ts';
import type { LengthUnit } from '../design/design-model.ts';
import {
  angleText,
  areaText,
  fineAngleText,
  hoursText,
  isImperial,
  lengthFigure,
  lengthUnit,
  massText,
  moneyText,
  placeText,
  plain,
  resinText,
  surfaceText,
  volumeText,
  writtenLength,
} from './figures.ts';

/** `said` as it stands on a sheet or under a word of a file in `units`. */
export const writeWords = (said: Words, units: LengthUnit, rename: Rename = asNamed): string =>
  typeof said === 'string'
    ? said
    : said.said.map((part) => (typeof part === 'string' ? part : measureText(part, units, rename))).join('');

/** The name that a panel goes by. */
type Rename = (name: string) => string;
const asNamed: Rename = (name) => name;

function measureText(measure: Measure, units: LengthUnit, rename: Rename): string {
  switch (measure.kind) {
    case 'length': {
      const figures = measure.mm.map((each) => lengthFigure(each, units, measure.precision)).join(measure.between);
      return measure.bare && !isImperial(units) ? figures : `${figures} ${lengthUnit(units)}`;
    }
    case 'written':
      return writtenLength(measure.mm, units);
    case 'place':
      return placeText(measure.x, measure.y, units);
    case 'area':
      return measure.large ? surfaceText(measure.mm2, units) : areaText(measure.mm2, units);
    case 'angle':
      return measure.fine ? fineAngleText(measure.degrees) : angleText(measure.degrees);
    case 'mass':
      return massText(measure.g, units);
    case 'resin':
      return resinText(measure.g);
    case 'volume':
      return volumeText(measure.ml);
    case 'money':
      return moneyText(measure.amount, measure.currency);
    case 'hours':
      return hoursText(measure.min);
    case 'number':
      return plain(measure.value, measure.decimals);
    case 'name':
      return measure.of === 'panel' ? rename(measure.name) : measure.name;
  }
}

/** A problem whose words are written. */
export type WrittenProblem = Problem<string>;

/** Problems with their words written, in the units of the file that they are told of. */
export const writeProblems = (problems: readonly Problem[], units: LengthUnit): WrittenProblem[] =>
  problems.map(({ message, related, ...problem }) => ({
    ...problem,
    message: writeWords(message, units),
    ...(related
      ? { related: related.map(({ range, message: why }) => ({ range, message: writeWords(why, units) })) }
      : {}),
  }));

/** Data in which words stand, once they are written. */
export type Written<Data> = Data extends Said
  ? string
  : Data extends object
    ? { [Key in keyof Data]: Written<Data[Key]> }
    : Data;

/** The same data with every words in it written, in the units of a file; `rename` says what a panel is called there. */
export function written<Data>(data: Data, units: LengthUnit, rename: Rename = asNamed): Written<Data> {
  const write = (value: unknown): unknown => {
    if (typeof value !== 'object' || value === null) return value;
    if (Array.isArray(value)) return value.map(write);
    if (isSaid(value)) return writeWords(value, units, rename);
    return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, write(each)]));
  };
  return write(data) as Written<Data>;
}

const isSaid = (value: object): value is Said => 'said' in value;
