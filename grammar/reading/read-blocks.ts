/**
 * Divides the tokens into phrases, lets the parser read each and joins them into the tree. A phrase that
 * cannot be read costs one problem; reading goes on at the next phrase. Line ends matter only then: a known
 * word at the start of a line is taken as the next property.
 */
import { type BlockKind } from '../vocabulary/known-words.ts';
import { EOF, tokenMatcher } from 'chevrotain';
import type { IRecognitionException, IToken } from 'chevrotain';
import type { MapEntry, MapRow } from '../tree/fill-syntax.ts';
import type { TipProperty } from '../tree/motif-syntax.ts';
import type { FramePart } from '../tree/object-syntax.ts';
import type { Name } from '../tree/syntax-nodes.ts';
import type { BlockDeclaration, Declaration, Property } from '../tree/syntax-tree.ts';
import { phraseParser } from '../rules/parser.ts';
import type { BlockHead } from '../rules/parser.ts';
import { PhraseStarts } from './phrase-starts.ts';
import type { Problem } from '../problems/problem.ts';
import {
  missingBlock,
  outsideBlock,
  strayBrace,
  unclosedBlock,
  unknownPhrase,
  unreadPhrase,
} from './syntax-problems.ts';
import { LeftBrace, RightBrace, Word } from '../vocabulary/tokens.ts';
import { formOf } from '../phrases/phrase-forms.ts';
import type { PhraseForm } from '../phrases/phrase-forms.ts';
import { rangeOf, type SourceRange, spanOf } from '../tree/source-range.ts';

type Phrase = Declaration | Property | MapEntry | MapRow | BlockHead;

interface ReadPhrase {
  readonly node: Phrase | null;
  /** Index of the token after the phrase, or after what was skipped of it. */
  readonly next: number;
}

interface ParsedPhrase extends ReadPhrase {
  readonly error: IRecognitionException | null;
}

interface ReadBlock {
  readonly nodes: readonly Phrase[];
  readonly incomplete: boolean;
  readonly close: IToken | null;
  readonly next: number;
}

/** How a block was opened: by its brace, by a head whose brace is missing (and reported), or, the whole file, by nothing. */
interface Opening {
  readonly token: IToken | null;
  readonly inBraces: boolean;
}

/** Where a phrase stands, whether it could be read or not; without the braces behind it. */
export interface PhrasePlace {
  readonly block: BlockKind;
  readonly form: PhraseForm;
  readonly range: SourceRange;
}

export interface ReadTokens {
  readonly declarations: readonly Declaration[];
  readonly unreadNames: readonly Name[];
  readonly unnamed: readonly string[];
  readonly problems: readonly Problem[];
  /** In order of place. */
  readonly phrases: readonly PhrasePlace[];
  /** Stretches that stand for one unknown thing: what is unreadable inside is no further problem. */
  readonly skipped: readonly SourceRange[];
}

/** Phrases are tried on so many words first: few are longer, and handing the parser a long rest each time is slow. */
const usualLength = 100;

/** Reads a whole file. Never throws. */
export function readBlocks(tokens: readonly IToken[]): ReadTokens {
  const reader = new BlockReader(tokens);
  const { nodes } = reader.readBlock('document', 0, { token: null, inBraces: false });
  return {
    declarations: nodes.filter((node): node is Declaration => isDeclaration(node)),
    unreadNames: reader.unreadNames,
    unnamed: reader.unnamed,
    problems: reader.problems,
    phrases: reader.phrases,
    skipped: reader.skipped,
  };
}

const isDeclaration = (node: Phrase): node is Declaration => formOf('document', node.kind) !== undefined;

class BlockReader {
  readonly problems: Problem[] = [];
  readonly phrases: PhrasePlace[] = [];
  readonly unreadNames: Name[] = [];
  readonly unnamed: string[] = [];
  readonly skipped: SourceRange[] = [];
  private readonly starts: PhraseStarts;

  constructor(private readonly tokens: readonly IToken[]) {
    this.starts = new PhraseStarts(tokens);
  }

