/** What our client asks of the language server and what it is told: names and plain shapes, beyond the standard protocol. */
import type { Drawing } from '../drawing/drawing.ts';

/** Request, client → server: `DrawingQuestion` in, `DrawingAnswer` or null (not open) out. */
export const drawingRequest = 'halflap/drawing';

/** Notification, server → client, after each new analysis: `AnalysedNotice`. */
export const analysedNotification = 'halflap/analysed';

export interface DrawingQuestion {
  readonly uri: string;
  /** Name of the panel wanted; null, or a name that isn't there, gives the first panel. */
  readonly panel: string | null;
}

/** One error of the text, its line counted from zero. */
export interface PreviewError {
  readonly line: number;
  readonly message: string;
}

export interface DrawingAnswer {
  readonly uri: string;
  /** Version of the text that was analysed, as numbered by the editor. */
  readonly version: number;
  /** Panels to choose from, in the order of the file. */
  readonly panels: readonly string[];
  readonly panel: string | null;
  /** Null where nothing can be drawn and nothing could be drawn before. */
  readonly drawing: Drawing | null;
  /** True when the text has errors: the drawing is then the last good one, or what can be drawn despite them. */
  readonly stale: boolean;
  readonly errors: readonly PreviewError[];
}

export interface AnalysedNotice {
  readonly uri: string;
  readonly version: number;
}

/** Request, client → server: `LibraryQuestion` in; out the text of that built-in library, null where there is none. */
export const libraryTextRequest = 'halflap/libraryText';

/** The address at which an editor shows a built-in library. */
export interface LibraryQuestion {
  readonly uri: string;
}
