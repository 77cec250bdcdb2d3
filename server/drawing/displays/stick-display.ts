/** The sticks to buy, each with the pieces cut out of it and what is left over. */
import { counted } from '../../../grammar/words.ts';
import { barRing } from '../bar-ring.ts';
import type { LengthUnit, StripStock } from '../../design/design-model.ts';
import type { PlanStock } from '../../shop/shop-plan.ts';
import { fixed, lengthText } from '../../words/figures.ts';
import type { Drawing } from '../drawing.ts';
import { textWidth } from '../svg-caption.ts';
import { layOutTiles, type Tile, type TileShape } from './tiles.ts';

type Stick = PlanStock['sticks'][number];

const letters = 16;
/** Sticks are far longer than thick: they are drawn this high, and the summary says so. */
const stickHeight = 26;

/** The cutting plans drawn; `stocks` gives each its wood and the words that declare it. */
export function displaySticks(
  plans: readonly PlanStock[],
  stocks: readonly StripStock[],
  units: LengthUnit,
  title: string,
): Drawing {
  const tiles = plans.flatMap((plan) => {
    const stock = stocks.find(({ name }) => name === plan.stock);
    return stock ? plan.sticks.map((stick) => stickTile(plan, stick, stock, units)) : [];
  });
  return {
    title,
    name: 'sticks',
    heading: 'sticks and their cuts',
    units,
    ...layOutTiles(tiles, { letters, stacked: true }),
    summary: [
      ...plans.map((plan) => planText(plan)),
      'Lengths are true to scale, heights are not',
      ...plans.flatMap(({ problems }) => problems),
    ],
  };
}

function planText({ stock, sticksUsed, wastePct, proven, bound, objective }: PlanStock): string {
  const least = objective === 'sticks' ? `, at least ${Math.ceil(bound)} needed` : '';
  return `${stock}: ${counted(sticksUsed, 'stick')}, ${fixed(wastePct, 1)} % left over${proven ? ', proven fewest' : least}`;
}

function stickTile(plan: PlanStock, stick: Stick, stock: StripStock, units: LengthUnit): Tile {
  const offcut = lengthText(stick.offcutMm, units, 'length');
  const size = lengthText(stick.lengthMm, units, 'size');
  const whole: TileShape = {
    layer: 'offcut',
    wood: stock.wood,
    kind: {
      mark: '',
      label: `off-cut, ${offcut}`,
      rings: [barRing(stick.lengthMm, stickHeight)],
      range: stock.range,
    },
  };
  const cuts = placedCuts(plan, stick);
  return {
    width: stick.lengthMm,
    height: stickHeight,
    heading: `${stick.count} × ${plan.stock} ${size}`,
    shapes: [
      whole,
      ...cuts.map(({ mark, from, length }): TileShape => ({
        layer: 'piece',
        wood: stock.wood,
        at: { x: from, y: 0 },
        kind: {
          mark,
          label: `${mark}, ${lengthText(length, units, 'length')} out of a stick of ${size}`,
          rings: [barRing(length, stickHeight)],
          range: stock.range,
        },
      })),
    ],
    lines: [`${stick.cuts.map(({ mark, n }) => `${n} × ${mark}`).join(', ')}; off-cut ${offcut}`],
    texts: cuts
      .filter(({ mark, length }) => textWidth(mark, letters) <= length)
      .map(({ mark, from, length }) => ({ x: from + length / 2, y: -letters / 3, anchor: 'middle', text: mark })),
  };
}

/** The cuts of one stick one after the other, a saw cut between neighbours, beginning behind the end trim. */
function placedCuts(
  { kerfMm, endTrimMm }: PlanStock,
  { cuts }: Stick,
): { mark: string; from: number; length: number }[] {
  let from = endTrimMm;
  return cuts
    .flatMap(({ mark, lengthMm, n }) => Array.from({ length: n }, () => ({ mark, length: lengthMm })))
    .map(({ mark, length }) => {
      const cut = { mark, from, length };
      from += length + kerfMm;
      return cut;
    });
}
