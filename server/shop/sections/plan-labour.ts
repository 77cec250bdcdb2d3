/** Hands-on minutes by step, waits, and how many days go by. Times min or h, for the whole edition. */
import type { Words } from '../../../grammar/words.ts';
import type { Design } from '../../design/design.ts';
import type { StepName } from '../../design/names/step-names.ts';
import { maximum, sum } from '../../geometry/numbers.ts';
import { rounded } from '../../geometry/tolerance.ts';
import type { CountedPlan } from './counted-parts.ts';
import { unitsOf } from './labour-units.ts';
import type { MarkedKinds } from '../marks/marked-kinds.ts';
import { jobStep } from '../steps/job-steps.ts';
import type { PlanLabour, PlanStep } from './work-sections.ts';

/** Hands-on hours counted as a day: common practice. */
const hoursPerDay = 8;
const minutesPerHour = 60;
const hoursOfTheClock = 24;

/** Metres are counted to the centimetre, everything else is whole; minutes add up as they are written. */
const unitDecimals = 2;
const minuteDecimals = 2;
const written = (minutes: number): number => rounded(minutes, minuteDecimals);

/** What the rates are stated in, and what they count. */
interface LabouredDesign {
  readonly design: Design;
  readonly kinds: MarkedKinds;
}

export function planLabour(
  { design, kinds }: LabouredDesign,
  steps: readonly PlanStep<Words>[],
  plan: CountedPlan,
): PlanLabour {
  const rates = design.work?.labour ?? [];
  const lines = rates.map((rate) => {
    const { step, per, minutes } = rate;
    const units = rounded(unitsOf(per, step, plan, kinds), unitDecimals);
    return { step, per, minutesEach: minutes, units, minutes: written(minutes * units) };
  });
  const minutesOf = (title: string): number =>
    sum(lines.filter(({ step }) => step === title).map(({ minutes }) => minutes));
  const spans = steps.map(({ title }) => ({
    hands: minutesOf(title) / minutesPerHour,
    wait: waitAfter(title, design) ?? 0,
  }));
  const loose = sum(
    lines.filter(({ step }) => !steps.some(({ title }) => title === step)).map(({ minutes }) => minutes),
  );
  const isStated = lines.length > 0;
  return {
    hourly: design.work?.hourly?.amount ?? null,
    currency: design.work?.hourly?.currency ?? null,
    lines,
    handsOnMin: isStated ? written(sum(lines.map(({ minutes }) => minutes))) : null,
    waitH: sum(spans.map(({ wait }) => wait)),
    elapsedDays: isStated ? daysFor([...spans, { hands: loose / minutesPerHour, wait: 0 }]) : null,
    hoursPerDay,
    notStated: steps.filter(({ title }) => !lines.some(({ step }) => step === title)).map(({ title }) => title),
  };
}

/** The steps with their minutes and waits. */
export const withTimes = (
  steps: readonly PlanStep<Words>[],
  { lines }: PlanLabour,
  design: Design,
): PlanStep<Words>[] =>
  steps.map((step) => {
    const own = lines.filter((line) => line.step === step.title);
    return {
      ...step,
      handsOnMin: own.length === 0 ? null : written(sum(own.map(({ minutes }) => minutes))),
      waitH: waitAfter(step.title, design),
    };
  });

/** Hours that must pass after a step: stated with its labour, or as its materials say; null for none. */
function waitAfter(title: StepName, design: Design): number | null {
  const stated = (design.work?.labour ?? []).filter(({ step }) => step === title).map(({ wait }) => wait);
  const minutes = maximum([0, ...stated, jobStep(title).wait?.(design) ?? 0]);
  return minutes === 0 ? null : minutes / minutesPerHour;
}

/** Days from the first hand laid on to the end of the last wait: hands work eight hours from each morning, waits run on. */
export function daysFor(spans: readonly { readonly hands: number; readonly wait: number }[]): number {
  let hour = 0;
  for (const { hands, wait } of spans) {
    let left = hands;
    while (left > 0) {
      const ofDay = hour % hoursOfTheClock;
      if (ofDay >= hoursPerDay) {
        hour += hoursOfTheClock - ofDay;
        continue;
      }
      const done = Math.min(left, hoursPerDay - ofDay);
      left -= done;
      hour += done;
    }
    hour += wait;
  }
  return Math.ceil(hour / hoursOfTheClock);
}
