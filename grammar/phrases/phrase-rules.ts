/** The rules that read a phrase and all that is in it, and the words they read. */
import {
  Alternation,
  type IProduction,
  NonTerminal,
  Option,
  Repetition,
  RepetitionWithSeparator,
  Terminal,
  tokenLabel,
} from 'chevrotain';
import { phraseParser } from '../rules/parser.ts';
import { isKnownWord, type KnownWord, wordWithin } from '../vocabulary/known-words.ts';
import type { PhraseForm, PhraseRule } from './phrase-forms.ts';

/** What every rule of the parser carries, though its type does not tell. */
interface NamedRule {
  readonly ruleName: string;
}

/** Every rule of the grammar, by its name. */
export const grammarRules = phraseParser.getGAstProductions();

export const ruleNameOf = (rule: PhraseRule): string => (phraseParser[rule] as unknown as NamedRule).ruleName;

/** The rules named and those from which they are made, in the order in which they are first needed. */
export function rulesReached(names: readonly string[]): string[] {
  const reached: string[] = [];
  const visit = (name: string): void => {
    if (reached.includes(name)) return;
    reached.push(name);
    grammarRules[name]?.definition.flatMap(rulesIn).forEach(visit);
  };
  names.forEach(visit);
  return reached;
}

function rulesIn(production: IProduction): string[] {
  if (production instanceof NonTerminal) return [production.nonTerminalName];
  return partsOf(production).flatMap(rulesIn);
}

const hasParts = (production: IProduction): production is IProduction & { readonly definition: IProduction[] } =>
  'definition' in production;

/** What a production is made of, in order. */
export const partsOf = (production: IProduction): readonly IProduction[] =>
  hasParts(production) ? production.definition : [];

/** What a word means in a phrase behind the word `before`: in the rule that reads both, where there is one. Empty where it means nothing. */
export function meaningBehind(before: string, { rule }: PhraseForm, word: string): string {
  const rules = rulesReached([ruleNameOf(rule)]).filter((name) => wordWithin(name, word) !== null);
  const both = rules.find((name) => name === ruleNameOf(rule) || wordWithin(name, before) !== null);
  return wordWithin(both ?? rules[0] ?? '', word)?.meaning ?? '';
}

/** The words with which what a rule reads may begin. */
export const firstWords = (rule: string): KnownWord[] => [...new Set(firstOf(grammarRules[rule]?.definition ?? []))];

function firstOf(sequence: readonly IProduction[]): KnownWord[] {
  const [first, ...rest] = sequence;
  if (!first) return [];
  if (first instanceof Terminal) return [tokenLabel(first.terminalType).replaceAll('`', '')].filter(isKnownWord);
  if (first instanceof NonTerminal) return firstWords(first.nonTerminalName);
  if (first instanceof Alternation) return first.definition.flatMap((each) => firstOf(partsOf(each)));
  const own = firstOf(partsOf(first));
  const mayBeLeftOut = [Option, Repetition, RepetitionWithSeparator].some((type) => first instanceof type);
  return mayBeLeftOut ? [...own, ...firstOf(rest)] : own;
}
