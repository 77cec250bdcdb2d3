/** Places in an opening, with the names of nodes followed to what they stand for. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { NodeProperty } from '../../../grammar/tree/motif-syntax.ts';
import type { LineSyntax, PlaceSyntax } from '../../../grammar/tree/place-syntax.ts';
import { nodesOf } from '../../../grammar/tree/walk-tree.ts';
import type { DesignContext } from '../design-context.ts';
import type { CellShape } from '../design-model.ts';
import type { NodeLine, NodePlace } from '../node-place.ts';
import { readAngle, readCount, readFraction } from '../values/read-values.ts';

/** Corners of a shape of opening. */
export function cornersOf(shape: CellShape): number {
  if (shape === 'triangle') return 3;
  if (shape === 'square' || shape === 'rhombus') return 4;
  return shape === 'hexagon' ? 6 : Number(shape.slice('polygon '.length));
}

/** The corner and edge, from 1, that `every` has come to. */
export interface Turn {
  readonly corner: number;
  readonly edge: number;
}

/** A place, or null where it is broken; `turn` is null where nothing is repeated. */
export interface ReadPlace {
  (place: PlaceSyntax, turn: Turn | null): NodePlace | null;
  line: (line: LineSyntax, turn: Turn | null) => NodeLine | null;
}

/** Reads the places of one motif: for openings of `shape`, with its own `nodes`. */
export function placeReader(shape: CellShape, nodes: readonly NodeProperty[], context: DesignContext): ReadPlace {
  const known = new Map<string, NodePlace | null>();
  const beingRead = new Set<string>();

  function readPlace(place: PlaceSyntax, turn: Turn | null): NodePlace | null {
    switch (place.kind) {
      case 'named':
        return readNode(place);
      case 'corner': {
        const corner = readOrdinal(place, 'corner', turn);
        return corner === null ? null : { kind: 'corner', corner };
      }
      case 'mid': {
        const edge = readOrdinal(place, 'edge', turn);
        return edge === null ? null : { kind: 'along', edge, fraction: 0.5 };
      }
      case 'along': {
        const edge = readOrdinal(place, 'edge', turn);
        const fraction = readFraction(place.fraction, 'part of the edge', context);
        return edge === null || fraction === null ? null : { kind: 'along', edge, fraction };
      }
      case 'centroid':
      case 'incentre':
        return { kind: place.kind };
      case 'between': {
        const first = readPlace(place.first, turn);
        const second = readPlace(place.second, turn);
        const fraction = place.fraction ? readFraction(place.fraction, 'part of the way', context) : 0.5;
        return first && second && fraction !== null ? { kind: 'between', first, second, fraction } : null;
      }
      case 'mirrored': {
        const original = readPlace(place.place, turn);
        const over = readLine(place.line, turn);
        return original && over && { kind: 'mirrored', place: original, over };
      }
      case 'turned': {
        const original = readPlace(place.place, turn);
        const about = readPlace(place.about, turn);
        const angle = readTurn(place);
        return original && about && angle !== null ? { kind: 'turned', place: original, angle, about } : null;
      }
      case 'intersection': {
        const first = readLine(place.first, turn);
        const second = readLine(place.second, turn);
        return first && second && { kind: 'intersection', first, second };
      }
    }
  }

  function readLine(line: LineSyntax, turn: Turn | null): NodeLine | null {
    if (line.kind === 'line through') {
      const from = readPlace(line.from, turn);
      const to = readPlace(line.to, turn);
      return from && to && [from, to];
    }
    const edge = readOrdinal(line, 'edge', turn);
    const corners = cornersOf(shape);
    return edge === null
      ? null
      : [
          { kind: 'corner', corner: edge },
          { kind: 'corner', corner: (edge % corners) + 1 },
        ];
  }

  /** Degrees; a step from corner to corner is an equal part of the full turn. */
  function readTurn({ by, inCorners }: Extract<PlaceSyntax, { kind: 'turned' }>): number | null {
    if (!inCorners) return readAngle(by, 'turn', null, context);
    const steps = readCount(by, 'number of corners', 1, cornersOf(shape) - 1, context);
    return steps === null ? null : (steps * 360) / cornersOf(shape);
  }

  function readNode({ name, range }: Extract<PlaceSyntax, { kind: 'named' }>): NodePlace | null {
    const node = nodes.find((candidate) => candidate.name.text === name.text);
    if (!node) return null;
    if (beingRead.has(name.text)) {
      const message = `The node \`${name.text}\` is placed by way of itself. Place it by corners, edges or other nodes.`;
      context.report(
        problemAt('cyclicName', range, message, [{ range: node.name.range, message: 'It is given here.' }]),
      );
      return null;
    }
    const before = known.get(name.text);
    if (before !== undefined) return before;
    beingRead.add(name.text);
    const place = readPlace(node.place, null);
    beingRead.delete(name.text);
    known.set(name.text, place);
    return place;
  }

  function readOrdinal(
    place: Extract<PlaceSyntax, { kind: 'corner' | 'mid' | 'along' }> | Extract<LineSyntax, { kind: 'edge line' }>,
    what: 'corner' | 'edge',
    turn: Turn | null,
  ): number | null {
    if (!place.number) {
      if (turn) return turn[what];
      const message = `It is not said which ${what}. Write \`${what} 1\`, or repeat the piece with \`every ${what}\`.`;
      context.report(problemAt('missingProperty', place.range, message));
      return null;
    }
    const { value, range } = place.number;
    const most = cornersOf(shape);
    if (Number.isInteger(value) && value >= 1 && value <= most) return value;
    const message = `A ${shape} has ${what}s 1 to ${String(most)}, and this is ${String(value)}. Choose one of them.`;
    context.report(problemAt('outOfRange', range, message));
    return null;
  }

  return Object.assign(readPlace, { line: readLine });
}

/** Whether a place speaks of a corner or edge without its number. */
export const isRepeatable = (place: PlaceSyntax): boolean =>
  nodesOf(place, 'corner', 'mid', 'along', 'edge line').some(({ number }) => number === null);
