/**
 * What a file makes: its own panels, blanks and so on, and of those in used files only what it names, with the bands
 * and blanks that belong to them. A used file's other panels are made where that file itself is planned.
 */
import { fileNumberOf } from '../../../grammar/tree/source-range.ts';
import type { Design } from '../design.ts';
import type { Named } from './named.ts';

const madeKinds = ['panels', 'blanks', 'bands', 'pours', 'boards', 'kits'] as const;

/** `design`, everything that can be named in the file in hand, without what is made elsewhere. */
export function madeHere(design: Design): Design {
  const all = new Set<unknown>(madeKinds.flatMap((kind): readonly Named[] => design[kind]));
  const isOwn = ({ range }: Named): boolean => fileNumberOf(range.start) === 0;
  const own = madeKinds.flatMap((kind): readonly Named[] => design[kind]).filter(isOwn);
  const made = new Set<unknown>();
  const reach = (from: unknown): void => {
    if (typeof from !== 'object' || from === null || made.has(from)) return;
    if (all.has(from)) made.add(from);
    Object.values(from).forEach(reach);
  };
  [...own, design.work].forEach(reach);
  design.bands.filter(({ around }) => made.has(around)).forEach(reach);
  design.blanks.filter(({ takes }) => takes.some(({ panel }) => made.has(panel))).forEach(reach);
  const kept = <Thing>(things: readonly Thing[]): Thing[] => things.filter((thing) => made.has(thing));
  return {
    ...design,
    panels: kept(design.panels),
    blanks: kept(design.blanks),
    bands: kept(design.bands),
    pours: kept(design.pours),
    boards: kept(design.boards),
    kits: kept(design.kits),
  };
}
