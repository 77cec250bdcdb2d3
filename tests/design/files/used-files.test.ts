/** What a file takes from the files it uses, and what it leaves there. */
import { describe, expect, test } from 'vitest';
import { analyse, type Analysis } from '../../../server/analyse.ts';
import { followPath, writtenPath } from '../../../server/design/files/file-paths.ts';
import { fileName } from '../../../server/design/files/source-file.ts';
import { fileNumberOf, rangeInFile, type SourceRange } from '../../../grammar/tree/source-range.ts';
import { readTable } from '../read-from.ts';

function analysed(texts: Readonly<Record<string, string>>): Analysis {
  return analyse(texts['main.lap'] ?? '', { path: 'main.lap', read: readTable(texts) });
}

const strips = 'strip ash { section face 3 depth 10 }\n';
const grid = 'grid squares { square  pitch 40  of ash }\n';
const tray = (name: string): string => `panel ${name} { grid squares  shape 2 x 1 cells }\n`;

describe('paths', () => {
  test.each([
    ['main.lap', 'a.lap', 'a.lap'],
    ['parts/main.lap', 'a.lap', 'parts/a.lap'],
    ['parts/main.lap', './b//../a.lap', 'parts/a.lap'],
    ['parts/main.lap', '../a.lap', 'a.lap'],
  ])('from %s, %s leads to %s', (from, written, path) => {
    expect(followPath(from, written)).toEqual({ kind: 'path', path });
    expect(followPath(from, writtenPath(from, path))).toEqual({ kind: 'path', path });
  });
});

test('bare lengths are read in the units of the file they stand in', () => {
  const { design, problems } = analysed({
    'main.lap': `use "inches.lap"\n${strips}units mm\ngrid a { square  pitch step  of ash }\ngrid b { square  pitch wide + 10  of ash }\n`,
    'inches.lap': 'units in\nlet step = 2in\nlet wide = 1 + 0in\n',
  });
  expect(problems).toEqual([]);
  expect(design.grids.map(({ side }) => side)).toEqual([50.8, 35.4]);
});

test('a file reached on two ways gives its things once', () => {
  const { design, files, problems } = analysed({
    'main.lap': 'use "left.lap"\nuse "right.lap"\n',
    'left.lap': `use "strips.lap"\n${grid}`,
    'right.lap': `use "strips.lap"\n${tray('none').replace('squares', 'fine')}grid fine { square  pitch 20  of ash }\n`,
    'strips.lap': strips,
  });
  expect(problems).toEqual([]);
  expect(design.strips.map(({ name }) => name)).toEqual(['ash']);
  expect(files.map(({ path }) => fileName(path))).toEqual(['main.lap', 'left.lap', 'strips.lap', 'right.lap']);
});

test('the panels of a used file are made there, not here', () => {
  const { design, panels } = analysed({
    'main.lap': `use "trays.lap"\n${tray('own')}`,
    'trays.lap': `${strips}${grid}${tray('theirs')}`,
  });
  expect(design.panels.map(({ name }) => name)).toEqual(['own']);
  expect(panels.map(({ panel }) => panel.name)).toEqual(['own']);
});

test('a motif that is sound at home and does not fit here is a problem of the fill', () => {
  const { problems } = analysed({
    'main.lap': `use "motifs.lap"\n${strips}grid mesh { three_way  side 40  of ash }\nbench shop { bevels 45 }\npanel p { grid mesh  shape 3 x 3 cells  edge sawn  fill triangle with hemp of ash }\n`,
    'motifs.lap': 'motif hemp for triangle { piece arm from corner to centroid, every corner }\n',
  });
  expect(problems.map(({ code }) => code)).toEqual(['LAP0507', 'LAP0507']);
  for (const { range, related } of problems) {
    expect(range.start).toBeGreaterThan(100);
    expect(fileNumberOf(range.start)).toBe(0);
    expect(fileNumberOf(related?.[0]?.range.start ?? 0)).toBe(1);
  }
});

