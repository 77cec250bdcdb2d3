/** What moves across the grain between the shop and the wall. Lengths mm, moistures in percent. */
import { type Words, measure, words } from '../../../grammar/words.ts';
import type { StripStock } from '../../design/design-model.ts';
import type { Design } from '../../design/design.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import type { PlanMovement } from './object-sections.ts';
import { planLength } from './plan-rounding.ts';
import { humidityFor } from '../wood/equilibrium-moisture.ts';
import { woodFigures } from '../wood/wood-figures.ts';

/** Rooms are kept at about this, °C. */
const roomTemperature = 20;

/**
 * Strip faces and depths, and frame faces, for the moistures that the work states; nothing without them. Tangential:
 * nobody knows how the rings will lie in a strip, and this is the direction that moves most. Along the grain wood keeps
 * its length.
 */
export function planMovement({ work, woods }: Design, panels: readonly LaidPanel[]): PlanMovement<Words>[] {
  const moisture = work?.moisture;
  if (!moisture) return [];
  const { made, hangs } = moisture;
  return sizesOf(panels).flatMap(({ what, stock, size, fit }) => {
    const wood = woodFigures(stock.wood, woods);
    if (!wood) return [];
    const change = wood.movement('tangential', size, made, hangs);
    return [
      {
        what,
        stock: stock.name,
        wood: wood.name,
        direction: 'tangential' as const,
        sizeMm: planLength(size),
        madePct: made,
        hangsPct: hangs,
        changeMm: change === null ? null : planLength(change),
        text: textOf(change, fit, { made, hangs }),
      },
    ];
  });
}

interface MovingSize {
  readonly what: string;
  readonly stock: StripStock;
  readonly size: number;
  /** What takes the movement up: the fit of the notches; null where nothing has to. */
  readonly fit: number | null;
}

/** Each size of each stock once, against the tightest fit it meets. */
function sizesOf(panels: readonly LaidPanel[]): MovingSize[] {
  const sizes = panels.flatMap(({ panel, strips }): MovingSize[] => [
    ...strips.flatMap(({ stock }) => [
      { what: 'strip face', stock, size: stock.face, fit: Math.abs(panel.grid.fit) },
      { what: 'strip depth', stock, size: stock.depth, fit: null },
    ]),
    ...(panel.frame ? [{ what: 'frame face', stock: panel.frame.stock, size: panel.frame.stock.face, fit: null }] : []),
  ]);
  const keyOf = ({ what, stock }: MovingSize): string => JSON.stringify([what, stock.name]);
  const kinds = new Map<string, MovingSize>();
  for (const size of sizes) {
    const known = kinds.get(keyOf(size));
    const fit = known?.fit != null && size.fit !== null ? Math.min(known.fit, size.fit) : size.fit;
    kinds.set(keyOf(size), { ...size, fit });
  }
  return [...kinds.values()];
}

function textOf(change: number | null, fit: number | null, { made, hangs }: { made: number; hangs: number }): Words {
  const air = `${made} % is air of ${percentOf(made)} humidity at ${roomTemperature} °C, ${hangs} % of ${percentOf(hangs)}; read a meter in the shop and on site.`;
  if (change === null) return `Not known: this wood has no shrinkage in the file or the table. ${air}`;
  const way = change < 0 ? 'shrinks' : 'swells';
  const moves = words`${way} by ${measure.fine(Math.abs(change))}`;
  if (fit === null || Math.abs(change) <= fit) return words`${moves}${fit === null ? '' : ', inside the fit'}. ${air}`;
  const result = change < 0 ? 'crossings loosen: glue them' : 'crossings press: let the wood come to the room first';
  return words`${moves}, more than the fit of ${measure.fine(fit)} takes up; ${result}. ${air}`;
}

const percentOf = (moisture: number): string => `${Math.round(100 * humidityFor(roomTemperature, moisture))} %`;