  /** Reads phrases from `index` up to the closing brace that belongs to the opening, or to the end of the file. */
  readBlock(block: BlockKind, index: number, opening: Opening): ReadBlock {
    const nodes: Phrase[] = [];
    const { token: open, inBraces } = opening;
    let incomplete = false;
    let at = index;
    for (;;) {
      const token = this.tokens[at];
      const isOver = this.starts.beginsDeclaration(at, block) || this.starts.beginsOuter(block, at);
      if (token === undefined || (open && isOver)) {
        if (open && inBraces) this.problems.push(unclosedBlock(open, token ?? null));
        return { nodes, incomplete: incomplete || open !== null, close: null, next: at };
      }
      if (token.tokenType === RightBrace) {
        if (open) return { nodes, incomplete, close: token, next: at + 1 };
        this.problems.push(strayBrace(token));
        this.doubt(nodes.at(-1), at);
        at += 1;
        continue;
      }
      const form = this.starts.formAt(block, at);
      const read = form ? this.readWithBody(block, form, at) : this.skipUnknown(block, at, nodes);
      if (read.node) nodes.push(read.node);
      else incomplete = true;
      at = read.next;
    }
  }

  /** A phrase and the braces behind it. */
  private readWithBody(block: BlockKind, form: PhraseForm, index: number): ReadPhrase {
    const { node, next } = this.readPhrase(block, form, index);
    this.notePhrase(block, form, index, next);
    if (!form.opens) return { node, next };
    const { block: inner, required } = form.opens;
    if (this.tokens[next]?.tokenType === LeftBrace) return this.readBody(inner, node, next, false);
    if (!node || !(required || this.beginsBody(block, form, next))) return { node, next };
    this.problems.push(missingBlock(node.range, this.tokens[next] ?? null, form));
    // a block inside a block ends where the outer one does
    if (block !== 'document' && this.tokens[next]?.tokenType === RightBrace) return { node: null, next };
    const brace = this.starts.resumeAt('document', next, next);
    this.noteNames(null, index, brace);
    const isOnLine = this.tokens[brace]?.startLine === this.tokens[next - 1]?.endLine;
    if (isOnLine && this.tokens[brace]?.tokenType === LeftBrace) return this.readBody(inner, node, brace, true);
    if (this.starts.beginsPhrase(inner, next) && !this.starts.beginsDeclaration(next, inner)) {
      return this.readBody(inner, node, next - 1, true);
    }
    return { node: null, next: brace };
  }

  private notePhrase(block: BlockKind, form: PhraseForm, index: number, end: number): void {
    const [first, last] = [this.tokens[index], this.tokens[end - 1]];
    if (first && last) this.phrases.push({ block, form, range: spanOf(rangeOf(first), rangeOf(last)) });
  }

  /**
   * The block behind the token at `open`: its brace, or the last word of a head whose brace is missing.
   * What stands between a broken head and its block may be part of either.
   */
  private readBody(block: BlockKind, head: Phrase | null, open: number, brokenHead: boolean): ReadPhrase {
    const token = this.tokens[open];
    if (!token) return { node: null, next: open };
    const read = this.readBlock(block, open + 1, { token, inBraces: token.tokenType === LeftBrace });
    const body = { ...read, incomplete: read.incomplete || brokenHead };
    return { node: head && joinBody(head, token, body, this.tokens[body.next - 1] ?? token), next: body.next };
  }

  /**
   * Reads one phrase. It may run over lines and use any word as a name; but where it breaks, or leaves words behind
   * that begin nothing, a known word used as a name or standing at the start of a line is the next phrase instead.
   */
  private readPhrase(block: BlockKind, form: PhraseForm, index: number): ReadPhrase {
    const end = this.starts.nextStart(block, index + 1);
    const whole = this.parse(form, index, end);
    const isNext = this.starts.mayBegin(block, whole.next) || this.beginsBody(block, form, whole.next);
    const isWhole = !whole.error && isNext;
    if (isWhole && !this.swallowsPhrase(block, form, index + 1, whole.next)) return whole;
    if (whole.error && !this.starts.isBrace(end)) {
      const long = this.parse(form, index, this.starts.nextStart(block, end + 1));
      const isLong = !long.error && this.starts.beginsPhrase(block, long.next);
      if (isLong && !this.swallowsPhrase(block, form, index + 1, long.next)) return long;
    }
    const nearest = this.starts.nearestStart(block, index + 1, whole.next, form);
    const short = nearest < whole.next ? this.parse(form, index, nearest) : whole;
    if (short.error) return this.skipBroken(block, form, index, short.error, nearest);
    if (short !== whole && this.starts.opensLine(short.next)) return short;
    if (whole.error) return this.skipBroken(block, form, index, whole.error, whole.next);
    return form.opens?.required || this.isApart(form, whole.next)
      ? whole
      : this.skipLeftOver(block, form, index, whole.next);
  }

