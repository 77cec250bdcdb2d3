/**
 * Divides the tokens into phrases, lets the parser read each and joins them into the tree. A phrase that
 * cannot be read costs one problem; reading goes on at the next phrase. Line ends matter only then: a known
 * word at the start of a line is taken as the next property.
 */
import { EOF } from 'chevrotain';
import type { IRecognitionException, IToken } from 'chevrotain';
import { rangeOf } from './expression-rules.ts';
import { PhraseParser } from './parser.ts';
import type { BlockHead } from './parser.ts';
import type { Problem } from './problem.ts';
import { spanOf } from './source-range.ts';
import type { SourceRange } from './source-range.ts';
import { missingBlock, strayBrace, unclosedBlock, unknownPhrase, unreadPhrase } from './syntax-problems.ts';
import type {
  BlockDeclaration,
  Declaration,
  Name,
  PanelFillProperty,
  PartFillProperty,
  Property,
  TipProperty,
} from './syntax-tree.ts';
import { Comma, Divide, Equals, keyword, LeftBrace, LeftBracket, Minus, Plus, RightBrace, Times } from './tokens.ts';
import { formOf } from './vocabulary.ts';
import type { BlockKind, PhraseForm } from './vocabulary.ts';

type Phrase = Declaration | Property | BlockHead;

interface ReadPhrase {
  readonly node: Phrase | null;
  /** Index of the token after the phrase, or after what was skipped of it. */
  readonly next: number;
}

interface ReadBlock {
  readonly nodes: readonly Phrase[];
  readonly incomplete: boolean;
  readonly close: IToken | null;
  readonly next: number;
}

export interface ReadTokens {
  readonly declarations: readonly Declaration[];
  readonly unreadNames: readonly Name[];
  readonly problems: readonly Problem[];
  /** Stretches that stand for one unknown thing: what is unreadable inside is no further problem. */
  readonly skipped: readonly SourceRange[];
}

const parser = new PhraseParser();

/** Tokens behind which a phrase surely goes on, whatever begins the next line. */
const connectors = new Set([Comma, Equals, Plus, Minus, Times, Divide, LeftBracket]);

/** Reads a whole file. Never throws. */
export function readBlocks(tokens: readonly IToken[]): ReadTokens {
  const reader = new BlockReader(tokens);
  const { nodes } = reader.readBlock('document', 0, null);
  return {
    declarations: nodes.filter((node): node is Declaration => isDeclaration(node)),
    unreadNames: reader.unreadNames,
    problems: reader.problems,
    skipped: reader.skipped,
  };
}

const declarationKinds = new Set(['title', 'units', 'let', 'strip', 'bench', 'grid', 'motif', 'outline', 'panel']);
const isDeclaration = (node: Phrase): node is Declaration => declarationKinds.has(node.kind);

class BlockReader {
  readonly problems: Problem[] = [];
  readonly unreadNames: Name[] = [];
  readonly skipped: SourceRange[] = [];

  constructor(private readonly tokens: readonly IToken[]) {}

  /** Reads phrases from `index` up to the closing brace that belongs to `open`, or to the end of the file. */
  readBlock(block: BlockKind, index: number, open: IToken | null): ReadBlock {
    const nodes: Phrase[] = [];
    let incomplete = false;
    let at = index;
    for (;;) {
      const token = this.tokens[at];
      if (token === undefined || (open && this.beginsDeclaration(at, block))) {
        if (open) this.problems.push(unclosedBlock(open, token ?? null));
        return { nodes, incomplete: incomplete || open !== null, close: null, next: at };
      }
      if (token.tokenType === RightBrace) {
        if (open) return { nodes, incomplete, close: token, next: at + 1 };
        this.problems.push(strayBrace(token));
        at += 1;
        continue;
      }
      const form = formOf(block, token.image);
      const read = form ? this.readWithBody(block, form, at) : this.skipUnknown(block, at);
      if (read.node) nodes.push(read.node);
      else incomplete = true;
      at = read.next;
    }
  }

  /** A phrase and the braces behind it. */
  private readWithBody(block: BlockKind, form: PhraseForm, index: number): ReadPhrase {
    const { node, next } = this.readPhrase(block, form, index);
    const open = this.tokens[next];
    if (!form.opens) return { node, next };
    if (open?.tokenType !== LeftBrace) {
      if (node && form.opens.required) {
        this.problems.push(missingBlock(node.range, form));
        this.noteName(form, index);
        return { node: null, next };
      }
      return { node, next };
    }
    const body = this.readBlock(form.opens.block, next + 1, open);
    return { node: node && joinBody(node, open, body, this.tokens[body.next - 1] ?? open), next: body.next };
  }

  /** Reads one phrase up to the next line that begins a phrase; failing that, across lines; failing both, reports and skips. */
  private readPhrase(block: BlockKind, form: PhraseForm, index: number): ReadPhrase {
    const lineEnd = this.nextStart(block, index + 1);
    const first = this.parse(form, index, lineEnd);
    if (!first.error) return first;
    const braceEnd = this.nextBrace(index + 1);
    if (braceEnd > lineEnd) {
      const second = this.parse(form, index, this.nextStart(block, lineEnd + 1));
      if (!second.error && this.beginsPhrase(block, second.next)) return second;
    }
    const found = first.error.token.tokenType === EOF ? null : first.error.token;
    const errorAt = found ? this.indexOf(found, index) : lineEnd;
    const before = this.tokens[errorAt - 1] ?? this.tokens[index];
    if (before) this.problems.push(unreadPhrase(first.error, found, before, form));
    this.noteName(form, index);
    return { node: null, next: this.resumeAt(block, index + 1, Math.max(errorAt, index + 1)) };
  }

