/** SVG path data as contours: y flipped to point up, one unit a millimetre. */
import { SVGPathData, SVGPathDataParser } from 'svg-pathdata';
import type { PathSegment } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { arcByEnds } from './arc-geometry.ts';

/** One subpath. `closed` where it ends with Z. */
export interface Subpath {
  readonly start: Point;
  readonly end: Point;
  readonly segments: readonly PathSegment[];
  readonly closed: boolean;
}

/** `errorAt` is where the data stops making sense, null where all of it is read. */
export interface ReadPath {
  readonly subpaths: readonly Subpath[];
  readonly errorAt: number | null;
}

/** The subpaths of path data, up to its first error (SVG 2, section 9.5.4). */
export function readPathData(data: string): ReadPath {
  const { commands, errorAt } = commandsOf(data);
  const subpaths: { start: Point; end: Point; segments: PathSegment[]; closed: boolean }[] = [];
  for (const command of commands) {
    if (command.type === SVGPathData.MOVE_TO) {
      const start = upward(command.x, command.y);
      subpaths.push({ start, end: start, segments: [], closed: false });
      continue;
    }
    let current = subpaths.at(-1);
    if (!current) continue;
    if (current.closed) {
      current = { start: current.start, end: current.start, segments: [], closed: false };
      subpaths.push(current);
    }
    if (command.type === SVGPathData.CLOSE_PATH) {
      current.closed = true;
      current.end = current.start;
      continue;
    }
    const segment = segmentOf(command, current.end);
    if (segment) current.segments.push(segment);
    if ('x' in command && 'y' in command) current.end = upward(command.x, command.y);
  }
  return { subpaths: subpaths.filter(({ segments }) => segments.length > 0), errorAt };
}

/** An arc command with all its arguments; the `e` of an exponent is no command. */
const arcCommand = /[Aa][^A-DF-Za-df-z]*/g;
const arcNumber = /[\s,]*[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y;
const arcFlag = /[\s,]*[01]/y;

/**
 * The command with a space for the sign of each radius below zero, which stands for its absolute value (SVG 1.1, F.6.6;
 * SVG 2, B.2.5) and which the parser refuses. An arc has seven arguments: two radii, a tilt, two flags, x and y.
 */
function withAbsoluteRadii(arcs: string): string {
  let written = arcs.charAt(0);
  for (let argument = 0; ; argument = (argument + 1) % 7) {
    const pattern = argument === 3 || argument === 4 ? arcFlag : arcNumber;
    pattern.lastIndex = written.length;
    const found = pattern.exec(arcs)?.[0];
    if (found === undefined) return written + arcs.slice(written.length);
    written += argument < 2 ? found.replace(/^([\s,]*)-/, '$1 ') : found;
  }
}

type Command = InstanceType<typeof SVGPathData>['commands'][number];

/** Absolute commands without shorthands. The parser is fed one character at a time: so it is known where it stops. */
function commandsOf(data: string): { readonly commands: readonly Command[]; readonly errorAt: number | null } {
  const parser = new SVGPathDataParser();
  const read: Command[] = [];
  const sound = data.replace(arcCommand, withAbsoluteRadii);
  let errorAt: number | null = null;
  for (let at = 0; at <= data.length && errorAt === null; at++) {
    try {
      if (at < data.length) parser.parse(sound.charAt(at), read);
      else parser.finish(read);
    } catch {
      errorAt = at;
    }
  }
  const finite = read.findIndex((command) => !isFinite(command));
  const usable = finite < 0 ? read : read.slice(0, finite);
  if (usable[0]?.type !== SVGPathData.MOVE_TO) return { commands: [], errorAt: 0 };
  const { commands } = new SVGPathData(usable).toAbs().normalizeHVZ(false, true, true).normalizeST();
  return { commands, errorAt: finite < 0 ? errorAt : 0 };
}

const isFinite = (command: Command): boolean =>
  Object.values(command).every((value) => typeof value !== 'number' || Number.isFinite(value));

/** The segment a command draws from `from`; null where it draws nothing. */
function segmentOf(command: Command, from: Point): PathSegment | null {
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
    case SVGPathData.MOVE_TO:
    case SVGPathData.CLOSE_PATH:
    // and those that `commandsOf` has turned into others
    case SVGPathData.HORIZ_LINE_TO:
    case SVGPathData.VERT_LINE_TO:
    case SVGPathData.SMOOTH_CURVE_TO:
    case SVGPathData.SMOOTH_QUAD_TO:
      return null;
  }
}

/** Flipping y turns a clockwise arc into a counter-clockwise one and a tilt into its opposite. */
const upward = (x: number, y: number): Point => ({ x, y: y === 0 ? 0 : -y });