  /** Whether what stands behind a phrase belongs into its braces, which are missing. */
  private beginsBody(block: BlockKind, { opens }: PhraseForm, at: number): boolean {
    if (!opens || !this.starts.formAt(opens.block, at) || this.starts.beginsPhrase(block, at)) return false;
    return this.starts.closesMore(at);
  }

  /** Whether a phrase took for its own the beginning of another that can be read, so that what follows cannot. */
  private swallowsPhrase(block: BlockKind, form: PhraseForm, from: number, end: number): boolean {
    const line = this.starts.swallowedLine(block, form, from, end);
    return line !== null && this.canRead(block, line) && !this.canRead(block, end);
  }

  private canRead(block: BlockKind, at: number): boolean {
    const form = this.starts.formAt(block, at);
    if (!form) return false;
    const { error, next } = this.parse(form, at, this.starts.nextStart(block, at + 1));
    return !error && this.starts.mayBegin(block, next);
  }

  /** Whether a word behind a phrase looks like an unknown property rather than a part of the phrase gone wrong. */
  private isApart(form: PhraseForm, at: number): boolean {
    return !form.names && this.tokens[at]?.tokenType === Word && !this.isKnownWord(at - 1);
  }

  private isKnownWord(at: number): boolean {
    const token = this.tokens[at];
    return token !== undefined && token.tokenType !== Word && tokenMatcher(token, Word);
  }

  /** A phrase that leaves a word behind on its line may mean something else: it is not used. */
  private skipLeftOver(block: BlockKind, form: PhraseForm, index: number, at: number): ReadPhrase {
    const { next } = this.skipUnknown(block, at, [], form);
    this.noteNames(form, index, next);
    return { node: null, next };
  }

  private skipBroken(
    block: BlockKind,
    form: PhraseForm,
    index: number,
    error: IRecognitionException,
    end: number,
  ): ReadPhrase {
    const found = error.token.tokenType === EOF ? null : error.token;
    const errorAt = found ? this.starts.indexOf(found, index) : end;
    const before = this.tokens[errorAt - 1];
    if (before) this.problems.push(unreadPhrase(error, found, before, form, this.tokens[errorAt + 1] ?? null));
    const next = found ? this.starts.resumeAt(block, index + 1, Math.max(errorAt, index + 1), form) : end;
    this.noteNames(form, index, next);
    return { node: null, next };
  }

  /** Reads one phrase from the tokens before `to`; `next` is where it ends, or where it breaks. */
  private parse(form: PhraseForm, from: number, to: number): ParsedPhrase {
    const near = Math.min(to, from + usualLength);
    const parsed = this.parseWithin(form, from, near);
    return near < to && parsed.next >= near ? this.parseWithin(form, from, to) : parsed;
  }

  private parseWithin(form: PhraseForm, from: number, to: number): ParsedPhrase {
    phraseParser.input = this.tokens.slice(from, to);
    const node = phraseParser[form.rule]() as Phrase | undefined;
    const error: IRecognitionException | undefined = phraseParser.errors[0];
    if (!error) return { node: node ?? null, next: to, error: null };
    const next = error.token.tokenType === EOF ? to : this.starts.indexOf(error.token, from);
    const isLeftOver = error.name === 'NotAllInputParsedException';
    return isLeftOver ? { node: node ?? null, next, error: null } : { node: null, next, error };
  }

