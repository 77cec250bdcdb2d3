/** The assembled work of a file: what it takes, how it hangs, what it costs. */
import { nearestWord } from '../../../grammar/problems/nearest-word.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Expression } from '../../../grammar/tree/syntax-nodes.ts';
import type { MinutesProperty, WorkDeclaration } from '../../../grammar/tree/work-syntax.ts';
import { rounded } from '../../geometry/tolerance.ts';
import { buildPlacements, type PlacedParts } from './build-placements.ts';
import { hangingSafety } from '../values/defaults.ts';
import type { DesignContext } from '../design-context.ts';
import type { FinishStock } from '../material-model.ts';
import { propertyOf, reportRepeated } from './pick-properties.ts';
import { readMoney } from '../values/read-money.ts';
import {
  optional,
  readCount,
  readFigure,
  readFigureWithin,
  readLength,
  readMass,
  readPercent,
  readTime,
} from '../values/read-values.ts';
import { type StepName, stepNames, writtenStep } from '../names/step-names.ts';
import { unitsOfStep } from '../names/step-units.ts';
import type { Hanging, LabourRate, Work } from '../work-model.ts';

export interface WorkParts extends PlacedParts {
  readonly finishes: ReadonlyMap<string, FinishStock>;
}

const mostCopies = 100_000;
const mostScrews = 1000;

/** A fixing holds at least the load itself; more than this no shop reckons with. */
const safeties = [1, 100] as const;

/** Moisture in percent is read from a percentage: 8 % is 8. */
const inPercent = (share: number | null): number | null => (share === null ? null : rounded(share * 100, 6));

/** The work a declaration describes. What is broken in it is left out. */
export function buildWork(work: WorkDeclaration, parts: WorkParts, context: DesignContext): Work {
  reportRepeated(work, ['place', 'minutes'], context);
  const share = (kind: 'commission' | 'tax' | 'losses', limit: number): number =>
    optional(propertyOf(work, kind)?.value, (value) => readPercent(value, kind, limit, context)) ?? 0;
  const copies = optional(propertyOf(work, 'copies')?.value, (value) =>
    readCount(value, 'number of copies', 1, mostCopies, context),
  );
  const hourly = propertyOf(work, 'hourly');
  const packing = propertyOf(work, 'packing');
  return {
    name: work.name.text,
    range: work.range,
    nameRange: work.name.range,
    copies: copies ?? 1,
    placements: buildPlacements(work, parts, context),
    hanging: buildHanging(work, context),
    finish: buildFinishUse(work, parts),
    moisture: buildMoisture(work, context),
    hourly: hourly ? readMoney(hourly.money, 'price of an hour', context) : null,
    labour: work.properties.flatMap((property) =>
      property.kind === 'minutes' ? (buildLabour(property, context) ?? []) : [],
    ),
    gain: buildGain(work, context),
    commission: share('commission', 1),
    commissionOf: propertyOf(work, 'commission')?.of ?? 'before_tax',
    tax: share('tax', Infinity),
    packing: packing ? readMoney(packing.money, 'price of packing', context) : null,
    losses: share('losses', 1),
  };
}

function buildHanging(work: WorkDeclaration, context: DesignContext): Hanging | null {
  const hang = propertyOf(work, 'hang');
  if (!hang) return null;
  const fixings = readCount(hang.screws, 'number of screws', 1, mostScrews, context);
  const each = readMass(hang.each, 'load of one screw', 'positive', context);
  const safety = optional(hang.safety, (value) =>
    readFigureWithin(value, 'safety', safeties, 'times the load', context),
  );
  const height = optional(hang.height, (value) => readLength(value, 'height of the cleat', 'any', context));
  if (fixings === null || each === null) return null;
  return { fixings, each, safety: safety ?? hangingSafety, height };
}

function buildFinishUse(work: WorkDeclaration, { finishes }: WorkParts): Work['finish'] {
  const used = propertyOf(work, 'finish used');
  if (!used) return null;
  return used.name ? (finishes.get(used.name.text) ?? null) : 'none';
}

function buildMoisture(work: WorkDeclaration, context: DesignContext): Work['moisture'] {
  const property = propertyOf(work, 'moisture');
  if (!property) return null;
  const read = (value: Expression): number | null => inPercent(readPercent(value, 'moisture', 1, context));
  const made = read(property.made);
  const hangs = read(property.hangs);
  return made === null || hangs === null ? null : { made, hangs };
}

function buildGain(work: WorkDeclaration, context: DesignContext): Work['gain'] {
  const gain = propertyOf(work, 'gain');
  const share = gain ? readPercent(gain.value, gain.choice, gain.choice === 'margin' ? 1 : Infinity, context) : null;
  return gain && share !== null ? { kind: gain.choice, share } : null;
}

function buildLabour(minutes: MinutesProperty, context: DesignContext): LabourRate | null {
  const each = readFigure(minutes.value, 'time', 'notNegative', 'minutes', context);
  const wait = optional(minutes.wait, (value) => readTime(value, 'wait', 'notNegative', context));
  const step = stepNames.find((name) => writtenStep(name) === minutes.step.text);
  if (!step) {
    const written = stepNames.map(writtenStep);
    const near = nearestWord(minutes.step.text, written);
    const advice = near
      ? `Did you mean \`${near}\`?`
      : `Use one of ${written.map((name) => `\`${name}\``).join(', ')}.`;
    context.report(
      problemAt('unknownStep', minutes.step.range, `The job has no step \`${minutes.step.text}\`. ${advice}`),
    );
    return null;
  }
  if (!hasUnit(step, minutes, context)) return null;
  return each === null
    ? null
    : { step, minutes: each, per: minutes.per === 'once' ? 'work' : minutes.per, wait: wait ?? 0 };
}

/** Minutes for what a step has none of would count nothing. */
function hasUnit(step: StepName, { per, perRange }: MinutesProperty, context: DesignContext): boolean {
  const units = unitsOfStep(step);
  if (per === 'once' || units.includes(per)) return true;
  const others = units.map((unit) => (unit === 'work' ? '`once`' : `\`per ${unit}\``));
  context.report(
    problemAt(
      'stepHasNoUnit',
      perRange,
      `\`${writtenStep(step)}\` has nothing to count by the ${per}, so these minutes are left out. Give them ${others.slice(0, -1).join(', ')} or ${others.at(-1) ?? ''}.`,
    ),
  );
  return false;
}
