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
import { PhraseStarts } from './phrase-starts.ts';
import type { Problem } from './problem.ts';
import { spanOf } from './source-range.ts';
import type { SourceRange } from './source-range.ts';
import {
  missingBlock,
  outsideBlock,
  strayBrace,
  unclosedBlock,
  unknownPhrase,
  unreadPhrase,
} from './syntax-problems.ts';
import type {
  BlockDeclaration,
  Declaration,
  Name,
  PanelFillProperty,
  PartFillProperty,
  Property,
  TipProperty,
} from './syntax-tree.ts';
import { LeftBrace, RightBrace } from './tokens.ts';
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

/** How a block was opened: by its brace, by a head whose brace is missing (and reported), or, the whole file, by nothing. */
interface Opening {
  readonly token: IToken | null;
  readonly inBraces: boolean;
}

export interface ReadTokens {
  readonly declarations: readonly Declaration[];
  readonly unreadNames: readonly Name[];
  readonly problems: readonly Problem[];
  /** Stretches that stand for one unknown thing: what is unreadable inside is no further problem. */
  readonly skipped: readonly SourceRange[];
}

const parser = new PhraseParser();

/** Reads a whole file. Never throws. */
export function readBlocks(tokens: readonly IToken[]): ReadTokens {
  const reader = new BlockReader(tokens);
  const { nodes } = reader.readBlock('document', 0, { token: null, inBraces: false });
  return {
    declarations: nodes.filter((node): node is Declaration => isDeclaration(node)),
    unreadNames: reader.unreadNames,
    problems: reader.problems,
    skipped: reader.skipped,
  };
}

const isDeclaration = (node: Phrase): node is Declaration => formOf('document', node.kind) !== undefined;

class BlockReader {
  readonly problems: Problem[] = [];
  readonly unreadNames: Name[] = [];
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
      if (token === undefined || (open && this.starts.beginsDeclaration(at, block))) {
        if (open && inBraces) this.problems.push(unclosedBlock(open, token ?? null));
        return { nodes, incomplete: incomplete || open !== null, close: null, next: at };
      }
      if (token.tokenType === RightBrace) {
        if (open) return { nodes, incomplete, close: token, next: at + 1 };
        this.problems.push(strayBrace(token));
        at += 1;
        continue;
      }
      const form = formOf(block, token.image);
      const read = form ? this.readWithBody(block, form, at) : this.skipUnknown(block, at, nodes);
      if (read.node) nodes.push(read.node);
      else incomplete = true;
      at = read.next;
    }
  }

  /** A phrase and the braces behind it. */
  private readWithBody(block: BlockKind, form: PhraseForm, index: number): ReadPhrase {
    const { node, next } = this.readPhrase(block, form, index);
    if (!form.opens) return { node, next };
    const { block: inner, required } = form.opens;
    if (this.tokens[next]?.tokenType === LeftBrace) return this.readBody(inner, node, next, false);
    if (!node || !required) return { node, next };
    this.problems.push(missingBlock(node.range, this.tokens[next] ?? null, form));
    const brace = this.starts.resumeAt('document', next, next);
    if (this.tokens[brace]?.tokenType === LeftBrace) return this.readBody(inner, node, brace, true);
    if (this.starts.beginsPhrase(inner, next) && !this.starts.beginsDeclaration(next, inner)) {
      return this.readBody(inner, node, next - 1, true);
    }
    this.noteName(form, index);
    return { node: null, next: brace };
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
   * Reads one phrase. It may run over lines; but where it breaks, or leaves words behind that begin nothing, a known
   * word at the start of a line is the next phrase. What breaks then is reported and skipped.
   */
  private readPhrase(block: BlockKind, form: PhraseForm, index: number): ReadPhrase {
    const end = this.starts.nextStart(block, index + 1);
    const whole = this.parse(form, index, end);
    if (!whole.error && this.starts.beginsPhrase(block, whole.next)) return whole;
    const nearest = this.starts.nearestStart(block, index + 1);
    const short = nearest < end ? this.parse(form, index, nearest) : whole;
    if (!short.error) return whole.error ? short : whole;
    if (whole.error) {
      const long = this.parse(form, index, this.starts.nextStart(block, end + 1));
      if (!this.starts.isBrace(end) && !long.error && this.starts.beginsPhrase(block, long.next)) return long;
    }
    return this.skipBroken(block, form, index, short.error, nearest);
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
    if (before) this.problems.push(unreadPhrase(error, found, before, form));
    this.noteName(form, index);
    const next = found ? this.starts.resumeAt(block, index + 1, Math.max(errorAt, index + 1)) : end;
    return { node: null, next };
  }

  private parse(form: PhraseForm, from: number, to: number) {
    parser.input = this.tokens.slice(from, to);
    const node = parser[form.rule]() as Phrase | undefined;
    const error: IRecognitionException | undefined = parser.errors[0];
    if (!error) return { node: node ?? null, next: to, error: null };
    if (error.name === 'NotAllInputParsedException') {
      return { node: node ?? null, next: this.starts.indexOf(error.token, from), error: null };
    }
    return { node: null, next: to, error };
  }

  /** Reports a token that begins no phrase and skips what seems to belong to it. `nodes` are the phrases before it. */
  private skipUnknown(block: BlockKind, index: number, nodes: Phrase[]): ReadPhrase {
    const token = this.tokens[index];
    if (!token) return { node: null, next: index };
    const last = nodes.at(-1);
    if (block === 'document' && last && isBlock(last) && formOf(last.kind, token.image)) {
      nodes[nodes.length - 1] = { ...last, incomplete: true };
      this.problems.push(outsideBlock(token, last.kind));
    } else this.problems.push(unknownPhrase(token, this.tokens[index - 1] ?? null, block));
    let next = token.tokenType === LeftBrace ? index : this.starts.resumeAt(block, index + 1, index + 1);
    const type = this.tokens[next]?.tokenType;
    if (type === LeftBrace) next = this.starts.behindBraces(next);
    else if (type === RightBrace && block === 'document') next += 1;
    const end = this.tokens[next - 1];
    if (end) this.skipped.push(spanOf(rangeOf(token), rangeOf(end)));
    return { node: null, next };
  }

  private noteName(form: PhraseForm, index: number): void {
    const name = this.tokens[index + 1];
    if (form.names && name) this.unreadNames.push({ text: name.image, range: rangeOf(name) });
  }
}

const isBlock = (node: Phrase): node is BlockDeclaration => 'properties' in node;

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
    open: open.tokenType === LeftBrace ? rangeOf(open) : null,
    close: body.close && rangeOf(body.close),
    properties: body.nodes,
    incomplete: body.incomplete,
    range,
  } as BlockDeclaration;
}