  /** Reports a token that begins no phrase and skips what seems to belong to it. `nodes` are the phrases before it, `broken` the form it was left behind of. */
  private skipUnknown(block: BlockKind, index: number, nodes: Phrase[], broken: PhraseForm | null = null): ReadPhrase {
    const token = this.tokens[index];
    if (!token) return { node: null, next: index };
    const last = nodes.at(-1);
    if (block === 'document' && last && isBlock(last) && formOf(last.kind, token.image)) {
      nodes[nodes.length - 1] = { ...last, incomplete: true };
      this.problems.push(outsideBlock(token, last.kind));
    } else {
      const [before = null, behind = null] = [this.tokens[index - 1], this.tokens[index + 1]];
      const isBehindLast = before && last?.range.end === rangeOf(before).end && !this.starts.opensLine(index);
      const ended = broken ?? (isBehindLast ? (formOf(block, last.kind) ?? null) : null);
      this.problems.push(unknownPhrase({ token, before, behind, ended }, block));
    }
    const next = this.behindUnknown(block, index, broken);
    const end = this.tokens[next - 1];
    if (end) this.skipped.push(spanOf(rangeOf(token), rangeOf(end)));
    return { node: null, next };
  }

  /** Index behind an unknown word, what follows it and its braces. A brace doubled by mistake is skipped alone. */
  private behindUnknown(block: BlockKind, index: number, broken: PhraseForm | null): number {
    const isBrace = this.tokens[index]?.tokenType === LeftBrace;
    if (isBrace && this.tokens[index - 1]?.tokenType === LeftBrace) return index + 1;
    const isValueOnLine = block !== 'document' && !broken && this.starts.opensLine(index) && !this.isWord(index);
    const head = isBrace
      ? index
      : isValueOnLine
        ? this.starts.nextLine(index + 1)
        : this.starts.resumeAt(block, index + 1, index + 1, broken);
    this.noteNames(null, index - 1, head);
    const type = this.tokens[head]?.tokenType;
    if (type === LeftBrace) return this.starts.behindBraces(head);
    return type === RightBrace && block === 'document' ? head + 1 : head;
  }

  private isWord(at: number): boolean {
    const token = this.tokens[at];
    return token !== undefined && tokenMatcher(token, Word);
  }

  /** A brace too many before `at` leaves in doubt which block the names of the declaration before it belong to. */
  private doubt(last: Phrase | undefined, at: number): void {
    if (last) this.noteNames(null, this.tokens.findIndex((token) => token.startOffset >= last.range.start) - 1, at);
  }

  /** The words of an unread phrase may be names it gives; a declaration without any leaves its kind in doubt. */
  private noteNames(form: PhraseForm | null, index: number, end: number): void {
    const words = this.tokens.slice(index + 1, end).filter((token) => tokenMatcher(token, Word));
    for (const token of words) this.unreadNames.push({ text: token.image, range: rangeOf(token) });
    const word = this.tokens[index];
    const second = this.tokens[index + 1];
    if (form?.names && word && second?.tokenType !== Word) this.unnamed.push(word.image);
  }
}

const isBlock = (node: Phrase): node is BlockDeclaration => 'properties' in node;

/** A head with its body becomes a declaration, a fill takes its tips. */
function joinBody(node: Phrase, open: IToken, body: ReadBlock, last: IToken): Phrase {
  const range = spanOf(node.range, rangeOf(last));
  if (node.kind === 'part fill' || node.kind === 'panel fill') {
    const tips = body.nodes.filter((tip): tip is TipProperty => tip.kind === 'tip');
    return { ...node, tips, range };
  }
  if (node.kind === 'map') {
    const lines = body.nodes.filter((line) => line.kind === 'map entry' || line.kind === 'map row');
    return { ...node, lines, incomplete: body.incomplete, range };
  }
  if (node.kind === 'frame') {
    return { ...node, properties: body.nodes as readonly FramePart[], incomplete: body.incomplete, range };
  }
  if (node.kind !== 'head') return node;
  const { declared, keyword: word, name, shape } = node;
  return {
    kind: declared,
    keyword: word,
    name,
    ...(shape ? { shape } : {}),
    open: open.tokenType === LeftBrace ? rangeOf(open) : null,
    close: body.close && rangeOf(body.close),
    properties: body.nodes,
    incomplete: body.incomplete,
    range,
  } as BlockDeclaration;
}
