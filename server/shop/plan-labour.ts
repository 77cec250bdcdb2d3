/** Hands-on minutes by step, waits, and how many days go by. Times min or h, for the whole edition. */
import type { Design } from '../design/design-model.ts';
import type { LabourRate } from '../design/work-model.ts';
import { maximum, sum } from '../geometry/numbers.ts';
import { rounded } from '../geometry/tolerance.ts';
import { jobSteps } from './job-steps.ts';
import type { ShopPlan } from './shop-plan.ts';
import type { PlanLabour, PlanStep } from './work-sections.ts';

/** Hands-on hours counted as a day: common practice. */
const hoursPerDay = 8;
const minutesPerHour = 60;
const hoursOfTheClock = 24;

/** Metres are counted to the centimetre; everything else is whole. */
const unitDecimals = 2;

/** What the units of the rates are counted from. */
export type CountedPlan = Pick<
  ShopPlan,
  'copies' | 'panels' | 'blanks' | 'pieces' | 'strips' | 'settings' | 'stock' | 'bands' | 'pours'
>;

export function planLabour(design: Design, steps: readonly PlanStep[], plan: CountedPlan): PlanLabour {
  const rates = design.work?.labour ?? [];
  const lines = rates.map((rate) => {
    const step = stepNamed(rate.step);
    const units = rounded(unitsOf(rate.per, step, plan), unitDecimals);
    return { step, per: rate.per, minutesEach: rate.minutes, units, minutes: rate.minutes * units };
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
    handsOnMin: isStated ? sum(lines.map(({ minutes }) => minutes)) : null,
    waitH: sum(spans.map(({ wait }) => wait)),
    elapsedDays: isStated ? daysFor([...spans, { hands: loose / minutesPerHour, wait: 0 }]) : null,
    hoursPerDay,
    notStated: steps.filter(({ title }) => !lines.some(({ step }) => step === title)).map(({ title }) => title),
  };
}

/** The steps with their minutes and waits. */
export const withTimes = (steps: readonly PlanStep[], { lines }: PlanLabour, design: Design): PlanStep[] =>
  steps.map((step) => {
    const own = lines.filter((line) => line.step === step.title);
    return {
      ...step,
      handsOnMin: own.length === 0 ? null : sum(own.map(({ minutes }) => minutes)),
      waitH: waitAfter(step.title, design),
    };
  });

/** A step as a file names it: its title, written as one word. Another name is a step of its own, and is kept. */
function stepNamed(name: string): string {
  const words = name.replaceAll('_', ' ');
  return jobSteps.find(({ title }) => title === words)?.title ?? words;
}

/** How many of a rate's units a step has, in the whole edition, spares counted in. */
function unitsOf(per: LabourRate['per'], step: string, plan: CountedPlan): number {
  const settings = plan.settings.filter((setting) => setting.step === step);
  switch (per) {
    case 'work':
      return 1;
    case 'copy':
      return plan.copies;
    case 'setting':
      return settings.length;
    case 'pass':
      return sum(settings.map(({ notching, pieces, flip }) => notching?.passes ?? pieces * (flip ? 2 : 1)));
    case 'piece':
      return sum(plan.pieces.map(({ total }) => total));
    case 'strip':
      return sum(plan.strips.map(({ total }) => total));
    case 'cell':
      return cellsFilled(plan);
    case 'mix':
      return sum(plan.pours.map(({ layers }) => sum(layers.map(({ mixes }) => mixes))));
    case 'metre':
      return metresOf(step, plan);
  }
}

/** Of panels that are made themselves, and of blanks in the place of those sawn from them. */
function cellsFilled({ panels, blanks }: CountedPlan): number {
  const sawn = (panel: string): number =>
    sum(blanks.map(({ copies, places }) => copies * places.filter((place) => place.panel === panel).length));
  const own = panels.map(
    ({ name, quantity, cells }) => Math.max(0, quantity - sawn(name)) * sum(cells.map(({ needed }) => needed)),
  );
  return sum([...own, ...blanks.map(({ copies, cells }) => copies * cells)]);
}

/** Of edge to saw, of band to bend, or of stick to mill and cut. */
function metresOf(step: string, plan: CountedPlan): number {
  if (step === 'saw outlines')
    return sum(plan.panels.map(({ quantity, perimeterMm }) => quantity * perimeterMm)) / 1000;
  if (step === 'bend bands')
    return (
      sum(plan.bands.map(({ quantity, laminations }) => quantity * sum(laminations.map(({ lengthMm }) => lengthMm)))) /
      1000
    );
  return sum(plan.stock.map(({ stickMm }) => stickMm)) / 1000;
}

/** Hours that must pass after a step: stated with its labour, between coats, or until resin is hard; null for none. */
function waitAfter(title: string, { work, pours, blanks }: Design): number | null {
  const stated = (work?.labour ?? []).filter(({ step }) => stepNamed(step) === title).map(({ wait }) => wait);
  const minutes = maximum([0, ...stated, ...ownWaits()]);
  return minutes === 0 ? null : minutes / minutesPerHour;

  function ownWaits(): number[] {
    if (title === 'finish' && work?.finish && work.finish !== 'none')
      return [(work.finish.recoat ?? 0) * work.finish.coats];
    if (title === 'cast bodies')
      return pours
        .filter(({ mould }) => mould.kind !== 'blank')
        .map(({ resin, layers }) => (resin.recoat?.earliest ?? 0) * (layers.length - 1) + (resin.cure ?? 0));
    if (title === 'pour') return blanks.map(({ cast }) => cast?.resin.cure ?? 0);
    return [];
  }
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
