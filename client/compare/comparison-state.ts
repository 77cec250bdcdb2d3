/** What a comparison is of: kept by its page over a reload of the window, and read back by any later version of ours. */

/** The other version: a revision that git has, or another file. */
export type EarlierChoice =
  | { readonly kind: 'revision'; readonly revision: string; readonly name: string }
  | { readonly kind: 'file'; readonly uri: string };

/** What of the other version is already cut: nothing that counts, all of it, or what the file at `uri` lists. */
export type CutChoice = 'nothing' | 'all' | { readonly uri: string };

export interface ComparisonState {
  /** The text that is compared. */
  readonly uri: string;
  readonly earlier: EarlierChoice;
  readonly cut: CutChoice;
}

/** How the two versions lie on the page. */
export type Look = 'both' | 'old' | 'new' | 'swipe';

export interface PageState extends ComparisonState {
  readonly look: Look;
  /** Per cent of the width that shows the old version while swiping. */
  readonly swipe: string;
}

/** What the editor kept of an earlier page, as far as it is what this version keeps; null without two sides. */
export function readComparison(kept: unknown): ComparisonState | null {
  if (typeof kept !== 'object' || kept === null) return null;
  const { uri, earlier, cut } = kept as Record<string, unknown>;
  const other = readEarlier(earlier);
  return typeof uri === 'string' && other ? { uri, earlier: other, cut: readCut(cut) } : null;
}

function readEarlier(kept: unknown): EarlierChoice | null {
  if (typeof kept !== 'object' || kept === null) return null;
  const { kind, revision, name, uri } = kept as Record<string, unknown>;
  if (kind === 'file' && typeof uri === 'string') return { kind, uri };
  if (kind !== 'revision' || typeof revision !== 'string') return null;
  return { kind, revision, name: typeof name === 'string' ? name : revision };
}

function readCut(kept: unknown): CutChoice {
  if (kept === 'all') return kept;
  if (typeof kept !== 'object' || kept === null) return 'nothing';
  const { uri } = kept as Record<string, unknown>;
  return typeof uri === 'string' ? { uri } : 'nothing';
}
