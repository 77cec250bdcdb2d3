/** Resin and hardener of a mix. Volumes mL, masses g. */
import type { ResinStock } from '../../design/material-model.ts';
import { arithmeticTolerance } from '../../geometry/tolerance.ts';

/** One part of a mix; a figure is null where only the parts' densities could tell it, and they are not stated. */
export interface MixedPart {
  readonly millilitres: number | null;
  readonly grams: number | null;
}

/** What `volume` of mixed resin takes: its mix by volume or by mass, weighed or measured by the parts' densities. */
export function mixedParts(volume: number, { density, mix, partDensities }: ResinStock): [a: MixedPart, b: MixedPart] {
  const part = (share: number, own: number | null): MixedPart => {
    if (mix.by === 'volume') {
      const millilitres = volume * share;
      return { millilitres, grams: own === null ? null : millilitres * own };
    }
    const grams = volume * density * share;
    return { millilitres: own === null ? null : grams / own, grams };
  };
  const whole = mix.a + mix.b;
  return [part(mix.a / whole, partDensities?.a ?? null), part(mix.b / whole, partDensities?.b ?? null)];
}

/** Cups of no more than the size that may be mixed at once. */
export const mixesFor = (volume: number, { mixSize }: ResinStock): number =>
  volume <= 0 ? 0 : mixSize === null ? 1 : Math.ceil(volume / mixSize - arithmeticTolerance);
