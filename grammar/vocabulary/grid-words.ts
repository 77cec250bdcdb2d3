/** The words of grids. */
import { constant, link, property } from './word-entry.ts';
import type { WordTable } from './word-entry.ts';

export const gridWords = {
  beginning: {
    grid: {
      three_way: property('Three directions of strips, 60° apart, three through every node.'),
      square: constant('Two directions of strips at right angles.'),
      diamond: property('Two directions of strips at an angle; its openings are rhombi.'),
      kagome: property(
        'The basket weave: three directions of strips, never three through one node: triangles and hexagons.',
      ),
      free: property('A grid of families that are each declared.'),
      family: property('Parallel strips of one direction.'),
      side: property('Length of one side of an opening, from node to node.'),
      pitch: property('Distance from one centre line to the next.'),
      of: property('The strip that the grid is made of.'),
      except: property('A family, by number, that is made of another strip.'),
      layers: property('The families by number, from the back to the front.'),
      fit: property('Clearance of a notch over the strip it takes; negative presses.'),
      wall: property('The least wood left between notches and at the ends of strips.'),
      turn: property('Turns the whole grid counter-clockwise.'),
      measured: property('What came out after assembly: a length over so many cells, and the strips’ face.'),
      both: property('With slants: the middle strips are notched for either hand.'),
    },
  },
  within: {
    family: {
      of: property('The strip that the family is made of.'),
      layer: property('Its layer, 1 at the back.'),
    },
    spacedLines: {
      spacing: link('Distance between neighbouring centre lines.'),
      offset: link('Place of the first centre line, across the direction.'),
    },
    singleLines: { at: link('Place of each centre line, across the direction.') },
    except: { of: property('The strip that this family is made of.') },
    measured: {
      cells: constant('The cells measured over, and then the length from node to node.'),
      face: property('The strips’ face, where that was measured too.'),
    },
    bothSlants: { slants: property('The slanted cuts of a three-way middle strip.') },
  },
} as const satisfies WordTable;
