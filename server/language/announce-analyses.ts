/**
 * Analyses texts unasked, stage by stage, and tells what was found. Between two stages the server hears what came
 * meanwhile: a newer version, or the wish to stop, leaves the rest undone.
 */
import type { AnalysedDocument, OpenDocuments } from './open-documents.ts';

/** Typing rests this long, in milliseconds, before a text is analysed unasked; a question analyses at once. */
const restBeforeAnalysis = 30;
/** Work that takes longer than this, in milliseconds, is told of. */
const quietTime = 500;

export interface AnalysisListener {
  analysed(document: AnalysedDocument): void;
  /** What is being done, null when it has ended. */
  progress(uri: string, doing: string | null): void;
  failed(uri: string, error: unknown): void;
}

export class AnalysisRounds {
  private readonly documents: OpenDocuments;
  private readonly listener: AnalysisListener;
  /** The latest round of each text: a timer before it has begun, then a sign that it goes on. */
  private readonly rounds = new Map<string, { readonly timer: NodeJS.Timeout }>();

  constructor(documents: OpenDocuments, listener: AnalysisListener) {
    this.documents = documents;
    this.listener = listener;
  }

  /** Begins a round when typing rests; an earlier one of the text goes no further. */
  beginSoon(uri: string): void {
    this.stop(uri);
    const round = { timer: setTimeout(() => void this.run(uri, round), restBeforeAnalysis) };
    this.rounds.set(uri, round);
  }

  /** Goes no further with the text. */
  stop(uri: string): void {
    clearTimeout(this.rounds.get(uri)?.timer);
    this.rounds.delete(uri);
  }

  private async run(uri: string, round: object): Promise<void> {
    const isLatest = (): boolean => this.rounds.get(uri) === round;
    const begun = performance.now();
    let isTold = false;
    try {
      for (let next = this.documents.advance(uri); next !== null; next = this.documents.advance(uri)) {
        if (performance.now() - begun > quietTime) {
          this.listener.progress(uri, `Analysing: ${next}`);
          isTold = true;
        }
        await new Promise((resume) => setImmediate(resume));
        if (!isLatest()) return;
      }
      const document = this.documents.latest(uri);
      if (document) this.listener.analysed(document);
    } catch (error) {
      this.listener.failed(uri, error);
    } finally {
      if (isTold) this.listener.progress(uri, null);
      if (isLatest()) this.rounds.delete(uri);
    }
  }
}
