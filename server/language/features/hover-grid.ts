/** A grid's measures, the strips it takes, and the panels that use it. */
import { perTenthText } from './per-tenth-text.ts';
import { counted } from '../../../grammar/words.ts';
import type { Analysis } from '../../analyse.ts';
import type { Grid } from '../../design/design-model.ts';
import { heading, type HoverLines } from './hover-text.ts';
import { tallyStrips } from './tally.ts';
import { angleText, lengthText } from '../../words/figures.ts';

export function gridHover(analysis: Analysis, grid: Grid): HoverLines {
  const { design } = analysis;
  const panels = design.panels.filter((panel) => panel.grid.name === grid.name).map(({ name }) => `\`${name}\``);
  const { count } = tallyStrips(analysis, (group) => group.grid === grid.name);
  const families = grid.families.map(({ direction, spacing, positions }) =>
    positions
      ? `${angleText(direction)} at ${positions.map((position) => lengthText(position, design.units)).join(', ')}`
      : `${angleText(direction)} every ${lengthText(spacing, design.units)}`,
  );
  return [
    heading('grid', grid.name, grid.kind.replaceAll('_', '-')),
    `Side ${lengthText(grid.side, design.units)}; fit of the notches ${lengthText(grid.fit, design.units)}`,
    `${counted(families.length, 'family', 'families')}: ${families.join(', ')}`,
    `Strips of it: **${count}** in all`,
    ...stripLines(analysis, grid),
    panels.length > 0 ? `Used in ${panels.join(', ')}` : 'Not used in any panel',
  ];
}

const mostStripsShown = 4;

/** The longest kinds of strip, each with what a change of the grid does to it. */
function stripLines({ kinds, design }: Analysis, grid: Grid): string[] {
  const own = kinds.strips.flatMap(({ mark, groups }) => {
    const group = groups.find((each) => each.group.grid === grid.name)?.group;
    return group ? [{ mark, group }] : [];
  });
  const lines = own.slice(0, mostStripsShown).map(({ mark, group }) => {
    const length = `\`${mark}\` ${lengthText(group.length, design.units, 'length')} long`;
    return [length, perTenthText(group.perTenth, design.units)].filter(Boolean).join(', ');
  });
  return own.length > mostStripsShown ? [...lines, `and ${own.length - mostStripsShown} more kinds`] : lines;
}
