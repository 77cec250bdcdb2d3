/** Blanks, bands, pours and boards of two plans, each in the few figures that a maker buys, mills and mixes by. */
import { sum } from '../geometry/numbers.ts';
import { rounded, samePlanArea, samePlanFigure } from '../geometry/tolerance.ts';
import type { PlanBand, PlanBlank, PlanBoard, PlanPour } from '../shop/sections/object-sections.ts';
import type { ShopPlan } from '../shop/shop-plan.ts';
import type { ObjectChange, ObjectFact, ObjectSort } from './design-change.ts';

/** One figure of an object in one version. */
interface Fact {
  readonly what: string;
  readonly unit: ObjectFact['unit'];
  readonly value: string | number;
}

interface DescribedObject {
  readonly sort: ObjectSort;
  readonly name: string;
  readonly facts: readonly Fact[];
}

/** The name under which both versions know a panel, by its name in one of them. */
export type PanelNames = ReadonlyMap<string, string>;

/** Every object that differs. One that went and one that came with the same figures are one that was renamed. */
export function compareObjects(
  old: ShopPlan,
  now: ShopPlan,
  names: { readonly old: PanelNames; readonly new: PanelNames },
): ObjectChange[] {
  const [before, after] = [objectsOf(old, names.old), objectsOf(now, names.new)];
  const isNamed = (a: DescribedObject, b: DescribedObject): boolean => a.sort === b.sort && a.name === b.name;
  const came = after.filter((each) => !before.some((other) => isNamed(each, other)));
  const left = before.filter((each) => !after.some((other) => isNamed(each, other)));
  const kept = before.flatMap((one) => {
    const two = after.find((other) => isNamed(one, other));
    return two && factsBetween(one, two).length > 0 ? [changeOf(one, two)] : [];
  });
  const moved = left.map((one) => {
    const twin = came.findIndex((two) => one.sort === two.sort && factsBetween(one, two).length === 0);
    return changeOf(one, twin < 0 ? null : (came.splice(twin, 1)[0] ?? null));
  });
  return [...kept, ...moved, ...came.map((two) => changeOf(null, two))];
}

function changeOf(old: DescribedObject | null, now: DescribedObject | null): ObjectChange {
  const sort = (now ?? old)?.sort ?? 'blank';
  const change = old && now ? 'changed' : now ? 'new' : 'gone';
  return { sort, change, oldName: old?.name ?? null, newName: now?.name ?? null, facts: factsBetween(old, now) };
}

/** The figures that differ; all of them where there is one version alone. */
function factsBetween(old: DescribedObject | null, now: DescribedObject | null): ObjectFact[] {
  const all = [...(now?.facts ?? []), ...(old?.facts ?? [])];
  const whats = [...new Set(all.map(({ what }) => what))];
  return whats.flatMap((what): ObjectFact[] => {
    const [one, two] = [old, now].map((object) => object?.facts.find((fact) => fact.what === what));
    if (one && two && sameValue(one, two)) return [];
    return [{ what, unit: (two ?? one)?.unit ?? null, old: one?.value ?? null, new: two?.value ?? null }];
  });
}

function sameValue({ value: one, unit }: Fact, { value: two }: Fact): boolean {
  if (typeof one === 'string' || typeof two === 'string') return one === two;
  return unit === 'mm²' ? samePlanArea(one, two) : samePlanFigure(one, two);
}

function objectsOf({ blanks, bands, pours, boards }: ShopPlan, names: PanelNames): DescribedObject[] {
  const blankNames = [...new Set(blanks.map(({ name }) => name))];
  return [
    ...blankNames.map((name) => {
      const fillings = blanks.filter((blank) => blank.name === name);
      return { sort: 'blank' as const, name, facts: blankFacts(fillings, names) };
    }),
    ...bands.map((band) => ({ sort: 'band' as const, name: band.name, facts: bandFacts(band, names) })),
    ...pours.map((pour) => ({ sort: 'pour' as const, name: pour.name, facts: pourFacts(pour) })),
    ...boards.map((board) => ({ sort: 'board' as const, name: board.name, facts: boardFacts(board) })),
  ];
}

const figure = (what: string, value: number, unit: Fact['unit'] = null): Fact => ({ what, value, unit });
const word = (what: string, value: string): Fact => ({ what, value, unit: null });
/** A figure that may not be known, or not be there. */
const known = (what: string, value: number | null, unit: Fact['unit']): Fact[] =>
  value === null ? [] : [figure(what, value, unit)];

/** One blank may be filled in several ways, each an entry of the plan. */
function blankFacts(fillings: readonly PlanBlank[], names: PanelNames): Fact[] {
  const places = new Map<string, number>();
  for (const { copies, places: own } of fillings) {
    for (const { panel } of own) {
      const name = names.get(panel) ?? panel;
      places.set(name, (places.get(name) ?? 0) + copies);
    }
  }
  return [
    figure('to make', sum(fillings.map(({ copies }) => copies))),
    ...[...places].map(([panel, count]) => figure(`places taken by ${panel}`, count)),
    figure('cells filled', sum(fillings.map(({ copies, cells }) => copies * cells))),
    figure('infill pieces', sum(fillings.map(({ copies, infill }) => copies * infill.make))),
  ];
}

const bandFacts = (band: PlanBand, names: PanelNames): Fact[] => [
  figure('to make', band.quantity),
  word('runs round', names.get(band.around) ?? band.around),
  word('strip', band.stock),
  figure('laminations', band.laminations.length),
  figure('length of the outer lamination', band.laminations.at(-1)?.lengthMm ?? 0, 'mm'),
  figure('length of all laminations', rounded(sum(band.laminations.map(({ lengthMm }) => lengthMm)), 3), 'mm'),
  figure('thickness', band.thicknessMm, 'mm'),
  figure('width', band.widthMm, 'mm'),
  ...known('smallest radius', band.smallestRadiusMm, 'mm'),
  word('at that radius the strip', band.grade),
  word('bent', band.method),
];

const pourFacts = (pour: PlanPour): Fact[] => [
  figure('castings', pour.castings),
  word('resin', pour.resin),
  figure('layers', pour.layers.length),
  ...pour.layers.map(({ pouredMm }, index) => figure(`depth poured in layer ${index + 1}`, pouredMm, 'mm')),
  figure('volume', rounded(sum(pour.layers.map(({ volumeMl }) => volumeMl)), 3), 'mL'),
  figure('mass of resin', rounded(sum(pour.layers.map(({ massG }) => massG)), 3), 'g'),
  figure('mixes', sum(pour.layers.map(({ mixes }) => mixes))),
  figure('finished depth', pour.finishedMm, 'mm'),
];

const boardFacts = (board: PlanBoard): Fact[] => [
  figure('to make', board.quantity),
  word('sheet', board.sheet),
  figure('thickness', board.thicknessMm, 'mm'),
  figure('width', board.widthMm, 'mm'),
  figure('height', board.heightMm, 'mm'),
  figure('area', board.areaMm2, 'mm²'),
  word('edge', board.edgeSizeMm === null ? board.edge : `${board.edge} ${board.edgeSizeMm}`),
  ...known('mass', board.massG, 'g'),
];
