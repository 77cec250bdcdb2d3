/** The strips of a panel gathered by kind. */
import type { Panel } from '../../design/design-model.ts';
import type { Region } from '../../geometry/region.ts';
import { rounded } from '../../geometry/tolerance.ts';
import type { LineFamily } from '../grid/grid-lines.ts';
import type { StripGroup } from '../laid-panel.ts';
import { notchesOf, weaveOf } from './notches.ts';
import { handOf, type NotchedStrip, sameStrip, standardPosition } from './strip-kinds.ts';
import { stripChange } from './strip-changes.ts';
import { pointOnLine, type StripPart, stripParts } from './strip-parts.ts';

interface Kind {
  readonly lines: LineFamily;
  readonly strip: NotchedStrip;
  readonly parts: StripPart[];
}

export function stripGroups(panel: Panel, families: readonly LineFamily[], region: Region): StripGroup[] {
  const parts = stripParts(panel, families, region);
  const weave = weaveOf(panel.grid, families, parts);
  const change = stripChange(panel);
  const kinds = new Map<string, Kind[]>();
  for (const part of parts) {
    const notches = notchesOf(weave, part);
    const strip = standardPosition({ stock: part.lines.family.stock, length: part.end - part.start, notches });
    addTo(kinds, part, strip);
  }
  return [...kinds.values()].flat().map(({ lines, strip, parts: members }) => ({
    grid: panel.grid.name,
    family: lines.number,
    layer: lines.family.layer,
    stock: strip.stock,
    length: strip.length,
    notches: strip.notches,
    hand: handOf(strip),
    perTenth: members[0] ? change(members[0], ordinalOf(members[0], parts)) : null,
    range: panel.grid.nameRange,
    placements: members.map(({ lines: on, index: line, start }) => ({
      at: pointOnLine(on, line, start),
      turn: on.family.direction,
    })),
  }));
}

/** The place of a part among those of its line. */
const ordinalOf = (part: StripPart, parts: readonly StripPart[]): number =>
  parts.filter(({ lines, index }) => lines === part.lines && index === part.index).indexOf(part);

/** Strips are compared only with those of one family and nearly one length. */
function addTo(kinds: Map<string, Kind[]>, part: StripPart, strip: NotchedStrip): void {
  const bucket = (length: number): string => `${part.lines.number} ${length}`;
  const nearest = rounded(strip.length, 1);
  const candidates = [nearest, rounded(nearest - 0.1, 1), rounded(nearest + 0.1, 1)].flatMap(
    (length) => kinds.get(bucket(length)) ?? [],
  );
  const known = candidates.find((kind) => sameStrip(kind.strip, strip));
  if (known) known.parts.push(part);
  else kinds.set(bucket(nearest), [...(kinds.get(bucket(nearest)) ?? []), { lines: part.lines, strip, parts: [part] }]);
}
