/** After assembly: infill follows the measured lattice, strips stay. */
import { describe, expect, it } from 'vitest';
import type { MeasuredLattice } from '../../../server/design/design-model.ts';
import { layOutPanel } from '../../../server/lattice/lay-out-panel.ts';
import { fillOf, gridOf, hemp, hexagonShape, panelOf, stripStock } from '../../design-builder.ts';

const stock = stripStock('ash', 3);

function laidWith(measured: MeasuredLattice | null) {
  const grid = gridOf('three_way', 40, stock, { measured });
  const laid = layOutPanel(panelOf(grid, hexagonShape(3), { fills: [fillOf('triangle', hemp, stock)] })).panel;
  if (!laid) throw new Error('the panel was refused');
  return laid;
}

describe('a lattice measured after assembly', () => {
  const drawn = laidWith(null);
  const measured = laidWith({ side: 40.06, face: 3.02 });

  it('gives arms of length s/√3 − t_g of the measured side and face', () => {
    expect(measured.pieces[0]?.shape.length).toBeCloseTo(40.06 / Math.sqrt(3) - 3.02, 9);
    expect(drawn.pieces[0]?.shape.length).toBeCloseTo(40 / Math.sqrt(3) - 3, 9);
  });

  it('keeps the count of pieces and the strips that are already cut', () => {
    expect(measured.pieces.map(({ count }) => count)).toEqual(drawn.pieces.map(({ count }) => count));
    expect(measured.strips.map(({ length, notches }) => [length, notches])).toEqual(
      drawn.strips.map(({ length, notches }) => [length, notches]),
    );
  });

  it('keeps the face of the infill itself', () => {
    expect(measured.pieces[0]?.shape.stock.face).toBe(3);
  });
});
