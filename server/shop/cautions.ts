/** Short warnings beside the step they belong to: only for steps this plan really has. */
import type { LaidPanel } from '../lattice/laid-panel.ts';
import type { ShopPlan } from './shop-plan.ts';

type Caution = ShopPlan['cautions'][number];

const milling: Caution = {
  step: 'mill strips',
  text: 'Sawing and planing make fine dust: extract it and wear a mask. Follow the machine maker’s instructions and local safety rules.',
};

const notching: Caution = {
  step: 'notch strips',
  text: 'Clamp the strips as a pack, keep the guard on and cut a test notch first. Long thin strips whip: support both ends.',
};

const bevelling: Caution = {
  step: 'cut infill',
  text: 'Pieces this small are cut by hand or in a holding jig, never loose at a power saw.',
};

const sawingOutline: Caution = {
  step: 'saw outlines',
  text: 'Round work can catch and kick back, and off-cuts can jam beside the blade: hold the panel down, stop the saw before clearing.',
};

/** The cautions that belong to what these panels ask for, in the order of the work. */
export function cautionsFor(panels: readonly LaidPanel[]): Caution[] {
  const strips = panels.flatMap((laid) => laid.strips);
  const pieces = panels.flatMap((laid) => laid.pieces);
  const cautions: Caution[] = [];
  if (strips.length + pieces.length > 0) cautions.push(milling);
  if (strips.some((group) => group.notches.length > 0)) cautions.push(notching);
  if (pieces.length > 0) cautions.push(bevelling);
  if (panels.some((laid) => laid.panel.edge === 'sawn')) cautions.push(sawingOutline);
  return cautions;
}
