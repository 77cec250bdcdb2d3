/** What our client asks of the language server and what it is told: names and plain shapes, beyond the standard protocol. */
import type { SourceRange } from '../../grammar/tree/source-range.ts';
import type { LengthUnit } from '../design/design-model.ts';
import type { Drawing } from '../drawing/drawing.ts';

export type { LengthUnit };

/** Request, client → server: `DrawingQuestion` in, `DrawingAnswer` or null (not open) out. */
export const drawingRequest = 'halflap/drawing';

/** Request, client → server: `FileQuestion` in, the bytes of the file in base 64 out; null where the view has no drawing. */
export const fileRequest = 'halflap/file';

/** Notification, server → client, after each new analysis: `AnalysedNotice`. */
export const analysedNotification = 'halflap/analysed';

/** Notification, server → client, when the blanks of an analysed text have been packed as well as can be: `AnalysedNotice`. */
export const packedNotification = 'halflap/packed';

/** Notification, server → client, while long work goes on: `ProgressNotice`. */
export const progressNotification = 'halflap/progress';

/** Notification, client → server: give up the long work on a text, `StopNotice`. */
export const stopNotification = 'halflap/stop';

export interface DrawingQuestion {
  readonly uri: string;
  /** Id of the view wanted; null, or an id that isn't there, gives the first view. */
  readonly view: string | null;
}

/** Forms of file that a view can be written in, at full size. */
export type DrawingForm = 'svg' | 'pdf';

export interface FileQuestion extends DrawingQuestion {
  readonly as: DrawingForm;
}

/** One way to look at the design. */
export interface PreviewView {
  readonly id: string;
  readonly label: string;
  /** Views with the same heading stand together. */
  readonly group: string;
}

/** One problem of the text, its line counted from zero. */
export interface PreviewProblem {
  readonly line: number;
  readonly message: string;
  readonly severity: 'error' | 'warning';
  /** Its words in the text that was drawn, which may be an earlier one: what was drawn from them is marked. */
  readonly drawn: SourceRange;
}

/** The view in rows and columns: all that the picture tells in figures. */
export interface PreviewTable {
  readonly caption: string;
  readonly columns: readonly { readonly title: string; readonly isFigure: boolean }[];
  readonly rows: readonly { readonly mark: string | null; readonly cells: readonly string[] }[];
}

/** What is told of one mark wherever it is pointed at. */
export interface MarkCard {
  readonly mark: string;
  readonly heading: string;
  readonly facts: readonly { readonly name: string; readonly value: string }[];
  /** The words it comes from: the file they stand in, and their offsets there. */
  readonly words: { readonly uri: string; readonly start: number; readonly end: number };
}

export interface DrawingAnswer {
  readonly uri: string;
  /** Version of the text that was analysed, as numbered by the editor. */
  readonly version: number;
  /** Units of the drawn text. */
  readonly units: LengthUnit;
  readonly views: readonly PreviewView[];
  readonly view: string | null;
  /** Null where the view is told in words and figures alone, or nothing could be drawn. */
  readonly drawing: Drawing | null;
  /** Lines of plain text that sum the view up. */
  readonly summary: readonly string[];
  readonly table: PreviewTable | null;
  readonly cards: readonly MarkCard[];
  /** True when the text has errors: the drawing is then the last good one, or what can be drawn despite them. */
  readonly stale: boolean;
  readonly problems: readonly PreviewProblem[];
}

export interface AnalysedNotice {
  readonly uri: string;
  readonly version: number;
}

export interface ProgressNotice {
  readonly uri: string;
  /** What is being worked on; null when it has ended. */
  readonly doing: string | null;
}

export interface StopNotice {
  readonly uri: string;
}

/** Request, client → server: `LibraryQuestion` in; out the text of that built-in library, null where there is none. */
export const libraryTextRequest = 'halflap/libraryText';

/** The address at which an editor shows a built-in library. */
export interface LibraryQuestion {
  readonly uri: string;
}
