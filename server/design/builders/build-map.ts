/** The map of a panel: its signs with what they stand for, and its rows. */
import type { MapEntry, MapProperty, MapSign } from '../../../grammar/tree/fill-syntax.ts';
import { nearestWord } from '../../../grammar/problems/nearest-word.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import { buildUse } from './build-fills.ts';
import type { FillParts } from './build-fills.ts';
import type { DesignContext } from '../design-context.ts';
import type { CellMap, PanelFill } from '../design-model.ts';

export interface BuiltMap {
  readonly map: CellMap;
  readonly fills: readonly PanelFill[];
}

/** Null where it has no rows, or a line of it could not be read: then its rows say nothing sure. */
export function buildMap(map: MapProperty, parts: FillParts, context: DesignContext): BuiltMap | null {
  const entries = distinctEntries(map, context);
  const rows = map.lines.filter((line) => line.kind === 'map row');
  const fills = [...entries.values()].flatMap((entry) => buildEntry(entry, parts, context));
  if (map.incomplete) return null;
  if (rows.length === 0) {
    const message = 'The map has no rows. Add one like `row h t h` for each row of cells, the top one first.';
    context.report(problemAt('missingProperty', map.keyword, message));
    return null;
  }
  const signs = rows.flatMap((row) => row.signs);
  reportUnknown(signs, entries, context);
  reportUnused(signs, entries, context);
  return {
    map: {
      rows: rows.map((row) => ({
        signs: row.signs.map(({ text, range }) => ({ sign: text, range })),
        range: row.range,
      })),
      range: map.keyword,
    },
    fills,
  };
}

/** The first entry of each sign; others are reported. */
function distinctEntries(map: MapProperty, context: DesignContext): Map<string, MapEntry> {
  const entries = new Map<string, MapEntry>();
  for (const entry of map.lines.filter((line) => line.kind === 'map entry')) {
    const { text, range } = entry.sign;
    const first = entries.get(text);
    if (first) {
      const related = [{ range: first.sign.range, message: `\`${text}\` is given here first.` }];
      const message = `The sign \`${text}\` already stands for something in this map. Give this one another sign.`;
      context.report(problemAt('repeatedName', range, message, related));
    } else entries.set(text, entry);
  }
  return entries;
}

function buildEntry(entry: MapEntry, parts: FillParts, context: DesignContext): PanelFill[] {
  if (!entry.use) return [];
  const fills = buildUse({ ...entry.use, range: entry.range }, null, [], parts, context);
  return fills.map((fill) => ({ ...fill, where: [{ kind: 'mapped', sign: entry.sign.text }, ...fill.where] }));
}

function reportUnknown(
  signs: readonly MapSign[],
  entries: ReadonlyMap<string, MapEntry>,
  context: DesignContext,
): void {
  const reported = new Set<string>();
  for (const { text, range } of signs) {
    if (entries.has(text) || reported.has(text)) continue;
    reported.add(text);
    const near = nearestWord(text, [...entries.keys()]);
    const example = text === '.' ? '. = open' : `${text} = hemp of bass`;
    const advice = near && text !== '.' ? `Did you mean \`${near}\`?` : `Add \`${example}\` to the map.`;
    context.report(problemAt('unknownName', range, `The sign \`${text}\` stands for nothing in this map. ${advice}`));
  }
}

function reportUnused(signs: readonly MapSign[], entries: ReadonlyMap<string, MapEntry>, context: DesignContext): void {
  const used = new Set(signs.map(({ text }) => text));
  for (const { sign } of entries.values()) {
    if (used.has(sign.text)) continue;
    const message = `The sign \`${sign.text}\` stands in no row of the map. Take it out or use it.`;
    context.report(problemAt('nothingToFill', sign.range, message));
  }
}
