/** Numbers, lengths and transforms as SVG attributes write them. User units are px, 1/96 in (CSS Values 3, section 6.2). */
import { followedBy, moving, scaling, type Transform, turning, unmoved } from '../../geometry/transform-path.ts';

/** Millimetres in a px. */
export const millimetresAPixel = 25.4 / 96;

/** px in each absolute unit. */
const pixelsIn: Readonly<Record<string, number>> = {
  '': 1,
  px: 1,
  mm: 96 / 25.4,
  cm: 96 / 2.54,
  q: 96 / 101.6,
  in: 96,
  pt: 96 / 72,
  pc: 16,
};

const numberForm = String.raw`[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?`;
const lengthPattern = new RegExp(String.raw`^\s*(${numberForm})\s*([a-zA-Z]*)\s*$`);

/** A length in px; null where there is none, or it depends on something else, such as a percentage. */
export function readSvgLength(text: string | null): number | null {
  const [, amount, unit] = lengthPattern.exec(text ?? '') ?? [];
  const factor = unit === undefined ? undefined : pixelsIn[unit.toLowerCase()];
  return amount === undefined || factor === undefined ? null : Number(amount) * factor;
}

/** Numbers separated by spaces or commas; null where something else stands among them. */
export function readSvgNumbers(text: string): number[] | null {
  const words = text.trim() === '' ? [] : text.trim().split(/\s*,\s*|\s+/);
  const isNumber = new RegExp(`^${numberForm}$`);
  return words.every((word) => isNumber.test(word)) ? words.map(Number) : null;
}

const step = /\s*(matrix|translate|scale|rotate|skewX|skewY)\s*\(([^()]*)\)\s*,?/y;

/** A `transform` attribute; null where it can't be read. Of several transforms the last is applied first (SVG 2, section 8.5). */
export function readSvgTransform(text: string): Transform | null {
  let whole = unmoved;
  step.lastIndex = 0;
  while (step.lastIndex < text.trimEnd().length) {
    const [, name, numbers] = step.exec(text) ?? [];
    const one = name === undefined ? null : transformOf(name, readSvgNumbers(numbers ?? ''));
    if (!one) return null;
    whole = followedBy(one, whole);
  }
  return whole;
}

function transformOf(name: string, numbers: readonly number[] | null): Transform | null {
  const [first, second, third] = numbers ?? [];
  if (!numbers || first === undefined) return null;
  const count = numbers.length;
  switch (name) {
    case 'translate':
      return count <= 2 ? moving({ x: first, y: second ?? 0 }) : null;
    case 'scale':
      return count <= 2 ? scaling(first, second ?? first) : null;
    case 'rotate':
      if (count === 1) return turning(first);
      return second !== undefined && third !== undefined && count === 3 ? turnedAbout(first, second, third) : null;
    case 'skewX':
      return count === 1 ? { ...unmoved, c: Math.tan((first * Math.PI) / 180) } : null;
    case 'skewY':
      return count === 1 ? { ...unmoved, b: Math.tan((first * Math.PI) / 180) } : null;
    default: {
      const [a, b, c, d, e, f] = numbers;
      if (a === undefined || b === undefined || c === undefined || d === undefined) return null;
      return e === undefined || f === undefined || count > 6 ? null : { a, b, c, d, e, f };
    }
  }
}

const turnedAbout = (angle: number, x: number, y: number): Transform =>
  followedBy(followedBy(moving({ x: -x, y: -y }), turning(angle)), moving({ x, y }));
