/** Two versions of a design → what changed. Pure and total: any two designs compare, whatever is broken in either. */
import type { Words } from '../../grammar/words.ts';
import type { LengthUnit } from '../design/design-model.ts';
import { written } from '../words/write-words.ts';
import type { PlanPanel, ShopPlan } from '../shop/shop-plan.ts';
import type { ComparedDesign } from './compared-design.ts';
import { compareFigures } from './compare-figures.ts';
import { comparePieces, compareStrips, type Counting } from './compare-kinds.ts';
import { compareObjects } from './compare-objects.ts';
import { comparePanel, type PanelPair, pairPanels } from './compare-panels.ts';
import { compareSettings } from './compare-settings.ts';
import { compareStock } from './compare-stock.ts';
import type { ComparedVersion, DesignChange, Plain, SectionChange } from './design-change.ts';

/** Sections with a comparison of their own, and what says where a plan comes from rather than what is in it. */
const notFigures: ReadonlySet<string> = new Set<keyof ShopPlan>([
  'schema',
  'source',
  'revision',
  'units',
  'incomplete',
  'panels',
  'pieces',
  'strips',
  'settings',
  'stock',
]);

/**
 * What changed from `old` to `now`. Where a version has errors, a panel that only the other one has is left out of the
 * comparison with all its pieces, since the errors may hide it, and so are the figures of the whole: `missing` says so.
 */
export function compareDesigns(old: ComparedDesign, now: ComparedDesign): DesignChange {
  const unknown = { old: unknownPanels(old, now), new: unknownPanels(now, old) };
  const left = new Set([...unknown.old, ...unknown.new]);
  const known = ({ plan }: ComparedDesign): PlanPanel[] => plan.panels.filter(({ name }) => !left.has(name));
  const pairs = pairPanels(known(old), known(now));
  const alias = sharedNames(pairs);
  const isWhole = !old.incomplete && !now.incomplete;
  const counting = { nameOf: newNames(pairs, left), spares: isWhole };
  const found = {
    panels: pairs.flatMap((pair) => comparePanel(pair, old, now)),
    pieces: comparePieces(old.plan.pieces, now.plan.pieces, counting),
    strips: compareStrips(old.plan.strips, now.plan.strips, counting),
    settings: isWhole ? compareSettings(old.plan.settings, now.plan.settings) : [],
    stock: isWhole ? compareStock(old.plan.stock, now.plan.stock) : [],
    objects: isWhole ? compareObjects(old.plan, now.plan, alias) : [],
    sections: isWhole ? compareSections(old.said, now.said, alias) : [],
  };
  const { pieces, strips, ...lists } = found;
  const differences = [...Object.values(lists), pieces.changes, strips.changes].flat();
  return {
    schema: 'halflap-change/1',
    old: versionOf(old, unknown.old),
    new: versionOf(now, unknown.new),
    same: differences.length === 0,
    ...found,
  };
}

/** Panels of `other` that `version` does not have, or could not lay out, where its errors may be the reason. */
function unknownPanels(version: ComparedDesign, other: ComparedDesign): string[] {
  if (!version.incomplete) return [];
  const has = new Set(version.plan.panels.map(({ name }) => name));
  return other.plan.panels.map(({ name }) => name).filter((name) => !has.has(name));
}

/** The name under which a panel of either version is counted; null where it is left out. */
function newNames(pairs: readonly PanelPair[], left: ReadonlySet<string>): Counting['nameOf'] {
  const renamed = new Map(pairs.flatMap(({ old, new: now }) => (old && now ? [[old.name, now.name]] : [])));
  return (name) => (left.has(name) ? null : (renamed.get(name) ?? name));
}

function versionOf({ plan, incomplete }: ComparedDesign, unknown: readonly string[]): ComparedVersion {
  const panels = unknown.map((name) => `panel ${name} is missing here, maybe because of an error, and is not compared`);
  const whole = 'because of errors, spares, settings, sticks and the figures of the whole work are not compared';
  return {
    source: plan.source,
    title: plan.title,
    revision: plan.revision,
    units: plan.units,
    currency: plan.cost.currency,
    incomplete,
    missing: incomplete ? [...panels, whole] : [],
  };
}

/** Every other section, figure by figure. */
function compareSections(
  old: ShopPlan<Words>,
  now: ShopPlan<Words>,
  alias: ReturnType<typeof sharedNames>,
): SectionChange[] {
  const [before, after] = [sectionsOf(old, alias.old, now.units), sectionsOf(now, alias.new, now.units)];
  const names = [...new Set([...after.keys(), ...before.keys()])];
  return names.flatMap((section): SectionChange[] => {
    const fields = compareFigures(before.get(section) ?? null, after.get(section) ?? null, []);
    return fields.length === 0 ? [] : [{ section, fields }];
  });
}

/** For each version, the name under which both know a renamed panel: of its two names the first, whichever version has it. */
function sharedNames(pairs: readonly PanelPair[]): Record<'old' | 'new', ReadonlyMap<string, string>> {
  const renamed = pairs.flatMap(({ old, new: now }) => {
    if (!old || !now || old.name === now.name) return [];
    return [{ old: old.name, new: now.name, shared: old.name < now.name ? old.name : now.name }];
  });
  return {
    old: new Map(renamed.map((each) => [each.old, each.shared])),
    new: new Map(renamed.map((each) => [each.new, each.shared])),
  };
}

/** Keys under which a plan names a panel by itself. */
const panelKeys = new Set(['panel', 'around']);

/**
 * A plan is what its JSON holds: keys that are undefined are not in it. Panels go by their shared names. Words of
 * both versions are written in the same units: other units are no change.
 */
function sectionsOf(plan: ShopPlan<Words>, names: ReadonlyMap<string, string>, units: LengthUnit): Map<string, Plain> {
  const rename = (name: string): string => names.get(name) ?? name;
  const text = JSON.stringify(written(plan, units, rename), (key, value: unknown) => {
    if (typeof value !== 'string' || names.size === 0) return value;
    if (panelKeys.has(key)) return names.get(value) ?? value;
    return value.replace(/\bpanel ([\p{L}\p{N}_]+)/gu, (_, name: string) => `panel ${names.get(name) ?? name}`);
  });
  const plain = JSON.parse(text) as Record<string, Plain>;
  return new Map(Object.entries(plain).filter(([section]) => !notFigures.has(section)));
}
