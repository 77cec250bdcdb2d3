import { expect, test } from 'vitest';
import { buildPlan } from '../../server/shop/build-plan.ts';
import { csvTable } from '../../server/shop/csv-table.ts';
import { planCsvFiles, writePlanCsv } from '../../server/shop/write-plan-csv.ts';
import { handMadeDesign, handMadeKinds, handMadePanel } from '../hand-made-panel.ts';

const columns = [
  { title: 'name', cell: (row: string) => row },
  { title: 'length', cell: (row: string) => String(row.length) },
];

test('fields that need quotes get them', () => {
  expect(csvTable(columns, ['plain', 'a, b', 'say "so"', 'two\nlines', ''])).toBe(
    'name,length\r\nplain,5\r\n"a, b",4\r\n"say ""so""",8\r\n"two\nlines",9\r\n,0\r\n',
  );
});

test('a table without rows has its heads', () => {
  expect(csvTable(columns, [])).toBe('name,length\r\n');
});

test('the plan has as many lines as things, and every line as many fields', () => {
  const planned = {
    revision: '',
    design: handMadeDesign,
    panels: [handMadePanel],
    kinds: handMadeKinds,
    incomplete: false,
  };
  const files = writePlanCsv(buildPlan(planned, 'tray.lap'));
  expect(Object.keys(files)).toEqual([...planCsvFiles]);
  const lines = files['pieces.csv'].trimEnd().split('\r\n');
  expect(lines).toEqual([
    'mark,from,stock,face_mm,depth_mm,length_mm,left_edge_mm,right_edge_mm,end_1_left,end_1_right,end_2_left,end_2_right,notches,whole,trimmed,make,spare,total,panels',
    'A&1,spoke arm,bass,3,10,20,17,17,45,45,90,90,0,2,2,4,1,5,tray <1> 4',
  ]);
  expect(files['notches.csv']).toBe(
    'mark,at_mm,width_mm,run_mm,angle,depth_mm,from\r\nS1,36,3.05,3.05,90,5,above\r\nS2,26,3.05,3.05,90,5,below\r\n',
  );
});
