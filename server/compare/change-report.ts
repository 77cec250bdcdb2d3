/** A change arranged for reading: sentences and tables, which each writer sets in its own way. */
import { sum } from '../geometry/numbers.ts';
import { inMarkOrder } from '../shop/marks/mark-kinds.ts';
import type { LengthUnit } from '../design/design-model.ts';
import { arrow, fromTo, moreOrLess } from './change-text.ts';
import { changeSummary, figuresInWords, keyWords, kindWords, pathWords } from './change-words.ts';
import type {
  ComparedVersion,
  DesignChange,
  FieldChange,
  KindBrief,
  KindChange,
  ObjectChange,
  ObjectSort,
  PanelChange,
  SettingChange,
  StockChange,
  StockFigures,
} from './design-change.ts';
import { factCells, factTitle } from './object-change-words.ts';
import type { ReusePlan } from './reuse-plan.ts';
import { wholeChange, wholeSentence } from './whole-change.ts';
import { lengthFigure, runText, angleText, planFigure } from '../words/figures.ts';

export interface ReportColumn {
  readonly title: string;
  readonly right?: boolean;
}

/** What a row is about in each version: a panel or another object by name, a piece or strip by mark. */
export interface RowSubject {
  readonly sort: 'panel' | 'piece' | 'strip' | ObjectSort;
  readonly old: string | null;
  readonly new: string | null;
}

export interface ReportRow {
  readonly cells: readonly string[];
  readonly subject: RowSubject | null;
}

export interface ReportTable {
  readonly title: string;
  readonly columns: readonly ReportColumn[];
  readonly rows: readonly ReportRow[];
}

export interface ChangeReport {
  readonly title: string;
  /** Which text against which. */
  readonly versions: string;
  readonly summary: readonly string[];
  /** What could not be compared, and what to mind. */
  readonly notes: readonly string[];
  readonly tables: readonly ReportTable[];
}

/** The report of a change; `reuse` adds what is had from pieces already cut. Tables without rows are left out. */
export function changeReport(change: DesignChange, reuse: ReusePlan | null = null): ChangeReport {
  const { old, new: now } = change;
  const whole = wholeChange(change);
  const { units } = now;
  const figures = [objectTable(change.objects, units), settingTable(change.settings, units), sectionTable(change)];
  const tables = [
    ...(whole === null ? [panelTable(change.panels, units)] : []),
    kindTable('Infill pieces', 'piece', change.pieces.changes, units),
    kindTable('Strips', 'strip', change.strips.changes, units),
    stockTable(change.stock, units),
    ...(whole === null ? figures : []),
    ...(reuse ? reuseTables(reuse, units) : []),
  ];
  const left = whole === null ? [] : [wholeSentence(whole, change)];
  return {
    title: now.title ?? old.title ?? 'Change of a design',
    versions: `${named(old)} ${arrow} ${named(now)}`,
    summary: [...left, ...changeSummary(change), ...(reuse ? [reuseSentence(reuse)] : [])],
    notes: [...missing('old', old), ...missing('new', now), ...(reuse && reuse.steps.length > 0 ? [reuse.note] : [])],
    tables: tables.filter(({ rows }) => rows.length > 0),
  };
}

/** What git and shells give for a file that is not there. */
const noFile = '/dev/null';

const named = ({ source, revision }: ComparedVersion): string =>
  source === noFile ? 'no file' : `${source} (text ${revision})`;

const missing = (which: string, { missing: parts }: ComparedVersion): string[] =>
  parts.map((part) => `The ${which} version: ${part}.`);

const right = (title: string): ReportColumn => ({ title, right: true });
const left = (title: string): ReportColumn => ({ title });

