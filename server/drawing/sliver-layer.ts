/** The slivers of a panel, ringed where they lie: trimmed pieces of which little is kept. */
import { counted, measure, words, type Words } from '../../grammar/words.ts';
import { maximum } from '../geometry/numbers.ts';
import type { LaidPanel, Sliver } from '../lattice/laid-panel.ts';
import { writeWords } from '../words/write-words.ts';
import type { Drawing, DrawingLayer } from './drawing.ts';

/** The drawing with a layer that rings every sliver, and a line that counts them; as it is where there is none. */
export function withSlivers(drawing: Drawing, { slivers, panel }: LaidPanel): Drawing {
  if (slivers.length === 0) return drawing;
  const face = Math.max(maximum(panel.fills.map(({ stock }) => stock.face)), 1);
  const layer: DrawingLayer = {
    ...{ name: 'slivers', kind: 'note', level: 0, wood: null },
    kinds: slivers.map((sliver) => ({
      mark: '',
      label: writeWords(sliverWords(sliver), drawing.units),
      rings: [ringAbout(2 * face)],
      placements: [sliver.at.x, sliver.at.y, 0],
      range: sliver.range,
    })),
  };
  const least = measure.given(panel.sliver ?? 0);
  const line = writeWords(
    words`${counted(slivers.length, 'sliver')}, ringed: less than ${least} is kept of ${slivers.length === 1 ? 'it' : 'each'}`,
    drawing.units,
  );
  return { ...drawing, layers: [...drawing.layers, layer], summary: [...drawing.summary, line] };
}

const sliverWords = ({ role, motif, row, column, keptMm }: Sliver): Words =>
  words`sliver: ${role} of ${motif}, row ${row}, column ${column}, ${measure.length(keptMm)} kept`;

/** As many corners as look round at any size that a sliver is looked at. */
const corners = 24;

function ringAbout(radius: number): number[] {
  return Array.from({ length: corners }, (_, index) => (index / corners) * 2 * Math.PI).flatMap((turn) => [
    radius * Math.cos(turn),
    radius * Math.sin(turn),
  ]);
}
