/** In which order the pieces of a cell go in, in words. */
import type { Motif, PanelFill } from '../../design/design-model.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';

/** Every motif of these panels once, with those that fill its parts, in the order met. */
export function motifsOfPanels(panels: readonly LaidPanel[]): Motif[] {
  const motifs = panels.flatMap(({ panel }) => panel.fills.flatMap(motifsOfFill));
  return motifs.filter((motif, index) => motifs.findIndex(({ name }) => name === motif.name) === index);
}

export const motifsOfFill = ({ motif }: Pick<PanelFill, 'motif'>): Motif[] => [
  motif,
  ...motif.fills.flatMap(motifsOfFill),
];

/** The stated order of fitting; dividers before what they part, where none is stated; and what is folded first. */
export function fittingText({ name, fitOrder, dividers, pieces, hinges, fills }: Motif): string {
  const stated = fitOrder.map(({ role, key }) =>
    key === null ? role : `${role} (the key: shave it until it needs a tap)`,
  );
  const roles = [...new Set([...dividers, ...pieces].map(({ role }) => role))];
  const within = [...new Set(fills.map(({ motif }) => motif.name))];
  const order = [...(stated.length > 0 ? stated : roles), ...within.map((other) => `${other} in its parts`)];
  const folds = hinges.map(({ roles }) => ` Fold ${roles.join(' with ')} and set the two in as one.`);
  return `Fill each ${name}: ${order.join(', then ')}.${folds.join('')}`;
}
