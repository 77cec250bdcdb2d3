/** The texts open in the editor, each analysed at most once a version: only the latest version is ever analysed. */
import { lineStartsOf } from '../../grammar/source-range.ts';
import type { Analysis } from '../analyse.ts';

/** One version of an open text with what was found in it. */
export interface AnalysedDocument {
  readonly uri: string;
  readonly version: number;
  readonly text: string;
  /** Offsets at which the lines begin. */
  readonly lineStarts: readonly number[];
  readonly analysis: Analysis;
  /** The latest analysis without an error, of this version or an earlier one. */
  readonly lastSound: Analysis | null;
}

interface Entry {
  version: number;
  text: string;
  analysed: AnalysedDocument | null;
}

export class OpenDocuments {
  private readonly entries = new Map<string, Entry>();
  private readonly analyse: (text: string) => Analysis;

  constructor(analyse: (text: string) => Analysis) {
    this.analyse = analyse;
  }

  /** Takes a new version, unread until somebody asks for it. */
  put(uri: string, version: number, text: string): void {
    const entry = this.entries.get(uri);
    if (entry) Object.assign(entry, { version, text });
    else this.entries.set(uri, { version, text, analysed: null });
  }

  close(uri: string): void {
    this.entries.delete(uri);
  }

  /** The latest version of a text, analysed now if it wasn't yet; null when it isn't open. */
  latest(uri: string): AnalysedDocument | null {
    const entry = this.entries.get(uri);
    if (!entry) return null;
    if (entry.analysed?.version !== entry.version) entry.analysed = this.read(uri, entry);
    return entry.analysed;
  }

  private read(uri: string, { version, text, analysed }: Entry): AnalysedDocument {
    const analysis = this.analyse(text);
    const lastSound = analysis.incomplete ? (analysed?.lastSound ?? null) : analysis;
    return { uri, version, text, lineStarts: lineStartsOf(text), analysis, lastSound };
  }
}
