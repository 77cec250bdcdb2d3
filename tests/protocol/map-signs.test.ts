/** What an editor tells of the signs of a map: hovers, proposals, folds. */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../server/analyse.ts';
import { foldsOf } from '../../server/language/features/folds.ts';
import { hoverAt } from '../../server/language/features/hover.ts';
import { proposalsAt } from '../../server/language/features/proposals.ts';

const text = `strip ash { section face 3 depth 10 }
grid mesh { square  pitch 40  of ash }
motif brace for square { piece brace from corner 1 to corner 3 }
panel screen {
  grid mesh
  shape 3 x 2 cells
  map {
    b = brace of ash turned 1 mirrored
    . = open
    row b . b
    row . b .
  }
}
`;
const analysis = analyse(text);
const hoverOn = (words: string, inside: number): string =>
  hoverAt(analysis, text.indexOf(words) + inside)?.markdown ?? '';

test('the text is sound', () => {
  expect(analysis.problems).toEqual([]);
});

describe('a hover on a sign', () => {
  test('tells row and cell, motif, turn and how many cells have it', () => {
    const hover = hoverOn('row . b .', 6);
    expect(hover).toContain('**sign** `b` (row 2 from the top, cell 2)');
    expect(hover).toContain('`brace` of `ash`, mirrored, turned 1 corner');
    expect(hover).toContain('In 3 cells of the map');
  });

  test('tells of a cell left open, and of the sign where it gets its meaning', () => {
    expect(hoverOn('row b . b', 6)).toContain('Left open');
    expect(hoverOn('b = brace', 0)).toContain('**sign** `b` (of the map of screen)');
  });
});

test('inside a map its phrases are proposed, and motifs behind the equals sign', () => {
  const labels = (offset: number): string[] => proposalsAt(analysis, offset).map(({ label }) => label);
  expect(labels(text.indexOf('row b'))).toEqual(['row']);
  expect(labels(text.indexOf('= brace') + 2)).toEqual(['brace']);
  expect(labels(text.indexOf('  map'))).toContain('map');
});

test('a map can be folded away', () => {
  const [start, end] = [text.indexOf('map {'), text.indexOf('}\n}') + 1];
  expect(foldsOf(analysis)).toContainEqual({ start, end });
});
