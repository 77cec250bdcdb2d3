/** What passes between the editor side of a comparison and its page. */
import type { ComparisonState, CutChoice } from './comparison-state.ts';

export interface ShowReport {
  readonly type: 'show';
  readonly body: string;
  /** What rows are about that can be followed to their words, in each version. */
  readonly old: readonly string[];
  readonly new: readonly string[];
  /** What is wrong with the list of what is cut; null where nothing is. */
  readonly cutFault: string | null;
}

export type MessageToPage =
  | ShowReport
  /** What is compared, for the page to keep; `cutName` names the list of what is cut. */
  | { readonly type: 'state'; readonly state: ComparisonState; readonly cutName: string | null }
  /** Words in place of a report that cannot be made. */
  | { readonly type: 'fault'; readonly words: string };

export type MessageToEditor =
  | { readonly type: 'ready' }
  | { readonly type: 'reveal'; readonly side: 'old' | 'new'; readonly subject: string }
  /** A list of what is cut is chosen by the editor. */
  | { readonly type: 'cut'; readonly cut: Extract<CutChoice, string> | 'list' };
