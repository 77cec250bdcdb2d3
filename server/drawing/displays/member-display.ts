/** Members of frames, what fills their grooves, and the laminations of bands: each at its true size, with its ends. */
import { counted, figure, joined, measure, words, type Words } from '../../../grammar/words.ts';
import type { LengthUnit } from '../../design/design-model.ts';
import type { Design } from '../../design/design.ts';
import { cotangent } from '../../geometry/point.ts';
import { measureBand } from '../../shop/bands/measure-band.ts';
import type { PlanBand } from '../../shop/sections/object-sections.ts';
import type { PlanFrame } from '../../shop/sections/work-sections.ts';
import { angleText } from '../../words/figures.ts';
import { writeWords } from '../../words/write-words.ts';
import type { Drawing } from '../drawing.ts';
import { endWords, type LaminationEdge, laminationEdge } from './lamination-edge.ts';
import { layOutTiles, type Tile, type TileShape } from './tiles.ts';

/** Everything that the view shows, one entry a mark. */
export interface MemberKind {
  readonly mark: string;
  /** What it is part of: "frame of tray", "band rim". */
  readonly of: string;
  readonly stock: string;
  readonly wood: string | null;
  /** Finished length, and what it is cut to where that is longer. */
  readonly length: number;
  readonly cutLength: number;
  readonly width: number;
  readonly ends: string;
  readonly make: number;
  /** Corners of the face, its axis along x from 0. */
  readonly outline: readonly number[];
  /** The same seen on edge, where an end is cut at a slant through the thickness: the outer face above; else null. */
  readonly onEdge: LaminationEdge | null;
  readonly range: { readonly start: number; readonly end: number };
}

/** Frames first, in the order of their marks. */
export function memberKinds(
  frames: readonly PlanFrame[],
  bands: readonly PlanBand<Words>[],
  design: Design,
): MemberKind[] {
  return [...frames.flatMap((frame) => frameKinds(frame, design)), ...bands.flatMap((band) => bandKinds(band, design))];
}

/** One copy of every mark, one under the other. */
export function displayMembers(members: readonly MemberKind[], units: LengthUnit, title: string): Drawing {
  const total = members.reduce((sum, { make }) => sum + make, 0);
  return {
    title,
    name: 'members',
    heading: 'frames and bands',
    units,
    ...layOutTiles(
      members.map((member) => memberTile(member, units)),
      { letters: 7, stacked: true },
    ),
    summary: [
      `Frames and bands: ${counted(members.length, 'kind')}, ${total} to make`,
      'Each kind once, at its true length; the outer edge of a frame’s member lies below',
      'Angles are between the cut and the axis; bands have their over-length taken off',
      ...(members.some(({ onEdge }) => onEdge !== null)
        ? ['Mitres of bands are seen on edge, below the strip: the outer face lies above']
        : []),
    ],
  };
}

function frameKinds(frame: PlanFrame, design: Design): MemberKind[] {
  const range = design.panels.find(({ name }) => name === frame.panel)?.nameRange ?? { start: 0, end: 0 };
  const part = { of: `frame of ${frame.panel}`, stock: frame.stock, wood: woodOf(design, frame.stock), range };
  return [
    ...frame.members.map(({ mark, lengthMm, widthMm, ends, make }) => ({
      ...{ ...part, mark, length: lengthMm, cutLength: lengthMm, width: widthMm, make },
      ends: `${frame.corners} ${[...new Set(ends.map(angleText))].join(' and ')}`,
      outline: memberOutline(lengthMm, widthMm, ends),
      onEdge: null,
    })),
    ...frame.groovePieces.map(({ mark, lengthMm, widthMm, make }) => ({
      ...{ ...part, mark, length: lengthMm, cutLength: lengthMm, width: widthMm, make },
      of: `groove of ${frame.panel}`,
      ends: 'square',
      outline: memberOutline(lengthMm, widthMm, [90, 90]),
      onEdge: null,
    })),
  ];
}

function bandKinds(band: PlanBand<Words>, design: Design): MemberKind[] {
  const given = design.bands.find(({ name }) => name === band.name);
  const range = given?.nameRange ?? { start: 0, end: 0 };
  const runs = given ? measureBand(given, design.woods).runs : [];
  return band.laminations.flatMap(({ pieces }) =>
    pieces.map(({ mark, lengthMm, cutMm }) => {
      const run = runs.find(({ pieces: own }) => own.some((piece) => piece.mark === mark));
      return {
        ...{ mark, of: `band ${band.name}`, stock: band.stock, wood: woodOf(design, band.stock), range },
        ...{ length: lengthMm, cutLength: cutMm, width: band.widthMm, make: band.quantity },
        ends: run ? endWords(run) : 'square',
        outline: memberOutline(lengthMm, band.widthMm, [90, 90]),
        onEdge: run ? laminationEdge(lengthMm, band.thicknessMm / band.laminations.length, run) : null,
      };
    }),
  );
}

const woodOf = ({ strips }: Design, stock: string): string | null =>
  strips.find(({ name }) => name === stock)?.wood ?? null;

/**
 * The outer edge below, from 0 to the length; each end runs in from it by width · cot(cut), the angle between the cut
 * and the axis: nothing for a square end, the width for a mitre of 45°.
 */
function memberOutline(length: number, width: number, [first, second]: readonly [number, number]): number[] {
  const half = width / 2;
  return [0, -half, length, -half, length - width * cotangent(second), half, width * cotangent(first), half];
}

/** Between the view of the face and the one on edge under it. */
const viewGap = 4;

function memberTile(member: MemberKind, units: LengthUnit): Tile {
  const { mark, of: whole, stock, length, cutLength, width, ends, make } = member;
  const line = [
    whole,
    words`${measure.length(length)} long`,
    ...(cutLength > length ? [words`cut to ${figure.length(cutLength)}`] : []),
    words`${figure.length(width)} wide, of ${stock}`,
    `ends ${ends}`,
    `${make} to make`,
  ];
  const lines = [writeWords(joined(line, ' · '), units)];
  return { width: length, ...viewsOf(member), heading: mark, lines, texts: [] };
}

/** The face, and under it the view on edge where there is one; together about the tile's axis. */
function viewsOf({
  mark,
  of: whole,
  wood,
  width,
  make,
  outline,
  onEdge,
  range,
}: MemberKind): Pick<Tile, 'height' | 'shapes'> {
  const shape = (ring: readonly number[], words: string, y: number): TileShape => ({
    layer: 'strip',
    wood,
    kind: { mark, label: `${mark}, ${whole}, ${make} to make${words}`, rings: [ring], range },
    at: { x: 0, y },
  });
  if (onEdge === null) return { height: width, shapes: [shape(outline, '', 0)] };
  const below = viewGap + onEdge.thickness;
  return {
    height: width + below,
    shapes: [shape(outline, '', below / 2), shape(onEdge.outline, ', seen on edge', -(width + viewGap) / 2)],
  };
}
