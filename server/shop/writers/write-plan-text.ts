/** The shop plan as plain text, to read at the bench: two parts, step by step, then what the work weighs, takes and costs. */
import type { ShopPlan } from '../shop-plan.ts';
import { section } from './text/figures-text.ts';
import {
  changeColumns,
  hingeColumns,
  notchLines,
  panelColumns,
  pieceColumns,
  spareLines,
  stripColumns,
} from './text/parts-text.ts';
import { bandsText, boardColumns, poursText, sheetColumns } from './text/object-text.ts';
import { stepsText } from './text/steps-text.ts';
import { closingText, costText, kitText, weightText, movementLines, timeText } from './text/work-text.ts';
import { textTable } from './text-table.ts';
import { type LengthFigures, isImperial, angleFigure, changeStep, lengthFigures } from '../../words/figures.ts';

/** The whole plan; ends with a line break. */
export function writePlanText(plan: ShopPlan): string {
  const words = lengthFigures(plan.units);
  const lapped = plan.pieces.filter(({ notches }) => notches.length > 0);
  const parts = [
    heading(plan),
    ...section('Taken as given', assumptions(plan, words)),
    ...section('Panels, one copy of each', textTable(panelColumns, plan.panels, words)),
    ...section('Does it close?', closingText(plan)),
    'PART 1: TO THE LATTICE',
    ...section('Strips to cut and notch', textTable(stripColumns, plan.strips, words)),
    ...section(
      'Notches, from end 1 to the middle of each crossing',
      plan.strips.map((strip) => notchLines(strip, words)).join('\n'),
    ),
    ...section('Steps', stepsText(plan, 'to the lattice')),
    'PART 2: AFTER MEASURING',
    ...section('Infill pieces', textTable(pieceColumns, plan.pieces, words)),
    ...section('Hinges, cut as one length', textTable(hingeColumns, plan.hinges, words)),
    ...section(
      `Change of each length where pitch or face came out ${changeStep(plan.units)} larger`,
      textTable(changeColumns, plan.pieces, words),
    ),
    ...section('Notches of lapped infill', lapped.map((piece) => notchLines(piece, words)).join('\n')),
    ...section('Steps', stepsText(plan, 'after measuring')),
    ...section('Bands', bandsText(plan)),
    ...section('Castings', poursText(plan)),
    ...section('Sheets', textTable(sheetColumns, plan.sheets, words)),
    ...section('Boards', textTable(boardColumns, plan.boards, words)),
    ...section('Spares', spareLines([...plan.strips, ...plan.pieces])),
    ...section('The class', kitText(plan)),
    ...section('Weight', weightText(plan)),
    ...section('From shop to wall', movementLines(plan).join('\n')),
    ...section('Time', timeText(plan)),
    ...section('Price', costText(plan)),
  ];
  return `${parts.join('\n\n')}\n`;
}

function heading(plan: ShopPlan): string {
  const lines = [plan.title ?? 'Shop plan', `from ${plan.source}, text ${plan.revision}`];
  if (plan.incomplete) lines.push('INCOMPLETE: the file has errors, and what they touch is missing here.');
  const lengths = isImperial(plan.units) ? 'in inches' : 'in mm';
  lines.push(`Lengths ${lengths}, tip to tip. Bevels in degrees inside the wood, left and right seen from end 1.`);
  lines.push('Not tested in wood: cut a test notch and a test cell first.');
  return lines.join('\n');
}

/** What the figures rest on, and what can be checked with a rule. */
function assumptions({ grids, benches }: ShopPlan, words: LengthFigures): string {
  const gridLines = grids.map(
    ({ name, sideMm, fitMm, check }) =>
      `grid ${name}: side ${words.length(sideMm)}, fit ${words.fine(fitMm)}; check: ${check.what} measure ${words.length(check.mm)}`,
  );
  const benchLines = benches.map(({ name, kerfMm, bevels: angles }) => {
    const kerf = kerfMm === null ? 'kerf not stated' : `kerf ${words.fine(kerfMm)}`;
    return `bench ${name}: ${kerf}${angles.length > 0 ? `, bevels ${angles.map(angleFigure).join(', ')}` : ''}`;
  });
  return [...gridLines, ...benchLines].join('\n');
}
