/** What a change of the grid does to a length, in words. */
import type { PerTenth } from '../../lattice/laid-panel.ts';
import type { LengthUnit } from '../../design/design-model.ts';
import { changeFigure, changeStep } from '../../words/figures.ts';

/** "per 0.1 mm of pitch +0.06, of strip face −0.10"; empty where it is not known. */
export const perTenthText = (change: PerTenth | null | undefined, units: LengthUnit): string =>
  change
    ? `per ${changeStep(units)} of pitch ${changeFigure(change.pitchMm, units)}, of strip face ${changeFigure(change.faceMm, units)}`
    : '';
