/** The members of a frame round a straight-sided panel: lengths, corners, and what fills its groove between the strips. */
import { maximum, minimum } from '../geometry/numbers.ts';
import type { Frame, Panel, PanelFit } from '../design/design-model.ts';
import { cross, degrees, direction, distance, dot, type Point, radians, subtract, unit } from '../geometry/point.ts';
import { directionTolerance, kindLengthTolerance, sameAngle, sameLength } from '../geometry/tolerance.ts';
import { cornerAngles } from './cells/cell-classes.ts';
import { type LineFamily, lineOffset, linesBetween } from './grid/grid-lines.ts';
import type { LaidPanel, Polygon } from './laid-panel.ts';
import { panelRegion } from './grid/panel-region.ts';

/** Equal members. `inner` is the clear length inside the frame; ends are cut at these angles to the axis. */
export interface FrameMember {
  readonly length: number;
  readonly inner: number;
  readonly width: number;
  readonly ends: readonly [number, number];
  readonly count: number;
}

/** Equal pieces that fill the groove: whole borders, or fillers between two strips. */
export interface GroovePiece {
  readonly length: number;
  readonly count: number;
}

/** Whether members can be straight: a panel with one outline, all of it lines. */
export function isStraightSided({ shape }: Panel): boolean {
  if (shape.kind !== 'outline') return true;
  const [outer, ...holes] = shape.outline.contours;
  return holes.length === 0 && (outer?.every(({ kind }) => kind === 'line') ?? false);
}

/** One edge of the region with the angles inside the panel at its two ends. */
interface FramedEdge {
  readonly inner: number;
  readonly width: number;
  readonly widthBefore: number;
  readonly widthAfter: number;
  readonly angleBefore: number;
  readonly angleAfter: number;
}

/** The members of one copy, equal ones together, the longest first; none where an edge is not straight. */
export function frameMembers(laid: LaidPanel, frame: Frame): FrameMember[] {
  const [ring] = laid.region;
  if (!ring || !isStraightSided(laid.panel)) return [];
  const members = edgesOf(ring, laid.panel, frame).map((edge): FrameMember => {
    const before = cornerOf(edge.width, edge.widthBefore, edge.angleBefore, frame.corners);
    const after = cornerOf(edge.width, edge.widthAfter, edge.angleAfter, frame.corners);
    const length = edge.inner + before.extension + after.extension;
    return { length, inner: edge.inner, width: edge.width, ends: [before.cut, after.cut], count: 1 };
  });
  return mergedMembers(members).sort((a, b) => b.length - a.length);
}

function edgesOf(ring: Polygon, panel: Panel, frame: Frame): FramedEdge[] {
  const angles = cornerAngles(ring);
  const widths = ring.map((corner, index) =>
    memberWidth(subtract(next(ring, index), corner), panel.grid.families[0]?.direction ?? 0, panel.fit, frame),
  );
  return ring.map((corner, index) => ({
    inner: distance(corner, next(ring, index)),
    width: widths[index] ?? frame.stock.face,
    widthBefore: widths[(index + ring.length - 1) % ring.length] ?? frame.stock.face,
    widthAfter: widths[(index + 1) % ring.length] ?? frame.stock.face,
    angleBefore: angles[index] ?? 90,
    angleAfter: angles[(index + 1) % ring.length] ?? 90,
  }));
}

const next = (ring: Polygon, index: number): Point => ring[(index + 1) % ring.length] ?? { x: 0, y: 0 };

/** The strip's face, or the width that a fit by frame found: members along the first family (level ones, where edges cut cells) are rails, the others sides. */
function memberWidth(along: Point, rowDirection: number, fit: PanelFit | null, { stock }: Frame): number {
  if (!fit?.members) return stock.face;
  const rows = direction(fit.inside ? 0 : rowDirection);
  return Math.abs(cross(unit(along), rows)) <= directionTolerance ? fit.members.rails : fit.members.sides;
}

/**
 * What a member's end adds to its inner edge, and the angle of its cut. At a corner of inside angle φ, where members of
 * widths w and v meet, the outer edges meet (v + w·cos φ)/sin φ beyond the inner corner. A mitre runs from the inner to
 * the outer corner; a lapped member reaches to the far side of the other, which on its inner edge is v/sin φ.
 */
function cornerOf(
  width: number,
  otherWidth: number,
  angle: number,
  corners: Frame['corners'],
): { readonly extension: number; readonly cut: number } {
  const sine = Math.sin(radians(angle));
  const outer = (otherWidth + width * Math.cos(radians(angle))) / sine;
  if (corners === 'mitred') return { extension: Math.max(0, outer), cut: degrees(Math.atan2(width, Math.abs(outer))) };
  return { extension: Math.max(outer, otherWidth / sine, 0), cut: angle > 180 ? 360 - angle : angle };
}

function mergedMembers(members: readonly FrameMember[]): FrameMember[] {
  return members.reduce<FrameMember[]>((kinds, member) => {
    const known = kinds.findIndex((kind) => isSameMember(kind, member));
    if (known < 0) return [...kinds, member];
    return kinds.map((kind, index) => (index === known ? { ...kind, count: kind.count + 1 } : kind));
  }, []);
}

/** Turned end for end, a member is the same. */
function isSameMember(a: FrameMember, b: FrameMember): boolean {
  const sizes = sameLength(a.length, b.length) && sameLength(a.inner, b.inner) && sameLength(a.width, b.width);
  const ways = [
    [0, 1],
    [1, 0],
  ] as const;
  return sizes && ways.some(([one, two]) => sameAngle(a.ends[0], b.ends[one]) && sameAngle(a.ends[1], b.ends[two]));
}

/** What fills the groove for edge infill to bear on: a border along every edge, or fillers between strips; equal ones together. */
export function groovePieces(laid: LaidPanel, bearing: 'border' | 'fillers'): GroovePiece[] {
  const [ring] = laid.region;
  if (!ring || !isStraightSided(laid.panel)) return [];
  const { families } = panelRegion(laid.panel);
  const lengths = ring.flatMap((corner, index) =>
    bearing === 'border' ? [distance(corner, next(ring, index))] : gapsAlong(corner, next(ring, index), families),
  );
  return lengths
    .reduce<GroovePiece[]>((kinds, length) => {
      const known = kinds.findIndex((kind) => sameLength(kind.length, length));
      if (known < 0) return [...kinds, { length, count: 1 }];
      return kinds.map((kind, index) => (index === known ? { ...kind, count: kind.count + 1 } : kind));
    }, [])
    .sort((a, b) => b.length - a.length);
}

/** Lengths of an edge that no strip's body covers. */
function gapsAlong(from: Point, to: Point, families: readonly LineFamily[]): number[] {
  const along = unit(subtract(to, from));
  const whole = distance(from, to);
  const covered = families
    .flatMap((lines) => {
      const rise = dot(lines.normal, along);
      if (Math.abs(rise) <= directionTolerance) return [];
      const start = dot(lines.normal, from);
      const reaches = [start, start + rise * whole];
      const half = lines.face / 2;
      return linesBetween(lines, minimum(reaches) - half, maximum(reaches) + half).map((index) => {
        const place = (lineOffset(lines, index) - start) / rise;
        return [place - half / Math.abs(rise), place + half / Math.abs(rise)] as const;
      });
    })
    .sort(([a], [b]) => a - b);
  const gaps: number[] = [];
  let reached = 0;
  for (const [low, high] of [...covered, [whole, whole] as const]) {
    if (Math.min(low, whole) - reached > kindLengthTolerance) gaps.push(Math.min(low, whole) - reached);
    reached = Math.max(reached, high);
  }
  return gaps;
}
