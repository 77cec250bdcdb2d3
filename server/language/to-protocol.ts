/** Our answers → the protocol's terms. */
import {
  type CodeAction,
  CodeActionKind,
  type CompletionItem,
  CompletionItemKind,
  type Diagnostic,
  DiagnosticSeverity,
  type DocumentHighlight,
  type DocumentSymbol,
  type FoldingRange,
  type Hover,
  type InlayHint,
  type Location,
  MarkupKind,
  type Range,
  type SemanticTokens,
  SemanticTokensBuilder,
  type SymbolInformation,
  SymbolKind,
  type TextEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver';
import type { Severity } from '../../grammar/problems/problem.ts';
import type { WrittenProblem } from '../words/write-words.ts';
import { lineColumnAt, type SourceRange } from '../../grammar/tree/source-range.ts';
import type { CountHint } from './features/inlay-hints.ts';
import { type NameToken, tokenModifiers, tokenTypes } from './features/semantic-tokens.ts';
import type { DeclarationKind } from './features/declarations.ts';
import type { OutlineEntry } from './features/document-outline.ts';
import type { HoverText } from './features/hover-text.ts';
import type { Proposal } from './features/proposal.ts';
import type { QuickFix } from './features/quick-fixes.ts';
import type { FileProposal } from './features/use-proposals.ts';
import type { AnalysedDocument, PlaceInFile } from './open-documents.ts';
import type { DeclarationInFile } from './workspace-symbols.ts';
import { documentName } from './workspace-files.ts';

type LineStarts = readonly number[];

const severities: Record<Severity, DiagnosticSeverity> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  information: DiagnosticSeverity.Information,
};

const symbolKinds: Record<DeclarationKind, SymbolKind> = {
  wood: SymbolKind.Constant,
  strip: SymbolKind.Constant,
  sheet: SymbolKind.Constant,
  resin: SymbolKind.Constant,
  finish: SymbolKind.Constant,
  bench: SymbolKind.Object,
  grid: SymbolKind.Struct,
  motif: SymbolKind.Class,
  outline: SymbolKind.Interface,
  panel: SymbolKind.Module,
  blank: SymbolKind.Array,
  band: SymbolKind.Array,
  pour: SymbolKind.Array,
  board: SymbolKind.Array,
  work: SymbolKind.Package,
  kit: SymbolKind.Package,
};

export function rangeOf(lineStarts: LineStarts, range: SourceRange): Range {
  const start = lineColumnAt(lineStarts, range.start);
  const end = lineColumnAt(lineStarts, range.end);
  return {
    start: { line: start.line, character: start.column },
    end: { line: end.line, character: end.column },
  };
}

/** A problem of `document`; its related places may stand in other files. */
export function diagnosticOf({ lineStarts, locate }: AnalysedDocument, problem: WrittenProblem): Diagnostic {
  const related = problem.related?.map((place) => ({
    location: locationOf(locate(place.range)),
    message: place.message,
  }));
  return {
    range: rangeOf(lineStarts, problem.range),
    severity: severities[problem.severity],
    code: problem.code,
    source: 'halflap',
    message: problem.message,
    ...(related ? { relatedInformation: related } : {}),
  };
}

export function hoverOf(lineStarts: LineStarts, { markdown, range }: HoverText): Hover {
  return { contents: { kind: MarkupKind.Markdown, value: markdown }, range: rangeOf(lineStarts, range) };
}

export function symbolOf(lineStarts: LineStarts, entry: OutlineEntry): DocumentSymbol {
  return {
    name: entry.name,
    detail: entry.detail,
    kind: symbolKinds[entry.kind],
    range: rangeOf(lineStarts, entry.range),
    selectionRange: rangeOf(lineStarts, entry.nameRange),
  };
}

export const symbolInFile = ({ kind, name, place }: DeclarationInFile): SymbolInformation => ({
  name,
  kind: symbolKinds[kind],
  location: locationOf(place),
  containerName: documentName(place.uri),
});

export function inlayHintOf(lineStarts: LineStarts, { at, label, meaning }: CountHint): InlayHint {
  const position = rangeOf(lineStarts, { start: at, end: at }).start;
  return { position, label, tooltip: meaning, paddingLeft: true };
}

/** Tokens stand on one line each, since names do. */
export function semanticTokensOf(lineStarts: LineStarts, tokens: readonly NameToken[]): SemanticTokens {
  const builder = new SemanticTokensBuilder();
  for (const { range, type, modifiers } of tokens) {
    const { line, column } = lineColumnAt(lineStarts, range.start);
    const bits = modifiers.reduce((sum, modifier) => sum + 2 ** tokenModifiers.indexOf(modifier), 0);
    builder.push(line, column, range.end - range.start, tokenTypes.indexOf(type), bits);
  }
  return builder.build();
}

export function locationOf({ uri, lineStarts, range }: PlaceInFile): Location {
  return { uri, range: rangeOf(lineStarts, range) };
}

export function highlightOf(lineStarts: LineStarts, range: SourceRange): DocumentHighlight {
  return { range: rangeOf(lineStarts, range) };
}

export function replacementOf(lineStarts: LineStarts, range: SourceRange, newText: string): TextEdit {
  return { range: rangeOf(lineStarts, range), newText };
}

/** The edits that put `newName` at every place, by document. */
export function renameOf(places: readonly PlaceInFile[], newName: string): WorkspaceEdit {
  const changes: Record<string, TextEdit[]> = {};
  for (const { uri, lineStarts, range } of places) {
    (changes[uri] ??= []).push(replacementOf(lineStarts, range, newName));
  }
  return { changes };
}

/** Folds from the line a block opens on to the line before its last. */
export function foldOf(lineStarts: LineStarts, range: SourceRange): FoldingRange | null {
  const startLine = lineColumnAt(lineStarts, range.start).line;
  const endLine = lineColumnAt(lineStarts, range.end).line - 1;
  return endLine > startLine ? { startLine, endLine } : null;
}

export function completionOf(proposal: Proposal): CompletionItem {
  const kind = proposal.kind === 'word' ? CompletionItemKind.Keyword : CompletionItemKind.Reference;
  const { label, detail, meaning } = proposal;
  return { label, kind, ...(detail && { detail }), ...(meaning && { documentation: meaning }) };
}

export function fileCompletionOf(lineStarts: LineStarts, { path, range }: FileProposal): CompletionItem {
  return { label: path, kind: CompletionItemKind.File, textEdit: replacementOf(lineStarts, range, path) };
}

export function codeActionOf(document: AnalysedDocument, { title, problem, newText }: QuickFix): CodeAction {
  const { uri, lineStarts } = document;
  return {
    title,
    kind: CodeActionKind.QuickFix,
    diagnostics: [diagnosticOf(document, problem)],
    isPreferred: true,
    edit: { changes: { [uri]: [replacementOf(lineStarts, problem.range, newText)] } },
  };
}