function panelTable(panels: readonly PanelChange[], units: LengthUnit): ReportTable {
  const rows = panels.flatMap(({ change, oldName, newName, fields, drawn }): ReportRow[] => {
    const subject = { sort: 'panel', old: oldName, new: newName } as const;
    const name = fromTo(oldName, newName);
    const row = (...cells: string[]): ReportRow => ({ cells: [name, ...cells], subject });
    if (change !== 'changed') return [row(change, '', '')];
    const isMoved = drawn !== null && drawn.onlyOld + drawn.onlyNew > 0;
    return [
      ...(oldName === newName ? [] : [row('renamed', oldName ?? '', newName ?? '')]),
      ...fields.map((field) => row(pathWords(field.path, units), ...figuresInWords(field, units))),
      ...(isMoved ? [row('shapes in one version only', String(drawn.onlyOld), String(drawn.onlyNew))] : []),
    ];
  });
  return { title: 'Panels', columns: [left('panel'), left('figure'), right('was'), right('is')], rows };
}

function kindTable(
  title: string,
  sort: 'piece' | 'strip',
  changes: readonly KindChange[],
  units: LengthUnit,
): ReportTable {
  const both = ({ old, new: now }: KindChange, say: (kind: KindBrief) => string): string =>
    fromTo(old && say(old), now && say(now));
  const rows = changes.map((change) => ({
    subject: { sort, old: change.old?.mark ?? null, new: change.new?.mark ?? null },
    cells: [
      both(change, ({ mark }) => mark),
      kindWords(change, units),
      both(change, ({ roles }) => roles.join(', ')),
      both(change, ({ stock }) => stock),
      both(change, ({ lengthMm }) => planFigure(lengthMm, 'mm', units)),
      ...(sort === 'piece' ? [both(change, ({ bevels }) => bevels ?? 'fitted')] : []),
      both(change, ({ total }) => String(total)),
    ],
  }));
  const columns = [
    left('mark'),
    left('what'),
    left(sort === 'piece' ? 'piece' : 'grid'),
    left('stock'),
    right('length'),
  ];
  return { title, columns: [...columns, ...(sort === 'piece' ? [left('ends')] : []), right('to cut')], rows };
}

function stockTable(stocks: readonly StockChange[], units: LengthUnit): ReportTable {
  const lengths = (figures: StockFigures | null): string | null =>
    figures &&
    Object.entries(figures.byLength)
      .map(([each, count]) => `${count} × ${lengthFigure(Number(each), units, 'size')}`)
      .join(', ');
  const rows = stocks.map(({ stock, more, old, new: now }) => ({
    subject: null,
    cells: [
      stock,
      fromTo(old && String(old.sticks), now && String(now.sticks)),
      moreOrLess(more),
      fromTo(lengths(old), lengths(now)),
      fromTo(old && runText(old.needMm, units), now && runText(now.needMm, units)),
    ],
  }));
  return {
    title: 'Sticks',
    columns: [left('stock'), right('sticks'), right('more'), left('lengths'), right('wood in pieces')],
    rows,
  };
}

/** A setting that merely serves more or fewer pieces follows from the counts above, and is left to the JSON. */
const isSetOtherwise = ({ change, oldStopMm, newStopMm, oldPinMm, newPinMm }: SettingChange): boolean =>
  change !== 'changed' || oldStopMm !== newStopMm || oldPinMm !== newPinMm;

function settingTable(settings: readonly SettingChange[], units: LengthUnit): ReportTable {
  const stop = (value: number | null): string | null => (value === null ? null : planFigure(value, 'mm', units));
  const pieces = (count: number): string | null => (count === 0 ? null : String(count));
  const rows = settings.filter(isSetOtherwise).map((setting) => ({
    subject: null,
    cells: [
      setting.step,
      setting.tool,
      setting.change,
      setting.angle === null ? '' : angleText(setting.angle),
      fromTo(stop(setting.oldStopMm), stop(setting.newStopMm)),
      fromTo(stop(setting.oldPinMm), stop(setting.newPinMm)),
      fromTo(pieces(setting.oldPieces), pieces(setting.newPieces)),
    ],
  }));
  const columns = [
    left('step'),
    left('tool'),
    left('what'),
    right('angle'),
    right('stop'),
    right('pin'),
    right('pieces'),
  ];
  return { title: 'Set-ups', columns, rows };
}

