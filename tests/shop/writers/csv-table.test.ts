/** Tables for spreadsheets, read back by a parser that is not ours (csv-parse), by RFC 4180. */
import { parse } from 'csv-parse/sync';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import { csvTable } from '../../../server/shop/writers/csv-table.ts';
import { planCsvFiles, writePlanCsv } from '../../../server/shop/writers/write-plan-csv.ts';
import { usualEffort } from '../../../server/machine/search-effort.ts';
import { planPacked } from '../../../server/plan-design.ts';
import { kitOf, panelOf, gridOf, cellsShape, stripStock, workOf, benchOf } from '../../design-builder.ts';
import { handMadeDesign, handMadeKinds, handMadePanel } from '../../hand-made-panel.ts';
import { cutPlanOf } from '../planned.ts';
import { planAtSight } from '../../plan-at-sight.ts';

const columns = [
  { title: 'name', cell: (row: string) => row },
  { title: 'length', cell: (row: string) => String(row.length) },
];

const read = (text: string): string[][] => parse(text, { record_delimiter: '\r\n' });

test('fields that need quotes get them, and come back as they were', () => {
  const rows = ['plain', 'a, b', 'say "so"', 'two\nlines', 'two\r\nlines', ' spaces ', ''];
  expect(csvTable(columns, rows.slice(0, 3))).toBe('name,length\r\nplain,5\r\n"a, b",4\r\n"say ""so""",8\r\n');
  expect(read(csvTable(columns, rows))).toEqual([['name', 'length'], ...rows.map((row) => [row, String(row.length)])]);
});

test('a table without rows has its heads', () => {
  expect(csvTable(columns, [])).toBe('name,length\r\n');
});

test('pieces and notches of a panel made by hand', () => {
  const planned = {
    revision: '',
    design: handMadeDesign,
    panels: [handMadePanel],
    blanks: [],
    kinds: handMadeKinds,
    incomplete: false,
  };
  const files = writePlanCsv(planAtSight(planned, 'tray.lap'));
  expect(Object.keys(files)).toEqual([...planCsvFiles]);
  expect(files['pieces.csv'].trimEnd().split('\r\n')).toEqual([
    'mark,from,stock,face_mm,depth_mm,length_mm,left_edge_mm,right_edge_mm,end_1_left,end_1_right,end_2_left,end_2_right,notches,whole,trimmed,make,spare,total,panels,mm_per_0.1_mm_of_pitch,mm_per_0.1_mm_of_face',
    'A&1,spoke arm,bass,3,10,20,17,17,45,45,90,90,0,2,2,4,1,5,tray <1> 4,,',
  ]);
  expect(files['notches.csv']).toBe(
    'mark,at_mm,width_mm,run_mm,angle,depth_mm,from\r\nS1,36,3.05,3.05,90,5,above\r\nS2,26,3.05,3.05,90,5,below\r\n',
  );
});

describe('every table of a whole plan, read back', () => {
  const euros = (amount: number) => ({ amount, currency: 'EUR' });
  const stock = stripStock('ash "A", best', 3, { lengths: [{ length: 900, price: euros(2.5) }], wood: 'white_ash' });
  const panel = panelOf(gridOf('square', 40, stock), cellsShape(3, 3), { copies: 12 });
  const plan = cutPlanOf([panel], {
    benches: [benchOf({ kerf: 3 })],
    kits: [kitOf(panel, { sparesPerBag: 1, sparesWithTeacher: 2 })],
    work: workOf({
      hourly: euros(40),
      labour: [{ step: 'assemble', minutes: 7.5, per: 'copy', wait: 0 }],
      packing: euros(1.2),
    }),
  });

  test('every line has as many fields as its heads, and every figure comes back', async () => {
    const { strips, stock: stocks, steps, cost, kit, mass, mill, labour, settings } = await plan;
    const tables = Object.fromEntries(
      Object.entries(writePlanCsv(await plan)).map(([name, text]) => [name, read(text)]),
    );
    for (const name of planCsvFiles) {
      const [heads = [], ...rows] = tables[name] ?? [];
      expect(new Set(heads).size).toBe(heads.length);
      for (const row of rows) expect(row.length).toBe(heads.length);
    }
    const column = (name: (typeof planCsvFiles)[number], head: string): string[] => {
      const [heads = [], ...rows] = tables[name] ?? [];
      return rows.map((row) => row[heads.indexOf(head)] ?? 'no such column');
    };
    expect(column('strips.csv', 'stock')).toEqual(strips.map(() => 'ash "A", best'));
    expect(column('strips.csv', 'total').map(Number)).toEqual(strips.map(({ total }) => total));
    expect(column('steps.csv', 'tasks')).toEqual(steps.map(({ tasks }) => tasks.join('\n')));
    expect(column('steps.csv', 'actual_min').join('')).toBe('');
    expect(column('cost.csv', 'one_copy').map(Number)).toEqual(cost.lines.map(({ perCopy }) => perCopy));
    expect(column('mass.csv', 'mass_g').map(Number)).toEqual(mass.parts.map(({ massG }) => massG));
    expect(column('mill.csv', 'sticks_to_mill').map(Number)).toEqual(mill.map(({ millSticks }) => millSticks));
    expect(column('labour.csv', 'minutes').map(Number)).toEqual(labour.lines.map(({ minutes }) => minutes));
    expect(column('kit.csv', 'label').filter(Boolean)).toEqual(kit?.bag.map(({ label }) => label));
    expect(column('settings.csv', 'order').map(Number)).toEqual(settings.map(({ order }) => order));
    const cuts = column('stock.csv', 'mark').map((mark, row) => ({
      mark,
      n: Number(column('stock.csv', 'cuts_in_one_stick')[row]) * Number(column('stock.csv', 'sticks_cut_so')[row]),
    }));
    for (const { mark, total } of strips)
      expect(cuts.filter((cut) => cut.mark === mark).reduce((sum, { n }) => sum + n, 0)).toBe(total);
    expect(stocks[0]?.cost).toBe(2.5 * (stocks[0]?.sticksUsed ?? 0));
  });
});

test('the ginkgo’s sticks, read back, cut every mark as often as its table says', async () => {
  const analysis = analyse(readFileSync(new URL('../../../samples/ginkgo.lap', import.meta.url), 'utf8'));
  const files = writePlanCsv((await planPacked(analysis, 'ginkgo.lap', usualEffort())).plan);
  const records = (name: 'stock.csv' | 'strips.csv' | 'pieces.csv' | 'bands.csv'): Record<string, string>[] =>
    parse(files[name], { columns: true });
  const cut = new Map<string, number>();
  for (const { mark = '', cuts_in_one_stick: n, sticks_cut_so: count } of records('stock.csv'))
    cut.set(mark, (cut.get(mark) ?? 0) + Number(n) * Number(count));
  const totals = [...records('strips.csv'), ...records('pieces.csv'), ...records('bands.csv')].map(
    ({ mark = '', total, make }) => [mark, Number(total ?? make)],
  );
  expect([...cut].sort()).toEqual(totals.sort());
});
