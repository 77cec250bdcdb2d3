/** What passes between the editor side of the preview and its page, and what the page remembers over a reload. */
import type { DrawingAnswer } from '../../server/language/preview-messages.ts';

export type MessageToPage =
  | { readonly type: 'show'; readonly answer: DrawingAnswer }
  /** Where the cursor stands in the text, as an offset. */
  | { readonly type: 'cursor'; readonly offset: number };

export type MessageToEditor =
  | { readonly type: 'ready' }
  | { readonly type: 'choosePanel'; readonly panel: string }
  /** The words of a piece, asked for by double click or Enter. */
  | { readonly type: 'reveal'; readonly start: number; readonly end: number };

/** How the page looks at the drawing: pixels a millimetre, and the point of the panel at the middle of the page. */
export interface View {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export interface PageState {
  readonly uri: string;
  readonly panel: string | null;
  /** Null while the whole panel is fitted to the page. */
  readonly view: View | null;
}

/** What VS Code kept of an earlier page, when it is what this version keeps; else null. */
export function readPageState(kept: unknown): PageState | null {
  if (typeof kept !== 'object' || kept === null) return null;
  const { uri, panel, view } = kept as Record<string, unknown>;
  if (typeof uri !== 'string') return null;
  return { uri, panel: typeof panel === 'string' ? panel : null, view: readView(view) };
}

function readView(kept: unknown): View | null {
  if (typeof kept !== 'object' || kept === null) return null;
  const { scale, x, y } = kept as Record<string, unknown>;
  const sound = [scale, x, y].every((value) => Number.isFinite(value)) && Number(scale) > 0;
  return sound ? { scale: Number(scale), x: Number(x), y: Number(y) } : null;
}
