/** The words of blanks, bands, pours, boards and kits. */
import { constant, declaration, link, property } from './word-entry.ts';
import type { WordTable } from './word-entry.ts';

const cold = constant('Bent dry, as they are.');
const damp = constant('Bent after soaking.');
const hot = constant('Bent over heat or in steam.');

export const objectWords = {
  beginning: {
    blank: {
      grid: declaration('The grid that the blank is a piece of.'),
      shape: property('Width and height of the blank.'),
      take: property('The panels sawn from the blank: as many as are made, or so many.'),
      margin: property('Kept free along each edge of the blank.'),
      gap: property('Kept free between two saw lines, beyond the kerf.'),
      allowance: property('From the finished line to the saw line.'),
      turns: property('Turns a cut-out may take; every turn that keeps the pattern where nothing is said.'),
      from_back: property('Cut-outs may be sawn from the back, mirrored.'),
      match: property('With laps: cut-outs keep which strip is above.'),
      depth: property('Depth of a blank that is cast.'),
      of: property('The resin that the blank is cast in.'),
    },
    band: {
      around: property('The panel or outline that the band runs around.'),
      of: property('The strip that the band is bent from.'),
      laminations: property('How many strips are glued on one another.'),
      bends: property('The smallest radius one strip was tested to take.'),
      method: property('How the strips are bent.'),
      corners: property('How the ends of the band meet.'),
      over_length: property('Cut longer by this at each end.'),
      over_width: property('Wider than the work is deep, both sides together.'),
    },
    pour: {
      mould: property('The form that is poured: an outline, a size or a blank.'),
      layer: property('One layer, from below: its colour and its depth.'),
      of: property('The resin that is poured.'),
      insert: property('A body in the mould that displaces resin.'),
      overfill: property('How much higher it is poured than its finished height.'),
      surfaced: property('Taken off each face of the cast.'),
      seal: property('Seal coat on every wetted face of wood, mL/m².'),
      waste: property('Part of the resin that stays in the cups.'),
      spare_castings: property('Castings poured beyond the need.'),
      copies: property('How many of this pour are made.'),
    },
    board: {
      shape: property('The outline that is its shape.'),
      of: property('The sheet that it is cut from.'),
      chamfer: property('Width of the bevelled edge.'),
      round_over: property('Radius of the rounded edge.'),
      pivot: property('Where a trammel turns.'),
      copies: property('How many of this board are made.'),
    },
    kit: {
      panel: declaration('The panel that is built.'),
      students: property('How many students build one.'),
      done: property('What is done before the bag is packed.'),
      breakage: property('Part of the pieces that break.'),
      spares: property('Pieces beyond the need.'),
      jig: property('How many students share one set of jigs.'),
    },
  },
  within: {
    matchLaps: { laps: link('Which strip of a crossing is above.') },
    castDepth: {
      surfaced: property('Taken off each face of the cast.'),
      overfill: property('How much higher it is poured than its finished height.'),
    },
    method_choice: { cold, damp, hot },
    bends: { cold, damp, hot, tested: link('Bent around a form in this shop.') },
    insert: {
      from: link('The height of its foot.'),
      to: link('The height of its top.'),
      density: property('Mass in its volume, kg/m³.'),
    },
    done: {
      milled: constant('Strips to their section.'),
      notched: constant('Strips with their notches.'),
      cut: constant('Strips and pieces to length.'),
      bevelled: constant('Pieces with their bevels.'),
    },
    spares: {
      per: link('So many in each bag.'),
      bag: link('Each student’s bag.'),
      with: link('So many kept together.'),
      teacher: link('The teacher’s box.'),
    },
    jig: { for: link('So many students share one set.') },
  },
} as const satisfies WordTable;
