/** A sawn three-way panel with hemp leaf in a wavy outline, of about as many pieces as asked for. */
import type { Panel } from '../../server/design/design-model.ts';
import { fillOf, gridOf, hemp, outlineShape, panelOf, polygonContour, stripStock } from '../design-builder.ts';

const side = 40;
const triangleArea = (side * side * Math.sqrt(3)) / 4;
const corners = 2000;

export function wavyPanel(pieces: number): Panel {
  const radius = Math.sqrt(((pieces / 3) * triangleArea) / Math.PI);
  const outline = Array.from({ length: corners }, (_, index) => {
    const angle = (index / corners) * 2 * Math.PI;
    const reach = radius * (1 + 0.05 * Math.sin(9 * angle));
    return { x: reach * Math.cos(angle), y: reach * Math.sin(angle) };
  });
  const stock = stripStock('ash', 3);
  return panelOf(gridOf('three_way', side, stock), outlineShape(polygonContour(outline)), {
    fills: [fillOf('triangle', hemp, stock)],
  });
}
