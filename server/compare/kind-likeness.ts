/** How alike two kinds of piece or strip are, and in what they differ. Works on the written plan, so rounded figures. */
import { sameAngle, sameLength } from '../geometry/tolerance.ts';
import type { PlanNotch, PlanPiece, PlanPieceEnd, PlanStrip } from '../shop/shop-plan.ts';
import type { KindAspect, KindBrief } from './design-change.ts';

/** What comparing needs to know of one sort of kind; both measures are symmetric. */
export interface KindSort<Kind> {
  /** Whether one can be laid into the other's place: same wood, same shape. */
  readonly same: (a: Kind, b: Kind) => boolean;
  /** 0 for twins; a pair of `unlikely` or more is never one kind that changed. */
  readonly unlikeness: (a: Kind, b: Kind) => number;
  readonly aspects: (a: Kind, b: Kind) => KindAspect[];
  readonly brief: (kind: Kind) => KindBrief;
}

/**
 * Another role weighs 2 (1 where only the motif or grid is another), another section or other bevels 1, another stock, hand,
 * row of notches or panel ½, and the length its relative difference. So a kind may change its size and its points
 * and still be the same kind of its motif, but one of another role must keep nearly all else.
 */
export const unlikely = 3;

const lengthUnlikeness = (a: number, b: number): number => Math.abs(a - b) / Math.max(a, b, Number.MIN_VALUE);

const shares = (a: readonly string[], b: readonly string[]): boolean => a.some((each) => b.includes(each));

/** 0, 1 or 2: the whole role in common, its last word alone, or nothing. */
function roleUnlikeness(a: readonly (readonly [string, string])[], b: readonly (readonly [string, string])[]): number {
  const whole = (roles: readonly (readonly [string, string])[]): string[] => roles.map((role) => JSON.stringify(role));
  if (shares(whole(a), whole(b))) return 0;
  const last = (roles: readonly (readonly [string, string])[]): string[] => roles.map(([, word]) => word);
  return shares(last(a), last(b)) ? 1 : 2;
}

interface Sawn {
  readonly stock: string;
  readonly face: number;
  readonly depth: number;
  readonly lengthMm: number;
  readonly notches: readonly PlanNotch[];
  readonly panels: Readonly<Record<string, number>>;
}

const sameSection = (a: Sawn, b: Sawn): boolean => sameLength(a.face, b.face) && sameLength(a.depth, b.depth);

const sameNotch = (a: PlanNotch, b: PlanNotch): boolean =>
  a.from === b.from &&
  sameLength(a.atMm, b.atMm) &&
  sameAngle(a.angle, b.angle) &&
  sameLength(a.widthMm, b.widthMm) &&
  sameLength(a.depthMm, b.depthMm);

const sameList = <Item>(a: readonly Item[], b: readonly Item[], same: (one: Item, two: Item) => boolean): boolean =>
  a.length === b.length &&
  a.every((item, index) => {
    const other = b[index];
    return other !== undefined && same(item, other);
  });

const sameNotches = (a: Sawn, b: Sawn): boolean => sameList(a.notches, b.notches, sameNotch);

const sameEnd = (a: PlanPieceEnd, b: PlanPieceEnd): boolean =>
  a.bevels === null || b.bevels === null ? a.bevels === b.bevels : sameList(a.bevels, b.bevels, sameAngle);

const sameBevels = (a: PlanPiece, b: PlanPiece): boolean => sameList(a.ends, b.ends, sameEnd);

const sameOutline = (a: PlanPiece, b: PlanPiece): boolean =>
  sameList(a.outline, b.outline, (one, two) => sameLength(one[0], two[0]) && sameLength(one[1], two[1]));

const sharesPanel = (a: Sawn, b: Sawn): boolean => shares(Object.keys(a.panels), Object.keys(b.panels));

function sawnUnlikeness(a: Sawn, b: Sawn): number {
  return (
    (sameSection(a, b) ? 0 : 1) +
    (a.stock === b.stock ? 0 : 0.5) +
    (a.notches.length === b.notches.length ? 0 : 0.5) +
    (sharesPanel(a, b) ? 0 : 0.5) +
    lengthUnlikeness(a.lengthMm, b.lengthMm)
  );
}

