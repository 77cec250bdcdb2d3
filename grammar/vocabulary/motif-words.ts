/** The words of motifs and of the tips in a fill. */
import { constant, link, property } from './word-entry.ts';
import type { WordTable } from './word-entry.ts';

const tip = property('A declared bevel for the ends at a node.');

export const motifWords = {
  beginning: {
    motif: {
      node: property('A point of the opening.'),
      divider: property('A strip across the opening that splits it.'),
      piece: property('A straight infill piece between two places.'),
      fit_order: property('Order in which pieces are fitted, the key last.'),
      hinge: property('Two pieces cut as one length, scored and folded.'),
      fill: property('Puts a motif into parts of the opening.'),
      tip,
    },
    tips: { tip },
  },
  within: {
    node: { at: link('The place of the node.') },
    divider: { from: link('The place of its first end.'), to: link('The place of its other end.') },
    piece: { from: link('The place of its first end.'), to: link('The place of its other end.') },
    everyClause: {
      every: link('Repeats the piece.'),
      corner: constant('At each corner of the opening.'),
      edge: property('At each edge of the opening.'),
    },
    mirroredClause: {
      mirrored: link('The mirror image of the piece too.'),
      over: link('The line that is the mirror.'),
    },
    aboveClause: { above: link('Where the two are lapped, this one is nearer to the viewer.') },
    fitOrder: { key: link('Fitted last, cut this much longer and shaved.') },
    partFill: {
      halves: constant('Both parts of an opening split by one divider.'),
      parts: constant('All parts of a divided opening.'),
      triangle: constant('The parts with three corners.'),
      square: constant('The parts with four equal corners and sides.'),
      rhombus: constant('The parts with two sharp and two wide corners.'),
      hexagon: constant('The parts with six corners.'),
      with: link('The motif that fills them.'),
    },
    tip: {
      at: link('The node where the pieces end.'),
      of: property('The corners that the pieces come from.'),
    },
    cornerChoice: {
      the: link('May be put before the corner.'),
      corner: constant('A corner of the opening, counted counter-clockwise from the lowest.'),
      square: constant('The corners of 90°.'),
      sharp: constant('The corners below 90°.'),
      wide: constant('The corners above 90°.'),
      every: link('All corners.'),
    },
  },
} as const satisfies WordTable;
