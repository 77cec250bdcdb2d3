/** Where things lie in the work, and which lies in front. */
import { maximum } from '../../geometry/numbers.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { PlaceProperty, WorkDeclaration } from '../../../grammar/tree/work-syntax.ts';
import type { DesignContext } from '../design-context.ts';
import type { Panel } from '../design-model.ts';
import { cycle } from '../values/named-numbers.ts';
import { optional, readAngle, readPoint } from '../values/read-values.ts';
import type { Board, Placement, Pour, WorkPart } from '../work-model.ts';

export interface PlacedParts {
  readonly panels: ReadonlyMap<string, Panel>;
  readonly boards: ReadonlyMap<string, Board>;
  readonly pours: ReadonlyMap<string, Pour>;
  /** Whether all that the file says of the things of a name could be read. */
  readonly isWhole: (name: string) => boolean;
}

/** Every placement of the work; those of things left out for an error are left out. */
export function buildPlacements(work: WorkDeclaration, parts: PlacedParts, context: DesignContext): Placement[] {
  const places = work.properties.filter((property) => property.kind === 'place');
  const layers = layersOf(places, parts, context);
  const placements = places.flatMap((place): Placement[] => {
    const part = partNamed(place.part.text, parts);
    const at = readPoint(place.at, context);
    const turn = optional(place.turned, (value) => readAngle(value, 'turn', null, context)) ?? 0;
    if (!part || !at) return [];
    return [{ part, at, turn, mirrored: place.mirrored, layer: layers(place.part.text), range: place.range }];
  });
  if (!work.incomplete) checkCounts(places, parts, context);
  return placements;
}

/** What a name means in a work: of several kinds of thing with one name the panel, then the board. */
function partNamed(name: string, { panels, boards, pours }: PlacedParts): WorkPart | null {
  const panel = panels.get(name);
  if (panel) return { kind: 'panel', panel };
  const board = boards.get(name);
  if (board) return { kind: 'board', board };
  const pour = pours.get(name);
  return pour ? { kind: 'pour', pour } : null;
}

/**
 * The layer of each thing by name, 0 at the wall: boards lie at the wall and all else in front of it, and a thing one
 * layer in front of the foremost of what it is said to lie in front of. A loop is reported, and counts for nothing.
 */
function layersOf(
  places: readonly PlaceProperty[],
  parts: PlacedParts,
  context: DesignContext,
): (name: string) => number {
  const known = new Map<string, number>();
  const path: string[] = [];
  const layerOf = (name: string): number => {
    const before = known.get(name);
    if (before !== undefined) return before;
    path.push(name);
    const own = places.filter(({ part }) => part.text === name);
    const behind = own.flatMap(({ inFrontOf }) => {
      if (!inFrontOf) return [];
      if (!places.some(({ part }) => part.text === inFrontOf.text)) {
        if (!partNamed(inFrontOf.text, parts)) return []; // an unknown name is reported as such
        const message = `\`${inFrontOf.text}\` is not placed in this work. Place it, or take \`in front of\` out.`;
        context.report(problemAt('notPlaced', inFrontOf.range, message));
        return [];
      }
      if (!path.includes(inFrontOf.text)) return [layerOf(inFrontOf.text)];
      const loop = path.slice(path.indexOf(inFrontOf.text)).flatMap((member) => {
        const place = places.find(({ part }) => part.text === member);
        return place ? [place.part] : [];
      });
      context.report(cycle(inFrontOf, loop, 'in front of'));
      return [];
    });
    path.pop();
    const atWall = partNamed(name, parts)?.kind === 'board' ? 0 : 1;
    const layer = Math.max(atWall, maximum(behind.map((each) => each + 1)));
    known.set(name, layer);
    return layer;
  };
  for (const { part } of places) layerOf(part.text);
  return layerOf;
}

/** Things placed another number of times than there are copies: one of the two is a slip. */
function checkCounts(places: readonly PlaceProperty[], parts: PlacedParts, context: DesignContext): void {
  for (const name of new Set(places.map(({ part }) => part.text))) {
    const ofName = places.filter(({ part }) => part.text === name);
    const part = partNamed(name, parts);
    const [first] = ofName;
    const copies = part && copiesOf(part);
    if (!first || copies === null || copies === ofName.length || !parts.isWhole(name)) continue;
    const placed = ofName.length === 1 ? 'once' : `${String(ofName.length)} times`;
    const made = copies === 1 ? '1 copy' : `${String(copies)} copies`;
    const message = `\`${name}\` is placed ${placed}, and ${made} of it ${copies === 1 ? 'is' : 'are'} made. Give it \`copies ${String(ofName.length)}\`, or place as many as are made.`;
    context.report(problemAt('countDiffersFromCopies', first.part.range, message));
  }
}

function copiesOf(part: WorkPart): number {
  if (part.kind === 'panel') return part.panel.copies;
  return part.kind === 'board' ? part.board.copies : part.pour.copies;
}
