/** Hovers tell the counts of the engine, checked against numbers worked out by hand. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { disc } from './disc.ts';
import { positionOf } from './places.ts';
import { ServerSession } from './server-session.ts';

const uri = 'file:///disc.lap';
let session: ServerSession;

beforeAll(async () => {
  session = await ServerSession.start('stdio');
  await session.open(uri, disc);
});
afterAll(async () => {
  await session.stop();
});

const hoverOn = (words: string, occurrence = 1): Promise<string> =>
  session.hover(uri, positionOf(disc, words, occurrence));

describe('a hover', () => {
  it('on a panel tells infill, strips and cells, of one copy and of all', async () => {
    const hover = await hoverOn('window');
    expect(hover).toContain('**panel** `window` (sawn, 2 copies)');
    expect(hover).toContain('**342** a copy (276 whole, 66 trimmed), **684** for 2 copies');
    expect(hover).toContain('138 triangles met');
    expect(hover).toMatch(/Strips: \*\*\d+\*\* a copy in \d+ kinds/);
    expect(hover).toContain('706.9 cm²');
  });

  it('on a motif tells pieces a cell, uses and totals, where it is given and where it is used', async () => {
    const hover = await hoverOn('hemp');
    expect(hover).toContain('In one cell: 3 pieces');
    expect(hover).toContain('Used in panel `window`');
    expect(hover).toContain('**684** (552 whole, 132 trimmed)');
    expect(await hoverOn('hemp', 2)).toBe(hover);
  });

  it('on a role tells mark, length, bevels and count', async () => {
    const hover = await hoverOn('arm');
    expect(hover).toContain('**piece** `arm` (3 pieces in a cell of hemp)');
    expect(hover).toContain('20.1 mm long of `bass`');
    expect(hover).toMatch(/bevels (30°\/30° and 60°\/60°|60°\/60° and 30°\/30°)/);
    expect(hover).toContain('**684** to make');
  });

  it('on a strip tells what is made of it', async () => {
    expect(await hoverOn('bass', 3)).toContain('Infill pieces of it: **684**, 13.74 m in all');
    expect(await hoverOn('bass', 3)).toContain('Grid strips of it: **0**');
    expect(await hoverOn('ash', 3)).toMatch(/Grid strips of it: \*\*[1-9]\d*\*\*, [\d.]+ m in all/);
  });

  it('on a grid tells its families and its strips', async () => {
    const hover = await hoverOn('mesh', 2);
    expect(hover).toContain('**grid** `mesh` (three-way)');
    expect(hover).toContain('3 families: 0° every 34.64 mm, 60° every 34.64 mm, 120° every 34.64 mm');
    expect(hover).toContain('Used in `window`');
  });

  it('on an outline tells area and size', async () => {
    const hover = await hoverOn('round', 2);
    expect(hover).toContain('300.0 mm wide, 300.0 mm high');
    expect(hover).toContain('Area 706.9 cm²');
    expect(hover).toContain('942.5 mm perimeter');
  });

  it('on a number with a unit tells the other unit', async () => {
    expect(await hoverOn('150mm')).toContain('5.906 in');
    expect(await hoverOn('150mm')).not.toContain('/');
  });

  it('on a named number tells its value, on a node its place, on a word its meaning', async () => {
    expect(await hoverOn('side_length', 2)).toContain('`40`');
    expect(await hoverOn('hub', 2)).toContain('`incentre`');
    expect(await hoverOn('sawn')).toContain('sawn through later');
  });

  it('on a space, a comment or an opening brace tells nothing', async () => {
    expect(await session.hover(uri, { line: 3, character: 0 })).toBe('');
    expect(await hoverOn('{')).toBe('');
  });
});
