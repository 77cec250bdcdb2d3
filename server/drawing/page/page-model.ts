/** A page as plain data, before any file format: lines, areas and texts in paper millimetres, y down from the upper left corner. */
import type { Point } from '../../geometry/point.ts';

/** How a line or an area is inked; colours as #rrggbb, widths and dashes in millimetres. */
export interface Look {
  readonly fill: string | null;
  /** How much of what lies under it the fill hides, in (0, 1]; all of it where nothing is said. */
  readonly opacity?: number;
  readonly stroke: string | null;
  readonly width: number;
  /** Drawn and left out by turns; empty for an unbroken line. */
  readonly dash: readonly number[];
}

/** Lines by what they mean, and areas likewise; a palette says how each is inked. */
export type LineKind = 'edge' | 'hidden' | 'axis' | 'thin' | 'guide' | 'outline' | 'rule' | 'fold';
export type AreaKind = 'wood' | 'bare' | 'cut' | 'box' | 'arrow' | 'cutCell' | 'waste' | 'panel';
export type LookName = LineKind | AreaKind;

export interface Palette {
  readonly looks: Readonly<Record<LookName, Look>>;
  /** Colours of letters: the plain, the stepped back, the stressed. */
  readonly letters: {
    readonly plain: string;
    readonly quiet: string;
    readonly accent: string;
    /** On a filled area. */
    readonly reversed: string;
  };
}

/** One step of a path: to a place without a line, along a line, along a cubic curve, back to the start. */
export type PathStep =
  | readonly ['M', number, number]
  | readonly ['L', number, number]
  | readonly ['C', number, number, number, number, number, number]
  | readonly ['Z'];

/** What an item stands for, for readers of the file: written as data- attributes where the format has them. */
export type Facts = Readonly<Record<string, string | number>>;

export interface PathItem {
  readonly kind: 'path';
  readonly look: LookName | Look;
  readonly steps: readonly PathStep[];
  readonly facts: Facts;
}

export interface TextLook {
  readonly size: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Any of: halo, quiet, strong, accent, reversed; parted by spaces. */
  readonly look?: string;
  /** Degrees counter-clockwise as seen on the page. */
  readonly turn?: number;
}

/** A line of text whose base line begins, is centred or ends at `at`. */
export interface TextItem extends TextLook {
  readonly kind: 'text';
  readonly text: string;
  readonly at: Point;
}

/** Items that belong together. */
export interface GroupItem {
  readonly kind: 'group';
  readonly name: string;
  readonly facts: Facts;
  readonly items: readonly PageItem[];
  /** Nothing of the items is seen outside this ring. */
  readonly clip: readonly Point[] | null;
}

export type PageItem = PathItem | TextItem | GroupItem;

export interface Page {
  readonly width: number;
  readonly height: number;
  /** What the page is, in a few words. */
  readonly title: string;
  readonly items: readonly PageItem[];
}

export interface PageFile {
  readonly title: string;
  /** Said to readers that can't see the page. */
  readonly summary: string;
  readonly palette: Palette;
  readonly pages: readonly Page[];
}

/** Every path and text of `items`, groups opened. */
export function* flatItems(items: readonly PageItem[]): Generator<PathItem | TextItem> {
  for (const item of items) {
    if (item.kind === 'group') yield* flatItems(item.items);
    else yield item;
  }
}

export const saysOf = ({ look = '' }: TextLook, word: 'halo' | 'quiet' | 'strong' | 'accent' | 'reversed'): boolean =>
  look.split(' ').includes(word);
