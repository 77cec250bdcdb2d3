/** The grammar on paper, in the EBNF of the XML recommendation (W3C, section 6), written from the rules that read it. */
import { type BlockKind } from '../vocabulary/known-words.ts';
import {
  Alternation,
  type IProduction,
  NonTerminal,
  Option,
  Repetition,
  RepetitionMandatory,
  RepetitionMandatoryWithSeparator,
  RepetitionWithSeparator,
  Terminal,
  type TokenType,
  tokenLabel,
} from 'chevrotain';
import { grammarRules, partsOf, ruleNameOf, rulesReached } from '../phrases/phrase-rules.ts';
import { Text, NumberToken, Quantity, UnknownQuantity, Word } from '../vocabulary/tokens.ts';
import { entryFormOf, formOf, type PhraseForm, wordsOf } from '../phrases/phrase-forms.ts';

/** What is said of the tokens that are no fixed words. */
const lexicalRules = `/* Tokens. Spaces and line ends separate them; a comment runs from # to the end of its line. */

NAME     ::= [#x5F] or a letter of any script, then letters, marks, digits and #x5F; every word of the notation is one too
NUMBER   ::= [0-9]+ ("." [0-9]+)? | "." [0-9]+
QUANTITY ::= (NUMBER | ([0-9]+ (" "+ | "-"))? [0-9]+ "/" [0-9]+) UNIT, nothing between the number and its unit
TEXT     ::= '"' ([^"\\] | "\\" any character)* '"', on one line
`;

const tokenNames = new Map<TokenType, string>([
  [Word, 'NAME'],
  [NumberToken, 'NUMBER'],
  [Quantity, 'QUANTITY'],
  [Text, 'TEXT'],
]);

/** How much an expression holds together: an alternation needs brackets inside a sequence, and both inside a repetition. */
type Binding = 'alternation' | 'sequence' | 'single';

interface Written {
  readonly text: string;
  readonly binding: Binding;
}

/** The grammar's text. */
export function ebnfText(): string {
  const blocks: BlockKind[] = [];
  const lines: string[] = [];
  const waiting: BlockKind[] = ['document'];
  const phrases: string[] = [];
  for (let block = waiting.shift(); block !== undefined; block = waiting.shift()) {
    if (blocks.includes(block)) continue;
    blocks.push(block);
    const forms = formsOf(block);
    for (const { opens } of forms) if (opens) waiting.push(opens.block);
    for (const { rule } of forms) phrases.push(ruleNameOf(rule));
    const choices = [...new Set(forms.map((form) => nameOf(ruleNameOf(form.rule)) + bodyOf(form)))];
    lines.push(`${blockName(block)} ::= ( ${choices.join('\n  | ')} )*`);
  }
  const written = rulesReached(phrases).map((name) => {
    const rule = grammarRules[name];
    return rule ? `${nameOf(name)} ::= ${sequence(rule.definition).text}` : '';
  });
  return [
    '/* The grammar of Halflap. Written by grammar/writing/write-ebnf.ts from the rules of the parser: do not change it here. */',
    '/* No word is reserved: where a NAME is read, any of them may be one. Order inside a block is free, except in outlines and maps. */',
    ...lines,
    '/* Phrases. */',
    ...written,
    lexicalRules,
  ].join('\n\n');
}

function formsOf(block: BlockKind): PhraseForm[] {
  const entry = entryFormOf(block);
  const forms = wordsOf(block).flatMap((word) => formOf(block, word) ?? []);
  return entry ? [entry, ...forms] : forms;
}

function bodyOf({ opens }: PhraseForm): string {
  if (!opens) return '';
  const body = `"{" ${blockName(opens.block)} "}"`;
  return opens.required ? ` ${body}` : ` ( ${body} )?`;
}

const blockName = (block: BlockKind): string => (block === 'document' ? 'file' : `${block}_phrases`);

/** "betweenPlace" as "between_place". */
const nameOf = (rule: string): string => rule.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

function sequence(productions: readonly IProduction[]): Written {
  const parts = productions.map(written).filter(({ text }) => text !== '');
  const [only] = parts;
  if (only && parts.length === 1) return only;
  return { text: parts.map((part) => inside(part, 'sequence')).join(' '), binding: 'sequence' };
}

function written(production: IProduction): Written {
  if (production instanceof Terminal) return single(tokenText(production.terminalType));
  if (production instanceof NonTerminal) return single(nameOf(production.nonTerminalName));
  if (production instanceof Alternation) return alternation(production.definition.map(partsOf));
  if (production instanceof Option) return repeated(production.definition, '?');
  if (production instanceof Repetition) return repeated(production.definition, '*');
  if (production instanceof RepetitionMandatory) return repeated(production.definition, '+');
  if (production instanceof RepetitionMandatoryWithSeparator) return separated(production, '');
  if (production instanceof RepetitionWithSeparator) return separated(production, '?');
  throw new Error(`no rule of EBNF for ${production.constructor.name}`);
}

const single = (text: string): Written => ({ text, binding: 'single' });

/** A fixed word in quotes, else the token's name; what is only read to be refused stands nowhere. */
function tokenText(type: TokenType): string {
  if (type === UnknownQuantity) return '';
  return tokenNames.get(type) ?? tokenLabel(type).replaceAll('`', '"');
}

function alternation(alternatives: readonly (readonly IProduction[])[]): Written {
  const choices = [...new Set(alternatives.map((each) => sequence(each).text).filter((text) => text !== ''))];
  return choices.length === 1 ? single(choices[0] ?? '') : { text: choices.join(' | '), binding: 'alternation' };
}

function repeated(definition: readonly IProduction[], mark: '?' | '*' | '+'): Written {
  return single(`${inside(sequence(definition), 'single')}${mark}`);
}

/** One after another with a separator between, such as a list. */
function separated(
  { definition, separator }: RepetitionWithSeparator | RepetitionMandatoryWithSeparator,
  mark: '' | '?',
): Written {
  const item = inside(sequence(definition), 'sequence');
  const list: Written = { text: `${item} ( ${tokenText(separator)} ${item} )*`, binding: 'sequence' };
  return mark === '' ? list : single(`( ${list.text} )${mark}`);
}

/** The text with brackets where it would fall apart inside. */
function inside({ text, binding }: Written, around: 'sequence' | 'single'): string {
  const holds = binding === 'single' || (around === 'sequence' && binding === 'sequence');
  return holds ? text : `( ${text} )`;
}