describe('a problem of a used motif is said at the fill and panel it was raised at', () => {
  const hemp = 'motif hemp for triangle { node hub at incentre  piece arm from corner to hub, every corner }\n';
  const bench = 'strip ash { section face 3 depth 10 }\nbench shop { kerf 3  shortest 15 }\n';
  const wide = 'grid wide { three_way  side 60  of ash }\n';
  const close = 'grid close { three_way  side 30  of ash }\n';
  const panel = (name: string, net: string): string =>
    `panel ${name} { grid ${net}  shape 3 x 2 cells  edge sawn  fill triangle with hemp of ash }\n`;
  /** Where each problem is said and where it points, each as the words there. */
  const said = (texts: Readonly<Record<string, string>>): (string | undefined)[][] => {
    const { files, problems } = analysed(texts);
    const words = (range: SourceRange | undefined): string | undefined => {
      const file = range && files[fileNumberOf(range.start)];
      const place = range && rangeInFile(range);
      return place && file?.text.slice(place.start, place.end);
    };
    return problems.map(({ code, range, related }) => [code, words(range), words(related?.[0]?.range)]);
  };
  const fillWords = 'fill triangle with hemp of ash';
  const armWords = 'piece arm from corner to hub, every corner';

  test('of the second panel, not of the first that has the motif too', () => {
    const main = `use "motifs.lap"\n${bench}${wide}${close}${panel('a', 'wide')}${panel('b', 'close')}`;
    const { problems } = analysed({ 'main.lap': main, 'motifs.lap': hemp });
    expect(problems.map(({ code, range }) => [code, range.start])).toEqual([
      ['LAP0510', main.indexOf(fillWords, main.indexOf('panel b'))],
    ]);
    expect(said({ 'main.lap': main, 'motifs.lap': hemp })).toEqual([['LAP0510', fillWords, armWords]]);
  });

  test('of both panels where both have it', () => {
    const main = `use "motifs.lap"\n${bench}${close}${panel('a', 'close')}${panel('b', 'close')}`;
    const { problems } = analysed({ 'main.lap': main, 'motifs.lap': hemp });
    expect(problems.map(({ range }) => range.start)).toEqual([main.indexOf(fillWords), main.lastIndexOf(fillWords)]);
  });

  test('of the fill whose tip brings it about, not of the other fill with the motif', () => {
    const tipped = 'fill column 2 triangle with hemp of ash { tip 80deg at hub of corner 1 }';
    const jigs = 'strip ash { section face 3 depth 10 }\nbench shop { kerf 3  bevels 30, 60 }\n';
    const main = `use "motifs.lap"\n${jigs}${close}panel a { grid close  shape 3 x 2 cells  edge sawn  fill column 1 triangle with hemp of ash  ${tipped} }\n`;
    const places = said({ 'main.lap': main, 'motifs.lap': hemp });
    expect(places.length).toBeGreaterThan(0);
    for (const place of places) expect(place).toEqual(['LAP0507', tipped, armWords]);
  });

  test('of a strip in a used grid: at the panel', () => {
    const nets = `${bench}grid net { free  family 0deg of ash at 30, 70  family 90deg of ash at 40, 900 }\n`;
    const main = 'use "nets.lap"\npanel tray { grid net  shape 200 x 100 }\n';
    expect(said({ 'main.lap': main, 'nets.lap': nets })).toEqual([['LAP0409', 'tray', '900']]);
  });

  test('of a panel that is made elsewhere: at the `use` that brings its file, through another if need be', () => {
    const trays = `use "motifs.lap"\n${bench}${close}${panel('b', 'close')}`;
    const main = `use "strips.lap"\nuse "works.lap"\nwork shelf { place b at 0, 0 }\n`;
    const texts = { 'strips.lap': strips.replace('ash', 'elm'), 'works.lap': 'use "trays.lap"\n' };
    expect(said({ 'main.lap': main, 'trays.lap': trays, 'motifs.lap': hemp, ...texts })).toEqual([
      ['LAP0510', 'use "works.lap"', armWords],
    ]);
  });
});

test('no file has too many uses to be read', () => {
  const count = 300;
  const texts = Object.fromEntries(
    Array.from({ length: count }, (_, index) => [
      `f${index}.lap`,
      `use "f${index + 1}.lap"\nlet n${index} = ${index}mm\n`,
    ]),
  );
  const { problems, files } = analysed({
    ...texts,
    [`f${count}.lap`]: strips,
    'main.lap': 'use "f0.lap"\nlet all = n299\n',
  });
  expect(problems).toEqual([]);
  expect(files).toHaveLength(count + 2);
});
