/** Where phrases may begin and end in a row of tokens: by braces, by known words and, when something is wrong, by lines. */
import { type BlockKind } from '../vocabulary/known-words.ts';
import { tokenMatcher } from 'chevrotain';
import type { IToken } from 'chevrotain';
import {
  Comma,
  Divide,
  Dot,
  Equals,
  keyword,
  LeftBrace,
  LeftBracket,
  Minus,
  Plus,
  RightBrace,
  Times,
  Word,
} from '../vocabulary/tokens.ts';
import { isKnownWord, wordRoles } from '../vocabulary/known-words.ts';
import { entryFormOf, formOf, outerBlocks } from '../phrases/phrase-forms.ts';
import type { PhraseForm } from '../phrases/phrase-forms.ts';

/** Tokens behind which a phrase goes on, whatever begins the next line. */
const connectors = new Set([Comma, Equals, Plus, Minus, Times, Divide, LeftBracket]);

const braceTypes = new Set([LeftBrace, RightBrace]);

/** Whether a word that begins phrases may stand inside one of this form. */
const isInner = (form: PhraseForm | null, word: string): boolean =>
  form?.inner?.some((inner) => inner === word) ?? false;

/** What stands behind the name of a declaration. */
const behindNames = new Set([LeftBrace, Equals, keyword.for]);

export class PhraseStarts {
  /** The last answer of `nextStart`: it holds for every place up to it, so many phrases on one line cost one search. */
  private lastNext: { readonly block: BlockKind; readonly from: number; readonly next: number } | null = null;

  constructor(private readonly tokens: readonly IToken[]) {}

  /** The form of the phrase that begins at a token, undefined where none of the block does. */
  formAt(block: BlockKind, at: number): PhraseForm | undefined {
    const token = this.tokens[at];
    const isSign = token !== undefined && (token.tokenType === Dot || tokenMatcher(token, Word));
    const entry = isSign && this.tokens[at + 1]?.tokenType === Equals ? entryFormOf(block) : undefined;
    return entry ?? formOf(block, token?.image ?? '');
  }

  isBrace(at: number): boolean {
    const type = this.tokens[at]?.tokenType;
    return type === LeftBrace || type === RightBrace;
  }

  /** Whether a phrase of the block, a brace or the end of the file stands here. */
  beginsPhrase(block: BlockKind, at: number): boolean {
    const token = this.tokens[at];
    return (
      token === undefined ||
      this.isBrace(at) ||
      this.formAt(block, at) !== undefined ||
      this.beginsDeclaration(at, block)
    );
  }

  /** Whether what stands here may belong to the next phrase: it begins one, or a line. */
  mayBegin(block: BlockKind, at: number): boolean {
    return this.beginsPhrase(block, at) || this.opensLine(at);
  }

  /** Whether a new line can only be a declaration: seen inside a block, its brace is missing. */
  beginsDeclaration(at: number, inside: BlockKind): boolean {
    const token = this.tokens[at];
    if (!token || !this.opensLine(at) || !formOf('document', token.image)) return false;
    return inside === 'document' || !formOf(inside, token.image) || this.hasHead(at);
  }

  /** Whether a new line here begins a phrase of a block round this one, and none of this one: its brace is missing. */
  beginsOuter(block: BlockKind, at: number): boolean {
    const isOuter = outerBlocks(block).some((outer) => this.formAt(outer, at) !== undefined);
    return isOuter && this.opensLine(at) && this.formAt(block, at) === undefined;
  }

  /**
   * The first word of a line that begins a phrase, but was taken by the one before `end`, though what follows that stands
   * on the same line; null where there is none.
   */
  swallowedLine(block: BlockKind, form: PhraseForm, from: number, end: number): number | null {
    const follower = this.tokens[end];
    if (!follower || follower.tokenType === RightBrace || this.opensLine(end)) return null;
    const isForeign = (at: number): boolean => !isInner(form, this.tokens[at]?.image ?? '');
    const line = this.find(from, (at) => this.opensLine(at) && this.beginsPhrase(block, at) && isForeign(at));
    return line < end ? line : null;
  }

