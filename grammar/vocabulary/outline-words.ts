/** The words that draw and change outlines, each with its one-line meaning. */
import { constant, link, property } from './word-entry.ts';
import type { WordEntry } from './word-entry.ts';

export const outlineWords = {
  start: property('First point of an outline.'),
  line: property('A straight line of an outline.'),
  arc: property('Part of a circle: left turns counter-clockwise, right clockwise.'),
  curve: property('A curve with one or two control points.'),
  spline: property('A smooth line through points, as a batten would lie.'),
  loop: property('A closed smooth line through points.'),
  circle: property('A whole circle as an outline.'),
  ellipse: property('A whole ellipse as an outline.'),
  rectangle: property('A rectangle as an outline.'),
  path: property('An outline as SVG path data, y down, in millimetres, or out of an SVG file.'),
  copy: property('Begins with another outline.'),
  move: property('Moves what is drawn so far, to the right and up.'),
  mirror: property('Mirrors what is drawn so far.'),
  scale: property('Makes what is drawn so far larger or smaller.'),
  grow: property('Moves the line of what is drawn so far outwards, inwards where it is negative.'),
  plus: property('Adds another outline to what is drawn so far.'),
  minus: property('Takes another outline away from what is drawn so far.'),
  common: property('Keeps what is also inside another outline.'),

  radius: link('Radius of an arc or circle, or of the circle through a polygon’s corners.'),
  radii: link('Half the width and half the height of an ellipse.'),
  bulge: link('How far an arc’s middle lies from its chord.'),
  through: link('Points on the line follow.'),
  id: link('The name of a shape in a drawing follows.'),
  rounded: link('Radius that rounds a corner.'),
  y: link('The upright axis.'),
  left: constant('Turning counter-clockwise.'),
  right: constant('Turning clockwise.'),
  large: constant('The longer way round of an arc.'),
} as const satisfies Record<string, WordEntry>;
