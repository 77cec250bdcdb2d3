/** In which order a lattice goes together, in a few lines for the bench. */
import { measure, words } from '../../grammar/words.ts';
import type { GridFamily, LengthUnit, Motif } from '../design/design-model.ts';
import type { LaidPanel } from '../lattice/laid-panel.ts';
import type { MarkedKinds } from '../shop/marks/marked-kinds.ts';
import { angleText } from '../words/figures.ts';
import { writeWords } from '../words/write-words.ts';

/** Lines of plain text: one a layer from the lowest, how to seat the laps, and the infill in its order of fitting. */
export function assemblyOrder(laid: LaidPanel, kinds: MarkedKinds, units: LengthUnit): string[] {
  const { grid, fills } = laid.panel;
  const layers = grid.families
    .map((family, index) => ({ family, number: index + 1 }))
    .sort((a, b) => a.family.layer - b.family.layer);
  const steps = layers.map(({ family, number }, index) => {
    const marks = stripMarks(laid, kinds, number);
    return `${layerText(index, layers.length)}: family ${number}, ${headingText(family)}: ${marks.join(', ')}`;
  });
  const motifs = [...new Set(fills.flatMap(({ motif }) => withNested(motif)))];
  return [
    ...steps,
    'Seat all laps halfway, from the middle outwards; check the diagonals; only then tap home, over a block.',
    ...motifs
      .filter(({ fitOrder, dividers }) => fitOrder.length + dividers.length > 0)
      .map((motif) => fittingText(motif, units)),
  ];
}

/** A motif and those that fill its parts, the outer one first. */
const withNested = (motif: Motif): Motif[] => [motif, ...motif.fills.flatMap((fill) => withNested(fill.motif))];

function fittingText({ name, dividers, fitOrder, fills }: Motif, units: LengthUnit): string {
  const roles = fitOrder.map(({ role, key }) =>
    key === null
      ? role
      : writeWords(words`${role} as the key, cut ${measure.fine(key)} longer and shaved to fit`, units),
  );
  const before = [...new Set(dividers.map(({ role }) => role))];
  const after = [...new Set(fills.map(({ motif }) => `each part with ${motif.name}`))];
  return `Infill ${name}: ${[...before, ...repeatsCounted(roles), ...after].join(', then ')}`;
}

/** "arm, arm, key" becomes "2 × arm, key". */
function repeatsCounted(words: readonly string[]): string[] {
  const runs: { word: string; count: number }[] = [];
  for (const word of words) {
    const last = runs.at(-1);
    if (last?.word === word) last.count++;
    else runs.push({ word, count: 1 });
  }
  return runs.map(({ word, count }) => (count === 1 ? word : `${count} × ${word}`));
}

function layerText(index: number, count: number): string {
  if (index === 0) return 'First, notches up';
  return index === count - 1 ? 'Last, notches down' : 'Then';
}

const headingText = ({ direction }: GridFamily): string => `lying at ${angleText(((direction % 180) + 180) % 180)}`;

/** "S1 × 4" for every kind of strip of one family in this panel, in the order of the marks. */
function stripMarks(laid: LaidPanel, kinds: MarkedKinds, family: number): string[] {
  return kinds.strips.flatMap(({ mark, groups }) => {
    const own = groups.filter(({ panel, group }) => panel === laid && group.family === family);
    const count = own.reduce((total, { group }) => total + group.placements.length, 0);
    return count === 0 ? [] : [`${mark} × ${count}`];
  });
}
