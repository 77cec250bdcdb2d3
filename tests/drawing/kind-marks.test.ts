/** Marks in the drawing of a panel that is sawn from a blank: the blank's own, since nothing else is made. */
import { expect, test } from 'vitest';
import { analyse } from '../../server/analyse.ts';
import { drawPanel } from '../../server/drawing/draw-panel.ts';
import { panelDxf } from '../../server/drawing/dxf/panel-dxf.ts';
import { writeDxf } from '../../server/drawing/dxf/write-dxf.ts';
import { writeSvg } from '../../server/drawing/write-svg.ts';

/** A tile is sawn out of one strip of each direction: those across run over 320 mm of the blank, those upright over 160, and 6 mm on at each end. */
const analysis = analyse(`
strip ash { section face 3 depth 10 }
grid squares { square  pitch 40  of ash }
panel tile { grid squares  centred node  shape 76 x 76  edge sawn  copies 3 }
blank cast { grid squares  shape 300 x 160  gap 1  take tile 3 }
`);
const [laid] = analysis.panels;
if (!laid) throw new Error('the tile is not laid out');
const drawing = drawPanel(laid, analysis, null);

test('every strip goes by the mark of the strip of the blank that it is sawn out of', () => {
  expect(analysis.problems).toEqual([]);
  expect(analysis.kinds.strips.map(({ mark, groups }) => [mark, groups[0]?.group.length])).toEqual([
    ['S1', 332],
    ['S2', 172],
  ]);
  const strips = drawing.layers.filter(({ kind }) => kind === 'strip').flatMap(({ kinds }) => kinds);
  const turned = strips.map(({ mark, placements }) => [mark, Math.abs(placements[2] ?? NaN) % 180]);
  expect(turned.sort()).toEqual([
    ['S1', 0],
    ['S2', 90],
  ]);
  for (const { label } of strips) expect(label).toMatch(/^out of strip S[12], [\d.]+ long, 1 in this panel$/);
});

test('and so in every file that shows them', () => {
  const written = [...writeSvg(drawing, '').matchAll(/data-mark="([^"]*)"/g)].map(([, mark]) => mark);
  expect(written.sort()).toEqual(['S1', 'S2']);
  expect(writeDxf(panelDxf(analysis, laid, ''))).toMatch(/\r\nS1\r\n[^]*\r\nS2\r\n|\r\nS2\r\n[^]*\r\nS1\r\n/);
});
