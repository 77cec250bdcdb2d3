/** One setting of one tool. Lengths mm, angles degrees. */
import type { StepName } from '../../design/names/step-names.ts';
import type { CutEnd } from './infill-settings.ts';

export interface Setting {
  /** From 1, through all steps. */
  readonly order: number;
  readonly step: StepName;
  readonly tool: string;
  /** Name of the jig; null where the tool needs none. */
  readonly jig: string | null;
  readonly angle: number | null;
  /** From the stop to the tool: blade, or toe of the jig's slope. */
  readonly stopMm: number | null;
  /** What the caliper must read after the cut; it goes before `stopMm`. */
  readonly caliperMm: number | null;
  /** Turn each piece over and cut again at the same setting. */
  readonly flip: boolean;
  readonly marks: readonly string[];
  /** Which ends of which marks are cut; infill only. */
  readonly ends: readonly CutEnd[];
  /** How many strips or pieces pass this setting, spares counted in. */
  readonly pieces: number;
  /** What must be right before the next step; on the last setting of a step. */
  readonly gate: string | null;
  /** Notching only. */
  readonly notching: NotchSetting | null;
}

/** What a row of equal notches asks of the saw. */
export interface NotchSetting {
  /** Face that lies on the saw's table. */
  readonly from: 'above' | 'below';
  /** From the strip's end to the near side of the first notch, along the strip. */
  readonly firstStopMm: number;
  /** From notch to notch along the fence; null for a single notch. */
  readonly pinPitchMm: number | null;
  /** The same square to the blade. */
  readonly pinSquareMm: number | null;
  readonly notches: number;
  readonly notchWidthMm: number;
  readonly bladeHeightMm: number;
  /** Pushes over the blade for all strips; null while the kerf is not stated. */
  readonly passes: number | null;
}

/** How the order of one step's settings was found. */
export interface StepChanges {
  readonly step: StepName;
  /** Changes between the settings, weighed as the step says; setting up for the first not counted. */
  readonly changes: number;
  /** No order of these settings needs fewer. */
  readonly bound: number;
  readonly proven: boolean;
}
