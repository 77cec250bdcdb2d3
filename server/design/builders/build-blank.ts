/** Blanks of the design. */
import type { BlankDeclaration, TakeProperty } from '../../../grammar/tree/object-syntax.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import { sawAllowance, sawGap } from '../values/defaults.ts';
import type { DesignContext } from '../design-context.ts';
import type { Grid, Panel } from '../design-model.ts';
import type { ResinStock } from '../material-model.ts';
import { propertyOf, reportMissing, reportRepeated } from './pick-properties.ts';
import { optional, readAngle, readCount, readLength } from '../values/read-values.ts';
import type { Blank } from '../work-model.ts';

export interface BlankParts {
  readonly grids: ReadonlyMap<string, Grid>;
  readonly panels: ReadonlyMap<string, Panel>;
  readonly resins: ReadonlyMap<string, ResinStock>;
  /** Whether all that the file says of the things of a name could be read. */
  readonly isWhole: (name: string) => boolean;
}

const mostTaken = 100_000;

/** The blank a declaration describes; null where its grid or size is missing or broken. Broken takes are left out. */
export function buildBlank(blank: BlankDeclaration, parts: BlankParts, context: DesignContext): Blank | null {
  reportRepeated(blank, ['take'], context);
  const gridProperty = propertyOf(blank, 'of grid');
  const size = propertyOf(blank, 'blank size');
  if (!gridProperty) reportMissing(blank, 'grid', 'grid mesh', context);
  if (!size) reportMissing(blank, 'shape', 'shape 420 x 297', context);
  const grid = gridProperty && parts.grids.get(gridProperty.name.text);
  const width = size ? readLength(size.width, 'width', 'positive', context) : null;
  const height = size ? readLength(size.height, 'height', 'positive', context) : null;
  const length = (kind: 'margin' | 'gap' | 'allowance', usual: number): number =>
    optional(propertyOf(blank, kind)?.value, (value) => readLength(value, kind, 'notNegative', context)) ?? usual;
  const [margin, gap, allowance] = [length('margin', 0), length('gap', sawGap), length('allowance', sawAllowance)];
  const turns = propertyOf(blank, 'turns')?.values.map((value) => readAngle(value, 'turn', null, context));
  const cast = buildCast(blank, parts, context);
  const takes = blank.properties.flatMap((property) =>
    property.kind === 'take' ? (buildTake(property, grid, parts, context) ?? []) : [],
  );
  if (!grid || width === null || height === null) return null;
  return {
    name: blank.name.text,
    range: blank.range,
    nameRange: blank.name.range,
    grid,
    width,
    height,
    takes,
    margin,
    gap,
    allowance,
    turns: turns?.filter((turn) => turn !== null) ?? null,
    fromBack: propertyOf(blank, 'from back') !== undefined,
    matchLaps: propertyOf(blank, 'match laps') !== undefined,
    cast,
  };
}

/** What is sawn from the blank; null where it can't be: another grid, or a panel fitted to a frame. */
function buildTake(
  take: TakeProperty,
  grid: Grid | undefined,
  { panels, isWhole }: BlankParts,
  context: DesignContext,
): Blank['takes'][number] | null {
  const panel = panels.get(take.panel.text);
  const count = take.count ? readCount(take.count, 'number taken', 1, mostTaken, context) : (panel?.copies ?? null);
  if (!panel || count === null) return null;
  const refuse = (message: string): null => {
    context.report(problemAt('outOfRange', take.panel.range, message));
    return null;
  };
  if (grid && panel.grid.name !== grid.name) {
    return refuse(
      `\`${panel.name}\` lies on the grid \`${panel.grid.name}\`, and this blank on \`${grid.name}\`. Take it from a blank of its own grid.`,
    );
  }
  if (panel.edge === 'framed' && isWhole(panel.name)) {
    return refuse(`\`${panel.name}\` is fitted to a frame, not sawn from a blank. Give the panel \`edge sawn\`.`);
  }
  return { panel, count, range: take.range };
}

/** A cast needs a depth and a resin; null where nothing is cast, or where one of them is missing or broken. */
function buildCast(blank: BlankDeclaration, { resins }: BlankParts, context: DesignContext): Blank['cast'] {
  const deep = propertyOf(blank, 'cast depth');
  const of = propertyOf(blank, 'of resin');
  if (!deep && !of) return null;
  if (!deep) reportMissing(blank, 'depth', 'depth 10 surfaced 0.5 overfill 1', context);
  if (!of) reportMissing(blank, 'resin', 'of casting_resin', context);
  const depth = deep ? readLength(deep.depth, 'depth', 'positive', context) : null;
  const surfaced = optional(deep?.surfaced, (value) => readLength(value, 'surfacing', 'notNegative', context)) ?? 0;
  const overfill = optional(deep?.overfill, (value) => readLength(value, 'overfill', 'notNegative', context)) ?? 0;
  const resin = of && resins.get(of.name.text);
  return depth !== null && resin ? { depth, surfaced, overfill, resin } : null;
}

/** Panels of which the blanks take another number than there are copies. */
export function checkTakes(blanks: readonly Blank[], isWhole: BlankParts['isWhole']): Problem[] {
  if (!blanks.every(({ name }) => isWhole(name))) return [];
  const takes = blanks.flatMap((blank) => blank.takes);
  return [...new Set(takes.map(({ panel }) => panel))].flatMap((panel) => {
    const ofPanel = takes.filter((take) => take.panel === panel);
    const [first] = ofPanel;
    const taken = ofPanel.reduce((total, { count }) => total + count, 0);
    if (!first || taken === panel.copies || !isWhole(panel.name)) return [];
    const copies = panel.copies === 1 ? '1 copy' : `${String(panel.copies)} copies`;
    const message = `The blanks take ${String(taken)} of \`${panel.name}\`, which has ${copies}. Give both the same number.`;
    return [problemAt('countDiffersFromCopies', first.range, message)];
  });
}
