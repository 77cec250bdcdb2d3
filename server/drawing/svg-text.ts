/** The small change of writing SVG: numbers, escapes, paths. Millimetres; y is flipped here and nowhere else. */
import { rounded } from '../geometry/tolerance.ts';
import type { Rings } from './drawing.ts';

/** A length or coordinate to a thousandth of a millimetre. */
export const number = (value: number): string => String(rounded(value, 3));

/** `text` as it may stand in an element or a quoted attribute; characters XML cannot hold are left out. */
export function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '')
    .replace(/[&<>"']/g, (character) => `&#${character.charCodeAt(0)};`);
}

/** `text` as part of an id: letters, digits, hyphens. */
export const idPart = (text: string): string => text.replace(/[^\p{L}\p{N}]+/gu, '-');

/** Path data of closed rings, y turned downwards. */
export const pathData = (rings: Rings): string => rings.map(ringData).join('');

function ringData(ring: readonly number[]): string {
  const points: string[] = [];
  for (let index = 0; index + 1 < ring.length; index += 2) {
    points.push(`${number(ring[index] ?? 0)} ${number(-(ring[index + 1] ?? 0))}`);
  }
  return `M${points.join('L')}Z`;
}
