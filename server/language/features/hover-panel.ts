/** A panel in numbers: size, openings, infill and strips, of one copy and of all. */
import { counted } from '../../../grammar/words.ts';
import type { Analysis } from '../../analyse.ts';
import { neighbourList } from '../../design/builders/build-fit.ts';
import type { LengthUnit, Panel } from '../../design/design-model.ts';
import type { CellCount, LaidPanel } from '../../lattice/laid-panel.ts';
import { heading, type HoverLines } from './hover-text.ts';
import { panelTally } from './tally.ts';
import { areaText, lengthText } from '../../words/figures.ts';
import { writeWords } from '../../words/write-words.ts';

export function panelHover({ design, panels }: Analysis, panel: Panel): HoverLines {
  const title = heading('panel', panel.name, `${panel.edge}, ${counted(panel.copies, 'copy', 'copies')}`);
  const laid = panels.find((candidate) => candidate.panel.name === panel.name);
  if (!laid) return [title, 'Not laid out: the file has an error that touches this panel.'];
  const { make, whole, trimmed, strips } = panelTally(laid);
  return [
    title,
    `Infill to make: **${make}** a copy (${whole} whole, ${trimmed} trimmed)${inAll(make, laid.quantity)}`,
    `Strips: **${strips}** a copy in ${counted(laid.strips.length, 'kind')}${inAll(strips, laid.quantity)}`,
    `Cells: ${laid.cells
      .filter(({ met }) => met > 0)
      .map(cellText)
      .join('; ')}`,
    fitText(laid.panel, design.units),
    `${areaText(laid.areaMm2, design.units)}, perimeter ${lengthText(laid.perimeterMm, design.units, 'length')}, ${nodesText(laid)}`,
  ];
}

/** The side or the frame's widths that were found, and what stands beside the count asked for. */
function fitText({ fit }: Panel, units: LengthUnit): string {
  if (!fit) return '';
  const found = fit.members
    ? `frame ${lengthText(fit.members.sides, units)} wide at the sides, ${lengthText(fit.members.rails, units)} at top and bottom`
    : `side ${lengthText(fit.side, units)}`;
  return `Fit ${fit.across} x ${fit.up}: ${found}. Beside it: ${writeWords(neighbourList(fit.neighbours), units)}`;
}

const inAll = (each: number, copies: number): string =>
  copies > 1 ? `, **${each * copies}** for ${copies} copies` : '';

const cellText = ({ shape, met, needed }: CellCount): string =>
  `${counted(met, shape === 'other' ? 'other cell' : shape)} met, ${needed} filled`;

const nodesText = ({ nodes }: LaidPanel): string => counted(nodes, 'node');
