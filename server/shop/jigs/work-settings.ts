/** Every setting of the whole job, in the order of the bench: grouped inside each step, with a gate before the next. */
import type { StepName } from '../../design/names/step-names.ts';
import { sameAngle, sameLength } from '../../geometry/tolerance.ts';
import type { StripStock } from '../../design/design-model.ts';
import type { NotchLocation } from '../sections/closing.ts';
import type { StockDemand } from '../stock/cut-every-stock.ts';
import { type MemberCut, memberSettings } from './member-settings.ts';
import type { MarkedHinge, MarkedKinds, MarkedPiece, MarkedStrip } from '../marks/marked-kinds.ts';
import { infillSettings, type InfillOrder, type PieceBatch } from './infill-settings.ts';
import { keysOf } from './key-share.ts';
import { notchSettings, type NotchOrder, type NotchingSaw, type StripBatch } from './notch-settings.ts';
import { jobSteps } from '../steps/job-steps.ts';
import type { Setting, StepChanges } from './setting.ts';

/** What the settings depend on beside the pieces. */
export interface WorkConditions extends NotchingSaw {
  /** How much longer than the piece its rough piece is at each end, mm. */
  readonly trim: number;
  /** What locates each notch: the one before, over a pin, or the strip's end, at a stop. */
  readonly indexing: NotchLocation;
}

export interface WorkSettings {
  readonly settings: readonly Setting[];
  /** For each step that has a choice of order. */
  readonly changes: readonly StepChanges[];
  /** Marks of pieces with an end fitted to a frame by hand: no jig has it. */
  readonly byHand: readonly string[];
}

/** A setting before it has its place in the order. */
type Draft = Omit<Setting, 'order' | 'step' | 'gate'>;

/** The settings of the steps that have any. */
type Drafts = Readonly<Partial<Record<StepName, readonly Draft[]>>>;

const plain: Draft = {
  tool: '',
  jig: null,
  angle: null,
  stopMm: null,
  caliperMm: null,
  flip: false,
  marks: [],
  ends: [],
  pieces: 0,
  notching: null,
};

/** What is cut beside strips and infill: members of frames and what fills their grooves, and bands. */
export interface OtherCuts {
  /** Everything of it that has to be milled. */
  readonly milled: readonly Pick<StockDemand, 'mark' | 'stock' | 'total'>[];
  readonly members: readonly MemberCut[];
}

const nothingElse: OtherCuts = { milled: [], members: [] };

/** The settings for `kinds`; steps without work are left out. */
export function workSettings(
  kinds: MarkedKinds,
  conditions: WorkConditions,
  others: OtherCuts = nothingElse,
): WorkSettings {
  const notching = notchSettings(kinds.strips.flatMap(stripBatch), conditions);
  const { ordinary, keys } = pieceBatches(kinds);
  const infill = infillSettings(ordinary, conditions.trim);
  const lastPieces = infillSettings(keys, conditions.trim);
  const laps = notchSettings(
    kinds.pieces.flatMap((kind) => lapBatch(kind, conditions.trim)),
    conditions,
  );
  const strips = kinds.strips.reduce((sum, { total }) => sum + total, 0);
  const joint: Draft[] =
    strips === 0 ? [] : [{ ...plain, tool: 'mallet', marks: kinds.strips.map(({ mark }) => mark), pieces: strips }];
  const fence = conditions.indexing === 'pin' ? 'pin fence' : 'stop fence';
  const onFence = (row: NotchOrder['rows'][number]): Draft => ({ ...notchDraft(row), jig: fence });
  const drafts: Drafts = {
    'mill strips': millSettings(kinds, others),
    'notch strips': notching.rows.map(onFence),
    'cut to length': lengthSettings(kinds.strips),
    assemble: joint,
    measure: joint.map((draft) => ({ ...draft, tool: 'caliper and rule' })),
    frame: memberSettings(others.members).map((cut): Draft => ({ ...plain, tool: 'crosscut saw', ...cut })),
    'cut infill': [
      ...laps.rows.map(onFence),
      ...kinds.hinges.map((hinge) => foldDraft(hinge, conditions.trim)),
      ...infill.settings.map(infillDraft),
    ],
    'cut keys': lastPieces.settings.map(infillDraft),
  };
  return {
    settings: numbered(drafts),
    changes: [changesOf('notch strips', notching), changesOf('cut infill', infill), changesOf('cut keys', lastPieces)],
    byHand: [...new Set([...infill.byHand, ...lastPieces.byHand])],
  };
}

function numbered(drafts: Drafts): Setting[] {
  return jobSteps
    .flatMap(({ title, gate }) =>
      (drafts[title] ?? []).map((draft, index, all) => ({
        ...draft,
        step: title,
        gate: index === all.length - 1 ? gate : null,
      })),
    )
    .map((setting, index) => ({ order: index + 1, ...setting }));
}

