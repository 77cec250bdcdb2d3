/** Frames in the plan: what is cut, in which step, from which sticks, and what it weighs; figures by hand. */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import type { Frame, Panel } from '../../../server/design/design-model.ts';
import { layOutPanel } from '../../../server/lattice/lay-out-panel.ts';
import { frameVolume } from '../../../server/shop/mass/frame-volume.ts';
import { stepOfStock } from '../../../server/shop/steps/job-steps.ts';
import { writePlanCsv } from '../../../server/shop/writers/write-plan-csv.ts';
import { writePlanText } from '../../../server/shop/writers/write-plan-text.ts';
import { benchOf, cellsShape, gridOf, panelOf, stripStock } from '../../design-builder.ts';
import { cutPlanOf } from '../planned.ts';
import { schemaFaults } from '../plan-schema.ts';
import { planAtSight } from '../../plan-at-sight.ts';

const ash = stripStock('ash', 3);
const maple = stripStock('maple', 20, {
  depth: 30,
  wood: 'sugar_maple',
  lengths: [{ length: 900, price: null }],
});
const frame: Frame = {
  stock: maple,
  corners: 'mitred',
  joint: 'groove',
  jointDepth: 6,
  endGap: 0,
  bearing: null,
  range: { start: 2, end: 4 },
};
/** 197 × 157 clear inside, strips 10 deep; members 20 wide and 30 deep. */
const framed = (more: Partial<Frame> = {}, panel: Partial<Panel> = {}): Panel =>
  panelOf(gridOf('square', 40, ash), cellsShape(5, 4), {
    edge: 'framed',
    stub: 6,
    frame: { ...frame, ...more },
    ...panel,
  });

describe('the wood of a frame', () => {
  const volumeOf = (more: Partial<Frame>): number => {
    const { panel } = layOutPanel(framed(more));
    return panel ? frameVolume(panel, { ...frame, ...more }) : NaN;
  };
  /** Between 197 × 157 and 237 × 197, 30 deep. */
  const ring = (237 * 197 - 197 * 157) * 30;

  test('is the ring round the panel less its groove, mitred or lapped', () => {
    const groove = (2 * 197 + 2 * 157) * 6 * 10;
    expect(volumeOf({})).toBeCloseTo(ring - groove, 6);
    expect(volumeOf({ corners: 'lapped' })).toBeCloseTo(ring - groove, 6);
  });

  test('is whole again with a border in the groove; fillers leave the strips’ places open', () => {
    expect(volumeOf({ bearing: 'border' })).toBeCloseTo(ring, 6);
    // 4 upright and 3 level strips, 3 wide, end twice each
    expect(volumeOf({ bearing: 'fillers' })).toBeCloseTo(ring - 14 * 3 * 6 * 10, 6);
  });

  test('with mortices lacks one for every end of a strip', () => {
    expect(volumeOf({ joint: 'stub' })).toBeCloseTo(ring - 14 * 3 * 6 * 10, 6);
  });
});

