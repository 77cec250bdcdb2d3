/** What is done to pour one casting. Volumes mL, masses g, times h. */
import { counted } from '../../../grammar/words.ts';
import type { Blank } from '../../design/work-model.ts';
import type { PlanPour, PlanPourLayer } from '../sections/object-sections.ts';
import { type LengthWords } from '../steps/task-words.ts';

/** The lattice is made of whole steps, and stands over the edge of its mould all round. */
export const mouldTasks = (blanks: readonly Blank[], words: LengthWords): string[] =>
  blanks
    .filter(({ cast }) => cast !== null)
    .map(
      ({ name, width, height }) =>
        `${name}: trim each lattice to ${words.length(width)} × ${words.length(height)}, equal on all sides, to lie in its mould of that size.`,
    );

export const flattenTasks = (pours: readonly PlanPour[], words: LengthWords): string[] =>
  pours
    .filter(({ kind, pouredMm, finishedMm }) => kind === 'blank' && pouredMm > finishedMm)
    .map(
      ({ name, pouredMm, finishedMm }) =>
        `${name}: flatten both faces, ${words.length(pouredMm)} becomes ${words.length(finishedMm)}.`,
    );

export function pourTasks(
  { name, castings, spare, layers, sealMl, holdDownG, finishedMm, notes }: PlanPour,
  words: LengthWords,
): string[] {
  const spares = spare === 0 ? '' : `, ${counted(spare, 'spare')} among them`;
  return [
    `${name}: ${counted(castings, 'casting')}${spares}, ${words.length(finishedMm)} deep when finished.`,
    ...notes.map((note) => `${name}: ${note}`),
    ...(sealMl > 0 ? [`${name}: ${sealMl.toFixed(0)} mL for the seal coat.`] : []),
    ...(holdDownG === null
      ? [`${name}: what holds it down against floating is not known, a density is missing.`]
      : holdDownG > 0
        ? [`${name}: hold each down with ${Math.ceil(holdDownG)} g or more, or it floats.`]
        : []),
    ...layers.map((layer, index) => `${name}, ${layerText(layer, index + 1, words)}`),
  ];
}

function layerText(layer: PlanPourLayer, number: number, words: LengthWords): string {
  const { colour, pouredMm, volumeMl, massG, mixes, recoatFromH, recoatToH } = layer;
  const measured = partsText('mL', layer.partA_mL, layer.partB_mL);
  const weighed = partsText('g', layer.partA_g, layer.partB_g);
  const window =
    recoatFromH === null || recoatToH === null ? '' : `, ${recoatFromH} to ${recoatToH} h after the layer below`;
  return `layer ${number}${colour === null ? '' : ` ${colour}`}: ${words.length(pouredMm)} deep, ${volumeMl.toFixed(0)} mL or ${massG.toFixed(0)} g in ${counted(mixes, 'mix', 'mixes')}${measured}${weighed}${window}.`;
}

const partsText = (unit: string, a: number | null, b: number | null): string =>
  a === null || b === null ? '' : `; A ${a.toFixed(1)} and B ${b.toFixed(1)} ${unit}`;
