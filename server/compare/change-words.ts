/** Words of a change, as every writer says them. */
import { counted } from '../../grammar/words.ts';
import type { LengthUnit } from '../design/design-model.ts';
import { arrow, moreOrLess } from './change-text.ts';
import { isPlaceInList } from './compare-figures.ts';
import type { DesignChange, FieldChange, KindAspect, KindChange, Plain } from './design-change.ts';
import { objectSentence, wholeSentences } from './object-change-words.ts';
import { type PlanUnit, planFigure, planUnit } from '../words/figures.ts';

const aspectWords: Record<Exclude<KindAspect, 'length' | 'count'>, string> = {
  bevels: 're-bevelled',
  outline: 'other outline',
  notches: 'other notches',
  hand: 'other hand',
  section: 'other section',
  stock: 'other stock',
  role: 'other role',
  panels: 'other panels',
  mark: 'new mark',
};

/** What happened to a kind, such as "1.15 shorter, 12 fewer". */
export function kindWords({ change, aspects, longerByMm, more }: KindChange, units: LengthUnit): string {
  if (change !== 'changed') return change;
  return aspects
    .map((aspect) => {
      if (aspect === 'length') return lengthWords(longerByMm ?? 0, units);
      if (aspect === 'count') return more === 0 ? 'other spares' : `${Math.abs(more)} ${more > 0 ? 'more' : 'fewer'}`;
      return aspectWords[aspect];
    })
    .join(', ');
}

const lengthWords = (longerBy: number, units: LengthUnit): string =>
  `${planFigure(Math.abs(longerBy), 'mm', units)} ${longerBy > 0 ? 'longer' : 'shorter'}`;

/** The endings of a plan's keys that are units. */
const unitsByEnding: readonly (readonly [ending: string, unit: PlanUnit])[] = [
  ['Mm2', 'mm²'],
  ['M2', 'm²'],
  ['Mm', 'mm'],
  ['Ml', 'mL'],
  ['Pct', '%'],
  ['Min', 'min'],
  ['Kg', 'kg'],
  ['_g', 'g'],
  ['G', 'g'],
  ['H', 'h'],
];

/** A key of the plan in words: perCopyG → "per copy, g". */
export function keyWords(key: string, units: LengthUnit): string {
  const unit = unitOf(key);
  const stem = key === bareMillimetres ? 'length' : unit ? key.slice(0, -unit[0].length) : key;
  const words = stem.replace(/([\p{Ll}\p{N}])(\p{Lu})/gu, '$1 $2').toLocaleLowerCase('en');
  return unit ? `${words}, ${planUnit(unit[1], units)}` : words;
}

/** The key of a length that is all its object has. */
const bareMillimetres = 'mm';

const unitOf = (key: string): readonly [ending: string, unit: PlanUnit] | undefined =>
  key === bareMillimetres
    ? [key, 'mm']
    : unitsByEnding.find(([ending]) => key.endsWith(ending) && key.length > ending.length);

/** Names and keys that lead to a figure. Names are kept as they are written. */
export const pathWords = (path: readonly string[], units: LengthUnit): string =>
  path.map((step, index) => (index === path.length - 1 ? keyWords(step, units) : step)).join(' › ');

/** A text longer than this is a sentence, which no table cell should hold. */
const longestText = 32;

/** The old and the new figure for a table; of two lists of texts only what is not in both. */
export function figuresInWords(
  { path, old, new: now }: Pick<FieldChange, 'path' | 'old' | 'new'>,
  units: LengthUnit,
): [old: string, now: string] {
  if (!isTexts(old) || !isTexts(now)) {
    const key = path.at(-1) ?? '';
    return [figureWords(old, key, units), figureWords(now, key, units)];
  }
  const without = (texts: readonly string[], others: readonly string[]): string =>
    texts.filter((text) => !others.includes(text)).join('; ');
  return [without(old, now), without(now, old)];
}

const isTexts = (value: Plain): value is string[] =>
  Array.isArray(value) && value.every((item) => typeof item === 'string');

/** A figure in a table: a list by its values, a whole item by its short texts and its numbers. */
export function figureWords(value: Plain, key: string, units: LengthUnit): string {
  if (value === null) return '';
  if (Array.isArray(value)) return value.map((each) => figureWords(each, key, units)).join(', ');
  if (typeof value === 'number') return numberWords(value, key, units);
  if (typeof value !== 'object') return typeof value === 'boolean' ? (value ? 'yes' : 'no') : value;
  return Object.entries(value)
    .flatMap(([key, each]) => {
      if (typeof each === 'number' && !isPlaceInList(key))
        return [`${keyWords(key, units)} ${numberWords(each, key, units)}`];
      return typeof each === 'string' && each.length <= longestText ? [each] : [];
    })
    .join(', ');
}

/** A figure as the plan has it where its unit is that of the file, else to the precision of the other one. */
function numberWords(value: number, key: string, units: LengthUnit): string {
  const unit = unitOf(key)?.[1];
  return unit === undefined || planUnit(unit, units) === unit ? String(value) : planFigure(value, unit, units);
}

