/** Panels of two versions: by name, and where names went and came, by what they hold. */
import type { LaidPanel } from '../lattice/laid-panel.ts';
import type { PlanPanel } from '../shop/shop-plan.ts';
import { bestAssignment } from './best-assignment.ts';
import { compareFigures } from './compare-figures.ts';
import type { ComparedDesign } from './compared-design.ts';
import type { DrawnChange, PanelChange, Plain } from './design-change.ts';
import { overlayPanels } from './overlay-panels.ts';

/** The two versions of one panel. */
export interface PanelPair {
  readonly old: PlanPanel | null;
  readonly new: PlanPanel | null;
}

/** Panels of one name, then renamed ones, then those of one version alone; in the order of the new version, gone ones last. */
export function pairPanels(old: readonly PlanPanel[], now: readonly PlanPanel[]): PanelPair[] {
  const left = old.filter(({ name }) => !now.some((other) => other.name === name));
  const came = now.filter(({ name }) => !old.some((other) => other.name === name));
  const turned = JSON.stringify(left) > JSON.stringify(came);
  const renamed = turned ? renamedPairs(came, left).map(([two, one]) => [one, two] as const) : renamedPairs(left, came);
  const oldOf = new Map(renamed.map(([one, two]) => [two, one]));
  const isRenamed = new Set(renamed.map(([one]) => one));
  return [
    ...now.map((panel) => ({
      old: oldOf.get(panel) ?? old.find(({ name }) => name === panel.name) ?? null,
      new: panel,
    })),
    ...left.filter((panel) => !isRenamed.has(panel)).map((panel) => ({ old: panel, new: null })),
  ];
}

/** Every figure that may differ by a half adds its relative difference; two panels half as unlike as they could be are others. */
const renameLimit = 1;

function renamedPairs(left: readonly PlanPanel[], came: readonly PlanPanel[]): (readonly [PlanPanel, PlanPanel])[] {
  const costs = left.map((panel) => came.map((other) => panelUnlikeness(panel, other)));
  return bestAssignment(costs, renameLimit).flatMap((column, row) => {
    const [one, two] = [left[row], column === null ? undefined : came[column]];
    return one && two ? [[one, two] as const] : [];
  });
}

function panelUnlikeness(a: PlanPanel, b: PlanPanel): number {
  const apart = (one: number, two: number): number => Math.abs(one - two) / Math.max(one, two, Number.MIN_VALUE);
  return (
    (a.edge === b.edge ? 0 : renameLimit / 2) +
    apart(a.areaMm2, b.areaMm2) +
    apart(a.nodes, b.nodes) +
    apart(a.infill.make, b.infill.make) +
    apart(a.strips, b.strips)
  );
}

/** The changes of one pair, empty where nothing changed. */
export function comparePanel(
  { old, new: now }: PanelPair,
  before: ComparedDesign,
  after: ComparedDesign,
): PanelChange[] {
  if (!old || !now) {
    const change = now ? 'new' : 'gone';
    return [{ change, oldName: old?.name ?? null, newName: now?.name ?? null, fields: [], drawn: null }];
  }
  const fields = compareFigures(figuresOf(old), figuresOf(now));
  const drawn = drawnChange(laidOf(before, old.name), laidOf(after, now.name), before, after);
  const isMoved = drawn !== null && drawn.onlyOld + drawn.onlyNew > 0;
  if (fields.length === 0 && !isMoved && old.name === now.name) return [];
  return [{ change: 'changed', oldName: old.name, newName: now.name, fields, drawn }];
}

const figuresOf = (panel: PlanPanel): Plain => ({ ...panel, name: null });

const laidOf = ({ panels }: ComparedDesign, name: string): LaidPanel | undefined =>
  panels.find(({ panel }) => panel.name === name);

function drawnChange(
  old: LaidPanel | undefined,
  now: LaidPanel | undefined,
  before: ComparedDesign,
  after: ComparedDesign,
): DrawnChange | null {
  if (!old || !now) return null;
  const { same, onlyOld, onlyNew } = overlayPanels({ laid: old, design: before }, { laid: now, design: after });
  return { same: same.length, onlyOld: onlyOld.length, onlyNew: onlyNew.length };
}
