/** Panels, strips, notches and infill pieces as tables. */
import { sameLength } from '../../../geometry/tolerance.ts';
import type { PlanHinge, PlanNotch, PlanPanel, PlanPiece, PlanPieceEnd, PlanStrip } from '../../shop-plan.ts';
import type { Column } from '../text-table.ts';
import {
  type LengthFigures,
  areaText,
  angleFigure,
  angleText,
  changeStep,
  changeFigure,
} from '../../../words/figures.ts';

export const panelColumns: readonly Column<PlanPanel>[] = [
  { title: 'panel', cell: (panel) => panel.name },
  { title: 'copies', right: true, cell: (panel) => String(panel.copies) },
  { title: 'edge', cell: (panel) => panel.edge },
  { title: 'area', right: true, cell: (panel, { units }) => areaText(panel.areaMm2, units) },
  { title: 'perimeter', right: true, cell: (panel, words) => words.length(panel.perimeterMm) },
  { title: 'nodes', right: true, cell: (panel) => String(panel.nodes) },
  { title: 'strips', right: true, cell: (panel) => String(panel.strips) },
  { title: 'infill', right: true, cell: (panel) => String(panel.infill.make) },
  { title: 'whole', right: true, cell: (panel) => String(panel.infill.whole) },
  { title: 'trimmed', right: true, cell: (panel) => String(panel.infill.trimmed) },
  { title: 'cells filled', cell: (panel) => panel.cells.map((cell) => `${cell.needed} ${cell.shape}`).join(', ') },
];

export const stripColumns: readonly Column<PlanStrip>[] = [
  { title: 'mark', cell: (strip) => strip.mark },
  { title: 'stock', cell: (strip) => strip.stock },
  { title: 'section', cell: sectionOf },
  { title: 'length', right: true, cell: (strip, words) => words.length(strip.lengthMm) },
  { title: 'notches', right: true, cell: (strip) => String(strip.notches.length) },
  { title: 'hand', cell: (strip) => strip.hand ?? '' },
  { title: 'make', right: true, cell: (strip) => String(strip.make) },
  { title: 'spare', right: true, cell: (strip) => String(strip.spare) },
  { title: 'cut', right: true, cell: (strip) => String(strip.total) },
  { title: 'for', cell: panelList },
];

export const pieceColumns: readonly Column<PlanPiece>[] = [
  { title: 'mark', cell: (piece) => piece.mark },
  { title: 'piece', cell: (piece) => piece.from.map((from) => `${from.motif} ${from.piece}`).join(', ') },
  { title: 'stock', cell: (piece) => piece.stock },
  { title: 'section', cell: sectionOf },
  { title: 'length', right: true, cell: (piece, words) => words.length(piece.lengthMm) },
  { title: 'edges', cell: (piece, words) => piece.edgesMm.map(words.length).join(' / ') },
  { title: 'end 1', cell: (piece) => bevels(piece.ends[0]) },
  { title: 'end 2', cell: (piece) => bevels(piece.ends[1]) },
  { title: 'whole', right: true, cell: (piece) => String(piece.whole) },
  { title: 'trimmed', right: true, cell: (piece) => String(piece.trimmed) },
  { title: 'spare', right: true, cell: (piece) => String(piece.spare) },
  { title: 'cut', right: true, cell: (piece) => String(piece.total) },
  { title: 'for', cell: panelList },
];

const changeTitle =
  (of: string) =>
  ({ units }: LengthFigures): string =>
    `${of} + ${changeStep(units)}`;

/** How each length follows pitch and face of the lattice as it came out. */
export const changeColumns: readonly Column<PlanStrip | PlanPiece>[] = [
  { title: 'mark', cell: ({ mark }) => mark },
  { title: 'length', right: true, cell: ({ lengthMm }, words) => words.length(lengthMm) },
  {
    title: changeTitle('pitch'),
    right: true,
    cell: ({ perTenth }, { units }) => changeFigure(perTenth?.pitchMm, units),
  },
  { title: changeTitle('face'), right: true, cell: ({ perTenth }, { units }) => changeFigure(perTenth?.faceMm, units) },
  { title: 'new length', cell: () => '________' },
];

export const hingeColumns: readonly Column<PlanHinge>[] = [
  { title: 'halves', cell: ({ marks }) => marks.join(' + ') },
  { title: 'length', right: true, cell: (hinge, words) => words.length(hinge.lengthMm) },
  { title: 'scored at', right: true, cell: (hinge, words) => words.length(hinge.scoreMm) },
  { title: 'make', right: true, cell: (hinge) => String(hinge.make) },
];

function sectionOf(item: { face: number; depth: number }, words: LengthFigures): string {
  return `${words.length(item.face)} × ${words.length(item.depth)}`;
}

function bevels(end: PlanPieceEnd): string {
  return end.bevels ? end.bevels.map(angleFigure).join(' / ') : 'fitted';
}

function panelList(item: { panels: Record<string, number> }): string {
  return Object.entries(item.panels)
    .map(([name, count]) => `${name} ${count}`)
    .join(', ');
}

/** One paragraph a mark: cuts of one setting together, with their places along the strip. */
export function notchLines(item: { mark: string; notches: PlanNotch[] }, words: LengthFigures): string {
  const settings = new Map<string, number[]>();
  for (const notch of item.notches) {
    const setting = `from ${notch.from}, ${words.length(notch.depthMm)} deep, ${words.fine(notch.widthMm)} wide, ${angleText(notch.angle)}`;
    settings.set(setting, [...(settings.get(setting) ?? []), notch.atMm]);
  }
  return [...settings]
    .map(([setting, places]) => `${item.mark}  ${setting}\n    ${placesText(places, words)}`)
    .join('\n');
}

/** Three places or more at one distance are said as a run, the way a stop or pin is set; others one by one. */
function placesText(places: readonly number[], words: LengthFigures): string {
  const [first, second] = places;
  const last = places.at(-1);
  if (first === undefined || second === undefined || last === undefined)
    return `at ${places.map(words.length).join('')}`;
  const step = second - first;
  const even = places.every((place, index) => sameLength(place, first + index * step));
  if (places.length < 3 || !even) return `at ${places.map(words.length).join('  ')}`;
  return `at ${words.length(first)}, then every ${words.length(step)} to ${words.length(last)}: ${places.length} cuts`;
}

/** What spares a stated breakage asked for; a line a stock and rule. */
export function spareLines(items: readonly Pick<PlanPiece, 'stock' | 'spareFor'>[]): string {
  const lines = items.flatMap(({ stock, spareFor }) =>
    spareFor
      ? [
          `${stock}: spares so that with ${spareFor.confidencePct} % certainty enough are good if ${spareFor.breakagePct} % break.`,
        ]
      : [],
  );
  return [...new Set(lines)].join('\n');
}
