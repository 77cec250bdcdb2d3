/** Every motif of the samples and of the library drawn in its cell, one sheet to look at: halflap-out/motifs.svg. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { analyse } from '../../server/analyse.ts';
import { piecesInCell } from '../../server/drawing/cell-picture.ts';
import { planChart } from '../../server/drawing/chart-plan.ts';
import { styleRules, svgItems } from '../../server/drawing/page/page-svg.ts';
import { coloured } from '../../server/drawing/page/palettes.ts';
import { area, textAt } from '../../server/drawing/sheet/sheet-lines.ts';
import { areaOf, boundsOf, intersectionOf } from '../../server/geometry/polygons.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const cellWidth = 70;

const grids = {
  triangle: 'three_way  side 60',
  square: 'square  pitch 40',
  rhombus: 'diamond 60deg  side 50',
  hexagon: 'kagome  side 40',
};

/** A design that sets every motif of the library into a panel of its own. */
const library = [
  'use motifs',
  'strip ash { section face 2.5 depth 9 }',
  ...Object.entries(grids).map(([shape, size]) => `grid ${shape}s { ${size}  of ash }`),
  ...analyse('use motifs').design.motifs.map(
    ({ name, shape }) => `panel ${name} { grid ${shape}s  shape 260 x 260  fill ${shape} with ${name} of ash }`,
  ),
].join('\n');

const samples = readdirSync(`${root}samples`)
  .filter((file) => file.endsWith('.lap'))
  .map((file) => ({ source: file, text: readFileSync(`${root}samples/${file}`, 'utf8') }));

const pictures = [...samples, { source: 'library', text: library }].flatMap(({ source, text }) =>
  analyse(text).panels.flatMap((laid) =>
    planChart(laid).motifs.map(({ name, sample }) => ({
      label: source === 'library' ? name : `${source}: ${laid.panel.name}, ${name}`,
      opening: sample.opening,
      pieces: piecesInCell(laid, sample),
    })),
  ),
);

test('shows every motif with all its wood inside its cell, and writes the sheet', () => {
  const body = pictures.flatMap(({ label, opening, pieces }, index) => {
    expect(pieces.length, label).toBeGreaterThan(0);
    const wood = pieces.reduce((total, piece) => total + areaOf([piece]), 0);
    const inside = pieces.reduce((total, piece) => total + areaOf(intersectionOf([piece], [opening])), 0);
    expect(inside, label).toBeCloseTo(wood, 1);
    const { left, right, bottom, top } = boundsOf(opening);
    const scale = Math.min((cellWidth - 10) / (right - left), (cellWidth - 20) / (top - bottom));
    const at = { x: 10 + (index % 3) * cellWidth, y: 10 + Math.floor(index / 3) * cellWidth };
    const place = ({ x, y }: { x: number; y: number }) => ({
      x: at.x + (x - left) * scale,
      y: at.y + (top - y) * scale,
    });
    return [
      area('cut', opening.map(place)),
      ...pieces.map((piece) => area('wood', piece.map(place))),
      textAt(label, { x: at.x, y: at.y + cellWidth - 12 }, { size: 3 }),
    ];
  });
  const height = 20 + Math.ceil(pictures.length / 3) * cellWidth;
  mkdirSync(`${root}halflap-out`, { recursive: true });
  writeFileSync(
    `${root}halflap-out/motifs.svg`,
    `<svg xmlns="http://www.w3.org/2000/svg" width="230mm" height="${height}mm" viewBox="0 0 230 ${height}">${['<style>', ...styleRules(coloured, 'sans-serif'), '</style>', ...svgItems(body)].join('\n')}</svg>\n`,
  );
});
