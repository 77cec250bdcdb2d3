/** The shop plan out of what was laid out and counted: each section asked for in turn, and put together. */
import type { Words } from '../../grammar/words.ts';
import { planBands } from './bands/plan-bands.ts';
import { planBoards } from './boards/plan-boards.ts';
import type { NestedSheet } from './sheets/nest-sheets.ts';
import { planSheets } from './sheets/plan-sheets.ts';
import { planBlanks } from './sections/plan-blanks.ts';
import { planBuying } from './sections/plan-buying.ts';
import { planClosing } from './sections/plan-closing.ts';
import { planCost } from './sections/plan-cost.ts';
import { planFinish } from './sections/plan-finish.ts';
import { planFrames } from './sections/plan-frames.ts';
import { planHanging } from './sections/plan-hanging.ts';
import { planKit } from './sections/plan-kit.ts';
import { planLabour, withTimes } from './sections/plan-labour.ts';
import { planMass } from './sections/plan-mass.ts';
import { planMill, stocksOf } from './sections/plan-mill.ts';
import { latticesMade } from './lattices-made.ts';
import { planMovement } from './sections/plan-movement.ts';
import { planBench, planGrids, planHinge, planPanel, planPiece, planStrip } from './sections/plan-parts.ts';
import { notchingBench, planSettings } from './sections/plan-settings.ts';
import { cautionsOf, planSteps } from './steps/plan-steps.ts';
import { planCutting } from './sections/plan-cutting.ts';
import { castingsOf } from './pours/castings.ts';
import { planPours } from './pours/plan-pours.ts';
import type { PlannedDesign } from './planned-design.ts';
import type { ShopPlan } from './shop-plan.ts';
import type { StockCutting } from './stock/cut-every-stock.ts';
import { planWork } from './work/plan-work.ts';

/** What a plan is given, since its search takes time: how sticks are cut, and how boards lie on their sheets. */
export interface FoundLayouts {
  readonly cuttings: readonly StockCutting[];
  readonly nested: readonly NestedSheet[];
}

/** The plan of a design; `source` is the name of its file, as the person gave it. */
export function buildPlan(planned: PlannedDesign, source: string, { cuttings, nested }: FoundLayouts): ShopPlan<Words> {
  const { design, panels, kinds } = planned;
  const { work } = design;
  const bench = notchingBench(design.benches);
  const frames = planFrames(panels, kinds);
  const { settings, changes, byHand } = planSettings(planned, frames);
  const cut = planCutting(cuttings);
  const stocks = stocksOf(kinds, panels, design.bands);
  const mill = planMill(stocks, cut, bench);
  const mass = planMass(design, panels);
  const figures = {
    schema: 'halflap-plan/1' as const,
    title: design.title,
    source,
    revision: planned.revision,
    units: design.units,
    copies: work?.copies ?? 1,
    incomplete: planned.incomplete,
    grids: planGrids(design),
    benches: design.benches.map(planBench),
    panels: panels.map(planPanel),
    pieces: kinds.pieces.map(planPiece),
    hinges: kinds.hinges.map(planHinge),
    strips: kinds.strips.flatMap(planStrip),
    settings,
    changes,
    byHand,
    stock: planBuying(cut, stocks, mill, design.units),
    mill,
    sheets: planSheets(nested),
    frames,
    blanks: planBlanks(planned.blanks),
    bands: planBands(design),
    pours: planPours(castingsOf(design, planned.blanks)),
    boards: planBoards(design),
    work: planWork(design, panels),
    mass,
    hanging: planHanging(work, panels, mass),
    finish: planFinish(design, panels),
    fit: planClosing(latticesMade(planned), settings, bench),
    movement: planMovement(design, panels),
    kit: planKit(design, panels, kinds, settings),
  };
  const steps = planSteps(planned, figures);
  const labour = planLabour(planned, steps, figures);
  return {
    ...figures,
    cautions: cautionsOf(steps),
    steps: withTimes(steps, labour, design),
    labour,
    cost: planCost(design, figures, labour),
  };
}
