/** Which kinds of one version are which of the other: equal shapes first, then the most alike in one best assignment. */
import { sum } from '../geometry/numbers.ts';
import { planLength } from '../shop/sections/plan-rounding.ts';
import type { PlanPiece, PlanStrip } from '../shop/shop-plan.ts';
import { bestAssignment } from './best-assignment.ts';
import type { KindBrief, KindChange, KindChanges } from './design-change.ts';
import { type KindSort, pieceSort, stripSort, unlikely } from './kind-likeness.ts';

/** What of each kind is compared. */
export interface Counting {
  /** The name under which a panel is counted in both versions; null leaves the panel out. */
  readonly nameOf: (panel: string) => string | null;
  /** False leaves spares out: they follow from all panels together, so not from some of them. */
  readonly spares: boolean;
}

export const comparePieces = (old: readonly PlanPiece[], now: readonly PlanPiece[], counting: Counting): KindChanges =>
  compareKinds(pieceSort, counted(old, counting), counted(now, counting));

export const compareStrips = (old: readonly PlanStrip[], now: readonly PlanStrip[], counting: Counting): KindChanges =>
  compareKinds(stripSort, counted(old, counting), counted(now, counting));

interface CountedByPanel {
  readonly make: number;
  readonly total: number;
  readonly panels: Record<string, number>;
}

/** The kinds with their panels renamed and those left out taken off; a kind of which nothing is left goes. */
function counted<Kind extends CountedByPanel>(kinds: readonly Kind[], { nameOf, spares }: Counting): Kind[] {
  return kinds.flatMap((kind): Kind[] => {
    const known = Object.entries(kind.panels).flatMap(([name, count]): [string, number][] => {
      const under = nameOf(name);
      return under === null ? [] : [[under, count]];
    });
    const less = sum(Object.values(kind.panels)) - sum(known.map(([, count]) => count));
    const make = kind.make - less;
    if (less > 0 && make <= 0) return [];
    return [{ ...kind, panels: Object.fromEntries(known), make, total: spares ? kind.total : make }];
  });
}

interface Pair<Kind> {
  readonly old: Kind;
  readonly now: Kind;
}

/**
 * Kinds are matched by what they are, never by their mark: first those of one shape, then the rest so that the
 * unlikeness of all pairs together is least. The versions may be exchanged: ties are broken the same way.
 */
function compareKinds<Kind>(sort: KindSort<Kind>, old: readonly Kind[], now: readonly Kind[]): KindChanges {
  const turned = JSON.stringify(old.map(sort.brief)) > JSON.stringify(now.map(sort.brief));
  const matched = turned
    ? matchKinds(sort, now, old).map((pair) => ({ old: pair.now, now: pair.old }))
    : matchKinds(sort, old, now);
  const changed = matched.flatMap((pair) => changeOfPair(sort, pair));
  const pairedOld = new Set(matched.map((pair) => pair.old));
  const pairedNow = new Set(matched.map((pair) => pair.now));
  const gone = old.filter((kind) => !pairedOld.has(kind)).map((kind) => lone('gone', sort.brief(kind)));
  const came = now.filter((kind) => !pairedNow.has(kind)).map((kind) => lone('new', sort.brief(kind)));
  return { same: matched.length - changed.length, changes: [...changed.sort(byMark), ...gone, ...came] };
}

function matchKinds<Kind>(sort: KindSort<Kind>, old: readonly Kind[], now: readonly Kind[]): Pair<Kind>[] {
  const free = new Set(now);
  const twins = old.flatMap((kind): Pair<Kind>[] => {
    const twin = [...free].find((other) => sort.same(kind, other));
    if (twin === undefined) return [];
    free.delete(twin);
    return [{ old: kind, now: twin }];
  });
  const paired = new Set(twins.map((pair) => pair.old));
  const before = old.filter((kind) => !paired.has(kind));
  const after = [...free];
  const costs = before.map((kind) => after.map((other) => sort.unlikeness(kind, other)));
  const others = bestAssignment(costs, unlikely).flatMap((column, row): Pair<Kind>[] => {
    const [one, two] = [before[row], column === null ? undefined : after[column]];
    return one !== undefined && two !== undefined ? [{ old: one, now: two }] : [];
  });
  return [...twins, ...others];
}

function changeOfPair<Kind>(sort: KindSort<Kind>, pair: Pair<Kind>): KindChange[] {
  const aspects = sort.aspects(pair.old, pair.now);
  if (aspects.length === 0) return [];
  const [old, now] = [sort.brief(pair.old), sort.brief(pair.now)];
  return [
    {
      change: 'changed',
      aspects,
      longerByMm: aspects.includes('length') ? planLength(now.lengthMm - old.lengthMm) : 0,
      more: now.total - old.total,
      old,
      new: now,
    },
  ];
}

const lone = (change: 'new' | 'gone', kind: KindBrief): KindChange => ({
  change,
  aspects: [],
  longerByMm: null,
  more: change === 'new' ? kind.total : -kind.total,
  old: change === 'gone' ? kind : null,
  new: change === 'new' ? kind : null,
});

/** In the order of the new marks, A2 before A10. */
const byMark = (a: KindChange, b: KindChange): number =>
  (a.new?.mark ?? '').localeCompare(b.new?.mark ?? '', 'en', { numeric: true });
