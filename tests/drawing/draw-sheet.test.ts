/** Sheets with their boards: names as in the plan, every board inside the sheet. */
import { expect, test } from 'vitest';
import { analyse } from '../../server/analyse.ts';
import { drawSheet } from '../../server/drawing/draw-sheet.ts';
import { add, turned } from '../../server/geometry/point.ts';
import { nestSheets } from '../../server/shop/sheets/nest-sheets.ts';
import { lastOf } from '../../server/shop/stages.ts';
import { planSheets } from '../../server/shop/sheets/plan-sheets.ts';

const text = `sheet ply { thick 6  size 620 x 420  kerf 3  margin 10 }
outline hook { start 0, 0  line to 240, 0  line to 240, 60  line to 60, 60  line to 60, 200  line to 0, 200  line to start }
outline disc { circle at 0, 0 radius 90 }
board arm { shape hook  of ply  copies 7 }
board lid { shape disc  of ply  copies 3 }`;

test('one drawing for each way of cutting, with every board in its place and its name on it', () => {
  const nested = lastOf(nestSheets(analyse(text).design));
  const plan = planSheets(nested);
  const drawings = nested.flatMap((each) => drawSheet(each, 'mm', null));
  expect(drawings.map(({ name }) => name)).toEqual(plan.map(({ layout }) => layout));
  expect(drawings.length).toBeGreaterThan(1);
  drawings.forEach((drawing, index) => {
    const { places = [] } = plan[index] ?? {};
    const drawn = drawing.layers.flatMap(({ kind, kinds }) => (kind === 'board' ? kinds : []));
    expect(drawn.reduce((sum, { placements }) => sum + placements.length / 3, 0)).toBe(places.length);
    expect(drawing.texts.map((each) => each.text.split(' ')[0]).sort()).toEqual(
      places.map(({ board }) => board).sort(),
    );
    for (const { rings, placements } of drawn)
      for (let at = 0; at < placements.length; at += 3) {
        const [x = 0, y = 0, turn = 0] = placements.slice(at, at + 3);
        for (let corner = 0; corner < (rings[0]?.length ?? 0); corner += 2) {
          const own = { x: rings[0]?.[corner] ?? 0, y: rings[0]?.[corner + 1] ?? 0 };
          const point = add(turned(own, turn), { x, y });
          expect(Math.min(point.x, point.y, 620 - point.x, 420 - point.y)).toBeGreaterThan(9.94);
        }
      }
  });
});
