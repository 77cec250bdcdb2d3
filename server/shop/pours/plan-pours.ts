/** Pours as the plan writes them: layers, parts, mixes, seal coat, hold-down. Lengths mm, volumes mL, masses g, times h. */
import type { Words } from '../../../grammar/words.ts';
import { maximum, sum } from '../../geometry/numbers.ts';
import { gramsPerCubicMillimetre } from '../mass/mass.ts';
import type { PlanPour, PlanPourLayer } from '../sections/object-sections.ts';
import { planLength } from '../sections/plan-rounding.ts';
import type { Casting } from './castings.ts';
import { mixedParts, mixesFor } from './mixed-parts.ts';
import { displacedBy, type MouldContent, volumeBetween } from './mould-content.ts';

const cubicMillimetresPerMillilitre = 1000;
const squareMillimetresPerSquareMetre = 1e6;
const minutesPerHour = 60;

export const planPours = (castings: readonly Casting[]): PlanPour<Words>[] => castings.map(planPour);

function planPour(casting: Casting): PlanPour<Words> {
  const { name, kind, resin, layers, above, contents, sealCoat, spare } = casting;
  const finished = sum(layers.map(({ depth }) => depth));
  const wetted = sum(contents.map(({ count, wettedArea }) => count * wettedArea));
  const holdDowns = contents.map((content) => holdDown(content, finished + above, resin.density));
  return {
    name,
    kind,
    resin: resin.name,
    castings: sum(contents.map(({ count }) => count)),
    spare,
    finishedMm: planLength(finished),
    pouredMm: planLength(finished + above),
    layers: layers.map((_, index) => planLayer(casting, index)),
    sealMl: planLength((sealCoat * wetted) / squareMillimetresPerSquareMetre),
    holdDownG: holdDowns.some((mass) => mass === null)
      ? null
      : planLength(Math.max(0, maximum(holdDowns.map((mass) => mass ?? 0)))),
    notes: notesFor(casting),
  };
}

/** A layer over all castings, what stays in the cups counted in; the uppermost has what is planed away again. */
function planLayer({ resin, layers, above, contents, waste }: Casting, index: number): PlanPourLayer {
  const depths = layers.map(({ depth }) => depth);
  const low = sum(depths.slice(0, index));
  const high = low + (depths[index] ?? 0) + (index === layers.length - 1 ? above : 0);
  const poured = sum(contents.map((content) => content.count * volumeBetween(content, low, high)));
  const volume = (poured * (1 + waste)) / cubicMillimetresPerMillilitre;
  const [a, b] = mixedParts(volume, resin);
  const hours = (minutes: number | undefined): number | null =>
    index === 0 || minutes === undefined ? null : planLength(minutes / minutesPerHour);
  return {
    resin: resin.name,
    colour: layers[index]?.colour ?? null,
    depthMm: planLength(depths[index] ?? 0),
    pouredMm: planLength(high - low),
    volumeMl: planLength(volume),
    massG: planLength(volume * resin.density),
    partA_mL: optionalLength(a.millilitres),
    partB_mL: optionalLength(b.millilitres),
    partA_g: optionalLength(a.grams),
    partB_g: optionalLength(b.grams),
    mixes: mixesFor(volume, resin),
    recoatFromH: hours(resin.recoat?.earliest),
    recoatToH: hours(resin.recoat?.latest),
    earliestH: resin.recoat ? planLength((index * resin.recoat.earliest) / minutesPerHour) : index === 0 ? 0 : null,
  };
}

const optionalLength = (value: number | null): number | null => (value === null ? null : planLength(value));

/** Mass that keeps one casting's bodies down: the resin they displace less their own. Null where a density is not known. */
function holdDown({ bodies }: MouldContent, height: number, resinDensity: number): number | null {
  const kilogramsPerCubicMetre = resinDensity * cubicMillimetresPerMillilitre;
  if (bodies.some(({ density }) => density === null)) return null;
  const lift = bodies.map(
    (body) =>
      displacedBy(body, 0, height) * kilogramsPerCubicMetre - body.area * (body.to - body.from) * (body.density ?? 0),
  );
  return Math.max(0, sum(lift) * gramsPerCubicMillimetre);
}

function notesFor({ resin, layers, contents, sealCoat, kind }: Casting): string[] {
  const notes: string[] = [];
  const porous = [...new Set(contents.flatMap((content) => content.porous))];
  const isColoured = layers.some(({ colour }) => colour !== null && colour !== 'clear');
  if (porous.length > 0)
    notes.push(
      `Seal first: ${porous.join(', ')} is open-pored${isColoured ? ', drinks colour' : ''} and lets air into the resin.`,
    );
  else if (sealCoat > 0) notes.push('Seal first, and pour inside the recoat window of the seal coat.');
  if (layers.length > 1 && !resin.recoat)
    notes.push(`When the next layer may follow is not stated for ${resin.name}: read its data sheet.`);
  if (resin.potLife !== null)
    notes.push(`Mix one cup at a time and pour it within ${resin.potLife} min; a full cup heats up by itself.`);
  if (resin.mix.by === 'volume' && !resin.partDensities)
    notes.push('The mix is by volume: measure it. To weigh it, state `part densities`.');
  if (kind === 'blank' && contents.length === 0) notes.push('Nothing is sawn from this blank, so it is not cast.');
  return notes;
}
