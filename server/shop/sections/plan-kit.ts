/** A class: what is in each bag and in the teacher's box, which jigs stand in the room, what a student does in what order. */
import { type Words, counted, figure, measure, words } from '../../../grammar/words.ts';
import type { Design } from '../../design/design.ts';
import type { Kit } from '../../design/work-model.ts';
import { sum } from '../../geometry/numbers.ts';
import { rounded } from '../../geometry/tolerance.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import { fittingText, motifsOfPanels } from '../steps/fitting-order.ts';
import { type Keys, keysOf } from '../jigs/key-share.ts';
import type { MarkedKinds } from '../marks/marked-kinds.ts';
import { notchingBench } from './plan-settings.ts';
import { planLength } from './plan-rounding.ts';
import { sidesToMeasure } from '../steps/sides-to-measure.ts';
import type { PlanSetting } from '../shop-plan.ts';
import { boxSuffices, leastBox, withoutBox } from '../marks/class-spares.ts';
import { piecesToCut, sparesOfKit } from '../marks/spares.ts';
import type { PlanKit } from './work-sections.ts';

/** How sure it shall be that nobody is short. Common practice. */
const confidence = 0.95;

/** Per cent. */
const surenessDecimals = 2;

/** One mark of the panel that a student builds. */
interface KitMark {
  readonly mark: string;
  readonly kind: 'strip' | 'piece';
  readonly role: string;
  /** In one panel. */
  readonly n: number;
  /** Spares that the plan cuts of it. */
  readonly spare: number;
  readonly lengthMm: number;
  /** How many of `n` are keys, and how much longer those are. */
  readonly keys: Keys;
}

/** The first kit of the file; null where there is none. */
export function planKit(
  design: Design,
  panels: readonly LaidPanel[],
  kinds: MarkedKinds,
  settings: readonly PlanSetting[],
): PlanKit<Words> | null {
  const [kit, ...others] = design.kits;
  if (!kit) return null;
  const laid = panels.find(({ panel }) => panel.name === kit.panel.name);
  const marks = marksOf(kit, kinds, notchingBench(design.benches)?.trim ?? 0);
  const jigs = jigsFor(kit, marks, settings);
  const bag = marks.map((each) => ({
    mark: each.mark,
    n: each.n,
    spare: kit.sparesPerBag,
    lengthMm: planLength(each.lengthMm),
    label: labelOf(each, kit),
  }));
  return {
    name: kit.name,
    panel: kit.panel.name,
    students: kit.students,
    done: [...kit.done],
    bag,
    teacherBox: marks
      .map(({ mark, spare }) => ({ mark, n: sparesOfKit(kit) > 0 ? kit.sparesWithTeacher : spare }))
      .filter(({ n }) => n > 0),
    spares: marks.map((each) => sparesFor(each, kit)),
    confidencePct: 100 * confidence,
    breakagePct: planLength(100 * kit.breakage),
    jigs: { sets: Math.ceil(kit.students / kit.studentsPerJig), studentsPerSet: kit.studentsPerJig, jigs },
    card: cardOf(kit, laid, { bag, jigs }),
    problems: problemsOf(kit, laid, others),
  };
}

function sparesFor({ mark, n }: KitMark, kit: Kit): PlanKit['spares'][number] {
  const need = { each: n, students: kit.students, breakage: kit.breakage };
  const needed = n * kit.students;
  const box = leastBox(need, kit.sparesPerBag, confidence);
  return {
    mark,
    needed,
    perBag: withoutBox(need, confidence),
    pooled: piecesToCut(needed, kit.breakage, confidence),
    stated:
      sparesOfKit(kit) === 0
        ? null
        : {
            total: needed + sparesOfKit(kit),
            surePct: rounded(100 * boxSuffices(need, kit.sparesPerBag, kit.sparesWithTeacher), surenessDecimals),
            leastBox: box,
            leastTotal: box === null ? null : needed + kit.students * kit.sparesPerBag + box,
          },
  };
}

function marksOf(kit: Kit, { strips, pieces }: MarkedKinds, trim: number): KitMark[] {
  const isOwn = ({ panel }: { readonly panel: LaidPanel }): boolean => panel.panel.name === kit.panel.name;
  const blankLonger = kit.done.includes('bevelled') ? 0 : 2 * trim;
  return [
    ...strips.map(({ mark, groups, spare }): KitMark => {
      const own = groups.filter(isOwn);
      const n = sum(own.map(({ group }) => group.placements.length));
      return { mark, kind: 'strip', role: 'strip', n, spare, lengthMm: own[0]?.group.length ?? 0, keys: noKeys };
    }),
    ...pieces.map((piece): KitMark => {
      const { mark, groups, spare, shape } = piece;
      const own = groups.filter(isOwn);
      const all = keysOf(piece);
      const n = sum(own.map(({ group }) => group.count));
      const keys = { ...all, pieces: Math.round((n * all.pieces) / Math.max(1, piece.total)) };
      return {
        mark,
        kind: 'piece',
        role: own[0]?.group.role ?? '',
        n,
        spare,
        lengthMm: shape.length + blankLonger,
        keys,
      };
    }),
  ].filter(({ n }) => n > 0);
}

