/**
 * What changed from one version of a design to another: the contract of `compare --as json`. Lengths mm, angles
 * degrees, areas mm². Everything in it has a mirror image: with the versions exchanged, `new` and `gone` change
 * places, and so do `old` and `new` figures. Only what differs is listed.
 */

import type { LengthUnit } from '../design/design-model.ts';
import type { ReusePlan } from './reuse-plan.ts';

/** Any figure of a plan, as JSON holds it. */
export type Plain = string | number | boolean | null | Plain[] | { [key: string]: Plain };

export interface ComparedVersion {
  /** As the person named it: a file, or a revision and a path. */
  source: string;
  title: string | null;
  revision: string;
  /** Those of its file; a change is told in those of the new version. */
  units: LengthUnit;
  /** Of its prices; null where nothing is priced. */
  currency: string | null;
  incomplete: boolean;
  /** What errors kept out of the comparison, in words; empty for a sound file. */
  missing: string[];
}

/** One figure, or one whole item of a list; `path` leads to it by keys and by the items' names. */
export interface FieldChange {
  change: 'changed' | 'new' | 'gone' | 'renamed';
  path: string[];
  old: Plain;
  new: Plain;
}

/** Shapes of a panel's drawing: strips, pieces and outlines that lie where they lay, and those that do not. */
export interface DrawnChange {
  same: number;
  onlyOld: number;
  onlyNew: number;
}

export interface PanelChange {
  change: 'changed' | 'new' | 'gone';
  /** Names in the two versions; they differ where a panel was renamed. */
  oldName: string | null;
  newName: string | null;
  fields: FieldChange[];
  /** Null unless both versions of the panel could be laid out. */
  drawn: DrawnChange | null;
}

/** A kind of piece or strip in one version. */
export interface KindBrief {
  mark: string;
  /** Motif and piece, or grid and family, it serves. */
  roles: string[];
  stock: string;
  face: number;
  depth: number;
  lengthMm: number;
  /** What stands on its ends, such as "60/60, 30/30"; null for strips and for fitted ends. */
  bevels: string | null;
  make: number;
  total: number;
}

export type KindAspect =
  'length' | 'bevels' | 'outline' | 'notches' | 'hand' | 'section' | 'stock' | 'role' | 'panels' | 'count' | 'mark';

export interface KindChange {
  change: 'changed' | 'new' | 'gone';
  aspects: KindAspect[];
  /** New length less old, null unless there are both. */
  longerByMm: number | null;
  /** More (or fewer) to cut, spares included. */
  more: number;
  old: KindBrief | null;
  new: KindBrief | null;
}

export interface KindChanges {
  /** Kinds in which nothing changed. */
  same: number;
  changes: KindChange[];
}

/** A setting of a tool that is made in one version only, or with other figures. */
export interface SettingChange {
  change: 'changed' | 'new' | 'gone';
  step: string;
  tool: string;
  angle: number | null;
  oldStopMm: number | null;
  newStopMm: number | null;
  /** Pin to notch, of rows of notches set by a pin. */
  oldPinMm: number | null;
  newPinMm: number | null;
  oldPieces: number;
  newPieces: number;
}

export interface StockFigures {
  sticks: number;
  /** Sticks by length, such as "600" → 4. */
  byLength: Record<string, number>;
  needMm: number;
  cost: number | null;
}

export interface StockChange {
  change: 'changed' | 'new' | 'gone';
  stock: string;
  /** More sticks to buy, or fewer. */
  more: number;
  old: StockFigures | null;
  new: StockFigures | null;
}

export type ObjectSort = 'blank' | 'band' | 'pour' | 'board';

/** One figure of an object that differs, null in a version that does not have it. */
export interface ObjectFact {
  what: string;
  unit: 'mm' | 'mm²' | 'mL' | 'g' | null;
  old: string | number | null;
  new: string | number | null;
}

/** A blank, band, pour or board; names differ where it was renamed. */
export interface ObjectChange {
  sort: ObjectSort;
  change: 'changed' | 'new' | 'gone';
  oldName: string | null;
  newName: string | null;
  facts: ObjectFact[];
}

/** Changes of one further section of the plan, under the section's key. */
export interface SectionChange {
  section: string;
  fields: FieldChange[];
}

export interface DesignChange {
  schema: 'halflap-change/1';
  old: ComparedVersion;
  new: ComparedVersion;
  /** True when nothing below differs. */
  same: boolean;
  panels: PanelChange[];
  pieces: KindChanges;
  strips: KindChanges;
  settings: SettingChange[];
  stock: StockChange[];
  objects: ObjectChange[];
  sections: SectionChange[];
}

/** What `compare --as json` writes: the change, and what serves of pieces already cut where that was asked. */
export interface WrittenChange extends DesignChange {
  reuse: ReusePlan | null;
}
