/** How lengths follow pitch and face: closed forms by hand, and finite differences of the whole engine. */
import { describe, expect, it } from 'vitest';
import type { Grid, Panel, PanelShape } from '../../server/design/design-model.ts';
import { resizedGrid } from '../../server/design/builders/fit-cells.ts';
import type { LaidPanel } from '../../server/lattice/laid-panel.ts';
import {
  basketGrid,
  cellsShape,
  circleContour,
  fillOf,
  gridOf,
  hemp,
  hexagonShape,
  outlineShape,
  panelOf,
  squareHemp,
  stripStock,
  tipOf45,
} from '../design-builder.ts';
import { laidOut } from '../laid-out.ts';

const ash = stripStock('ash', 3);
const bass = stripStock('bass', 2.5);
const fills = [fillOf('triangle', hemp, bass), fillOf('square', squareHemp([tipOf45]), bass)];

describe('closed forms', () => {
  it('a hemp arm s/√3 − t follows the side by 0.1/√3 and the face by −0.1', () => {
    const [arm] = laidOut(panelOf(gridOf('three_way', 40, ash), cellsShape(3, 3), { fills })).pieces;
    expect(arm?.perTenth?.pitchMm).toBeCloseTo(0.1 / Math.sqrt(3), 9);
    expect(arm?.perTenth?.faceMm).toBeCloseTo(-0.1, 9);
  });

  it('a diagonal (p − t)√2 of a square follows both by 0.1√2, one up and one down', () => {
    const { pieces } = laidOut(panelOf(gridOf('square', 40, ash), cellsShape(3, 3), { fills }));
    const diagonal = pieces.find(({ role }) => role === 'diagonal');
    expect(diagonal?.perTenth?.pitchMm).toBeCloseTo(0.1 * Math.SQRT2, 9);
    expect(diagonal?.perTenth?.faceMm).toBeCloseTo(-0.1 * Math.SQRT2, 9);
  });

  it('a strip of five framed cells 5p − t follows the pitch by 0.5 and the face by −0.1, sawn by 0.5 and 0', () => {
    const stripsOf = (edge: Panel['edge']) =>
      laidOut(panelOf(gridOf('square', 40, ash), cellsShape(5, 5), { edge, stub: 4 })).strips;
    for (const { perTenth } of stripsOf('framed')) {
      expect(perTenth?.pitchMm).toBeCloseTo(0.5, 9);
      expect(perTenth?.faceMm).toBeCloseTo(-0.1, 9);
    }
    for (const { perTenth } of stripsOf('sawn')) {
      expect(perTenth?.pitchMm).toBeCloseTo(0.5, 9);
      expect(perTenth?.faceMm).toBe(0);
    }
  });

  it('a strip framed in a size of its own follows neither', () => {
    const shape: PanelShape = { kind: 'rectangle', width: 300, height: 200, range: { start: 0, end: 0 } };
    for (const { perTenth } of laidOut(panelOf(gridOf('square', 40, ash), shape, { edge: 'framed' })).strips) {
      expect(perTenth?.pitchMm).toBeCloseTo(0, 9);
      expect(perTenth?.faceMm).toBeCloseTo(0, 9);
    }
  });
});

describe('finite differences of the whole engine', () => {
  const step = 0.01;
  const thicker = (grid: Grid): Grid => ({
    ...grid,
    families: grid.families.map((family) => ({
      ...family,
      stock: { ...family.stock, face: family.stock.face + step },
    })),
  });
  const wider = (grid: Grid): Grid => resizedGrid(grid, grid.side + step);

  it.each<[string, Grid, PanelShape]>([
    ['three-way', gridOf('three_way', 40, ash), hexagonShape(3)],
    ['square', gridOf('square', 40, ash), cellsShape(4, 3)],
    ['basket weave', basketGrid(40, ash), outlineShape(circleContour(140))],
  ])('agree with what each piece and strip of a %s panel says', (_, grid, shape) => {
    const panel = panelOf(grid, shape, { edge: 'framed', fills, cutCells: 'open' });
    const [base, pitch, face] = [grid, wider(grid), thicker(grid)].map((each) => laidOut({ ...panel, grid: each }));
    if (!base || !pitch || !face) throw new Error('nothing was laid out');
    expect(base.pieces.length).toBeGreaterThan(0);
    base.pieces.forEach((group, index) => {
      const change = (other: LaidPanel) => ((other.pieces[index]?.shape.length ?? 0) - group.shape.length) / step / 10;
      expect(group.perTenth?.pitchMm).toBeCloseTo(change(pitch), 6);
      expect(group.perTenth?.faceMm).toBeCloseTo(change(face), 6);
    });
    const longest = (laidPanel: LaidPanel, family: number): number =>
      Math.max(...laidPanel.strips.filter((strip) => strip.family === family).map(({ length }) => length));
    for (const { family, length, perTenth } of base.strips) {
      if (length !== longest(base, family)) continue;
      expect(perTenth?.pitchMm).toBeCloseTo((longest(pitch, family) - length) / step / 10, 1);
      expect(perTenth?.faceMm).toBeCloseTo((longest(face, family) - length) / step / 10, 1);
    }
  });
});
