/** The words that draw and change outlines. */
import { constant, link, property } from './word-entry.ts';
import type { WordTable } from './word-entry.ts';

const end = link('The point where it ends.');

export const outlineWords = {
  beginning: {
    outline: {
      start: property('The first point of a line drawn step by step.'),
      line: property('A straight line.'),
      arc: property('Part of a circle: left turns counter-clockwise, right clockwise.'),
      curve: property('A curve with one or two control points.'),
      spline: property('A smooth line through points, as a batten would lie.'),
      loop: property('A closed smooth line through points.'),
      circle: property('A whole circle.'),
      ellipse: property('A whole ellipse.'),
      rectangle: property('A rectangle.'),
      polygon: constant('A regular polygon, by its number of corners.'),
      path: property('A line as SVG path data, y down, in millimetres, or out of an SVG file.'),
      copy: property('Begins with what another outline is.'),
      move: property('Moves what is drawn so far, to the right and up.'),
      mirror: property('Mirrors what is drawn so far.'),
      turn: property('Turns what is drawn so far counter-clockwise.'),
      scale: property('Makes what is drawn so far larger or smaller.'),
      grow: property('Moves the line of what is drawn so far outwards, inwards where it is negative.'),
      plus: property('Adds another outline to what is drawn so far.'),
      minus: property('Takes another outline away from what is drawn so far.'),
      common: property('Keeps what is also inside another outline.'),
    },
  },
  within: {
    stepEnd: { start: property('Back to the first point.') },
    line: { to: end },
    arc: { to: end },
    arcByRadius: {
      radius: link('Radius of the arc.'),
      large: constant('The longer way around.'),
    },
    arcThrough: { through: link('A point on the arc.') },
    arcByRise: { rise: link('How far the arc’s middle is from its chord.') },
    arcTurn: {
      left: constant('Turning counter-clockwise.'),
      right: constant('Turning clockwise.'),
    },
    curve: {
      to: end,
      by: link('The control points, one or two.'),
      and: link('The second control point.'),
    },
    spline: { to: end },
    throughPoints: {
      through: link('The points that it goes through.'),
      and: link('The next point.'),
    },
    circle: { radius: link('Radius of the circle.') },
    ellipse: { radii: link('Half its width and half its height.') },
    rectangle: { x: link('Between the width and the height.') },
    polygon: { radius: link('From the middle to the corners.') },
    pathInDrawing: {
      from: link('The SVG file.'),
      id: link('The name of a shape, or a group of shapes, in the file.'),
    },
    optionalAt: { at: link('The point where its middle is.') },
    optionalTurned: { turned: link('Turned counter-clockwise about its middle.') },
    optionalRounded: { rounded: link('Radius that rounds the corner.') },
    optionalAbout: { about: link('The point that stays where it is.') },
    mirror: { over: link('The line that is the mirror: an axis, or two points.') },
    mirrorPlace: {
      x: link('The level axis.'),
      y: link('The upright axis.'),
      and: link('The other point of the line.'),
    },
    grow: { sharp: constant('Corners that open outwards stay sharp.') },
  },
} as const satisfies WordTable;
