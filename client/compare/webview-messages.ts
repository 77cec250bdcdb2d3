/** What passes between the editor side of a comparison and its page. */

export interface ShowReport {
  readonly type: 'show';
  readonly body: string;
  /** What rows are about that can be followed to their words, in each version. */
  readonly old: readonly string[];
  readonly new: readonly string[];
}

export type MessageToEditor =
  { readonly type: 'ready' } | { readonly type: 'reveal'; readonly side: 'old' | 'new'; readonly subject: string };
