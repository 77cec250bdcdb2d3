/** Panels of the design. */
import { problemAt } from '../../grammar/problem-catalogue.ts';
import type { PanelDeclaration, PanelFillProperty, PanelShapeSyntax } from '../../grammar/syntax-tree.ts';
import { otherShape } from './build-motif.ts';
import { cornersOf } from './build-place.ts';
import { buildTips } from './build-tips.ts';
import type { DesignContext } from './design-context.ts';
import type { Grid, Motif, Outline, Panel, PanelFill, PanelShape, Phase, StripStock } from './design-model.ts';
import { propertyOf, reportMissing, reportRepeated } from './pick-properties.ts';
import { readCount, readLength, readPoint } from './read-values.ts';

/** What panels are made of, by name. */
export interface PanelParts {
  readonly strips: ReadonlyMap<string, StripStock>;
  readonly grids: ReadonlyMap<string, Grid>;
  readonly motifs: ReadonlyMap<string, Motif>;
  readonly outlines: ReadonlyMap<string, Outline>;
}

/** How far a sawn strip runs beyond its last node unless said, mm. */
const defaultTail = 6;

/** More copies or cells than any shop makes are a slip of the keyboard. */
const mostCopies = 100_000;
const mostCells = 100_000;

/** The panel a declaration describes; null where its grid, shape or place is missing or broken. Broken fills are left out. */
export function buildPanel(panel: PanelDeclaration, parts: PanelParts, context: DesignContext): Panel | null {
  reportRepeated(panel, ['panel fill'], context);
  const gridProperty = propertyOf(panel, 'grid');
  const shapeProperty = propertyOf(panel, 'shape');
  if (!gridProperty) reportMissing(panel, 'grid', 'grid mesh', context);
  if (!shapeProperty) reportMissing(panel, 'shape', 'shape 5 x 4 cells', context);
  const grid = gridProperty && parts.grids.get(gridProperty.name.text);
  const shape = shapeProperty ? buildShape(shapeProperty.shape, grid, parts, context) : null;
  const phase = buildPhase(panel, context);
  const stub = propertyOf(panel, 'stub');
  const stubLength = stub ? readLength(stub.value, 'stub', 'notNegative', context) : 0;
  const tail = propertyOf(panel, 'tail');
  const tailLength = tail ? readLength(tail.value, 'tail', 'notNegative', context) : defaultTail;
  const copies = propertyOf(panel, 'copies');
  const copyCount = copies ? readCount(copies.value, 'number of copies', 1, mostCopies, context) : 1;
  const fills = panel.properties
    .filter((property) => property.kind === 'panel fill')
    .flatMap((fill) => buildFill(fill, parts, context) ?? []);
  if (!grid || !shape || !phase || stubLength === null || tailLength === null || copyCount === null) return null;
  return {
    name: panel.name.text,
    range: panel.range,
    nameRange: panel.name.range,
    grid,
    phase,
    shape,
    edge: propertyOf(panel, 'edge')?.edge ?? 'framed',
    stub: stubLength,
    tail: tailLength,
    fills,
    map: null,
    cutCells: propertyOf(panel, 'cut cells')?.cutCells ?? 'trim',
    frame: null,
    sliver: null,
    copies: copyCount,
  };
}

function buildPhase(panel: PanelDeclaration, context: DesignContext): Phase | null {
  const centred = propertyOf(panel, 'centred');
  const nodeAt = propertyOf(panel, 'node at');
  if (centred && nodeAt) {
    const message = 'The grid already has its place by `centred`. Keep one of the two.';
    const related = [{ range: centred.keyword, message: 'It stands here.' }];
    context.report(problemAt('repeatedProperty', nodeAt.keyword, message, related));
  }
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
    case 'outline': {
      const outline = outlines.get(shape.name.text);
      return outline ? { kind: 'outline', outline, range } : null;
    }
    case 'rectangle': {
      const width = readLength(shape.width, 'width', 'positive', context);
      const height = readLength(shape.height, 'height', 'positive', context);
      return width === null || height === null ? null : { kind: 'rectangle', width, height, range };
    }
    case 'cells': {
      const across = readCount(shape.width, 'number of cells across', 1, mostCells, context);
      const up = readCount(shape.height, 'number of cells up', 1, mostCells, context);
      return across === null || up === null ? null : { kind: 'cells', across, up, range };
    }
    case 'hexagon of cells': {
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

function buildFill(fill: PanelFillProperty, parts: PanelParts, context: DesignContext): PanelFill | null {
  const motif = parts.motifs.get(fill.motif.text);
  const stock = parts.strips.get(fill.stock.text);
  const { shape } = fill.shape;
  const turned = fill.turned ? buildTurned(fill, context) : 0;
  if (motif && motif.shape !== shape) {
    context.report(otherShape(fill.motif, motif, shape));
    return null;
  }
  const tips = motif ? buildTips(fill.tips, shape, context) : [];
  return motif && stock && turned !== null
    ? { shape, motif, stock, turned, mirrored: false, tips, where: [], range: fill.range }
    : null;
}

/** Corners by which the motif is turned; a rhombus comes to lie on itself by two corners only. */
function buildTurned({ turned, shape: { shape } }: PanelFillProperty, context: DesignContext): number | null {
  const corners = turned && readCount(turned, 'turn', 0, cornersOf[shape] - 1, context);
  if (corners === null || !turned || shape !== 'rhombus' || corners % 2 === 0) return corners;
  const message = 'A rhombus turned by one corner does not fit its opening. Turn it by 2.';
  context.report(problemAt('outOfRange', turned.range, message));
  return null;
}
