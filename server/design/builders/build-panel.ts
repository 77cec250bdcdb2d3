/** Panels of the design. */
import type { FrameProperty } from '../../../grammar/tree/object-syntax.ts';
import type { PanelDeclaration, PanelShapeSyntax, ShapeProperty } from '../../../grammar/tree/panel-syntax.ts';
import type { Name } from '../../../grammar/tree/syntax-nodes.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import { measure, words } from '../../../grammar/words.ts';
import type { Point } from '../../geometry/point.ts';
import { buildFills } from './build-fills.ts';
import type { FillParts } from './build-fills.ts';
import { buildFit } from './build-fit.ts';
import { buildFrame } from './build-frame.ts';
import { buildMap } from './build-map.ts';
import { buildMeetings } from './build-meetings.ts';
import { countedFromCorner, hasPlaces } from '../values/counted-places.ts';
import type { Definition } from '../names/name-index.ts';
import type { DesignContext } from '../design-context.ts';
import type { Frame, Grid, Panel, PanelFit, PanelShape, Phase } from '../design-model.ts';
import { fitTolerance } from '../../geometry/tolerance.ts';
import { resizedGrid } from './fit-cells.ts';
import { propertyOf, reportMissing, reportRepeated } from './pick-properties.ts';
import { readCount, readLength, readPoint } from '../values/read-values.ts';

/** What panels are made of, by name. */
export interface PanelParts extends FillParts {
  readonly grids: ReadonlyMap<string, Grid>;
  /** What a name means where it stands; null where it is unknown. */
  readonly meant: (name: Name) => Definition | null;
}

/** How far a sawn strip runs beyond its last node unless said, mm. */
export const defaultTail = 6;

/** More copies or cells than any shop makes are a slip of the keyboard. */
const mostCopies = 100_000;
const mostCells = 100_000;

/** The panel a declaration describes; null where its grid, shape or place is missing or broken. Broken fills are left out. */
export function buildPanel(panel: PanelDeclaration, parts: PanelParts, context: DesignContext): Panel | null {
  reportRepeated(panel, ['panel fill', 'meets'], context);
  const gridProperty = propertyOf(panel, 'of grid');
  const shapeProperty = propertyOf(panel, 'shape');
  if (!gridProperty) reportMissing(panel, 'grid', 'grid mesh', context);
  if (!shapeProperty) reportMissing(panel, 'shape', 'shape 5 x 4 cells', context);
  const grid = gridProperty && parts.grids.get(gridProperty.name.text);
  const edge = propertyOf(panel, 'edge')?.edge ?? 'framed';
  const frameProperty = propertyOf(panel, 'frame');
  const frame = frameProperty ? buildFrame(frameProperty, panel.name, parts.strips, context) : null;
  const fit =
    grid && shapeProperty?.shape.kind === 'fitted shape'
      ? buildFit(shapeProperty.shape, grid, edge, frame?.stock ?? null, context)
      : null;
  const shape = fit
    ? fittedShape(fit, shapeProperty)
    : shapeProperty && buildShape(shapeProperty.shape, grid, parts, context);
  const phase = buildPhase(panel, fit?.inside?.node ?? null, grid, context);
  const stub = propertyOf(panel, 'stub');
  const stubLength = stub ? readLength(stub.value, 'stub', 'notNegative', context) : 0;
  const tail = propertyOf(panel, 'tail');
  const tailLength = tail ? readLength(tail.value, 'tail', 'notNegative', context) : defaultTail;
  const sliver = propertyOf(panel, 'sliver');
  const copies = propertyOf(panel, 'copies');
  const copyCount = copies ? readCount(copies.value, 'number of copies', 1, mostCopies, context) : 1;
  const fills = buildFills(
    panel.properties.filter((property) => property.kind === 'panel fill'),
    parts,
    context,
  );
  const mapProperty = propertyOf(panel, 'map');
  const mapped = mapProperty ? buildMap(mapProperty, parts, context) : null;
  const meetings = buildMeetings(panel, parts.meant, context);
  if (frameProperty) checkFramed(panel, frameProperty, context);
  if (frame && fit) checkMembers(frame, fit, context);
  if (!grid || !shape || !phase || stubLength === null || tailLength === null || copyCount === null) return null;
  return {
    name: panel.name.text,
    range: panel.range,
    nameRange: panel.name.range,
    grid: fit ? resizedGrid(grid, fit.side) : countsFromCorner(grid, shape, phase) ? countedFromCorner(grid) : grid,
    phase,
    shape,
    edge,
    stub: frame && !stub ? frame.jointDepth - frame.endGap : stubLength,
    tail: tailLength,
    fills: [...fills, ...(mapped?.fills ?? [])],
    map: mapped?.map ?? null,
    cutCells: propertyOf(panel, 'cut cells')?.cutCells ?? 'trim',
    fit,
    frame,
    meets: meetings,
    sliver: sliver ? readLength(sliver.value, 'sliver', 'positive', context) : null,
    copies: copyCount,
  };
}

