/** Gathers equal pieces and equal strips of all panels and gives each kind its mark and quantities. */
import type { Panel } from '../../design/design-model.ts';
import type { Kit } from '../../design/work-model.ts';
import { sum } from '../../geometry/numbers.ts';
import { kindLengthTolerance } from '../../geometry/tolerance.ts';
import type { LaidPanel, PieceGroup, StripGroup } from '../../lattice/laid-panel.ts';
import { samePiece } from '../../lattice/motif/piece-shape.ts';
import { sameStrip } from '../../lattice/strips/strip-kinds.ts';
import type { MarkedHinge, MarkedKinds, MarkedPiece, MarkedStrip } from './marked-kinds.ts';
import { sparesOf } from './spares.ts';

interface Gathered<Group> {
  readonly groups: { readonly panel: LaidPanel; readonly group: Group }[];
}

const stripRole = 'strip';

/**
 * Panels of which none is made, for they are sawn from blanks, lend the marks of the blanks' pieces and make no strips.
 * Marks are a role's shortest telling letters and, where the role has several kinds, the rank by length, longest first.
 */
export function markKinds(panels: readonly LaidPanel[], kits: readonly Kit[] = []): MarkedKinds {
  const pieces = gather(
    panels.flatMap((panel) => panel.pieces.map((group) => ({ panel, group }))),
    (a, b) => samePiece(a.shape, b.shape),
    ({ shape }) => shape.length,
  );
  const made = panels.filter(({ quantity }) => quantity > 0);
  const strips = gather(
    made.flatMap((panel) => panel.strips.map((group) => ({ panel, group }))),
    sameStrip,
    ({ length }) => length,
  );
  const letters = tellingLetters([stripRole, ...pieces.map(roleOf)]);
  const pieceMarks = marksOf(pieces, (kind) => letters.get(roleOf(kind)) ?? '', comparePieces);
  const stripMarks = marksOf(strips, () => letters.get(stripRole) ?? '', compareStrips);
  const marked = pieces
    .map((kind): MarkedPiece => markedPiece(kind, pieceMarks.get(kind) ?? '', kits))
    .filter(({ make }) => make > 0)
    .sort(byMark);
  return {
    pieces: marked,
    hinges: markedHinges(panels, marked),
    strips: strips.map((kind): MarkedStrip => markedStrip(kind, stripMarks.get(kind) ?? '', kits)).sort(byMark),
  };
}

/** Groups of one kind together; only groups of nearly one length are compared. */
function gather<Group>(
  members: readonly { readonly panel: LaidPanel; readonly group: Group }[],
  same: (a: Group, b: Group) => boolean,
  lengthOf: (group: Group) => number,
): Gathered<Group>[] {
  const buckets = new Map<number, Gathered<Group>[]>();
  const kinds: Gathered<Group>[] = [];
  for (const member of members) {
    const bucket = Math.round(lengthOf(member.group) / (10 * kindLengthTolerance));
    const near = [bucket, bucket - 1, bucket + 1].flatMap((each) => buckets.get(each) ?? []);
    const known = near.find(({ groups: [first] }) => first && same(first.group, member.group));
    if (known) {
      known.groups.push(member);
      continue;
    }
    const kind = { groups: [member] };
    kinds.push(kind);
    buckets.set(bucket, [...(buckets.get(bucket) ?? []), kind]);
  }
  return kinds;
}

/** A kind that serves several roles takes the first in the alphabet. */
const roleOf = ({ groups }: Gathered<PieceGroup>): string =>
  groups.map(({ group }) => group.role).reduce((first, role) => (role < first ? role : first));

/** Role → the shortest beginning, in capitals, that no other role shares. */
export function tellingLetters(roles: readonly string[]): Map<string, string> {
  const distinct = [...new Set(roles)];
  return new Map(
    distinct.map((role) => {
      const letters = Array.from(role.toLocaleUpperCase('en'));
      const others = distinct.filter((other) => other !== role).map((other) => other.toLocaleUpperCase('en'));
      const enough = letters.findIndex((_, index) => {
        const beginning = letters.slice(0, index + 1).join('');
        return !others.some((other) => other.startsWith(beginning));
      });
      return [role, enough < 0 ? `${letters.join('')}.` : letters.slice(0, enough + 1).join('')];
    }),
  );
}