/** The change in a few sentences: what a maker asks first. */
export function changeSummary(change: DesignChange): string[] {
  if (change.same) return ['Nothing changed: both versions make the same panels of the same pieces.'];
  const { units } = change.new;
  const sentences = [
    ...change.panels.flatMap(({ change: what, oldName, newName }) => {
      if (what === 'new') return [`Panel ${newName ?? ''} is new.`];
      if (what === 'gone') return [`Panel ${oldName ?? ''} is gone.`];
      return oldName === newName ? [] : [`Panel ${oldName ?? ''} is now called ${newName ?? ''}.`];
    }),
    ...kindSentences(change.pieces.changes, 'infill piece', 'infill pieces', units),
    ...kindSentences(change.strips.changes, 'strip', 'strips', units),
    ...change.stock.flatMap(({ stock, more, old, new: now }) =>
      more === 0
        ? []
        : [
            `${counted(Math.abs(more), 'stick', 'sticks')} of ${stock} ${more > 0 ? 'more' : 'fewer'} (${old?.sticks ?? 0} ${arrow} ${now?.sticks ?? 0}).`,
          ],
    ),
    ...change.objects.map((object) => objectSentence(object, units)),
  ];
  const whole = wholeSentences(change);
  return sentences.length > 0 ? [...sentences, ...whole] : [quietChange(change), ...whole];
}

/** Where no piece and no stick differs, something else does. */
function quietChange({ panels, settings, sections, new: { units } }: DesignChange): string {
  const moved = panels.filter(({ drawn }) => drawn && drawn.onlyNew + drawn.onlyOld > 0);
  if (moved.length > 0) {
    return `The pieces are the same, but they lie elsewhere in ${moved.map(({ newName }) => `panel ${newName ?? ''}`).join(', ')}.`;
  }
  const other = [
    ...(settings.length > 0 ? ['set-ups'] : []),
    ...sections.map(({ section }) => keyWords(section, units)),
  ];
  return `The pieces are the same; what changed: ${other.join(', ') || 'figures of the panels'}.`;
}

function kindSentences(changes: readonly KindChange[], one: string, many: string, units: LengthUnit): string[] {
  const resized = changes.filter(({ longerByMm }) => longerByMm !== null && longerByMm !== 0);
  const others = changes.filter(
    ({ aspects }) => !aspects.includes('length') && aspects.some((aspect) => reshaping.has(aspect)),
  );
  const recounted = changes.filter(({ change, aspects }) => change === 'changed' && aspects.includes('count'));
  const sentence = (kinds: readonly KindChange[], verb: (plural: boolean) => string, detail: Detail): string[] => {
    const count = kinds.reduce((total, { old, new: now }) => total + (now?.total ?? old?.total ?? 0), 0);
    return kinds.length === 0
      ? []
      : [`${counted(count, one, many)} ${verb(count !== 1)}: ${listed(kinds.map(detail))}.`];
  };
  return [
    ...sentence(
      resized,
      (plural) => (plural ? 'change their length' : 'changes its length'),
      (kind) => `${kind.new?.mark ?? ''} ${lengthWords(kind.longerByMm ?? 0, units)} (${kind.new?.total ?? 0})`,
    ),
    ...sentence(
      others,
      (plural) => (plural ? 'are made differently' : 'is made differently'),
      (kind) =>
        `${kind.new?.mark ?? ''} ${kindWords({ ...kind, aspects: kind.aspects.filter((aspect) => reshaping.has(aspect)) }, units)}`,
    ),
    ...(recounted.length === 0
      ? []
      : [
          `Counts of ${many}: ${listed(recounted.map(({ new: now, more }) => `${now?.mark ?? ''} ${more === 0 ? 'other spares' : moreOrLess(more)}`))}.`,
        ]),
    ...sentence(
      changes.filter(({ change }) => change === 'gone'),
      (plural) => (plural ? 'are gone' : 'is gone'),
      (kind) => `${kind.old?.mark ?? ''} (${kind.old?.total ?? 0})`,
    ),
    ...sentence(
      changes.filter(({ change }) => change === 'new'),
      (plural) => (plural ? 'are new' : 'is new'),
      (kind) => `${kind.new?.mark ?? ''} (${kind.new?.total ?? 0})`,
    ),
  ];
}

type Detail = (kind: KindChange) => string;

/** Aspects that make another piece of wood, length aside. */
const reshaping: ReadonlySet<KindAspect> = new Set(['bevels', 'outline', 'notches', 'hand', 'section', 'stock']);

/** So many are named in a sentence; the tables have the rest. */
const namedInSentence = 6;

function listed(parts: readonly string[]): string {
  const rest = parts.length - namedInSentence;
  return rest > 0
    ? `${parts.slice(0, namedInSentence).join(', ')} and ${counted(rest, 'kind')} more`
    : parts.join(', ');
}
