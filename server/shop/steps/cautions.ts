/** Short warnings beside the step they belong to: only for steps this plan really has. */
import type { Design } from '../../design/design.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import type { JobStep } from './job-steps.ts';
import type { ShopPlan } from '../shop-plan.ts';

type Caution = ShopPlan['cautions'][number];

const texts = {
  'mill strips':
    'Sawing and planing make fine dust: extract it and wear a mask. Follow the machine maker’s instructions and local safety rules.',
  'notch strips':
    'Clamp the strips as a pack, keep the guard on and cut a test notch first. Long thin strips whip: support both ends.',
  'cut infill': 'Pieces this small are cut by hand or in a holding jig, never loose at a power saw.',
  pour: 'Resin sensitises skin and heats in deep pours: gloves, fresh air, and no layer deeper than the data sheet allows.',
  'saw outlines':
    'Round work can catch and kick back, and off-cuts can jam beside the blade: hold the panel down, stop the saw before clearing.',
  'bend bands': 'Hot pipes and steam burn: gloves and eye protection. Strips can snap; stand aside of the bend.',
  'cast bodies':
    'Resin sensitises skin and heats in deep pours: gloves, fresh air, and no layer deeper than the data sheet allows.',
  finish:
    'Fresh air, gloves, no flame; rags soaked in oil can set themselves alight. The data sheet goes before this plan.',
  mount:
    'A work that falls can hurt: the fixing’s data sheet, the wall and local codes decide, and for heavy work a licensed fitter.',
} as const satisfies Partial<Record<JobStep, string>>;

/** The cautions that belong to what this design asks for, in the order of the work. */
export function cautionsFor(design: Design, panels: readonly LaidPanel[]): Caution[] {
  const strips = panels.flatMap((laid) => laid.strips);
  const pieces = panels.flatMap((laid) => laid.pieces);
  const { finish, hanging } = design.work ?? { finish: null, hanging: null };
  const needed: Record<keyof typeof texts, boolean> = {
    'mill strips': strips.length + pieces.length > 0,
    'notch strips': strips.some(({ notches }) => notches.length > 0),
    'cut infill': pieces.length > 0,
    pour: design.blanks.some(({ cast }) => cast !== null) || design.pours.some(({ mould }) => mould.kind === 'blank'),
    'saw outlines': panels.some(({ panel }) => panel.edge === 'sawn'),
    'bend bands': design.bands.length > 0,
    'cast bodies': design.pours.some(({ mould }) => mould.kind !== 'blank'),
    finish: finish !== null && finish !== 'none',
    mount: hanging !== null,
  };
  return Object.entries(texts).flatMap(([step, text]) => (needed[step as keyof typeof texts] ? [{ step, text }] : []));
}
