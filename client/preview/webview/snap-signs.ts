/** What the pointer shows where a measurement takes hold: a lap where strips cross, a knife line at an end. CSS pixels, y down. */
import type { PagePoint } from './camera.ts';
import type { Snap } from './snap.ts';

/** Half of the sign's length, and of a strip's breadth in it. */
const reach = 10;
const half = 3.5;

/** Lines to draw, each from point to point. */
export type SignLines = readonly (readonly PagePoint[])[];

export const snapSign = (what: Snap['what'], at: PagePoint): SignLines =>
  (what === 'node' ? lap : knifeLine).map((line) => line.map(({ x, y }) => ({ x: at.x + x, y: at.y + y })));

/** One strip laid over another: the edges of the upper one run through, those of the lower one stop at it. */
const lap: SignLines = [
  ...[-half, half].map((y) => [
    { x: -reach, y },
    { x: reach, y },
  ]),
  ...[-half, half].flatMap((x) =>
    [-1, 1].map((side) => [
      { x, y: side * reach },
      { x, y: side * half },
    ]),
  ),
];

/** A line scored along a square, from the knife's point. */
const knifeLine: SignLines = [
  [
    { x: 0, y: reach },
    { x: 0, y: -reach },
  ],
  [
    { x: -half, y: -reach - half },
    { x: 0, y: -reach },
    { x: half, y: -reach - half },
  ],
];
