/** What changed in blanks, bands, pours and boards, and in mass and price, as sentences and rows. */
import type { LengthUnit } from '../design/design-model.ts';
import { arrow } from './change-text.ts';
import type { DesignChange, ObjectChange, ObjectFact, Plain } from './design-change.ts';
import { moneyFigure, moneyText, planFigure, planUnit } from '../words/figures.ts';

/** So many figures are told in a sentence; the table has the rest. */
const toldInSentence = 4;

/** "Pour stem: layers 2 → 3, volume 120.00 → 140.00 mL." */
export function objectSentence({ sort, change, oldName, newName, facts }: ObjectChange, units: LengthUnit): string {
  const name = `${sort.slice(0, 1).toLocaleUpperCase('en')}${sort.slice(1)} ${newName ?? oldName ?? ''}`;
  if (change === 'gone') return `${name} is gone.`;
  const told = facts.slice(0, toldInSentence).map((fact) => factWords(fact, units));
  const rest = facts.length > toldInSentence ? ` and ${facts.length - toldInSentence} figures more` : '';
  if (change === 'new') return `${name} is new: ${told.join(', ')}.`;
  if (oldName !== newName) return `${name} was called ${oldName ?? ''}.`;
  return `${name}: ${told.join(', ')}${rest}.`;
}

/** "volume 120.00 → 140.00 mL", or the one figure there is. */
function factWords(fact: ObjectFact, units: LengthUnit): string {
  const [old, now] = factCells(fact, units);
  const unit = fact.unit === null ? '' : ` ${unitOf(fact.unit, units)}`;
  if (fact.old === null) return `${fact.what} ${now}${unit}`;
  return `${fact.what} ${old} ${arrow} ${fact.new === null ? 'none' : `${now}${unit}`}`;
}

/** What the figure is of, with its unit. */
export const factTitle = ({ what, unit }: ObjectFact, units: LengthUnit): string =>
  unit === null ? what : `${what}, ${unitOf(unit, units)}`;

type FactUnit = NonNullable<ObjectFact['unit']>;

/** The only mass among these figures is that of resin, which is weighed in g in any file. */
const resinStays = (unit: FactUnit, units: LengthUnit): LengthUnit => (unit === 'g' ? 'mm' : units);

const unitOf = (unit: FactUnit, units: LengthUnit): string => planUnit(unit, resinStays(unit, units));

/** The old and the new figure, without their unit; empty where there is none. */
export const factCells = ({ unit, old, new: now }: ObjectFact, units: LengthUnit): [old: string, now: string] => {
  const written = (value: ObjectFact['old']): string => {
    if (value === null) return '';
    return typeof value === 'number' && unit !== null
      ? planFigure(value, unit, resinStays(unit, units))
      : String(value);
  };
  return [written(old), written(now)];
};

/** Figures of the whole work that a maker asks for: what it weighs, what it costs, and what it sells for. */
const wholeFigures = [
  { section: 'mass', key: 'perCopyG', words: 'Mass of a copy', isMoney: false },
  { section: 'cost', key: 'costPerCopy', words: 'Cost of a copy', isMoney: true },
  { section: 'cost', key: 'pricePerCopy', words: 'Price of a copy', isMoney: true },
] as const;

/** "Price of a copy: 120.00 EUR → 130.00 EUR (+10.00)." */
export function wholeSentences({ sections, old: before, new: after }: DesignChange): string[] {
  return wholeFigures.flatMap(({ section, key, words, isMoney }): string[] => {
    const fields = sections.find((each) => each.section === section)?.fields ?? [];
    const field = fields.find(({ path }) => path.length === 1 && path[0] === key);
    if (!field) return [];
    const said = (value: Plain, { currency }: DesignChange['old']): string => {
      if (typeof value !== 'number') return 'not known';
      return isMoney
        ? moneyText(value, currency)
        : `${planFigure(value, 'g', after.units)} ${planUnit('g', after.units)}`;
    };
    const { old, new: now } = field;
    const isComparable = !isMoney || before.currency === after.currency;
    const more =
      typeof old === 'number' && typeof now === 'number' && isComparable
        ? ` (${now < old ? '−' : '+'}${isMoney ? moneyFigure(Math.abs(now - old), after.currency) : planFigure(Math.abs(now - old), 'g', after.units)})`
        : '';
    return [`${words}: ${said(old, before)} ${arrow} ${said(now, after)}${more}.`];
  });
}
