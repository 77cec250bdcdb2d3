/** Every panel of two versions with its overlay, in the order of the new version. */
import type { LaidPanel } from '../lattice/laid-panel.ts';
import { fromTo } from './change-text.ts';
import { pairPanels } from './compare-panels.ts';
import type { ComparedDesign } from './compared-design.ts';
import { type MarkedPanel, overlayPanels } from './overlay-panels.ts';
import type { NamedOverlay } from './overlay-svg.ts';

export interface PanelOverlay extends NamedOverlay {
  /** Its name in each version that has it. */
  readonly names: readonly string[];
}

export function overlaysOf(old: ComparedDesign, now: ComparedDesign): PanelOverlay[] {
  return pairPanels(old.plan.panels, now.plan.panels).map(({ old: one, new: two }) => ({
    name: fromTo(one?.name ?? null, two?.name ?? null),
    names: [...new Set([one, two].flatMap((panel) => (panel ? [panel.name] : [])))],
    overlay: overlayPanels(marked(old, one?.name), marked(now, two?.name)),
  }));
}

/** The overlays of panels that are drawn differently; all of them where none is. */
export function changedOverlays(overlays: readonly PanelOverlay[]): readonly PanelOverlay[] {
  const changed = overlays.filter(({ overlay }) => overlay.onlyOld.length + overlay.onlyNew.length > 0);
  return changed.length > 0 ? changed : overlays;
}

function marked(design: ComparedDesign, name: string | undefined): MarkedPanel | null {
  const laid: LaidPanel | undefined = design.panels.find(({ panel }) => panel.name === name);
  return laid ? { laid, design } : null;
}
