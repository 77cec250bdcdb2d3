/** The views of the preview as tables. */
import type { LengthUnit } from '../../design/design-model.ts';
import type { MemberKind } from '../../drawing/displays/member-display.ts';
import { rolesOf } from '../../drawing/shared-words.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import type { MarkedKinds } from '../../shop/marks/marked-kinds.ts';
import type { PlanSetting, PlanStock } from '../../shop/shop-plan.ts';
import type { PlanStep } from '../../shop/sections/work-sections.ts';
import type { PreviewTable } from '../preview-messages.ts';
import { angleText, lengthText } from '../../words/figures.ts';

type Column = PreviewTable['columns'][number];
type Row = PreviewTable['rows'][number];

const words = (title: string): Column => ({ title, isFigure: false });
const figures = (title: string): Column => ({ title, isFigure: true });

/** Pieces and strips of the file; with `laid`, those of that panel alone and how many one copy of it has. */
export function marksTable(
  kinds: Partial<MarkedKinds>,
  units: LengthUnit,
  caption: string,
  laid: LaidPanel | null,
): PreviewTable {
  const pieces = (kinds.pieces ?? []).map((piece) => ({
    kind: piece,
    what: rolesOf(piece).join(', '),
    length: piece.shape.length,
    here: numberIn(piece, laid, (group) => group.count),
  }));
  const strips = (kinds.strips ?? []).map((strip) => ({
    kind: strip,
    what: `strip of ${strip.groups[0]?.group.grid ?? ''}`,
    length: strip.groups[0]?.group.length ?? 0,
    here: numberIn(strip, laid, (group) => group.placements.length),
  }));
  const shown = [...pieces, ...strips].filter(({ here }) => laid === null || here > 0);
  return {
    caption,
    columns: [
      words('Mark'),
      words('Piece'),
      figures('Length'),
      ...(laid === null ? [figures('Make'), figures('Spare')] : [figures('In one')]),
      figures('To cut'),
    ],
    rows: shown.map(({ kind, what, length, here }): Row => ({
      mark: kind.mark,
      cells: [
        kind.mark,
        what,
        lengthText(length, units, 'length'),
        ...(laid === null ? [String(kind.make), String(kind.spare)] : [String(here)]),
        String(kind.total),
      ],
    })),
  };
}

function numberIn<Group>(
  { groups }: { readonly groups: readonly { readonly panel: LaidPanel; readonly group: Group }[] },
  laid: LaidPanel | null,
  countOf: (group: Group) => number,
): number {
  return groups.filter(({ panel }) => panel === laid).reduce((total: number, { group }) => total + countOf(group), 0);
}

/** One row a member of a frame or a lamination of a band. */
export function membersTable(members: readonly MemberKind[], units: LengthUnit): PreviewTable {
  return {
    caption: 'Members of frames and laminations of bands',
    columns: [
      ...[words('Mark'), words('Part of'), words('Stock')],
      ...[figures('Length'), figures('Cut to'), figures('Width'), words('Ends'), figures('Make')],
    ],
    rows: members.map((member): Row => ({
      mark: member.mark,
      cells: [
        ...[member.mark, member.of, member.stock],
        ...[member.length, member.cutLength, member.width].map((length) => lengthText(length, units, 'length')),
        ...[member.ends, String(member.make)],
      ],
    })),
  };
}

/** One row a kind of stick. */
export function sticksTable(plans: readonly PlanStock[], units: LengthUnit): PreviewTable {
  return {
    caption: 'Sticks and their cuts',
    columns: [figures('Sticks'), words('Stock'), figures('Length'), words('Cuts'), figures('Off-cut')],
    rows: plans.flatMap(({ stock, sticks }) =>
      sticks.map(({ count, lengthMm, cuts, offcutMm }): Row => ({
        mark: null,
        cells: [
          String(count),
          stock,
          lengthText(lengthMm, units, 'length'),
          cuts.map(({ mark, n }) => `${n} × ${mark}`).join(', '),
          lengthText(offcutMm, units, 'length'),
        ],
      })),
    ),
  };
}

/** One row a setting, in the order of the bench. */
export function settingsTable(settings: readonly PlanSetting[], units: LengthUnit): PreviewTable {
  const measure = (length: number | null): string => (length === null ? '' : lengthText(length, units, 'length'));
  return {
    caption: 'Settings in the order of the bench',
    columns: [
      figures('No.'),
      words('Step'),
      words('Tool'),
      words('Jig'),
      figures('Angle'),
      figures('Stop'),
      figures('Caliper'),
      words('Marks'),
      figures('Pieces'),
      words('Before going on'),
    ],
    rows: settings.map((setting): Row => ({
      mark: null,
      cells: [
        String(setting.order),
        setting.step,
        setting.tool,
        setting.jig ?? '',
        setting.angle === null ? '' : angleText(setting.angle),
        measure(setting.stopMm),
        measure(setting.caliperMm),
        setting.marks.join(', '),
        String(setting.pieces),
        setting.gate ?? '',
      ],
    })),
  };
}

/** One row a step of the job; times have their columns where any is known. */
export function stepsTable(steps: readonly PlanStep[]): PreviewTable {
  const isTimed = steps.some(({ handsOnMin, waitH }) => handsOnMin !== null || waitH !== null);
  const times = ({ handsOnMin, waitH }: PlanStep): string[] => [
    handsOnMin === null ? '' : String(Math.round(handsOnMin)),
    waitH === null ? '' : String(waitH),
  ];
  return {
    caption: 'Steps of the job',
    columns: [
      figures('No.'),
      words('Step'),
      ...(isTimed ? [figures('Minutes'), figures('Wait, h')] : []),
      words('Gate'),
      words('Caution'),
    ],
    rows: steps.map((step): Row => ({
      mark: null,
      cells: [String(step.order), step.title, ...(isTimed ? times(step) : []), step.gate ?? '', step.caution ?? ''],
    })),
  };
}
