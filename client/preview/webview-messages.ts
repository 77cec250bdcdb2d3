/** What passes between the editor side of the preview and its page, and what the page remembers over a reload. */
import type { DrawingAnswer, DrawingForm, MarkCard } from '../../server/language/preview-messages.ts';

export type MessageToPage =
  | { readonly type: 'show'; readonly answer: DrawingAnswer }
  /** Where the cursor stands in the text, as an offset. */
  | { readonly type: 'cursor'; readonly offset: number }
  /** What is being worked on, null when it has ended. */
  | { readonly type: 'progress'; readonly doing: string | null }
  /** Whether the preview stays with its file. */
  | { readonly type: 'locked'; readonly locked: boolean };

export type MessageToEditor =
  | { readonly type: 'ready' }
  | { readonly type: 'chooseView'; readonly view: string }
  /** The words of a piece, asked for by a click or Enter. */
  | { readonly type: 'reveal'; readonly words: MarkCard['words'] }
  | { readonly type: 'stop' }
  | { readonly type: 'lock'; readonly locked: boolean }
  /** The drawing as a file at full size, which the editor side asks the server for. */
  | { readonly type: 'save'; readonly as: DrawingForm }
  /** A picture made by the page: a PNG file in base 64. */
  | { readonly type: 'savePicture'; readonly png: string }
  /** Words for the person, where the page could not do what was asked. */
  | { readonly type: 'tell'; readonly words: string };

/** How the page looks at the drawing: pixels a millimetre, and the point of the drawing at the middle of the page. */
export interface Camera {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export interface PageState {
  readonly uri: string;
  readonly locked: boolean;
  /** Id of the view. */
  readonly view: string | null;
  /** Null while the whole drawing is fitted to the page. */
  readonly camera: Camera | null;
  /** Mark that is selected. */
  readonly selected: string | null;
  /** Names of the layers that are switched off. */
  readonly hidden: readonly string[];
  /** Whether the table stands in the place of the picture. */
  readonly tabled: boolean;
}

/** What VS Code kept of an earlier page, as far as it is what this version keeps; null without a text to show. */
export function readPageState(kept: unknown): PageState | null {
  if (typeof kept !== 'object' || kept === null) return null;
  const { uri, locked, view, camera, selected, hidden, tabled } = kept as Record<string, unknown>;
  if (typeof uri !== 'string') return null;
  return {
    uri,
    locked: locked === true,
    view: textOrNull(view),
    camera: readCamera(camera),
    selected: textOrNull(selected),
    hidden: Array.isArray(hidden) ? hidden.filter((name) => typeof name === 'string') : [],
    tabled: tabled === true,
  };
}

const textOrNull = (kept: unknown): string | null => (typeof kept === 'string' ? kept : null);

function readCamera(kept: unknown): Camera | null {
  if (typeof kept !== 'object' || kept === null) return null;
  const { scale, x, y } = kept as Record<string, unknown>;
  const sound = [scale, x, y].every((value) => Number.isFinite(value)) && Number(scale) > 0;
  return sound ? { scale: Number(scale), x: Number(x), y: Number(y) } : null;
}