/** Cells are counted from the corner whatever the phase, which says nothing of them. */
const countsFromCorner = (grid: Grid, shape: PanelShape, phase: Phase): boolean =>
  phase.kind === 'corner' || (shape.kind === 'cells' && hasPlaces(grid));

function fittedShape({ across, up, inside }: PanelFit, property: ShapeProperty | undefined): PanelShape | null {
  if (!property) return null;
  const { range } = property.shape;
  return inside
    ? { kind: 'rectangle', width: inside.width, height: inside.height, range }
    : { kind: 'cells', across, up, range };
}

/** Members that a fit by frame makes wider than their strip is milled cannot be made of it. */
function checkMembers({ stock, range }: Frame, { members }: PanelFit, context: DesignContext): void {
  const widest = members ? Math.max(members.sides, members.rails) : 0;
  if (widest <= stock.face + fitTolerance) return;
  const message = words`The frame's members come out ${measure.given(widest)} wide, and \`${stock.name}\` is milled ${measure.given(stock.face)} wide. Take a wider strip, more cells, or a smaller outer size.`;
  context.report(problemAt('memberWiderThanStrip', range, message));
}

/** A frame belongs to a framed panel, and says itself how far the strips run into it. */
function checkFramed(panel: PanelDeclaration, frame: FrameProperty, context: DesignContext): void {
  const related = [{ range: frame.keyword, message: 'The frame stands here.' }];
  const edge = propertyOf(panel, 'edge');
  if (edge?.edge === 'sawn') {
    const message = 'A sawn panel has no frame. Write `edge framed`, or take the frame out.';
    context.report(problemAt('repeatedProperty', edge.range, message, related));
  }
  const stub = propertyOf(panel, 'stub');
  if (stub) {
    const message = 'The frame says already how far the strips run into it. Take `stub` out of the panel.';
    context.report(problemAt('repeatedProperty', stub.keyword, message, related));
  }
}

/**
 * Where nothing is said, `fitted` is where a node must lie for the cells to come out; null for the usual place: a node in
 * the middle or, of a grid whose strips have places of their own, those counted from the corner.
 */
function buildPhase(
  panel: PanelDeclaration,
  fitted: Point | null,
  grid: Grid | undefined,
  context: DesignContext,
): Phase | null {
  const centred = propertyOf(panel, 'centred');
  const nodeAt = propertyOf(panel, 'node at');
  if (centred && nodeAt) {
    const message = 'The grid already has its place by `centred`. Keep one of the two.';
    const related = [{ range: centred.keyword, message: 'It stands here.' }];
    context.report(problemAt('repeatedProperty', nodeAt.keyword, message, related));
  }
  if (fitted && !nodeAt && !centred) return { kind: 'nodeAt', at: fitted };
  if (!nodeAt && !centred && grid && hasPlaces(grid)) return { kind: 'corner' };
  if (!nodeAt || centred) return { kind: 'centred', on: centred?.on ?? 'node' };
  const at = readPoint(nodeAt.at, context);
  return at && { kind: 'nodeAt', at };
}

function buildShape(
  shape: PanelShapeSyntax,
  grid: Grid | undefined,
  { outlines }: PanelParts,
  context: DesignContext,
): PanelShape | null {
  const { range } = shape;
  switch (shape.kind) {
    case 'outline shape': {
      const outline = outlines.get(shape.name.text);
      return outline ? { kind: 'outline', outline, range } : null;
    }
    case 'fitted shape':
      return null;
    case 'rectangle shape': {
      const width = readLength(shape.width, 'width', 'positive', context);
      const height = readLength(shape.height, 'height', 'positive', context);
      return width === null || height === null ? null : { kind: 'rectangle', width, height, range };
    }
    case 'cells shape': {
      const across = readCount(shape.width, 'number of cells across', 1, mostCells, context);
      const up = readCount(shape.height, 'number of cells up', 1, mostCells, context);
      return across === null || up === null ? null : { kind: 'cells', across, up, range };
    }
    case 'hexagon shape': {
      const cells = readCount(shape.cells, 'number of cells', 1, mostCells, context);
      if (grid && grid.kind !== 'three_way') {
        const message = 'A hexagon of cells needs a three-way grid. Write `5 x 4 cells`, or lengths.';
        context.report(problemAt('outOfRange', range, message));
        return null;
      }
      return cells === null ? null : { kind: 'hexagonOfCells', cells, range };
    }
  }
}
