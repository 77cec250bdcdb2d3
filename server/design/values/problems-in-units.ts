/** Problems told in the units of their file: every stage speaks of millimetres, and here they become inches where those are written. */
import type { Problem, RelatedPlace } from '../../../grammar/problems/problem.ts';
import type { LengthUnit } from '../design-model.ts';
import { isImperial, lengthText, plain } from './length-text.ts';
import { millimetresIn } from './quantity.ts';

/** Words between `…` are the file's own, or show how something is written. */
const quoted = /(`[^`]*`)/;
/** "3 mm", "420 × 297 mm", "12 and 30 mm"; not "mm²". */
const lengths = /(-?\d+(?:\.\d+)?(?: (?:×|x|and|to) -?\d+(?:\.\d+)?)*) mm(?![²³\w])/g;
const number = /-?\d+(?:\.\d+)?/g;
/** Places are told without their unit. */
const places = /\b(at|about) (-?\d+(?:\.\d+)?), (-?\d+(?:\.\d+)?)/g;
const placeDecimals = 2;

/** The same problems, lengths in their messages as the units have them. */
export function problemsInUnits(problems: readonly Problem[], units: LengthUnit): Problem[] {
  if (!isImperial(units)) return [...problems];
  return problems.map((problem) => ({
    ...problem,
    message: inUnits(problem.message, units),
    ...(problem.related
      ? {
          related: problem.related.map((place): RelatedPlace => ({ ...place, message: inUnits(place.message, units) })),
        }
      : {}),
  }));
}

const inUnits = (message: string, units: LengthUnit): string =>
  message
    .split(quoted)
    .map((part) => (part.startsWith('`') ? part : convert(part, units)))
    .join('');

function convert(text: string, units: LengthUnit): string {
  const inches = (millimetres: string): string => plain(Number(millimetres) / millimetresIn.in, placeDecimals);
  return text
    .replace(lengths, (_, measures: string) => measures.replace(number, (each) => lengthText(Number(each), units)))
    .replace(places, (_, word: string, x: string, y: string) => `${word} ${inches(x)}, ${inches(y)}`);
}
