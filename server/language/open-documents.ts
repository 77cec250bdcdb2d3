/** The texts open in the editor, each analysed at most once a version: a newer version leaves what is left of an older one undone. */
import type { SourceRange } from '../../grammar/tree/source-range.ts';
import { lineStartsOf, rangeInFile } from '../../grammar/tree/source-range.ts';
import type { Analysis } from '../analyse.ts';
import { fileAt, type SourceFiles, type SourcePlace } from '../design/files/source-file.ts';
import { lastOf } from '../shop/stages.ts';
import { plainAddress, WorkspaceFiles } from './workspace-files.ts';

/** Words of some file: the address of the document, its line starts, and the range in it. */
export interface PlaceInFile {
  readonly uri: string;
  readonly lineStarts: readonly number[];
  readonly range: SourceRange;
}

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
  /** Where a range of the analysis stands: in this text or in a file it uses. */
  readonly locate: (range: SourceRange) => PlaceInFile;
}

/** A text with its address and where it stands. */
export interface PlacedText {
  readonly uri: string;
  readonly text: string;
  readonly place: SourcePlace;
}

/** Analyses a text in stages, each told in words before it is done. */
export type Engine = (text: string, place: SourcePlace) => Generator<string, Analysis>;

interface Entry {
  readonly uri: string;
  version: number;
  text: string;
  analysed: AnalysedDocument | null;
  /** The stages of its version that are still to come, null where none was begun. */
  running: ReturnType<Engine> | null;
  /** True when a file it uses has changed since it was analysed. */
  isStale: boolean;
  /** Addresses of the files that the last analysis asked for. */
  asked: ReadonlySet<string>;
}

/** Whether what was found is of an earlier version, or of other files. */
const isBehind = ({ isStale, analysed, version }: Entry): boolean => isStale || analysed?.version !== version;

export class OpenDocuments {
  readonly workspace = new WorkspaceFiles((address) => this.entries.get(address)?.text ?? null);
  /** By their plain addresses. */
  private readonly entries = new Map<string, Entry>();
  private readonly analyse: Engine;

  constructor(analyse: Engine) {
    this.analyse = analyse;
  }

  /** Takes a new version, unread until somebody asks for it. */
  put(uri: string, version: number, text: string): void {
    const entry = this.entries.get(plainAddress(uri));
    if (entry) Object.assign(entry, { version, text, running: null });
    else {
      const unread = { analysed: null, running: null, isStale: false, asked: new Set<string>() };
      this.entries.set(plainAddress(uri), { uri, version, text, ...unread });
    }
  }

  close(uri: string): void {
    this.entries.delete(plainAddress(uri));
  }

  /** Marks the open texts that use the file at `uri`, or asked for it in vain, and gives their addresses. */
  fileChanged(uri: string): string[] {
    const address = plainAddress(uri);
    const users = [...this.entries.values()].filter(({ asked }) => asked.has(address));
    for (const user of users) Object.assign(user, { isStale: true, running: null });
    return users.map((user) => user.uri);
  }

  /** The latest version of a text, analysed now if it wasn't yet; null when it isn't open. */
  latest(uri: string): AnalysedDocument | null {
    const entry = this.entries.get(plainAddress(uri));
    if (!entry) return null;
    if (isBehind(entry)) entry.analysed = this.analysedAs(entry, lastOf(this.stagesOf(entry)));
    return entry.analysed;
  }

  /** Does the next stage of the latest version, and tells what comes after it; null when there is nothing left to do. */
  advance(uri: string): string | null {
    const entry = this.entries.get(plainAddress(uri));
    if (!entry || !isBehind(entry)) return null;
    const stage = this.stagesOf(entry).next();
    if (stage.done !== true) return stage.value;
    entry.analysed = this.analysedAs(entry, stage.value);
    return null;
  }

  /** Takes `better` in place of `present`, wherever that is kept for the text at `uri`; gives the document it is now of, null where it was not kept. */
  replace(uri: string, present: Analysis, better: Analysis): AnalysedDocument | null {
    const entry = this.entries.get(plainAddress(uri));
    const analysed = entry?.analysed;
    if (!analysed || ![analysed.analysis, analysed.lastSound].includes(present)) return null;
    const renewed = (analysis: Analysis): Analysis => (analysis === present ? better : analysis);
    const lastSound = analysed.lastSound && renewed(analysed.lastSound);
    entry.analysed = { ...analysed, analysis: renewed(analysed.analysis), lastSound };
    return entry.analysed;
  }

  /** The stages that are left of the analysis, begun now if it was not yet. */
  private stagesOf(entry: Entry): ReturnType<Engine> {
    if (entry.running) return entry.running;
    const asked = new Set<string>();
    const place = this.workspace.placeOf(entry.uri, (address) => asked.add(address));
    entry.asked = asked;
    entry.running = this.analyse(entry.text, place);
    return entry.running;
  }

  private analysedAs(entry: Entry, analysis: Analysis): AnalysedDocument {
    const { uri, version, text, analysed } = entry;
    Object.assign(entry, { running: null, isStale: false });
    const lastSound = analysis.incomplete ? (analysed?.lastSound ?? null) : analysis;
    const locate = this.locator(uri, analysis.files);
    return { uri, version, text, lineStarts: lineStartsOf(text), analysis, lastSound, locate };
  }

  /** Tells where the ranges of `files`, the first of them the text at `uri`, stand. */
  locator(uri: string, files: SourceFiles): (range: SourceRange) => PlaceInFile {
    return (range) => {
      const file = fileAt(files, range.start) ?? files[0];
      return {
        uri: file.number === 0 ? uri : this.addressOf(file.path, uri),
        lineStarts: lineStartsOf(file.text),
        range: rangeInFile(range),
      };
    };
  }

  /** All texts of the workspace folder of `uri`, open ones as they are now. */
  readers(uri: string): PlacedText[] {
    return this.texts(this.workspace.filesBeside(uri));
  }

  /** All texts of all workspace folders. */
  everyReader(): PlacedText[] {
    return this.texts(this.workspace.files());
  }

  /** The open texts and those at these addresses. */
  private texts(addresses: readonly string[]): PlacedText[] {
    const open = [...this.entries.values()];
    const closed = addresses
      .filter((address) => !this.entries.has(address))
      .flatMap((address) => {
        const text = this.workspace.textAt(address);
        return text === null ? [] : [{ uri: address, text }];
      });
    return [...open, ...closed].map((each) => ({
      uri: each.uri,
      text: each.text,
      place: this.workspace.placeOf(each.uri, () => undefined),
    }));
  }

  /** The address of a used file, as the editor writes it where it has the file open. */
  private addressOf(path: string, uri: string): string {
    const address = this.workspace.addressOf(path, uri);
    return this.entries.get(address)?.uri ?? address;
  }
}
