/** A blank with its cut-outs, seen from the front: the whole lattice, the infill that is made, and every saw line. */
import { measure, words } from '../../grammar/words.ts';
import { centroidOf } from '../geometry/polygons.ts';
import { coarserRing } from '../geometry/coarser-ring.ts';
import type { LaidPanel } from '../lattice/laid-panel.ts';
import { blanksUsed, type FilledBlank, type Place } from '../shop/blanks/cut-out.ts';
import type { NestedBlank } from '../shop/blanks/nest-blanks.ts';
import { writeWords } from '../words/write-words.ts';
import { drawPanel, ringOf } from './draw-panel.ts';
import type { Drawing, DrawingLayer, DrawnText } from './drawing.ts';
import type { MarkedDesign } from './kind-marks.ts';

/** One way in which blanks are filled. */
export interface Filling {
  /** The blank's own name, with a number where there are several ways. */
  readonly name: string;
  readonly filled: FilledBlank;
  readonly made: LaidPanel;
}

export const fillingsOf = ({ blank, packing, laid }: NestedBlank): Filling[] =>
  packing.blanks.flatMap((filled, index) => {
    const made = laid[index];
    return made ? [{ name: packing.blanks.length > 1 ? `${blank.name}_${index + 1}` : blank.name, filled, made }] : [];
  });

/** One drawing for each way in which blanks are filled, in their order. */
export function drawBlank(nested: NestedBlank, drawn: Omit<MarkedDesign, 'blanks'>, title: string | null): Drawing[] {
  const { blank } = nested;
  const { units } = drawn.design;
  return fillingsOf(nested).map(({ name, filled, made }) => {
    const drawing = drawPanel(made, { ...drawn, blanks: [] }, title);
    return {
      ...drawing,
      name,
      heading: `blank ${name}`,
      layers: [...drawing.layers.filter(({ kind }) => kind !== 'outline'), sawLines(filled, blank.range)],
      texts: filled.places.map(nameInPlace),
      summary: [
        writeWords(words`Blank ${name}, ${measure.size([blank.width, blank.height])}, ${filled.count} to make`, units),
        `${filled.places.length} cut-outs: ${wordsOf(filled)}`,
        packingWords(nested),
        ...drawing.summary.slice(1),
      ],
    };
  });
}

/** Cut-outs named once each with their number. */
function wordsOf({ places }: FilledBlank): string {
  const names = [...new Set(places.map(({ cutOut }) => cutOut.name))];
  return names.map((name) => `${places.filter(({ cutOut }) => cutOut.name === name).length} × ${name}`).join(', ');
}

/** How many blanks are filled in all, and how near to the fewest that is. */
export function packingWords({ packing }: NestedBlank): string {
  const used = blanksUsed(packing);
  if (used <= packing.bound) return `${used} in all, proven fewest`;
  return `${used} in all; no packing into fewer than ${packing.bound} is ruled out`;
}

const sawLines = ({ places }: FilledBlank, range: NestedBlank['blank']['range']): DrawingLayer => ({
  name: 'saw lines',
  kind: 'note',
  level: 0,
  wood: null,
  kinds: places.map(({ cutOut, rings, move }) => ({
    mark: cutOut.name,
    label: `saw line of ${cutOut.name}${move.mirrored ? ', sawn from the back' : ''}`,
    rings: rings.map((ring) => ringOf(coarserRing(ring))),
    placements: [0, 0, 0],
    range,
  })),
});

/** Height of the letters, mm. */
const letterHeight = 7;

/** The name of a cut-out, about the middle of where it lies. */
export function nameInPlace({ cutOut, rings, move }: Place): DrawnText {
  const [outer] = rings;
  const { x, y } = centroidOf(outer ?? []);
  return {
    x,
    y,
    size: letterHeight,
    anchor: 'middle',
    text: `${cutOut.name}${move.mirrored ? ', from the back' : ''}`,
  };
}
