/** The words of declarations, and those that phrases of several blocks share. */
import { constant, declaration, link, unit } from './word-entry.ts';
import type { WordTable } from './word-entry.ts';

export const fileWords = {
  beginning: {
    document: {
      use: declaration('Brings in what another file or a library declares.'),
      title: declaration('Name of the design, printed on every page.'),
      units: declaration('Unit of every length written without one.'),
      let: declaration('A number with a name.'),
      wood: declaration('Figures of a wood.'),
      strip: declaration('Wood milled to one section.'),
      sheet: declaration('Ply or another sheet, for boards.'),
      resin: declaration('A casting resin of two parts.'),
      finish: declaration('Oil, lacquer or wax.'),
      bench: declaration('Jigs and saws of the shop.'),
      grid: declaration('Parallel strips lapped into a lattice.'),
      motif: declaration('Infill of one opening, drawn once.'),
      outline: declaration('A closed line that shapes a panel, a board or a mould.'),
      panel: declaration('A piece of lattice with its shape and infill.'),
      blank: declaration('Lattice made whole, from which panels are sawn.'),
      band: declaration('Strips bent around an edge.'),
      pour: declaration('Resin poured into a mould.'),
      board: declaration('A board of sheet goods behind the lattice.'),
      work: declaration('The assembled work: what hangs on the wall, what it takes and what it costs.'),
      kit: declaration('A class: every student builds one copy of a panel out of a bag.'),
    },
  },
  within: {
    units: {
      mm: unit('Millimetres.'),
      cm: unit('Centimetres.'),
      m: unit('Metres.'),
      in: unit('Inches, 25.4 mm each.'),
      ft: unit('Feet, twelve inches each.'),
    },
    motif: { for: link('The shape of opening the motif is for.') },
    shapeWord: {
      triangle: constant('An opening with three corners.'),
      square: constant('An opening with four equal corners and sides.'),
      rhombus: constant('An opening with two sharp and two wide corners.'),
      hexagon: constant('An opening with six corners.'),
    },
    polygonName: { polygon: constant('An opening of any other form, by its number of corners.') },
    twoMeasures: { x: link('Between one measure and the next.') },
    priceBehindAt: { at: link('The price of one.') },
    price: { per: link('The measure that the price is for.') },
    corners_choice: {
      mitred: constant('Both cut at half the angle.'),
      lapped: constant('Half of each cut away.'),
    },
  },
} as const satisfies WordTable;