  /** Whether the line of a token closes more braces than it opens. */
  closesMore(at: number): boolean {
    const line = this.tokens[at]?.startLine;
    const braces = this.tokens.filter(({ startLine, tokenType }) => startLine === line && braceTypes.has(tokenType));
    return 2 * braces.filter(({ tokenType }) => tokenType === RightBrace).length > braces.length;
  }

  /** Index of the next brace, or of the next line that begins with a word of the block and continues nothing. */
  nextStart(block: BlockKind, from: number): number {
    const { lastNext: last } = this;
    if (last && last.block === block && last.from <= from && from <= last.next) return last.next;
    const next = this.find(from, (at) => this.isBrace(at) || (this.startsLine(at) && this.beginsPhrase(block, at)));
    this.lastNext = { block, from, next };
    return next;
  }

  /**
   * Index of the next brace, of a word of the block before `limit`, even where it could be a name, or of the next line
   * that begins with one, even behind a comma or an operator.
   */
  nearestStart(block: BlockKind, from: number, limit: number, form: PhraseForm): number {
    return this.find(from, (at) => {
      if (this.isBrace(at)) return true;
      const isStart = at < limit && block !== 'document' && this.formAt(block, at) !== undefined;
      if (isStart && !isInner(form, this.tokens[at]?.image ?? '')) return true;
      return this.opensLine(at) && (this.beginsPhrase(block, at) || this.beginsOuter(block, at));
    });
  }

  /** Index of the next brace or of the next line that continues nothing. */
  nextLine(from: number): number {
    return this.find(from, (at) => this.isBrace(at) || this.startsLine(at));
  }

  /**
   * Where reading goes on after a phrase that broke at `errorAt`: a brace, a known word or a new line. Outside all
   * blocks only a declaration will do: the lines before it may be what is left of a block closed too early. `broken`
   * is the form of that phrase, where it is known.
   */
  resumeAt(block: BlockKind, from: number, errorAt: number, broken: PhraseForm | null = null): number {
    return this.find(from, (at) => {
      if (this.isBrace(at)) return true;
      if (block === 'document') return this.opensLine(at) && this.beginsPhrase(block, at);
      if (this.startsLine(at)) return true;
      if (isInner(broken, this.tokens[at]?.image ?? '')) return false;
      return at >= errorAt && this.formAt(block, at) !== undefined && !this.isLinked(at);
    });
  }

  /** Index behind the braces that open at `index`, or of the declaration or end that comes before they close. */
  behindBraces(index: number): number {
    let depth = 0;
    return this.find(index, (at) => {
      const before = this.tokens[at - 1]?.tokenType;
      if (at > index && before === LeftBrace) depth += 1;
      if (at > index && before === RightBrace) depth -= 1;
      return at > index && (depth === 0 || (this.opensLine(at) && this.hasHead(at)));
    });
  }

  /** Index of a token that stands at or behind `from`. */
  indexOf(token: IToken, from: number): number {
    return this.find(from, (at) => this.tokens[at] === token);
  }

  private find(from: number, fits: (at: number) => boolean): number {
    for (let at = from; at < this.tokens.length; at++) if (fits(at)) return at;
    return this.tokens.length;
  }

  /** Whether a word like `to` or `with` stands before the token and claims it. */
  private isLinked(at: number): boolean {
    const before = this.tokens[at - 1]?.image ?? '';
    return isKnownWord(before) && wordRoles[before] === 'link';
  }

  /** Whether the token is the first of its line. */
  opensLine(at: number): boolean {
    const before = this.tokens[at - 1];
    return !before || this.tokens[at]?.startLine !== before.endLine;
  }

  /** Whether the token is the first of its line and neither it nor the one before calls for more. */
  private startsLine(at: number): boolean {
    const [before, token] = [this.tokens[at - 1], this.tokens[at]];
    if (!this.opensLine(at)) return false;
    return !(before && connectors.has(before.tokenType)) && !(token && connectors.has(token.tokenType));
  }

  /** Whether the word is a declaration's, with a name and what must follow that behind it. */
  private hasHead(at: number): boolean {
    if (!formOf('document', this.tokens[at]?.image ?? '')) return false;
    const name = this.tokens[at + 1];
    const behind = this.tokens[at + 2]?.tokenType;
    const isName = name !== undefined && (name.tokenType === Word || Object.hasOwn(keyword, name.image));
    return isName && behind !== undefined && behindNames.has(behind);
  }
}
