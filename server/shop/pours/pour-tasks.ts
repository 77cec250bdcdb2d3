/** What is done to pour one casting. Volumes mL, masses g, times h. */
import { type Measure, type Words, counted, figure, measure, words } from '../../../grammar/words.ts';
import type { Blank } from '../../design/work-model.ts';
import type { PlanPour, PlanPourLayer } from '../sections/object-sections.ts';

/** The lattice is made of whole steps, and stands over the edge of its mould all round. */
export const mouldTasks = (blanks: readonly Blank[]): Words[] =>
  blanks
    .filter(({ cast }) => cast !== null)
    .map(
      ({ name, width, height }) =>
        words`${measure.name('blank', name)}: trim each lattice to ${figure.length([width, height])}, equal on all sides, to lie in its mould of that size.`,
    );

export const flattenTasks = (pours: readonly PlanPour<Words>[]): Words[] =>
  pours
    .filter(({ kind, pouredMm, finishedMm }) => kind === 'blank' && pouredMm > finishedMm)
    .map(
      ({ name, pouredMm, finishedMm }) =>
        words`${measure.name('blank', name)}: flatten both faces, ${figure.length(pouredMm)} becomes ${figure.length(finishedMm)}.`,
    );

export function pourTasks({
  name,
  kind,
  castings,
  spare,
  layers,
  sealMl,
  holdDownG,
  finishedMm,
  notes,
}: PlanPour<Words>): Words[] {
  const casting = measure.name(kind === 'blank' ? 'blank' : 'pour', name);
  const spares = spare === 0 ? '' : `, ${counted(spare, 'spare')} among them`;
  return [
    words`${casting}: ${counted(castings, 'casting')}${spares}, ${figure.length(finishedMm)} deep when finished.`,
    ...notes.map((note) => words`${casting}: ${note}`),
    ...(sealMl > 0 ? [words`${casting}: ${measure.number(sealMl, 0)} mL for the seal coat.`] : []),
    ...(holdDownG === null
      ? [words`${casting}: what holds it down against floating is not known, a density is missing.`]
      : holdDownG > 0
        ? [words`${casting}: hold each down with ${Math.ceil(holdDownG)} g or more, or it floats.`]
        : []),
    ...layers.map((layer, index) => words`${casting}, ${layerText(layer, index + 1)}`),
  ];
}

function layerText(layer: PlanPourLayer, number: number): Words {
  const { colour, pouredMm, volumeMl, massG, mixes, recoatFromH, recoatToH } = layer;
  const measured = partsText(measure.volume, layer.partA_mL, layer.partB_mL);
  const weighed = partsText(measure.resin, layer.partA_g, layer.partB_g);
  const window =
    recoatFromH === null || recoatToH === null ? '' : `, ${recoatFromH} to ${recoatToH} h after the layer below`;
  return words`layer ${number}${colour === null ? '' : ` ${colour}`}: ${figure.length(pouredMm)} deep, ${measure.number(volumeMl, 0)} mL or ${measure.number(massG, 0)} g in ${counted(mixes, 'mix', 'mixes')}${measured}${weighed}${window}.`;
}

const partsText = (amount: (figure: number) => Measure, a: number | null, b: number | null): Words =>
  a === null || b === null ? '' : words`; A ${amount(a)} and B ${amount(b)}`;
