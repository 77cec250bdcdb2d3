/** SVG path data as contours: y flipped to point up, one unit a millimetre. */
import { SVGPathData } from 'svg-pathdata';
import type { PathSegment } from '../geometry/path.ts';
import type { Point } from '../geometry/point.ts';
import { arcByEnds } from './arc-geometry.ts';

/** One subpath. `closed` where it ends with Z. */
export interface Subpath {
  readonly start: Point;
  readonly end: Point;
  readonly segments: readonly PathSegment[];
  readonly closed: boolean;
}

/** The subpaths of path data (SVG 2, chapter 9); null where it cannot be read. */
export function readPathData(data: string): Subpath[] | null {
  const commands = commandsOf(data);
  if (!commands) return null;
  const subpaths: { start: Point; end: Point; segments: PathSegment[]; closed: boolean }[] = [];
  for (const command of commands) {
    if (command.type === SVGPathData.MOVE_TO) {
      const start = upward(command.x, command.y);
      subpaths.push({ start, end: start, segments: [], closed: false });
      continue;
    }
    let current = subpaths.at(-1);
    if (!current) return null;
    if (current.closed) {
      current = { start: current.start, end: current.start, segments: [], closed: false };
      subpaths.push(current);
    }
    if (command.type === SVGPathData.CLOSE_PATH) {
      current.closed = true;
      continue;
    }
    const segment = segmentOf(command, current.end);
    if (segment === undefined) return null;
    if (segment) current.segments.push(segment);
    if ('x' in command && 'y' in command) current.end = upward(command.x, command.y);
  }
  return subpaths.filter(({ segments }) => segments.length > 0);
}

type Command = InstanceType<typeof SVGPathData>['commands'][number];

/** Absolute commands without shorthands; null where the text is no path data or speaks of no place. */
function commandsOf(data: string): readonly Command[] | null {
  try {
    const { commands } = new SVGPathData(data).toAbs().normalizeHVZ(false, true, true).normalizeST();
    const finite = commands.every((command) =>
      Object.values(command).every((value) => typeof value !== 'number' || Number.isFinite(value)),
    );
    return commands.length > 0 && finite ? commands : null;
  } catch {
    return null;
  }
}

/** The segment a command draws from `from`; null where it draws nothing, undefined where it is of another kind. */
function segmentOf(command: Command, from: Point): PathSegment | null | undefined {
  switch (command.type) {
    case SVGPathData.LINE_TO: {
      const to = upward(command.x, command.y);
      return to.x === from.x && to.y === from.y ? null : { kind: 'line', from, to };
    }
    case SVGPathData.QUAD_TO:
      return {
        kind: 'quadratic',
        from,
        control: upward(command.x1, command.y1),
        to: upward(command.x, command.y),
      };
    case SVGPathData.CURVE_TO:
      return {
        kind: 'cubic',
        from,
        control1: upward(command.x1, command.y1),
        control2: upward(command.x2, command.y2),
        to: upward(command.x, command.y),
      };
    case SVGPathData.ARC:
      return arcByEnds({
        from,
        to: upward(command.x, command.y),
        radiusX: command.rX,
        radiusY: command.rY,
        tilt: -command.xRot,
        large: command.lArcFlag === 1,
        sweep: command.sweepFlag === 0,
      });
    default:
      return undefined;
  }
}

/** Flipping y turns a clockwise arc into a counter-clockwise one and a tilt into its opposite. */
const upward = (x: number, y: number): Point => ({ x, y: y === 0 ? 0 : -y });
