/** Bands, castings, sheets and boards in words. */
import { counted } from '../../../../grammar/words.ts';
import type { PlanBand, PlanBoard, PlanPourLayer } from '../../sections/object-sections.ts';
import type { ShopPlan } from '../../shop-plan.ts';
import type { PlanSheet } from '../../sections/work-sections.ts';
import { textTable, type Column } from '../text-table.ts';
import { fixed, moneyText, percentText, lengthFigures } from '../../../words/figures.ts';

/** One piece of band, as it is cut. */
interface BandLine {
  readonly band: PlanBand;
  readonly mark: string;
  readonly lengthMm: number;
  readonly cutMm: number;
}

const bandColumns: readonly Column<BandLine>[] = [
  { title: 'mark', cell: ({ mark }) => mark },
  { title: 'stock', cell: ({ band }) => band.stock },
  { title: 'to the tips', right: true, cell: ({ lengthMm }, words) => words.length(lengthMm) },
  { title: 'cut', right: true, cell: ({ cutMm }, words) => words.length(cutMm) },
  { title: 'make', right: true, cell: ({ band }) => String(band.quantity) },
];

export function bandsText({ bands, units }: ShopPlan): string {
  if (bands.length === 0) return '';
  const words = lengthFigures(units);
  const lines = bands.flatMap((band) =>
    band.laminations.flatMap(({ pieces }) => pieces.map((piece): BandLine => ({ band, ...piece }))),
  );
  const heads = bands.map(
    ({ name, around, method, grade, smallestRadiusMm, limitMm, limitFrom }) =>
      `${name} around ${around}, bent ${method}: tightest ${smallestRadiusMm === null ? 'straight' : words.length(smallestRadiusMm)}, limit ${limitMm === null ? 'not known' : `${words.length(limitMm)} (${limitFrom ?? ''})`}: ${grade}`,
  );
  return [textTable(bandColumns, lines, words), '', ...heads].join('\n');
}

/** One layer, with the casting it belongs to. */
interface LayerLine extends PlanPourLayer {
  readonly name: string;
  readonly layer: number;
}

const tenths = (value: number | null): string => (value === null ? '' : fixed(value, 1));

const layerColumns: readonly Column<LayerLine>[] = [
  { title: 'casting', cell: ({ name }) => name },
  { title: 'layer', right: true, cell: ({ layer }) => String(layer) },
  { title: 'colour', cell: ({ colour }) => colour ?? '' },
  { title: 'deep', right: true, cell: ({ pouredMm }, words) => words.length(pouredMm) },
  { title: 'mL', right: true, cell: ({ volumeMl }) => tenths(volumeMl) },
  { title: 'g', right: true, cell: ({ massG }) => tenths(massG) },
  { title: 'A mL', right: true, cell: ({ partA_mL }) => tenths(partA_mL) },
  { title: 'B mL', right: true, cell: ({ partB_mL }) => tenths(partB_mL) },
  { title: 'A g', right: true, cell: ({ partA_g }) => tenths(partA_g) },
  { title: 'B g', right: true, cell: ({ partB_g }) => tenths(partB_g) },
  { title: 'mixes', right: true, cell: ({ mixes }) => String(mixes) },
];

/** All castings of the edition together. */
export function poursText({ pours, units }: ShopPlan): string {
  const lines = pours.flatMap(({ name, layers }) =>
    layers.map((layer, index): LayerLine => ({ name, layer: index + 1, ...layer })),
  );
  return textTable(layerColumns, lines, lengthFigures(units));
}

/** What all sheets of a stock come to, and how far that is proven. */
export function sheetsStanding({ objective, value, bound, proven, currency }: PlanSheet): string {
  const figure = (amount: number): string =>
    objective === 'cost' ? moneyText(amount, currency) : counted(amount, 'sheet');
  return `${figure(value)}, ${proven ? 'proven least' : `at least ${figure(bound)} by area`}`;
}

export const sheetColumns: readonly Column<PlanSheet>[] = [
  { title: 'sheet', cell: ({ sheet }) => sheet },
  { title: 'layout', cell: ({ layout }) => layout },
  { title: 'sheets', right: true, cell: ({ count }) => String(count) },
  { title: 'size', cell: ({ widthMm, heightMm }, words) => [widthMm, heightMm].map(words.length).join(' × ') },
  { title: 'gives', cell: ({ pieces }) => pieces.map(({ what, n }) => `${n} × ${what}`).join(', ') },
  { title: 'used', right: true, cell: ({ usedPct }) => percentText(usedPct / 100) },
  { title: 'all together', cell: sheetsStanding },
];

export const boardColumns: readonly Column<PlanBoard>[] = [
  { title: 'board', cell: ({ name }) => name },
  { title: 'sheet', cell: ({ sheet }) => sheet },
  { title: 'thick', right: true, cell: ({ thicknessMm }, words) => words.length(thicknessMm) },
  { title: 'width', right: true, cell: ({ widthMm }, words) => words.length(widthMm) },
  { title: 'height', right: true, cell: ({ heightMm }, words) => words.length(heightMm) },
  { title: 'saw from', cell: ({ blankMm }, words) => blankMm.map(words.length).join(' × ') },
  { title: 'trammel', cell: ({ trammel }, words) => trammel?.settingsMm.map(words.length).join(' and ') ?? '' },
  { title: 'make', right: true, cell: ({ quantity }) => String(quantity) },
];
