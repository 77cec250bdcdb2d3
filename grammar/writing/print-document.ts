/**
 * The canonical layout of a file: one phrase a line, two spaces of indentation, at most one empty line between
 * phrases and always one around a declaration of several lines. A block written on one line stays on it while it
 * fits. Comments keep their lines: those behind a phrase stay behind it, those on their own stay before the next.
 */
import type { IToken } from 'chevrotain';
import type { MapEntry, MapRow } from '../tree/fill-syntax.ts';
import type { TipProperty } from '../tree/motif-syntax.ts';
import type { FramePart } from '../tree/object-syntax.ts';
import type { Declaration, Property } from '../tree/syntax-tree.ts';
import { parseDocument } from '../reading/parse-document.ts';
import { printPhrase, tightPlaces } from './print-phrase.ts';
import type { TightPlaces } from './print-phrase.ts';
import { LeftBrace, tokenize } from '../vocabulary/tokens.ts';
import type { SourceRange } from '../tree/source-range.ts';

/** Longer lines are not made out of blocks; a phrase itself is never broken. */
const lineWidth = 120;

/** A phrase with what its braces hold; `body` is null where it has none. */
interface Item {
  readonly head: readonly IToken[];
  readonly body: readonly Item[] | null;
  readonly first: IToken;
  readonly last: IToken;
}

/**
 * The text in canonical layout, with its own line ends. Null where it has a syntax problem: what could not be read
 * must not be moved. Printing what was printed changes nothing.
 */
export function printDocument(text: string): string | null {
  const { tree, problems } = parseDocument(text);
  if (problems.length > 0) return null;
  const { tokens, comments } = tokenize(text);
  const printer = new Printer(text, comments, tightPlaces(tree));
  const items = tree.declarations.map((declaration) => itemOf(declaration, tokens)).filter((item) => item !== null);
  printer.printItems(items, 0);
  printer.printComments(text.length, 0);
  const end = text.includes('\r\n') ? '\r\n' : '\n';
  return printer.lines.map((line) => line + end).join('');
}

type Phrase = Declaration | Property | FramePart | TipProperty | MapEntry | MapRow;

/** What stands in a phrase's braces. */
function innerPhrases(phrase: Phrase): readonly Phrase[] {
  if ('properties' in phrase) return phrase.properties;
  if ('lines' in phrase) return phrase.lines;
  return 'tips' in phrase ? phrase.tips : [];
}

function itemOf(phrase: Phrase, tokens: readonly IToken[]): Item | null {
  const own = tokensIn(phrase.range, tokens);
  const first = own[0];
  const last = own.at(-1);
  if (!first || !last) return null;
  const brace = own.findIndex((token) => token.tokenType === LeftBrace);
  if (brace < 0) return { head: own, body: null, first, last };
  const inner = innerPhrases(phrase);
  const body = inner.map((property) => itemOf(property, own)).filter((item) => item !== null);
  return { head: own.slice(0, brace + 1), body, first, last };
}

function tokensIn({ start, end }: SourceRange, tokens: readonly IToken[]): readonly IToken[] {
  const from = firstAt(tokens, start);
  return tokens.slice(from, firstAt(tokens, end));
}

/** Index of the first token at or behind an offset, by bisection. */
function firstAt(tokens: readonly IToken[], offset: number): number {
  let low = 0;
  let high = tokens.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((tokens[middle]?.startOffset ?? offset) < offset) low = middle + 1;
    else high = middle;
  }
  return low;
}

const endOf = (token: IToken): number => token.startOffset + token.image.length;

class Printer {
  readonly lines: string[] = [];
  /** Comments not printed yet, in order. */
  private waiting: IToken[];
  /** Where in the text the last printed thing ended. */
  private reached = 0;
  /** True while an empty line would stand at the beginning of a block or file. */
  private atBeginning = true;

  constructor(
    private readonly text: string,
    comments: readonly IToken[],
    private readonly places: TightPlaces,
  ) {
    this.waiting = [...comments];
  }

