/** Offsets and protocol positions, there and back, over every kind of line end and beyond every end. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineStartsOf } from '../../grammar/tree/source-range.ts';
import { offsetAt } from '../../server/language/from-protocol.ts';
import { rangeOf } from '../../server/language/to-protocol.ts';

const pieces = fc.constantFrom('panel', ' ', '麻の葉', '🪵', 'é', '\n', '\r\n', '\r', '\t');
const text = fc.array(pieces, { maxLength: 40 }).map((words) => words.join(''));

describe('positions', () => {
  it('lead back to their offset', () => {
    fc.assert(
      fc.property(text, fc.nat(), (whole, wish) => {
        const starts = lineStartsOf(whole);
        const offset = wish % (whole.length + 1);
        const isBetweenReturnAndNewline = whole[offset - 1] === '\r' && whole[offset] === '\n';
        fc.pre(!isBetweenReturnAndNewline);
        expect(offsetAt(whole, starts, rangeOf(starts, { start: offset, end: offset }).start)).toBe(offset);
      }),
    );
  });

  it('beyond a line mean its end, beyond the text the end of the text', () => {
    const whole = 'ab\r\ncd\n';
    const starts = lineStartsOf(whole);
    expect(offsetAt(whole, starts, { line: 0, character: 99 })).toBe(2);
    expect(offsetAt(whole, starts, { line: 1, character: 99 })).toBe(6);
    expect(offsetAt(whole, starts, { line: 2, character: 99 })).toBe(7);
    expect(offsetAt(whole, starts, { line: 99, character: 0 })).toBe(7);
  });

  it('count a letter beyond the basic plane as two', () => {
    const starts = lineStartsOf('🪵x');
    expect(rangeOf(starts, { start: 2, end: 3 }).start).toEqual({ line: 0, character: 2 });
  });
});
