/** What the view of a comparison asks of the language server and is told: names and plain shapes, beyond the standard protocol. */
import type { Range } from 'vscode-languageserver';

/** Request, client → server: `CompareQuestion` in, `CompareAnswer` or null (not open) out. */
export const compareRequest = 'halflap/compare';

/** Notification, client → server: `CommittedText`, whenever what git keeps of an open text is known or changes. */
export const committedTextNotification = 'halflap/committedText';

/** Command of the editor that the lenses call, with the text's address. */
export const compareWithCommitCommand = 'halflap.compareWithLastCommit';

/** An earlier (or any other) version that an open text is compared with. */
export interface EarlierVersion {
  /** As the view names it, such as "disc.lap, last commit". */
  readonly name: string;
  /** Address of a document that shows it. */
  readonly uri: string;
  readonly text: string;
}

/** What of the earlier version is already cut: nothing that counts, all of it, or the text of a list (CSV or JSON). */
export type AlreadyCut = 'nothing' | 'all' | { readonly name: string; readonly list: string };

export interface CompareQuestion {
  readonly uri: string;
  readonly earlier: EarlierVersion;
  readonly cut: AlreadyCut;
}

/** Where the words of a row's subject stand. */
export interface ComparePlace {
  readonly uri: string;
  readonly range: Range;
}

export interface CompareAnswer {
  readonly uri: string;
  readonly version: number;
  /** Markup of the report with its overlay: made by us, every text of the person's in it escaped. */
  readonly body: string;
  /** What is wrong with the list of what is cut, null where nothing is. */
  readonly cutFault: string | null;
  /** By what a row is about, such as "piece A1", in each version. */
  readonly places: {
    readonly old: Readonly<Record<string, ComparePlace>>;
    readonly new: Readonly<Record<string, ComparePlace>>;
  };
}

export interface CommittedText {
  readonly uri: string;
  /** Null where git keeps none. */
  readonly text: string | null;
}