describe('a framed panel of two copies', () => {
  const planned = cutPlanOf([framed({ bearing: 'fillers' }, { copies: 2 })], { benches: [benchOf({ kerf: 3 })] });

  test('keeps to the schema', async () => {
    expect(schemaFaults(await planned)).toEqual([]);
  });

  test('has the members in the frame’s step: lengths, ends, numbers, and the sticks they are cut from', async () => {
    const plan = await planned;
    const step = plan.steps.find(({ title }) => title === 'frame');
    const told = step?.tasks.join('\n') ?? '';
    expect(told).toContain('F1: 4 of 237.0, 197.0 inside, 20.0 wide, ends 45° and 45°.');
    expect(told).toContain('F2: 4 of 197.0, 157.0 inside, 20.0 wide, ends 45° and 45°.');
    expect(told).toContain('G1: 36 fillers of 37.0 ripped to 6.0 × 10.0');
    expect(told).toMatch(/maple: \d+ sticks as listed/);
    const settings = plan.settings.filter(({ order }) => step?.settings.includes(order));
    expect(
      settings.map(({ jig, angle, caliperMm, flip, pieces, marks }) => [jig, angle, caliperMm, flip, pieces, marks]),
    ).toEqual([
      ['mitre', 45, 237, true, 4, ['F1']],
      ['mitre', 45, 197, true, 4, ['F2']],
      ['square', 90, 37, false, 36, ['G1']],
    ]);
    expect(stepOfStock('maple', plan)).toBe('frame');
    const text = writePlanText(plan);
    const [, frameText = ''] = text.split(/\d+\. frame/);
    expect(frameText.slice(0, frameText.indexOf('GATE'))).toContain('× F1 at 237.0');
  });

  test('cuts every member and filler as often as it is made, and mills for them', async () => {
    const { stock, settings, mill } = await planned;
    const cutOf = (mark: string): number =>
      stock
        .flatMap(({ sticks }) => sticks.flatMap(({ cuts, count }) => cuts.map((cut) => ({ ...cut, n: cut.n * count }))))
        .reduce((sum, cut) => (cut.mark === mark ? sum + cut.n : sum), 0);
    expect(['F1', 'F2', 'G1'].map(cutOf)).toEqual([4, 4, 36]);
    expect(mill.map(({ stock: name }) => name)).toContain('maple');
    expect(settings.filter(({ step }) => step === 'mill strips').flatMap(({ marks }) => marks)).toContain('F1');
  });

  test('weighs the frame: volume by hand × 705.6 kg/m³, sugar maple’s 0.63 (Wood Handbook FPL-GTR-282, Table 5-3a) × 1120', async () => {
    const { mass } = await planned;
    const part = mass.parts.find(({ part: name }) => name.endsWith(', frame'));
    const volume = (237 * 197 - 197 * 157) * 30 - 14 * 3 * 6 * 10;
    expect(part?.massG).toBeCloseTo((2 * volume * 0.63 * 1120) / 1e6, 0);
  });

  test('is in the tables for a spreadsheet', async () => {
    const rows = writePlanCsv(await planned)
      ['frames.csv'].trimEnd()
      .split('\r\n');
    expect(rows).toHaveLength(4);
    expect(rows[1]).toBe('blade,maple,F1,member,237,197,20,45,45,4,mitred,groove,6,10');
    expect(rows[3]).toBe('blade,maple,G1,fillers,37,,6,90,90,36,mitred,groove,6,10');
  });
});

test('a frame that the file does not describe is asked for by its clear size and the strips’ stubs', async () => {
  const { steps } = await cutPlanOf([framed({}, { frame: null, stub: 5 })]);
  const told = steps.find(({ title }) => title === 'frame')?.tasks.join('\n') ?? '';
  expect(told).toContain('197.0 × 157.0 clear inside, strips standing 5.0 into it');
});

describe('which grids are checked', () => {
  const text = `strip ash { section face 3 depth 10  lengths 900 }
grid net { square  pitch 40  of ash }
panel door { grid net  shape fit 8 x 5 cells in 506 x 317 by pitch  edge framed }`;

  test('one that its only panel resized, as resized and not as declared', () => {
    // 8 sides and 5 sides less the face of a strip: (506 + 3) / 8 = 63.625
    const { grids, steps } = planAtSight(analyse(text), 'door.lap');
    expect(grids.map(({ name, tenSidesMm }) => [name, tenSidesMm])).toEqual([['net in door', 636.25]]);
    const measure = steps.find(({ title }) => title === 'measure')?.tasks.join('\n') ?? '';
    expect(measure).toContain('636.3');
    expect(measure).not.toContain('400.0');
  });

  test('both, where another panel takes it as declared', () => {
    const { grids } = planAtSight(analyse(`${text}\npanel side { grid net  shape 3 x 3 cells }`), 'door.lap');
    expect(grids.map(({ name, tenSidesMm }) => [name, tenSidesMm])).toEqual([
      ['net', 400],
      ['net in door', 636.25],
    ]);
  });
});