/** One row a figure; the unit stands beside what it is. */
function objectTable(objects: readonly ObjectChange[], units: LengthUnit): ReportTable {
  const rows = objects.flatMap(({ sort, change, oldName, newName, facts }): ReportRow[] => {
    const subject = { sort, old: oldName, new: newName };
    const row = (...cells: string[]): ReportRow => ({
      cells: [`${sort} ${fromTo(oldName, newName)}`, ...cells],
      subject,
    });
    const named = change === 'changed' && oldName !== newName ? [row('renamed', oldName ?? '', newName ?? '')] : [];
    const figures = facts.map((fact) => row(factTitle(fact, units), ...factCells(fact, units)));
    return [...named, ...(change === 'changed' ? [] : [row(change, '', '')]), ...figures];
  });
  const columns = [left('object'), left('figure'), right('was'), right('is')];
  return { title: 'Blanks, bands, pours and boards', columns, rows };
}

/** Sections told in tables of their own; the JSON has every figure of them. */
const toldElsewhere: readonly string[] = ['blanks', 'bands', 'pours', 'boards'];

function sectionTable({ sections, old, new: now }: DesignChange): ReportTable {
  const money = fromTo(old.currency, now.currency);
  const titleOf = (section: string): string =>
    section === 'cost' && money !== '' ? `${keyWords(section, now.units)}, ${money}` : keyWords(section, now.units);
  const row = (section: string, field: FieldChange): ReportRow => ({
    subject: null,
    cells: [titleOf(section), pathWords(field.path, now.units), field.change, ...figuresInWords(field, now.units)],
  });
  return {
    title: 'Everything else',
    columns: [left('section'), left('figure'), left('what'), left('was'), left('is')],
    rows: sections
      .filter(({ section }) => !toldElsewhere.includes(section))
      .flatMap(({ section, fields }) => fields.map((field) => row(section, field))),
  };
}

/** Of each new mark: all that is needed, and how it is had. */
function needsOf({
  steps,
  stillToCut,
}: ReusePlan): { mark: string; all: number; asIs: number; trimmed: number; still: number }[] {
  const marks = [...new Set([...stillToCut.map(({ mark }) => mark), ...steps.map(({ newMark }) => newMark)])];
  return marks.sort(inMarkOrder).map((mark) => {
    const had = (way: 'as is' | 'trim'): number =>
      sum(steps.filter(({ newMark, how }) => newMark === mark && how === way).map(({ count }) => count));
    const still = stillToCut.find((each) => each.mark === mark)?.count ?? 0;
    const [asIs, trimmed] = [had('as is'), had('trim')];
    return { mark, all: asIs + trimmed + still, asIs, trimmed, still };
  });
}

const reuseSentence = ({ reused, stillToCut }: ReusePlan): string =>
  `From pieces already cut: ${reused}; still to cut: ${stillToCut.reduce((total, { count }) => total + count, 0)}.`;

function reuseTables(plan: ReusePlan, units: LengthUnit): ReportTable[] {
  const { steps, leftOver } = plan;
  const plain = (cells: string[]): ReportRow => ({ cells, subject: null });
  return [
    {
      title: 'From pieces already cut',
      columns: [left('old mark'), left('new mark'), right('pieces'), left('how'), right('take off')],
      rows: steps.map(({ sort, oldMark, newMark, count, how, offMm }) => ({
        subject: { sort, old: oldMark, new: newMark },
        cells: [
          oldMark,
          newMark,
          String(count),
          how === 'as is' ? how : sort === 'piece' ? 'trim the blunt end' : 'trim one end',
          how === 'as is' ? '' : planFigure(offMm, 'mm', units),
        ],
      })),
    },
    {
      title: 'What is still to cut',
      columns: [left('mark'), right('in all'), right('as they are'), right('trimmed'), right('still to cut')],
      rows: needsOf(plan).map(({ mark, ...counts }) => plain([mark, ...Object.values(counts).map(String)])),
    },
    {
      title: 'Left over',
      columns: [left('old mark'), right('pieces')],
      rows: leftOver.map(({ mark, count }) => plain([mark, String(count)])),
    },
  ];
}