/** How far a piece is brought when it goes into the bag. */
function stateOf({ done }: Kit, kind: KitMark['kind']): string {
  const stages = kind === 'strip' ? (['cut', 'notched', 'milled'] as const) : (['bevelled', 'cut', 'milled'] as const);
  const words = { bevelled: 'bevels cut', cut: 'cut to length', notched: 'notched', milled: 'milled, not cut' };
  const reached = stages.filter((stage) => done.includes(stage)).map((stage) => words[stage]);
  if (reached.length === 0) return 'rough';
  return kind === 'strip' && done.includes('cut') && done.includes('notched')
    ? 'notched, cut to length'
    : (reached[0] ?? 'rough');
}

const noKeys: Keys = { pieces: 0, longer: 0 };

function labelOf({ mark, kind, role, n, lengthMm, keys }: KitMark, kit: Kit): Words {
  const spare = kit.sparesPerBag > 0 ? ` + ${kit.sparesPerBag} spare` : '';
  const longer =
    keys.pieces > 0 && keys.longer > 0
      ? words`, ${keys.pieces} keys among them ${figure.fine(keys.longer)} longer`
      : '';
  return words`${mark}: ${n}${spare} × ${role}, ${measure.length(lengthMm)}${longer}, ${stateOf(kit, kind)}`;
}

/** One set of jigs: what pares the ends that are not pared in the bag. */
function jigsFor(
  { done }: Kit,
  marks: readonly KitMark[],
  settings: readonly PlanSetting[],
): PlanKit<Words>['jigs']['jigs'] {
  if (done.includes('bevelled')) return [];
  const own = new Set(marks.map(({ mark }) => mark));
  return settings
    .filter(({ step, notching }) => (step === 'cut infill' || step === 'cut keys') && notching === null)
    .flatMap(({ step, jig, angle, stopMm, caliperMm, flip, marks: cut }) => {
      const here = cut.filter((mark) => own.has(mark));
      return jig === null || angle === null || stopMm === null || here.length === 0
        ? []
        : [{ jig, angle, stopMm, caliperMm, keys: step === 'cut keys', flip, marks: here }];
    });
}

function cardOf(
  kit: Kit,
  laid: LaidPanel | undefined,
  { bag, jigs }: { readonly bag: PlanKit<Words>['bag']; readonly jigs: PlanKit<Words>['jigs']['jigs'] },
): Words[] {
  const pieces = sum(bag.map(({ n }) => n));
  const sides = laid ? sidesToMeasure(laid) : 0;
  const length =
    laid && sides > 0
      ? words` ${counted(sides, 'cell')} along a strip measure ${measure.length(sides * laid.panel.grid.side)}.`
      : '';
  return [
    `Count the bag: ${bag.map(({ mark, n, spare }) => (spare > 0 ? `${n} + ${spare} of ${mark}` : `${n} of ${mark}`)).join(', ')}; ${pieces} go in.`,
    ...(kit.done.includes('notched') ? [] : ['Notch the strips on the notching saw with the teacher.']),
    ...(kit.done.includes('cut') ? [] : ['Cut each piece to the length on its label.']),
    ...jigs.map((jig) => jigText(jig)),
    'Lay the lowest strips out, notches up, set the others into them and seat all laps halfway; then tap home from the middle outward.',
    words`Check: the diagonals are equal.${length}`,
    ...motifsOfPanels(laid ? [laid] : []).map(fittingText),
    'Turn it over and tap it: nothing drops out.',
    'Knives and chisels cut away from hands; the teacher shows each tool first.',
  ];
}

function jigText({ jig, angle, stopMm, caliperMm, keys, flip, marks }: PlanKit<Words>['jigs']['jigs'][number]): Words {
  const set = keys ? measure.key : measure.length;
  const what = keys ? `Keys of ${marks.join(', ')}` : marks.join(', ');
  const caliper = caliperMm === null ? '' : words`, caliper ${set(caliperMm)}`;
  return words`${what}: ${jig} ${measure.angle(angle)}, stop at ${set(stopMm)}${caliper}${flip ? '; turn over and cut again' : ''}; test one before the rest.`;
}

function problemsOf(kit: Kit, laid: LaidPanel | undefined, others: readonly Kit[]): string[] {
  const problems: string[] = [];
  if (!laid) problems.push(`Panel ${kit.panel.name} is not laid out; the bags are not known.`);
  else if (laid.quantity + laid.taken !== kit.students)
    problems.push(
      `${laid.quantity + laid.taken} of ${kit.panel.name} are made and ${kit.students} go into the bags; the others are not in them.`,
    );
  if (laid && laid.taken > 0)
    problems.push(
      `${laid.taken} of ${kit.panel.name} are sawn from blanks, whose strips and pieces go into no bag; take it from no blank.`,
    );
  if (others.length > 0)
    problems.push(
      `A plan is for one class; ${others.map(({ name }) => name).join(', ')} is left out. Give it a file of its own.`,
    );
  return problems;
}
