/** What is made of a strip stock, and what the bench is set up for. */
import type { Analysis } from '../../analyse.ts';
import type { Bench, StripStock } from '../../design/design-model.ts';
import { heading, type HoverLines } from './hover-text.ts';
import { tallyPieces, tallyStrips } from './tally.ts';
import { angleText, lengthText, percentText, runText } from '../../words/figures.ts';

export function stockHover(analysis: Analysis, stock: StripStock): HoverLines {
  const { units } = analysis.design;
  const strips = tallyStrips(analysis, (group) => group.stock.name === stock.name);
  const { make } = tallyPieces(analysis, (group) => group.shape.stock.name === stock.name);
  const infillRun = analysis.kinds.pieces
    .filter(({ shape }) => shape.stock.name === stock.name)
    .reduce((run, piece) => run + piece.make * piece.shape.length, 0);
  return [
    heading('strip', stock.name, stock.wood ?? ''),
    `Section: face ${lengthText(stock.face, units)}, depth ${lengthText(stock.depth, units)}`,
    `Grid strips of it: **${strips.count}**${strips.count > 0 ? `, ${runText(strips.run, units)} in all` : ''}`,
    `Infill pieces of it: **${make}**${make > 0 ? `, ${runText(infillRun, units)} in all` : ''}`,
    stock.spare === null ? '' : `Spare: ${percentText(stock.spare)} of each mark, at least one`,
  ];
}

export function benchHover({ design }: Analysis, bench: Bench): HoverLines {
  return [
    heading('bench', bench.name),
    `Bevels: ${bench.bevels.length > 0 ? bench.bevels.map(angleText).join(', ') : 'not stated'}`,
    `Notching blade: ${bench.kerf === null ? 'not stated' : `kerf ${lengthText(bench.kerf, design.units)}`}`,
    bench.pinPitches.length > 0
      ? `Pin pitches: ${bench.pinPitches.map((pitch) => lengthText(pitch, design.units)).join(', ')}`
      : '',
  ];
}