function marksOf<Kind>(
  kinds: readonly Kind[],
  lettersOf: (kind: Kind) => string,
  compare: (a: Kind, b: Kind) => number,
): Map<Kind, string> {
  const byLetters = new Map<string, Kind[]>();
  for (const kind of kinds) byLetters.set(lettersOf(kind), [...(byLetters.get(lettersOf(kind)) ?? []), kind]);
  const marks = new Map<Kind, string>();
  for (const [letters, members] of byLetters) {
    members
      .sort(compare)
      .forEach((kind, index) => marks.set(kind, members.length === 1 ? letters : `${letters}${index + 1}`));
  }
  return marks;
}

function comparePieces(a: Gathered<PieceGroup>, b: Gathered<PieceGroup>): number {
  const [one, two] = [a.groups[0]?.group, b.groups[0]?.group];
  if (!one || !two) return 0;
  return compareNumbers(
    [two.shape.length, ...two.shape.edges, ...two.shape.outline.flatMap(({ x, y }) => [x, y])],
    [one.shape.length, ...one.shape.edges, ...one.shape.outline.flatMap(({ x, y }) => [x, y])],
  );
}

function compareStrips(a: Gathered<StripGroup>, b: Gathered<StripGroup>): number {
  const [one, two] = [a.groups[0]?.group, b.groups[0]?.group];
  if (!one || !two) return 0;
  const measures = ({ length, notches }: StripGroup): number[] => [
    length,
    ...notches.flatMap(({ from, angle, first, count }) => [from === 'above' ? 1 : 0, angle, first, count]),
  ];
  return compareNumbers(measures(two), measures(one));
}

function compareNumbers(a: readonly number[], b: readonly number[]): number {
  for (let index = 0; index < Math.min(a.length, b.length); index++) {
    const difference = (a[index] ?? 0) - (b[index] ?? 0);
    if (Math.abs(difference) > kindLengthTolerance) return difference;
  }
  return a.length - b.length;
}

function markedPiece({ groups }: Gathered<PieceGroup>, mark: string, kits: readonly Kit[]): MarkedPiece {
  const count = (fate: 'whole' | 'trimmed'): number =>
    sum(groups.filter(({ group }) => group.fate === fate).map(({ panel, group }) => group.count * panel.quantity));
  const shape = (groups[0] as { group: PieceGroup }).group.shape;
  const [whole, trimmed] = [count('whole'), count('trimmed')];
  const make = whole + trimmed;
  const spare = sparesOf(
    shape.stock,
    madeFor(groups, ({ count: each }) => each),
    kits,
  );
  return { mark, shape, groups, whole, trimmed, make, spare, total: make + spare };
}

/** Equal hinges of all panels together. */
function markedHinges(panels: readonly LaidPanel[], pieces: readonly MarkedPiece[]): MarkedHinge[] {
  const hinges = new Map<string, MarkedHinge>();
  for (const panel of panels) {
    for (const { shapes, count } of panel.hinges) {
      const [first, second] = shapes.map((shape) => pieces.find((piece) => samePiece(piece.shape, shape)));
      if (!first || !second || panel.quantity === 0) continue;
      const key = JSON.stringify([first.mark, second.mark]);
      const make = (hinges.get(key)?.make ?? 0) + count * panel.quantity;
      hinges.set(key, { halves: [first, second], make });
    }
  }
  return [...hinges.values()];
}

function markedStrip({ groups }: Gathered<StripGroup>, mark: string, kits: readonly Kit[]): MarkedStrip {
  const made = madeFor(groups, ({ placements }) => placements.length);
  const make = sum([...made.values()]);
  const spare = sparesOf((groups[0] as { group: StripGroup }).group.stock, made, kits);
  return { mark, groups, make, spare, total: make + spare };
}

/** How many of a kind each panel takes, over all its copies. */
function madeFor<Group>(groups: Gathered<Group>['groups'], countOf: (group: Group) => number): Map<Panel, number> {
  const made = new Map<Panel, number>();
  for (const { panel: laid, group } of groups)
    made.set(laid.panel, (made.get(laid.panel) ?? 0) + countOf(group) * laid.quantity);
  return made;
}

/** A2 before A10. */
export const inMarkOrder = (a: string, b: string): number => a.localeCompare(b, 'en', { numeric: true });

const byMark = (a: { readonly mark: string }, b: { readonly mark: string }): number => inMarkOrder(a.mark, b.mark);
