/** On every sample, what hovers tell of roles, strips and panels adds up to the marked kinds of the plan. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { analyse, type Analysis } from '../../server/analyse.ts';
import { hoverAt } from '../../server/language/features/hover.ts';
import { indexNames, type NameKind } from '../../server/design/names/name-index.ts';

const folder = new URL('../../samples/', import.meta.url);
const samples = readdirSync(folder).filter((name) => name.endsWith('.lap'));

/** Hovers of all names of the kinds, each name once. */
function hoversOf(analysis: Analysis, kinds: readonly NameKind[]): string[] {
  const definitions = indexNames(analysis.tree).definitions.filter(({ kind }) => kinds.includes(kind));
  return [...new Set(definitions.map(({ nameRange }) => hoverAt(analysis, nameRange.start)?.markdown ?? ''))];
}

/** Adds up the first group of every match, by the second where there is one. */
function sumsOf(texts: readonly string[], pattern: RegExp): Map<string, number> {
  const sums = new Map<string, number>();
  for (const { groups } of texts.flatMap((text) => [...text.matchAll(pattern)])) {
    const key = groups?.['key'] ?? '';
    sums.set(key, (sums.get(key) ?? 0) + Number(groups?.['count']));
  }
  return sums;
}

const total = (items: readonly { readonly make: number }[]): number => items.reduce((sum, { make }) => sum + make, 0);

describe.each(samples)('%s', (sample) => {
  const analysis = analyse(readFileSync(new URL(sample, folder), 'utf8'));
  const { pieces, strips } = analysis.kinds;

  it('tells of every mark of a piece as many as are to be made', () => {
    const told = sumsOf(hoversOf(analysis, ['piece', 'divider']), /`(?<key>\w+)` .*: \*\*(?<count>\d+)\*\* to make/g);
    expect(told).toEqual(new Map(pieces.map(({ mark, make }) => [mark, make])));
  });

  it('tells of strip stock as many strips and pieces as are to be made', () => {
    const texts = hoversOf(analysis, ['strip']);
    expect(sumsOf(texts, /Grid strips of it: \*\*(?<count>\d+)\*\*/g).get('')).toBe(total(strips));
    expect(sumsOf(texts, /Infill pieces of it: \*\*(?<count>\d+)\*\*/g).get('')).toBe(total(pieces));
  });

  it('tells of grids and motifs as many as are to be made', () => {
    const ofGrids = sumsOf(hoversOf(analysis, ['grid']), /Strips of it: \*\*(?<count>\d+)\*\* in all/g);
    expect(ofGrids.get('')).toBe(total(strips));
    const ofMotifs = sumsOf(hoversOf(analysis, ['motif']), /To make in all: \*\*(?<count>\d+)\*\*/g);
    expect(ofMotifs.get('')).toBe(total(pieces));
  });
});
