/** What every working drawing says of itself: where it comes from, what it assumes, what to check. */
import { gridCheck, hasSingleLines } from '../design/builders/grid-check.ts';
import type { Grid, LengthUnit, StripStock } from '../design/design-model.ts';
import type { Design } from '../design/design.ts';
import type { LaidPanel } from '../lattice/laid-panel.ts';
import type { MarkedDesign } from './kind-marks.ts';
import type { SheetText } from './sheet/sheet-page.ts';
import { paperLength, paperUnit } from './sheet/paper-figures.ts';

/** The parts of an analysis that working drawings are made from. */
export interface DrawnDesign extends MarkedDesign {
  readonly design: Design;
  readonly panels: readonly LaidPanel[];
}

/** Foot lines for the panels a sheet is about; `source` names the file and the state of its text. */
export function sheetFacts(
  { design }: DrawnDesign,
  panels: readonly LaidPanel[],
  source: string,
): Pick<SheetText, 'origin' | 'assumptions' | 'check'> {
  const figure = paperLength(design.units);
  const grids = [...new Set(panels.map(({ panel }) => panel.grid))];
  const [grid] = grids;
  return {
    origin: `${design.title === null ? '' : `${design.title}, `}from ${source}`,
    assumptions: [
      ...grids.map((each) => gridLine(each, figure)),
      ...design.benches.map(({ name, kerf }) =>
        kerf === null ? `bench ${name}: kerf not stated` : `bench ${name}: kerf ${kerf.toFixed(2)}`,
      ),
    ],
    check: grid ? checkText(grid, figure) : '',
  };
}

/** "bass, basswood, 3.0 × 10.0 mm": name, wood unless it is the name, section. */
export function stockText({ name, wood, face, depth }: StripStock, units: LengthUnit): string {
  const figure = paperLength(units);
  const woodText = wood === null || wood === name ? [] : [wood.replaceAll('_', ' ')];
  return [name, ...woodText, `${figure(face)} × ${figure(depth)}${paperUnit(units)}`].join(', ');
}

function checkText(grid: Grid, figure: (millimetres: number) => string): string {
  const { what, millimetres } = gridCheck(grid);
  return `Check: ${what} of ${grid.name} measure ${figure(millimetres)}`;
}

function gridLine(grid: Grid, figure: (millimetres: number) => string): string {
  const sections = new Set(grid.families.map(({ stock }) => `${figure(stock.face)} × ${figure(stock.depth)}`));
  const measured = grid.measured ? ` as drawn, ten sides ${figure(10 * grid.measured.side)} as measured` : '';
  const size = hasSingleLines(grid) ? 'at places of their own' : `side ${figure(grid.side)}${measured}`;
  return `grid ${grid.name}: ${size}, strips ${[...sections].join(' and ')}, fit ${grid.fit.toFixed(2)}`;
}
