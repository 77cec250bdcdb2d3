/** Everything a design pours: bodies in moulds of their own, and lattice blanks. Lengths mm. */
import type { Design } from '../../design/design.ts';
import type { ResinStock } from '../../design/material-model.ts';
import type { Blank, Pour, PourLayer } from '../../design/work-model.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import { contentOfBlank, contentOfMould, type MouldContent } from './mould-content.ts';

/** A blank with its lattice: one laid panel for each way in which blanks are filled, its quantity the number of such blanks. */
export interface LaidBlank {
  readonly blank: Blank;
  readonly laid: readonly LaidPanel[];
}

export interface Casting {
  readonly name: string;
  readonly kind: 'body' | 'blank';
  readonly resin: ResinStock;
  readonly layers: readonly PourLayer[];
  /** Poured on top of the layers, and planed away: what stands over and what surfacing takes off both faces. */
  readonly above: number;
  /** mL/m². */
  readonly sealCoat: number;
  readonly waste: number;
  readonly spare: number;
  readonly contents: readonly MouldContent[];
}

export function castingsOf(design: Design, blanks: readonly LaidBlank[]): Casting[] {
  const poured = design.pours.map((pour) => castingOfPour(pour, design, blanks));
  const filled = design.pours.flatMap(({ mould }) => (mould.kind === 'blank' ? [mould.blank.name] : []));
  const cast = design.blanks.flatMap((blank): Casting[] => {
    if (!blank.cast || filled.includes(blank.name)) return [];
    const { depth, surfaced, overfill, resin } = blank.cast;
    return [
      {
        ...{ name: blank.name, kind: 'blank', resin, sealCoat: 0, waste: 0, spare: 0 },
        layers: [{ colour: null, depth }],
        above: overfill + 2 * surfaced,
        contents: contentsOf(blank, design, blanks),
      },
    ];
  });
  return [...cast, ...poured];
}

function castingOfPour(pour: Pour, design: Design, blanks: readonly LaidBlank[]): Casting {
  const { name, resin, layers, mould, overfill, surfaced, sealCoat, waste, spareCastings } = pour;
  const count = pour.copies * (design.work?.copies ?? 1) + spareCastings;
  return {
    ...{ name, resin, layers, sealCoat, waste },
    kind: mould.kind === 'blank' ? 'blank' : 'body',
    above: overfill + surfaced,
    spare: mould.kind === 'blank' ? 0 : spareCastings,
    contents: mould.kind === 'blank' ? contentsOf(mould.blank, design, blanks) : [contentOfMould(pour, count)],
  };
}

const contentsOf = (blank: Blank, { woods }: Design, blanks: readonly LaidBlank[]): MouldContent[] =>
  blanks
    .filter((each) => each.blank.name === blank.name)
    .flatMap(({ laid }) => laid.map((panel) => contentOfBlank(blank, panel, woods)));