  printItems(items: readonly Item[], depth: number): void {
    let wasLarge = false;
    for (const item of items) {
      const line = this.onOneLine(item, depth);
      const isLarge = depth === 0 && line === null;
      const firstLine = this.lines.length;
      const wasFirst = this.atBeginning;
      this.printComments(this.lastHeadEnd(item), depth, item.first.startOffset);
      this.printGap(item.first.startOffset);
      if ((isLarge || wasLarge) && !wasFirst && this.lines[firstLine] !== '') this.lines.splice(firstLine, 0, '');
      if (line !== null) this.printLine(line, item.last, depth);
      else this.printBlock(item, depth);
      wasLarge = isLarge;
    }
  }

  /** Comments that stand on lines of their own before `end`; those behind a word of `from` and on are left to it. */
  printComments(end: number, depth: number, from = end): void {
    const reached = this.takeWaiting(end);
    const isDue = (comment: IToken): boolean => comment.startOffset < from || this.isOnOwnLine(comment);
    this.waiting = [...reached.filter((comment) => !isDue(comment)), ...this.waiting];
    for (const comment of reached.filter(isDue)) {
      this.printGap(comment.startOffset);
      this.push(comment.image.trimEnd(), depth);
      this.reached = Math.max(this.reached, endOf(comment));
    }
  }

  private printBlock(item: Item, depth: number): void {
    const open = item.head.at(-1) ?? item.first;
    this.printLine(printPhrase(item.head, this.places), open, depth);
    this.atBeginning = true;
    this.printItems(item.body ?? [], depth + 1);
    this.printComments(item.last.startOffset, depth + 1);
    this.atBeginning = true;
    this.printLine('}', item.last, depth);
  }

  /** A line that ends with the word `last`, and the comments behind its words. */
  private printLine(line: string, last: IToken, depth: number): void {
    const lineEnd = this.endOfLine(endOf(last));
    const behind = this.takeWaiting(lineEnd);
    const remarks = behind.map(({ image }) => image.trimEnd()).join(' ');
    this.push(remarks === '' ? line : `${line}  ${remarks}`, depth);
    this.reached = behind.reduce((reached, comment) => Math.max(reached, endOf(comment)), endOf(last));
  }

  /** Takes the waiting comments that begin before `end`. */
  private takeWaiting(end: number): IToken[] {
    const first = this.waiting.findIndex(({ startOffset }) => startOffset >= end);
    return this.waiting.splice(0, first < 0 ? this.waiting.length : first);
  }

  private push(line: string, depth: number): void {
    this.lines.push('  '.repeat(depth) + line);
    this.atBeginning = false;
  }

  /** An empty line, where the text has one or more before `next`. */
  private printGap(next: number): void {
    const between = this.text.slice(this.reached, next).replace(/\r\n?/g, '\n');
    if (!this.atBeginning && /\n[^\S\n]*\n/.test(between)) this.lines.push('');
    this.reached = Math.max(this.reached, next);
  }

  /** A phrase, or a block written on one line, as one line; null where it does not fit. */
  private onOneLine(item: Item, depth: number): string | null {
    if (!item.body) return printPhrase(item.head, this.places);
    const line = this.joined(item);
    const isWrittenSo = item.body.length === 0 || item.first.startLine === item.last.startLine;
    const within = this.waiting.find(({ startOffset }) => startOffset > item.first.startOffset);
    const hasComments = within !== undefined && within.startOffset < item.last.startOffset;
    return isWrittenSo && !hasComments && 2 * depth + line.length <= lineWidth ? line : null;
  }

  private joined(item: Item): string {
    const head = printPhrase(item.head, this.places);
    if (!item.body) return head;
    const body = item.body.map((inner) => this.joined(inner));
    return body.length === 0 ? `${head} }` : `${head} ${body.join('  ')} }`;
  }

  private lastHeadEnd({ head, first }: Item): number {
    return endOf(head.at(-1) ?? first);
  }

  private isOnOwnLine({ startOffset }: IToken): boolean {
    let at = startOffset - 1;
    while (isSpace(this.text[at])) at -= 1;
    return at < 0 || isLineEnd(this.text[at]);
  }

  private endOfLine(offset: number): number {
    let at = offset;
    while (at < this.text.length && !isLineEnd(this.text[at])) at += 1;
    return at;
  }
}

const isLineEnd = (character: string | undefined): boolean => character === '\n' || character === '\r';

const isSpace = (character: string | undefined): boolean =>
  character !== undefined && !isLineEnd(character) && /\s/.test(character);
