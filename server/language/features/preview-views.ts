/** The views of one design, and what each shows: a drawing, a table, a few lines of text. */
import type { Analysis } from '../../analyse.ts';
import { displayMembers, type MemberKind, memberKinds } from '../../drawing/displays/member-display.ts';
import { displayPieces, displayStrips } from '../../drawing/displays/mark-display.ts';
import { displaySticks } from '../../drawing/displays/stick-display.ts';
import { displayWork } from '../../drawing/displays/work-display.ts';
import { drawBlank } from '../../drawing/draw-blank.ts';
import { drawPanel } from '../../drawing/draw-panel.ts';
import type { Drawing } from '../../drawing/drawing.ts';
import { withSlivers } from '../../drawing/sliver-layer.ts';
import { workSheet } from '../../drawing/work-sheet.ts';
import { planBands } from '../../shop/bands/plan-bands.ts';
import { planFrames } from '../../shop/sections/plan-frames.ts';
import { planSettings } from '../../shop/sections/plan-settings.ts';
import type { ShopPlan } from '../../shop/shop-plan.ts';
import type { PreviewTable, PreviewView } from '../preview-messages.ts';
import { marksTable, membersTable, settingsTable, stepsTable, sticksTable } from './preview-tables.ts';

export interface ViewContent {
  readonly drawing: Drawing | null;
  /** What is written to a file, where that says more than the drawing. */
  readonly sheet?: Drawing | null;
  readonly table: PreviewTable | null;
  readonly summary: readonly string[];
  /** Members that the drawing shows, for their cards. */
  readonly members?: readonly MemberKind[];
}

/** A view of the design as it lies, or of its plan, which takes time to find. */
export type DesignView = PreviewView &
  (
    | { readonly needsPlan: false; readonly content: () => ViewContent }
    | { readonly needsPlan: true; readonly content: (plan: ShopPlan) => ViewContent }
  );

/** Every view that the design has something to show in: the assembled work first, then panels, parts and the bench's work. */
export function viewsOf(analysis: Analysis): DesignView[] {
  return [
    ...workView(analysis),
    ...panelViews(analysis),
    ...blankViews(analysis),
    ...partViews(analysis),
    ...memberView(analysis),
    ...benchViews(analysis),
  ];
}

const titleOf = ({ design }: Analysis): string => design.title ?? '';

function workView(analysis: Analysis): DesignView[] {
  const { design, kinds } = analysis;
  const { work, units } = design;
  if (work === null || work.placements.length === 0) return [];
  return [
    view('work', work.name, 'Assembled', () => ({
      ...drawn(
        displayWork(work, analysis, titleOf(analysis)),
        marksTable(kinds, units, 'All pieces of the file', null),
      ),
      sheet: workSheet(work, analysis, titleOf(analysis)),
    })),
  ];
}

function panelViews(analysis: Analysis): DesignView[] {
  const { panels, kinds, design } = analysis;
  return panels.map((laid) => {
    const { name } = laid.panel;
    return view(`panel ${name}`, name, 'Panels', () =>
      drawn(
        withSlivers(drawPanel(laid, analysis, design.title), laid),
        marksTable(kinds, design.units, `Pieces of panel ${name}`, laid),
      ),
    );
  });
}

function blankViews(analysis: Analysis): DesignView[] {
  const { blanks, kinds, design } = analysis;
  return blanks.flatMap((nested) =>
    drawBlank(nested, analysis, design.title).map((drawing, index) =>
      view(`blank ${drawing.name}`, drawing.name, 'Blanks', () =>
        drawn(drawing, marksTable(kinds, design.units, `Pieces of blank ${drawing.name}`, nested.laid[index] ?? null)),
      ),
    ),
  );
}

function partViews(analysis: Analysis): DesignView[] {
  const { kinds, design } = analysis;
  const { pieces, strips } = kinds;
  const pieceView = view('pieces', 'Infill', 'Parts', () =>
    drawn(
      displayPieces(kinds, design.units, titleOf(analysis)),
      marksTable({ pieces }, design.units, 'Infill pieces', null),
    ),
  );
  const stripView = view('strips', 'Strips', 'Parts', () =>
    drawn(displayStrips(kinds, design.units, titleOf(analysis)), marksTable({ strips }, design.units, 'Strips', null)),
  );
  return [...(pieces.length > 0 ? [pieceView] : []), ...(strips.length > 0 ? [stripView] : [])];
}

/** Where there is a frame or a band: their members and laminations. */
function memberView(analysis: Analysis): DesignView[] {
  const { design, panels, kinds } = analysis;
  if (design.bands.length === 0 && !design.panels.some(({ frame }) => frame !== null)) return [];
  return [
    view('members', 'Frames and bands', 'Parts', () => {
      const members = memberKinds(planFrames(panels, kinds), planBands(design), design);
      return {
        ...drawn(displayMembers(members, design.units, titleOf(analysis)), membersTable(members, design.units)),
        members,
      };
    }),
  ];
}

function benchViews(analysis: Analysis): DesignView[] {
  const { kinds, design, panels } = analysis;
  if (kinds.pieces.length + kinds.strips.length === 0) return [];
  const sticksView = planView('sticks', 'Sticks', ({ stock }) =>
    drawn(displaySticks(stock, design.strips, design.units, titleOf(analysis)), sticksTable(stock, design.units)),
  );
  const settingsView = view('settings', 'Settings', 'Bench', () => {
    const { settings } = planSettings(analysis, planFrames(panels, kinds));
    return {
      drawing: null,
      table: settingsTable(settings, design.units),
      summary: [`${settings.length} settings in the order of the bench`, 'Set once, cut every mark listed, then go on'],
    };
  });
  const stepsView = planView('steps', 'Steps', ({ steps }) => ({
    drawing: null,
    table: stepsTable(steps),
    summary: [`${steps.length} steps of the job, in order`, 'Pass each gate before going on'],
  }));
  const hasSticks = design.strips.some(({ lengths }) => lengths.length > 0);
  return [...(hasSticks ? [sticksView] : []), settingsView, stepsView];
}

const view = (id: string, label: string, group: string, content: () => ViewContent): DesignView => ({
  id,
  label,
  group,
  needsPlan: false,
  content,
});

const planView = (id: string, label: string, content: (plan: ShopPlan) => ViewContent): DesignView => ({
  id,
  label,
  group: 'Bench',
  needsPlan: true,
  content,
});

const drawn = (drawing: Drawing, table: PreviewTable): ViewContent => ({ drawing, table, summary: drawing.summary });
