/** A grid's measures, the strips it takes, and the panels that use it. */
import type { Analysis } from '../../analyse.ts';
import type { Grid } from '../../design/design-model.ts';
import { heading, type HoverLines } from './hover-text.ts';
import { lengthText, plain } from '../../design/length-text.ts';
import { angleText, counted } from './quantities.ts';
import { tallyStrips } from './tally.ts';

export function gridHover(analysis: Analysis, grid: Grid): HoverLines {
  const { design } = analysis;
  const panels = design.panels.filter((panel) => panel.grid.name === grid.name).map(({ name }) => `\`${name}\``);
  const { count } = tallyStrips(analysis, (group) => group.grid === grid.name);
  const families = grid.families.map(
    ({ direction, spacing }) => `${angleText(direction)} every ${lengthText(spacing, design.units)}`,
  );
  return [
    heading('grid', grid.name, grid.kind.replaceAll('_', '-')),
    `Side ${lengthText(grid.side, design.units)}; fit of the notches ${plain(grid.fit, 3)} mm`,
    `${counted(families.length, 'family', 'families')}: ${families.join(', ')}`,
    `Strips of it: **${count}** in all`,
    panels.length > 0 ? `Used in ${panels.join(', ')}` : 'Not used in any panel',
  ];
}
