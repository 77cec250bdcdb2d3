/** Frames of the plan: members with their marks, what fills their grooves, and what they ask of their strip. */
import type { StripStock } from '../../design/design-model.ts';
import type { MemberCut } from '../jigs/member-settings.ts';
import { latticeDepth } from '../lines/work-depth.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import { frameMembers, groovePieces } from '../../lattice/frame-members.ts';
import type { MarkedKinds } from '../marks/marked-kinds.ts';
import { planAngle, planLength } from './plan-rounding.ts';
import type { PlanFrame } from './work-sections.ts';
import type { StockDemand } from '../stock/cut-every-stock.ts';

/** A frame's plan, with the stock of its members and how many frames are made. */
interface PlannedFrame {
  readonly plan: PlanFrame;
  readonly laid: LaidPanel;
}

/** The frames of all panels; marks go on from one to the next. */
function plannedFrames(panels: readonly LaidPanel[], kinds: MarkedKinds): PlannedFrame[] {
  const letters = freeLetters(kinds, 'FRAME');
  const grooveLetters = freeLetters(kinds, 'GROOVE');
  let [number, grooveNumber] = [0, 0];
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
      jointWidthMm: planLength(latticeDepth(laid.panel.grid)),
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
        mark: `${grooveLetters}${(grooveNumber += 1)}`,
        lengthMm: planLength(length),
        widthMm: planLength(frame.jointDepth),
        make: count * laid.quantity,
      })),
    };
    return [{ plan, laid }];
  });
}

/** The shortest beginning of `word` that begins no mark of a piece or strip. */
function freeLetters({ pieces, strips }: MarkedKinds, word: string): string {
  const marks = [...pieces, ...strips].map(({ mark }) => mark);
  const beginnings = Array.from(word, (_, index) => word.slice(0, index + 1));
  return beginnings.find((letters) => !marks.some((mark) => mark.startsWith(letters))) ?? `${word}.`;
}

export const planFrames = (panels: readonly LaidPanel[], kinds: MarkedKinds): PlanFrame[] =>
  plannedFrames(panels, kinds).map(({ plan }) => plan);

/** What is cut from sticks of a frame's strip: its members, and what is ripped to fill its groove, one from each length. */
export const frameDemands = (panels: readonly LaidPanel[], kinds: MarkedKinds): StockDemand[] =>
  plannedFrames(panels, kinds).flatMap(({ plan, laid }) => {
    const stock = laid.panel.frame?.stock;
    if (!stock) return [];
    return [...plan.members, ...plan.groovePieces].map(({ mark, lengthMm, widthMm, make }) => ({
      stock,
      mark,
      lengthMm,
      widthMm,
      total: make,
    }));
  });

/** The strips that frames are made of. */
export const frameStocks = (panels: readonly LaidPanel[]): StripStock[] =>
  panels.flatMap(({ panel }) => panel.frame?.stock ?? []);

/** Members, and square pieces for the groove, as they are cut to length. */
export const membersToCut = ({ members, groovePieces }: PlanFrame): MemberCut[] => [
  ...members,
  ...groovePieces.map(({ mark, lengthMm, make }): MemberCut => ({ mark, lengthMm, make, ends: [90, 90] })),
];