const changesOf = (step: StepName, { changes, bound, proven }: NotchOrder | InfillOrder): StepChanges => ({
  step,
  changes,
  bound,
  proven,
});

const stripBatch = ({ mark, total, groups }: MarkedStrip): StripBatch[] =>
  groups.slice(0, 1).map(({ group }) => ({ mark, strips: total, notches: group.notches }));

/** Laps of infill, cut in the square rough piece, whose end lies `trim` before the piece's. */
const lapBatch = ({ mark, total, shape }: MarkedPiece, trim: number): StripBatch[] => [
  { mark, strips: total, notches: shape.notches.map((run) => ({ ...run, first: run.first + trim })) },
];

/** Ordinary pieces and keys apart; a kind may have both. */
function pieceBatches({ pieces }: MarkedKinds): { ordinary: PieceBatch[]; keys: PieceBatch[] } {
  const batches = pieces.map((kind) => {
    const keys = keysOf(kind);
    const batch = { mark: kind.mark, shape: kind.shape };
    return {
      ordinary: { ...batch, pieces: kind.total - keys.pieces, longer: 0 },
      keys: { ...batch, pieces: keys.pieces, longer: keys.longer },
    };
  });
  const some = ({ pieces: count }: PieceBatch): boolean => count > 0;
  return {
    ordinary: batches.map((each) => each.ordinary).filter(some),
    keys: batches.map((each) => each.keys).filter(some),
  };
}

/** Each stock is brought to its depth, then to its face. */
function millSettings({ strips, pieces }: MarkedKinds, { milled }: OtherCuts): Draft[] {
  const users = [
    ...strips.flatMap(({ mark, total, groups }) =>
      groups.slice(0, 1).map(({ group }) => ({ mark, total, stock: group.stock })),
    ),
    ...pieces.map(({ mark, total, shape }) => ({ mark, total, stock: shape.stock })),
    ...milled,
  ];
  const stocks = [...new Set(users.map(({ stock }) => stock))];
  return stocks.flatMap((stock) => {
    const own = users.filter((user) => user.stock === stock);
    const draft = {
      ...plain,
      marks: own.map(({ mark }) => mark),
      pieces: own.reduce((sum, { total }) => sum + total, 0),
    };
    return sectionOf(stock).map((size): Draft => ({ ...draft, tool: 'planer', stopMm: size, caliperMm: size }));
  });
}

const sectionOf = ({ depth, face }: StripStock): number[] => [depth, face];

/** One stop a length, longest first: what is cut wrong can still become a shorter strip. */
function lengthSettings(strips: readonly MarkedStrip[]): Draft[] {
  const settings: Draft[] = [];
  const cuts = strips.flatMap(({ mark, total, groups }) =>
    groups.slice(0, 1).map(({ group }) => ({ mark, total, length: group.length })),
  );
  for (const { mark, total, length } of cuts.sort((a, b) => b.length - a.length)) {
    const last = settings.at(-1);
    if (last?.stopMm != null && sameLength(last.stopMm, length)) {
      settings[settings.length - 1] = { ...last, marks: [...last.marks, mark], pieces: last.pieces + total };
    } else {
      const draft = { ...plain, tool: 'crosscut saw', jig: 'square', angle: 90, marks: [mark], pieces: total };
      settings.push({ ...draft, stopMm: length, caliperMm: length });
    }
  }
  return settings;
}

const notchDraft = ({ angle, notching, marks, strips }: NotchOrder['rows'][number]): Draft => ({
  ...plain,
  tool: 'notching saw',
  angle,
  stopMm: notching.firstStopMm,
  marks,
  pieces: strips,
  notching,
});

/** A fold is scored square across its rough piece, which is longer than both halves together by `trim` at each end. */
const foldDraft = ({ halves, make }: MarkedHinge, trim: number): Draft => ({
  ...plain,
  tool: 'scoring knife',
  angle: 90,
  stopMm: halves[0].shape.length + trim,
  marks: [...new Set(halves.map(({ mark }) => mark))],
  pieces: make,
});

/** A square end is sawn, any other pared in its jig. */
const infillDraft = ({ jig, stop, caliper, flip, marks, ends, pieces }: InfillOrder['settings'][number]): Draft => ({
  ...plain,
  ...(sameAngle(jig, 90) ? { tool: 'crosscut saw', jig: 'square' } : { tool: 'chisel', jig: 'bevel jig' }),
  angle: jig,
  stopMm: stop,
  caliperMm: caliper,
  flip,
  marks,
  ends,
  pieces,
});
