/** What a word of a phrase means where it stands: found by reading the phrase again and noting which rule takes which word. */
import type { ConsumeMethodOpts, IRuleConfig, IToken, ParserMethod, TokenType } from 'chevrotain';
import type { PhraseForm } from '../phrases/phrase-forms.ts';
import { PhraseParser } from '../rules/parser.ts';
import { rangeOf, type SourceRange } from '../tree/source-range.ts';
import { beginningWord, wordWithin } from '../vocabulary/known-words.ts';
import { tokenize, Word } from '../vocabulary/tokens.ts';
import type { PhrasePlace } from './read-blocks.ts';

/** A word of the notation in a phrase. */
export interface PhraseWord {
  readonly text: string;
  readonly range: SourceRange;
  readonly meaning: string;
  /** How the phrase is written, where the word begins it; else null. */
  readonly example: string | null;
}

/** The word at `offset`, its end included; null for names, numbers and whatever no phrase takes. */
export function phraseWordAt(phrases: readonly PhrasePlace[], text: string, offset: number): PhraseWord | null {
  const phrase = phraseAt(phrases, offset);
  if (!phrase) return null;
  const tokens = tokenize(text).tokens.filter((token) => isWithin(rangeOf(token), phrase.range));
  const first = tokens[0];
  const taken = wordsTaken(phrase.form, tokens).find(({ token }) => holds(rangeOf(token), offset));
  if (!taken) return null;
  const { token, rule } = taken;
  const begins = token === first;
  const entry = begins ? beginningWord(phrase.block, token.image) : wordWithin(rule, token.image);
  if (!entry) return null;
  const { meaning } = entry;
  return { text: token.image, range: rangeOf(token), meaning, example: begins ? phrase.form.example : null };
}

/** The phrase whose words hold `offset`, its end included. */
export const phraseAt = (phrases: readonly PhrasePlace[], offset: number): PhrasePlace | null =>
  phrases.filter(({ range }) => holds(range, offset)).at(-1) ?? null;

const holds = ({ start, end }: SourceRange, offset: number): boolean => start <= offset && offset <= end;

const isWithin = (inner: SourceRange, outer: SourceRange): boolean =>
  outer.start <= inner.start && inner.end <= outer.end;

/** A word and the rule that took it as itself, not as a name. */
interface TakenWord {
  readonly token: IToken;
  readonly rule: string;
}

/** The words of a phrase up to its end, or to where it breaks. */
function wordsTaken({ rule }: PhraseForm, tokens: readonly IToken[]): readonly TakenWord[] {
  const parser = (noting ??= new NotingParser());
  parser.input = [...tokens];
  taken = [];
  parser[rule]();
  return taken;
}

/** Made when first asked for: working out the grammar takes a while. */
let noting: NotingParser | undefined;

/** The rules that are being read, outermost first, and what they took: the parser's own fields come too late, for it records its rules while it is made. */
const path: string[] = [];
let taken: TakenWord[] = [];

function note(token: IToken, type: TokenType): IToken {
  const rule = path.at(-1);
  if (type !== Word && rule !== undefined) taken.push({ token, rule });
  return token;
}

class NotingParser extends PhraseParser {
  protected override RULE<Implementation extends (...values: never[]) => unknown>(
    name: string,
    implementation: Implementation,
    config?: IRuleConfig<ReturnType<Implementation>>,
  ): ParserMethod<Parameters<Implementation>, ReturnType<Implementation>> {
    const noted = (...values: Parameters<Implementation>): unknown => {
      path.push(name);
      try {
        return implementation(...values);
      } finally {
        path.pop();
      }
    };
    return super.RULE(name, noted as Implementation, config);
  }

  protected override CONSUME(type: TokenType, options?: ConsumeMethodOpts): IToken {
    return note(super.CONSUME(type, options), type);
  }

  protected override CONSUME2(type: TokenType, options?: ConsumeMethodOpts): IToken {
    return note(super.CONSUME2(type, options), type);
  }
}