function sawnAspects(a: Sawn, b: Sawn): KindAspect[] {
  return [
    ...(sameLength(a.lengthMm, b.lengthMm) ? [] : (['length'] as const)),
    ...(sameSection(a, b) ? [] : (['section'] as const)),
    ...(a.stock === b.stock ? [] : (['stock'] as const)),
    ...(sameNotches(a, b) ? [] : (['notches'] as const)),
  ];
}

interface Counted {
  readonly mark: string;
  readonly make: number;
  readonly total: number;
  readonly panels: Readonly<Record<string, number>>;
}

function countAspects(a: Counted, b: Counted): KindAspect[] {
  const names = [...new Set([...Object.keys(a.panels), ...Object.keys(b.panels)])];
  const sameShares = names.every((name) => (a.panels[name] ?? 0) === (b.panels[name] ?? 0));
  const sameCounts = a.make === b.make && a.total === b.total;
  return [
    ...(sameCounts ? [] : (['count'] as const)),
    ...(sameCounts && !sameShares ? (['panels'] as const) : []),
    ...(a.mark === b.mark ? [] : (['mark'] as const)),
  ];
}

const pieceRoles = ({ from }: PlanPiece): (readonly [string, string])[] =>
  from.map(({ motif, piece }) => [motif, piece] as const);
const stripRoles = ({ from }: PlanStrip): (readonly [string, string])[] =>
  from.map(({ grid, family }) => [grid, String(family)] as const);

const isSame = <Item>(a: readonly Item[], b: readonly Item[]): boolean =>
  a.every((item) => b.includes(item)) && a.length === b.length;

const rolesInWords = (roles: readonly (readonly [string, string])[], between: string): string[] =>
  roles.map(([first, second]) => `${first}${between}${second}`).sort();

function roleAspect<Kind>(brief: (kind: Kind) => KindBrief, a: Kind, b: Kind): KindAspect[] {
  return isSame(brief(a).roles, brief(b).roles) ? [] : ['role'];
}

const pieceBrief = (piece: PlanPiece): KindBrief => ({
  mark: piece.mark,
  roles: rolesInWords(pieceRoles(piece), ' '),
  stock: piece.stock,
  face: piece.face,
  depth: piece.depth,
  lengthMm: piece.lengthMm,
  bevels: piece.ends.some(({ bevels }) => bevels === null)
    ? null
    : piece.ends.map(({ bevels }) => (bevels ?? []).map(String).join('/')).join(', '),
  make: piece.make,
  total: piece.total,
});

const stripBrief = (strip: PlanStrip): KindBrief => ({
  mark: strip.mark,
  roles: rolesInWords(stripRoles(strip), ' family '),
  stock: strip.stock,
  face: strip.face,
  depth: strip.depth,
  lengthMm: strip.lengthMm,
  bevels: null,
  make: strip.make,
  total: strip.total,
});

export const pieceSort: KindSort<PlanPiece> = {
  same: (a, b) => a.stock === b.stock && sameSection(a, b) && sameOutline(a, b) && sameNotches(a, b),
  unlikeness: (a, b) =>
    roleUnlikeness(pieceRoles(a), pieceRoles(b)) + sawnUnlikeness(a, b) + (sameBevels(a, b) ? 0 : 1),
  aspects: (a, b) => {
    const shape = sawnAspects(a, b);
    const bevels = sameBevels(a, b);
    const outlineAlone = bevels && !sameOutline(a, b) && !shape.includes('length') && !shape.includes('section');
    return [
      ...shape,
      ...(bevels ? [] : (['bevels'] as const)),
      ...(outlineAlone ? (['outline'] as const) : []),
      ...roleAspect(pieceBrief, a, b),
      ...countAspects(a, b),
    ];
  },
  brief: pieceBrief,
};

export const stripSort: KindSort<PlanStrip> = {
  same: (a, b) => a.stock === b.stock && sameSection(a, b) && sameLength(a.lengthMm, b.lengthMm) && sameNotches(a, b),
  unlikeness: (a, b) =>
    roleUnlikeness(stripRoles(a), stripRoles(b)) + sawnUnlikeness(a, b) + (a.hand === b.hand ? 0 : 0.5),
  aspects: (a, b) => [
    ...sawnAspects(a, b),
    ...(a.hand === b.hand ? [] : (['hand'] as const)),
    ...roleAspect(stripBrief, a, b),
    ...countAspects(a, b),
  ],
  brief: stripBrief,
};
