import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../server/analyse.ts';
import { planAtSight } from '../plan-at-sight.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const readMe = readFileSync(`${root}README.md`, 'utf8');
const words = readMe.replace(/\s+/g, ' ');

describe('the read-me', () => {
  test('shows a design without problems', () => {
    const [, example = ''] = /\n```\n(title [^`]*)```\n/.exec(readMe) ?? [];
    const analysis = analyse(example);
    expect(analysis.problems).toEqual([]);
    expect(analysis.panels.map(({ panel }) => panel.name)).toEqual(['tray']);
  });

  test('promises the figures that the ginkgo has', () => {
    const { blanks, pieces, strips } = planAtSight(analyse(readFileSync(`${root}samples/ginkgo.lap`, 'utf8')), '');
    const [arm] = pieces;
    expect(words).toContain(`${strips.length} kinds of strip`);
    expect(words).toContain(`${blanks[0]?.infill.make ?? 0} to a blank, ${arm?.make ?? 0} in all`);
    expect(words).toContain(`(${arm?.whole ?? 0} stay whole, ${arm?.trimmed ?? 0} are sawn through`);
    expect(words).toContain(`${arm?.total ?? 0} with the 8 % of spares`);
    expect(words).toContain(`an arm ${arm?.lengthMm.toFixed(1) ?? ''} mm long`);
  });

  test('names the command that CI runs', () => {
    expect(readMe).toContain('\nnpm ci && npm test\n');
    expect(readFileSync(`${root}.ci/run`, 'utf8')).toContain('\nnpm ci && npm test\n');
  });
});