  private parse(form: PhraseForm, from: number, to: number) {
    parser.input = this.tokens.slice(from, to);
    const node = parser[form.rule]() as Phrase | undefined;
    const error: IRecognitionException | undefined = parser.errors[0];
    if (!error) return { node: node ?? null, next: to, error: null };
    if (error.name === 'NotAllInputParsedException') {
      return { node: node ?? null, next: this.indexOf(error.token, from), error: null };
    }
    return { node: null, next: to, error };
  }

  /** Reports a token that begins no phrase and skips what seems to belong to it. */
  private skipUnknown(block: BlockKind, index: number): ReadPhrase {
    const token = this.tokens[index];
    if (token) this.problems.push(unknownPhrase(token, this.tokens[index - 1] ?? null, block));
    let next = token?.tokenType === LeftBrace ? index : this.resumeAt(block, index + 1, index + 1);
    const type = this.tokens[next]?.tokenType;
    if (type === LeftBrace) next = this.skipBraces(next);
    else if (type === RightBrace && block === 'document') next += 1;
    const last = this.tokens[next - 1];
    if (token && last) this.skipped.push(spanOf(rangeOf(token), rangeOf(last)));
    return { node: null, next };
  }

  /** Index behind the braces that open at `index`, or of the declaration or end that comes before they close. */
  private skipBraces(index: number): number {
    let depth = 0;
    for (let at = index; at < this.tokens.length; at++) {
      const type = this.tokens[at]?.tokenType;
      if (type === LeftBrace) depth += 1;
      else if (type === RightBrace && --depth === 0) return at + 1;
      else if (this.beginsDeclaration(at, 'tips')) return at;
    }
    return this.tokens.length;
  }

  /**
   * Where reading goes on after a phrase that broke at `errorAt`: a brace, a known word or a new line. Outside all
   * blocks only a declaration will do: the lines before it may be what is left of a block closed too early.
   */
  private resumeAt(block: BlockKind, from: number, errorAt: number): number {
    for (let at = from; at < this.tokens.length; at++) {
      if (this.isBrace(at)) return at;
      if (this.startsLine(at) && (block !== 'document' || this.beginsPhrase(block, at))) return at;
      if (at >= errorAt && block !== 'document' && formOf(block, this.tokens[at]?.image ?? '')) return at;
    }
    return this.tokens.length;
  }

  /** Index of the next brace, or of the next line that begins with a word of the block. */
  private nextStart(block: BlockKind, from: number): number {
    for (let at = from; at < this.tokens.length; at++) {
      if (this.isBrace(at) || (this.startsLine(at) && this.beginsPhrase(block, at))) return at;
    }
    return this.tokens.length;
  }

  private nextBrace(from: number): number {
    for (let at = from; at < this.tokens.length; at++) if (this.isBrace(at)) return at;
    return this.tokens.length;
  }

  private isBrace(at: number): boolean {
    const type = this.tokens[at]?.tokenType;
    return type === LeftBrace || type === RightBrace;
  }

  private beginsPhrase(block: BlockKind, at: number): boolean {
    const token = this.tokens[at];
    return (
      token === undefined ||
      this.isBrace(at) ||
      formOf(block, token.image) !== undefined ||
      this.beginsDeclaration(at, block)
    );
  }

  /** Whether the token is the first of its line and nothing before it calls for more. */
  private startsLine(at: number): boolean {
    const token = this.tokens[at];
    const before = this.tokens[at - 1];
    if (!token || !before) return true;
    return token.startLine !== before.endLine && !connectors.has(before.tokenType) && !connectors.has(token.tokenType);
  }

  /** Whether a new line can only be a declaration: seen inside a block, its brace is missing. */
  private beginsDeclaration(at: number, inside: BlockKind): boolean {
    const token = this.tokens[at];
    if (!token || !this.startsLine(at) || !formOf('document', token.image)) return false;
    if (inside === 'document' || !formOf(inside, token.image)) return true;
    const behind = this.tokens[at + 2]?.tokenType;
    return behind === LeftBrace || behind === keyword.for;
  }

  private indexOf(token: IToken, from: number): number {
    let at = from;
    while (at < this.tokens.length && this.tokens[at] !== token) at += 1;
    return at;
  }

  private noteName(form: PhraseForm, index: number): void {
    const name = this.tokens[index + 1];
    if (form.names && name) this.unreadNames.push({ text: name.image, range: rangeOf(name) });
  }
}

/** A head with its body becomes a declaration, a fill takes its tips. */
function joinBody(node: Phrase, open: IToken, body: ReadBlock, last: IToken): Phrase {
  const range = spanOf(node.range, rangeOf(last));
  if (node.kind === 'part fill' || node.kind === 'panel fill') {
    const tips = body.nodes.filter((tip): tip is TipProperty => tip.kind === 'tip');
    return { ...node, tips, range } satisfies PartFillProperty | PanelFillProperty;
  }
  if (node.kind !== 'head') return node;
  const { declared, keyword: word, name, shape } = node;
  return {
    kind: declared,
    keyword: word,
    name,
    ...(shape ? { shape } : {}),
    open: rangeOf(open),
    close: body.close && rangeOf(body.close),
    properties: body.nodes,
    incomplete: body.incomplete,
    range,
  } as BlockDeclaration;
}
