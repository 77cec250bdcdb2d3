/** How the members of frames, and what fills their grooves, are cut to length: longest first, each end at its angle. */
import { sameAngle } from '../../geometry/tolerance.ts';
import type { Setting } from './setting.ts';

/** Equal members; `ends` are the angles of their cuts to the axis. Lengths mm, to the long points. */
export interface MemberCut {
  readonly mark: string;
  readonly lengthMm: number;
  readonly ends: readonly [number, number];
  readonly make: number;
}

type CutSetting = Pick<Setting, 'jig' | 'angle' | 'stopMm' | 'caliperMm' | 'flip' | 'marks' | 'pieces'>;

/** The first end has nothing to stop against yet; the second is cut to length. Ends alike are cut at one setting. */
export const memberSettings = (members: readonly MemberCut[]): CutSetting[] =>
  [...members]
    .sort((a, b) => b.lengthMm - a.lengthMm)
    .flatMap(({ mark, lengthMm, ends: [first, second], make }): CutSetting[] => {
      const cut = { marks: [mark], pieces: make };
      const toLength = { ...cut, ...jigOf(second), stopMm: lengthMm, caliperMm: lengthMm };
      return sameAngle(first, second)
        ? [{ ...toLength, flip: !sameAngle(first, 90) }]
        : [
            { ...cut, ...jigOf(first), stopMm: null, caliperMm: null, flip: false },
            { ...toLength, flip: false },
          ];
    });

const jigOf = (angle: number): Pick<Setting, 'jig' | 'angle'> => ({
  jig: sameAngle(angle, 90) ? 'square' : 'mitre',
  angle,
});
