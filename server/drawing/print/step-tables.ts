/** Tables that stand with the step they belong to: frame members, layers to pour, bands to bend, boards to cut. */
import { figure, measure, words } from '../../../grammar/words.ts';
import type { PlanBand, PlanBoard, PlanPour, PlanPourLayer } from '../../shop/sections/object-sections.ts';
import type { FlowPart } from './flow.ts';
import { frameParts } from './frame-parts.ts';
import { amountOrNone } from './optional-figures.ts';
import type { PrintContext } from './print-context.ts';
import { remarks } from './remarks.ts';
import { printTable, type PrintColumn } from './table.ts';

export function stepTables(step: string, context: PrintContext): FlowPart[] {
  const { bands, boards, pours } = context.plan;
  switch (step) {
    case 'frame':
      return frameParts(context);
    case 'pour':
      return pours.filter(({ kind }) => kind === 'blank').flatMap((pour) => pourParts(pour, context));
    case 'cast bodies':
      return pours.filter(({ kind }) => kind === 'body').flatMap((pour) => pourParts(pour, context));
    case 'bend bands':
      return bands.flatMap((band) => bandParts(band, context));
    case 'cut boards':
      return boards.length === 0 ? [] : [boardTable(boards, context)];
    default:
      return [];
  }
}

interface NumberedLayer extends PlanPourLayer {
  readonly layer: number;
}

function pourParts(pour: PlanPour, context: PrintContext): FlowPart[] {
  const { figures, say, width, typefaces } = context;
  const layers = pour.layers.map((layer, index): NumberedLayer => ({ ...layer, layer: index + 1 }));
  const columns: (PrintColumn<NumberedLayer> & { readonly has?: (layer: NumberedLayer) => boolean })[] = [
    { title: '', tick: true },
    { title: 'layer', strong: true, cell: ({ layer, colour }) => `${layer}${colour === null ? '' : ` ${colour}`}` },
    { title: 'deep', align: 'right', strong: true, cell: ({ pouredMm }) => figures.length(pouredMm) },
    { title: 'mL', align: 'right', cell: ({ volumeMl }) => amountOrNone(volumeMl) },
    { title: 'A mL', align: 'right', has: hasVolumes, cell: ({ partA_mL }) => amountOrNone(partA_mL) },
    { title: 'B mL', align: 'right', has: hasVolumes, cell: ({ partB_mL }) => amountOrNone(partB_mL) },
    { title: 'A g', align: 'right', strong: true, has: hasMasses, cell: ({ partA_g }) => amountOrNone(partA_g) },
    { title: 'B g', align: 'right', strong: true, has: hasMasses, cell: ({ partB_g }) => amountOrNone(partB_g) },
    { title: 'mixes', align: 'right', cell: ({ mixes }) => String(mixes) },
    { title: 'hours after the last', has: hasWindow, cell: windowText },
    { title: 'poured at', toFill: true },
  ];
  const shown = columns.filter(({ has }) => has === undefined || layers.some(has));
  const title = `${pour.name}: ${pour.resin}, ${pour.castings} to cast`;
  const hold =
    pour.holdDownG === null
      ? ['What holds it down against floating is not known: a density is missing.']
      : pour.holdDownG > 0
        ? [say(words`Hold each down with ${measure.mass(Math.ceil(pour.holdDownG))} or more.`)]
        : [];
  const cups = layers.flatMap(({ layer, volumeMl, mixes, ...parts }): string[] => {
    const share = (part: number | null): string => amountOrNone(part === null ? null : part / mixes);
    const weighed = hasMasses(parts) ? `, A ${share(parts.partA_g)} and B ${share(parts.partB_g)} g` : '';
    const measured = hasVolumes(parts) ? `, A ${share(parts.partA_mL)} and B ${share(parts.partB_mL)} mL` : '';
    return [
      `Layer ${layer}: ${amountOrNone(volumeMl / pour.castings)} mL to each casting; one mix is ${amountOrNone(volumeMl / mixes)} mL${measured}${weighed}.`,
    ];
  });
  const seal = pour.sealMl > 0 ? [`Seal coat first: ${amountOrNone(pour.sealMl)} mL in all.`] : [];
  return [printTable(title, shown, layers, width, typefaces), ...remarks([...seal, ...cups, ...hold], context)];
}

const hasVolumes = ({ partA_mL }: Pick<PlanPourLayer, 'partA_mL'>): boolean => partA_mL !== null;
const hasMasses = ({ partA_g }: Pick<PlanPourLayer, 'partA_g'>): boolean => partA_g !== null;
const hasWindow = ({ recoatFromH, recoatToH }: PlanPourLayer): boolean => recoatFromH !== null || recoatToH !== null;

function windowText({ recoatFromH, recoatToH }: PlanPourLayer): string {
  if (recoatFromH === null) return recoatToH === null ? '' : `by ${recoatToH}`;
  return recoatToH === null ? `from ${recoatFromH}` : `${recoatFromH} to ${recoatToH}`;
}

interface BandPiece {
  readonly mark: string;
  readonly lamination: number;
  readonly lengthMm: number;
  readonly cutMm: number;
}

function bandParts(band: PlanBand, context: PrintContext): FlowPart[] {
  const { figures, say, width, typefaces } = context;
  const { name, around, stock, quantity, method, grade, smallestRadiusMm, limitMm, limitFrom } = band;
  const pieces = band.laminations.flatMap((lamination, index) =>
    lamination.pieces.map((piece): BandPiece => ({ ...piece, lamination: index + 1 })),
  );
  const columns: PrintColumn<BandPiece>[] = [
    { title: '', tick: true },
    { title: 'mark', strong: true, cell: ({ mark }) => mark },
    { title: 'lamination, from inside', align: 'right', cell: ({ lamination }) => String(lamination) },
    { title: 'to the tips', align: 'right', cell: ({ lengthMm }) => figures.length(lengthMm) },
    { title: 'cut', align: 'right', strong: true, cell: ({ cutMm }) => figures.length(cutMm) },
    { title: 'make', align: 'right', strong: true, cell: () => String(quantity) },
  ];
  const tightest = smallestRadiusMm === null ? 'straight' : words`tightest ${figure.length(smallestRadiusMm)}`;
  const limit =
    limitMm === null ? 'limit not known' : words`limit ${figure.length(limitMm)}, ${limitFrom ?? 'not tested'}`;
  return [
    printTable(`${name} around ${around}: ${stock}`, columns, pieces, width, typefaces),
    ...remarks([say(words`Bent ${method}: ${tightest}, ${limit}: ${grade}.`)], context),
  ];
}

function boardTable(boards: readonly PlanBoard[], { figures, width, typefaces }: PrintContext): FlowPart {
  const columns: PrintColumn<PlanBoard>[] = [
    { title: '', tick: true },
    { title: 'board', strong: true, cell: ({ name }) => name },
    { title: 'sheet', cell: ({ sheet }) => sheet },
    { title: 'thick', align: 'right', cell: ({ thicknessMm }) => figures.size(thicknessMm) },
    {
      title: 'size',
      strong: true,
      cell: ({ widthMm, heightMm }) => `${figures.size(widthMm)} × ${figures.size(heightMm)}`,
    },
    { title: 'from a piece', cell: ({ blankMm }) => blankMm.map(figures.size).join(' × ') },
    {
      title: 'trammel',
      strong: true,
      cell: ({ trammel }) => trammel?.settingsMm.map(figures.length).join(' and ') ?? '',
    },
    { title: 'make', align: 'right', strong: true, cell: ({ quantity }) => String(quantity) },
  ];
  return printTable('Boards', columns, boards, width, typefaces);
}
