/** Frames of the plan: members with their marks, what fills their grooves, and what they ask of their strip. */
import type { LaidPanel } from '../lattice/laid-panel.ts';
import { frameMembers, groovePieces } from '../lattice/frame-members.ts';
import type { MarkedKinds } from './marked-kinds.ts';
import { planAngle, planLength } from './plan-rounding.ts';
import type { PlanFrame } from './work-sections.ts';
import type { StockDemand } from './stock/plan-stock.ts';

/** A frame's plan, with the stock of its members and how many frames are made. */
interface PlannedFrame {
  readonly plan: PlanFrame;
  readonly laid: LaidPanel;
}

/** The frames of all panels; marks go on from one to the next. */
function plannedFrames(panels: readonly LaidPanel[], kinds: MarkedKinds): PlannedFrame[] {
  const letters = freeLetters(kinds);
  let number = 0;
  return panels.flatMap((laid): PlannedFrame[] => {
    const { frame, name } = laid.panel;
    const members = frame ? frameMembers(laid, frame) : [];
    if (!frame || members.length === 0) return [];
    const plan: PlanFrame = {
      panel: name,
      stock: frame.stock.name,
      corners: frame.corners,
      joint: frame.joint,
      jointDepthMm: planLength(frame.jointDepth),
      members: members.map(({ length, inner, width, ends, count }) => ({
        mark: `${letters}${(number += 1)}`,
        lengthMm: planLength(length),
        innerMm: planLength(inner),
        widthMm: planLength(width),
        ends: [planAngle(ends[0]), planAngle(ends[1])],
        make: count * laid.quantity,
      })),
      bearing: frame.bearing,
      groovePieces: (frame.bearing ? groovePieces(laid, frame.bearing) : []).map(({ length, count }) => ({
        lengthMm: planLength(length),
        widthMm: planLength(frame.jointDepth),
        make: count * laid.quantity,
      })),
    };
    return [{ plan, laid }];
  });
}

/** A beginning of marks that no piece or strip has. */
function freeLetters({ pieces, strips }: MarkedKinds): string {
  const marks = [...pieces, ...strips].map(({ mark }) => mark);
  const isFree = (letters: string): boolean => !marks.some((mark) => mark.startsWith(letters));
  return ['F', 'FR', 'FRAME'].find(isFree) ?? 'FRAME.';
}

export const planFrames = (panels: readonly LaidPanel[], kinds: MarkedKinds): PlanFrame[] =>
  plannedFrames(panels, kinds).map(({ plan }) => plan);

/** Members to be cut from sticks of their strip. */
export const frameDemands = (panels: readonly LaidPanel[], kinds: MarkedKinds): StockDemand[] =>
  plannedFrames(panels, kinds).flatMap(({ plan, laid }) => {
    const stock = laid.panel.frame?.stock;
    if (!stock) return [];
    return plan.members.map(({ mark, lengthMm, make }) => ({ stock, mark, lengthMm, total: make }));
  });
