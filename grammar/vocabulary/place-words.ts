/** The words for places in an opening. */
import { constant, link, property } from './word-entry.ts';
import type { WordTable } from './word-entry.ts';

export const placeWords = {
  beginning: {},
  within: {
    cornerPlace: { corner: constant('A corner of the opening, counted counter-clockwise from the lowest.') },
    midPlace: {
      mid: constant('The middle of an edge.'),
      of: property('May be put before the edge.'),
      edge: property('The edge from the corner of this number to the next.'),
    },
    middlePlace: {
      centroid: constant('Balance point of the opening.'),
      incentre: constant('Point equally far from all edges.'),
    },
    betweenPlace: {
      between: link('A point on the line between two places.'),
      and: link('The other place.'),
      at: link('How far along, where that is not halfway.'),
    },
    alongPlace: {
      along: link('Part of the way along an edge.'),
      edge: property('The edge from the corner of this number to the next.'),
    },
    mirroredPlace: {
      mirrored: link('A place as seen in a mirror.'),
      over: link('The line that is the mirror.'),
    },
    mirrorLine: { edge: property('The line of this edge.') },
    lineThrough: { to: link('The other place that the line goes through.') },
    turnedPlace: {
      turned: link('A place turned counter-clockwise.'),
      by: link('How far: an angle, or a number of corners.'),
      corners: property('Steps from corner to corner of the opening.'),
      corner: constant('A step from corner to corner of the opening.'),
      about: link('The place that it is turned about.'),
    },
    intersectionPlace: {
      intersection: constant('Where two lines meet.'),
      of: property('The first line.'),
      and: link('The other line.'),
    },
  },
} as const satisfies WordTable;
