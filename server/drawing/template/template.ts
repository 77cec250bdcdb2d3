/** What is drawn to cut and to register by, as plain data. Millimetres, y up. */
import type { LengthUnit } from '../../design/design-model.ts';
import type { Contour } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import type { Bounds } from '../../geometry/polygons.ts';
import type { Polygon } from '../../lattice/laid-panel.ts';

/**
 * finished: the edge of the work. sand: where sanding stops and bands begin. saw: where the saw runs. caul: the face that
 * presses a band. cleat, spacer: the boards a work hangs on and leans against.
 */
export type TemplateLineKind = 'finished' | 'sand' | 'saw' | 'caul' | 'cleat' | 'spacer';

export interface TemplateLine {
  readonly kind: TemplateLineKind;
  readonly contours: readonly Contour[];
}

/** A place to lay the template by: a numbered node of the lattice, the pivot of a trammel, a hole to drill. */
export interface RegisterMark {
  readonly label: string;
  readonly at: Point;
}

/** A place to take care at, and what is the matter there. */
export interface TemplateSpot {
  readonly at: Point;
  readonly text: string;
}

export interface Template {
  /** As it stands in the file. */
  readonly name: string;
  /** In words: "panel blade". */
  readonly heading: string;
  readonly seenFrom: 'front' | 'back';
  /** What its words are in. */
  readonly units: LengthUnit;
  /** From the outermost inwards; a line that falls on another is left out. */
  readonly lines: readonly TemplateLine[];
  /** Stretches of the finished line along which the panel is fitted to another part, as open chains. */
  readonly scribe: readonly (readonly Point[])[];
  /** Centre lines of the strips, a little beyond the outermost line. */
  readonly axes: readonly (readonly [from: Point, to: Point])[];
  readonly marks: readonly RegisterMark[];
  readonly spots: readonly TemplateSpot[];
  /** Everything inside the outermost line: what has to be on some sheet. */
  readonly ground: readonly Polygon[];
  readonly bounds: Bounds;
  /** The design's title, its file and the state of its text. */
  readonly origin: string;
  /** Pitch, face and kerf that are taken as given, and how far the lines lie apart. */
  readonly assumptions: readonly string[];
  /** How it is laid and used, where that needs saying. */
  readonly use: string | null;
  /** One thing to check in a minute. */
  readonly check: string;
}

/** What a line is called on paper. */
export const lineNames: Readonly<Record<TemplateLineKind, string>> = {
  finished: 'finished line',
  sand: 'sand line',
  saw: 'saw line',
  caul: 'caul line',
  cleat: 'cleat',
  spacer: 'spacer',
};
