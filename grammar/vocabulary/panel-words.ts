/** The words of panels, their frames, and what fills their cells. */
import { constant, declaration, link, property, unit } from './word-entry.ts';
import type { WordTable } from './word-entry.ts';

export const panelWords = {
  beginning: {
    panel: {
      grid: declaration('The grid that the panel is a piece of.'),
      centred: property('What is at the middle of the panel: node, cell or edge.'),
      node: property('With at: where a node of the grid is, instead of centred.'),
      shape: property('Form and size of the panel.'),
      edge: property('How the edge is made: sawn or framed.'),
      cut_cells: property('What a cell cut by the frame gets: trim, own or open.'),
      frame: property('The members around a framed panel.'),
      stub: property('How far a framed strip runs into the frame.'),
      tail: property('How far a sawn strip runs beyond its last node.'),
      sliver: property('A trimmed piece that keeps less than this is reported.'),
      fill: property('Puts a motif into cells.'),
      map: property('A motif for every cell, one sign each, row by row from the top.'),
      meets: property('What a sawn edge is fitted to: more is left there when sawing.'),
      copies: property('How many of this panel are made.'),
    },
    map: { row: property('The signs of one row of cells, from left to right.') },
    frame: {
      of: property('The strip that the members are made of.'),
      corners: property('How the ends of members meet.'),
      groove: property('Depth of the groove that takes the strips’ stubs.'),
      stub: property('Depth of the mortices that take the strips’ stubs.'),
      end_gap: property('Left free between a strip’s end and the bottom of its groove.'),
      border: property('Edge infill bears on a border strip.'),
      fillers: property('Edge infill bears on fillers between the strips.'),
    },
  },
  within: {
    centred: {
      node: property('A node of the grid.'),
      cell: constant('The middle of a cell.'),
      edge: property('The middle of an edge between two cells.'),
    },
    nodeAt: { at: link('The point where that node is.') },
    hexagonOfCells: {
      hexagon: constant('A hexagon with so many cells along each side.'),
      cells: constant('Counts cells.'),
    },
    fitOfCells: {
      fit: property('So many cells fitted into a given size.'),
      x: link('Between across and up, and between the width and the height.'),
      cells: constant('Counts cells.'),
      in: unit('The size that the cells are fitted into.'),
      by: link('What gives way, so that the cells come out.'),
      pitch: property('The pitch of the grid is found.'),
      frame: property('The widths of the frame are found.'),
    },
    widthByHeight: {
      x: link('Between the width and the height.'),
      cells: constant('Counts cells instead of lengths.'),
    },
    edge: {
      sawn: constant('Whole pieces, sawn through later.'),
      framed: constant('Pieces fitted to a frame.'),
    },
    cutCells: {
      trim: property('The whole motif, cut by the frame.'),
      own: constant('The motif set into what the frame leaves of the cell.'),
      open: constant('No infill.'),
    },
    meets: { leave: link('How much more is left along that edge.') },
    panelFill: { with: link('The motif that fills them.') },
    openOrUse: { open: constant('No infill.') },
    numberedPlace: {
      row: property('Cells between two neighbouring strips of the first direction, counted from the top.'),
      column: link('Cells above one another, counted from the left.'),
      ring: link('Cells equally far from the panel’s edge, counted from it.'),
      to: link('The last of them.'),
    },
    everyPlace: {
      every: link('One in so many.'),
      rows: link('Of the rows of cells.'),
      columns: link('Of the columns of cells.'),
      from: link('The first of them.'),
    },
    regionPlace: {
      inside: link('Cells with their middle inside an outline.'),
      outside: link('Cells with their middle outside an outline.'),
    },
    marginPlace: {
      within: link('Cells with their middle no further than this from a line.'),
      beyond: link('Cells with their middle further than this from a line.'),
      of: property('The line: an outline, or rim for the panel’s own edge.'),
    },
    rimOrOutline: { rim: link('The edge of the panel itself.') },
    motifUse: {
      of: property('The strip that the infill is made of.'),
      turned: link('Turned counter-clockwise, by corners of the opening.'),
      mirrored: link('As seen in a mirror on the line through corner 1 and the middle.'),
    },
    takingTurns: {
      by: link('How motifs or turns take turns.'),
      cell: constant('From cell to cell, like a checkerboard.'),
      row: property('From row to row.'),
      column: link('From column to column.'),
    },
  },
} as const satisfies WordTable;
