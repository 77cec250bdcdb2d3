/** What every working drawing says of itself: where it comes from, what it assumes, what to check. */
import { figure, measure, words, type Words } from '../../grammar/words.ts';
import { gridCheck, hasSingleLines } from '../design/builders/grid-check.ts';
import type { Grid, LengthUnit, StripStock } from '../design/design-model.ts';
import type { Design } from '../design/design.ts';
import type { LaidPanel } from '../lattice/laid-panel.ts';
import { writeWords } from '../words/write-words.ts';
import type { MarkedDesign } from './kind-marks.ts';
import type { SheetText } from './sheet/sheet-page.ts';

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
  const say = (said: Words): string => writeWords(said, design.units);
  const grids = [...new Set(panels.map(({ panel }) => panel.grid))];
  const [grid] = grids;
  return {
    origin: `${design.title === null ? '' : `${design.title}, `}from ${source}`,
    assumptions: [
      ...grids.map((each) => gridText(each, say)),
      ...design.benches.map(({ name, kerf }) =>
        kerf === null ? `bench ${name}: kerf not stated` : say(words`bench ${name}: kerf ${figure.fine(kerf)}`),
      ),
    ],
    check: grid ? say(checkWords(grid)) : '',
  };
}

/** "bass, basswood, 3 × 10 mm": name, wood unless it is the name, section. */
export function stockText({ name, wood, face, depth }: StripStock, units: LengthUnit): string {
  const woodText = wood === null || wood === name ? [] : [wood.replaceAll('_', ' ')];
  return [name, ...woodText, writeWords(words`${measure.given([face, depth])}`, units)].join(', ');
}

function checkWords(grid: Grid): Words {
  const { what, millimetres } = gridCheck(grid);
  return words`Check: ${what} of ${grid.name} measure ${figure.length(millimetres)}`;
}

function gridText(grid: Grid, say: (said: Words) => string): string {
  const sections = new Set(
    grid.families.map(({ stock: { face, depth } }) => say(words`${figure.given([face, depth])}`)),
  );
  const measured = grid.measured
    ? words` as drawn, ten sides ${figure.length(10 * grid.measured.side)} as measured`
    : '';
  const size = hasSingleLines(grid) ? 'at places of their own' : words`side ${figure.length(grid.side)}${measured}`;
  return say(words`grid ${grid.name}: ${size}, strips ${[...sections].join(' and ')}, fit ${figure.fine(grid.fit)}`);
}
