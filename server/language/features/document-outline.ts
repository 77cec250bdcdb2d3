/** The declarations as the editor's outline lists them, each with its size in a few words. */
import { counted } from '../../../grammar/words.ts';
import type { Analysis } from '../../analyse.ts';
import { type DeclarationKind, declarationsOf } from './declarations.ts';
import { panelTally } from './tally.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';

export interface OutlineEntry {
  readonly name: string;
  readonly kind: DeclarationKind;
  readonly detail: string;
  readonly range: SourceRange;
  readonly nameRange: SourceRange;
}

export function documentOutline(analysis: Analysis): OutlineEntry[] {
  return declarationsOf(analysis.design).map(({ kind, named }) => ({
    name: named.name,
    kind,
    detail: kind === 'panel' ? panelDetail(analysis, named.name) : kind,
    range: named.range,
    nameRange: named.nameRange,
  }));
}

function panelDetail(analysis: Analysis, name: string): string {
  const laid = analysis.panels.find(({ panel }) => panel.name === name);
  if (!laid) return 'panel, not laid out';
  const { make, strips } = panelTally(laid);
  return `panel, ${counted(make, 'piece')}, ${counted(strips, 'strip')} a copy`;
}
