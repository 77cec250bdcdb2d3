import { describe, expect, test } from 'vitest';
import { drawPanel } from '../../server/drawing/draw-panel.ts';
import { writeSvg } from '../../server/drawing/write-svg.ts';
import { handMadeDesign, handMadeKinds, handMadePanel } from '../hand-made-panel.ts';
import { readPaths, ringArea } from './read-svg.ts';

const drawing = drawPanel(
  handMadePanel,
  { design: handMadeDesign, kinds: handMadeKinds, blanks: [] },
  handMadeDesign.title,
);
const svg = writeSvg(drawing, 'tray.lap');
const marked = readPaths(svg).filter((path) => path.mark !== null);

describe('the drawing of a panel', () => {
  test('stacks region, strips from the back, infill, outline', () => {
    expect(drawing.layers.map(({ kind, level }) => [kind, level])).toEqual([
      ['region', 0],
      ['strip', 0],
      ['strip', 1],
      ['piece', 0],
      ['trimmed', 0],
      ['outline', 0],
    ]);
  });

  test('has its bounds around everything, trimmed pieces and tails too', () => {
    expect(drawing.bounds).toEqual({ left: -36, right: 36, bottom: -26, top: 26 });
  });

  test('sums itself up in words', () => {
    expect(drawing.summary.join('\n')).toContain('2 strips, 2 infill pieces, 24 cm²');
    expect(drawing.summary.join('\n')).toContain('400.0 mm');
  });
});

describe('the SVG', () => {
  test('is at full size: a unit of the view box is a millimetre', () => {
    const [, width, height, viewBox = ''] = /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="([^"]+)"/.exec(svg) ?? [];
    const [left = 0, top = 0, boxWidth = 0, boxHeight = 0] = viewBox.split(' ').map(Number);
    expect([boxWidth, boxHeight]).toEqual([Number(width), Number(height)]);
    expect(left).toBeLessThan(drawing.bounds.left);
    expect(left + boxWidth).toBeGreaterThan(drawing.bounds.right);
    expect(top).toBeLessThan(-drawing.bounds.top);
    expect(top + boxHeight).toBeGreaterThan(-drawing.bounds.bottom);
  });

  test('has one path a strip and piece, with its mark and an id of its own', () => {
    expect(marked.map(({ mark }) => mark)).toEqual(['S1', 'S2', 'A&#38;1', 'A&#38;1']);
    const ids = [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(marked.every(({ id }) => id !== null)).toBe(true);
  });

  test('keeps every shape where and as large as it is', () => {
    expect(marked[0]?.rings).toEqual([
      [
        [-36, -1.5],
        [36, -1.5],
        [36, 1.5],
        [-36, 1.5],
      ],
    ]);
    const areas = marked.map(({ rings }) => rings.reduce((sum, ring) => sum + ringArea(ring), 0));
    expect(areas).toEqual([72 * 3, 52 * 3, 57.75, 57.75]);
  });

  test('makes room for a long title', () => {
    const title = 'A panel with a name that is longer than the panel itself, '.repeat(3);
    const [, width] = /width="([\d.]+)mm"/.exec(writeSvg({ ...drawing, title }, 'tray.lap')) ?? [];
    expect(Number(width)).toBeGreaterThan(title.length * 2.5);
  });

  test('says where it comes from', () => {
    expect(svg).toContain('From tray.lap');
  });

  test('escapes what the file names', () => {
    expect(svg).toContain('<title id="drawing-title">Tray &#34;one&#34; &#38; only, panel tray &#60;1&#62;</title>');
    expect(svg).not.toContain('tray <1>');
  });

  test('leaves out characters that XML cannot hold', () => {
    expect(writeSvg({ ...drawing, title: 'a\u0000b\ud800c' }, 'tray.lap')).toContain('abc');
  });
});
