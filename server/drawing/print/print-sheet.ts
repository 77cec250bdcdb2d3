/** The printed shop sheet: the whole plan in the order of the job, as pages for any writer. */
import type { ShopPlan } from '../../shop/shop-plan.ts';
import { blackAndWhite } from '../page/palettes.ts';
import type { PageFile } from '../page/page-model.ts';
import { movedItems } from '../page/moved-items.ts';
import type { Typefaces } from '../page/typeface.ts';
import type { DrawnDesign } from '../sheet-facts.ts';
import { asPart, type FlowPart, pourSections, type Section } from './flow.ts';
import { coverParts } from './cover.ts';
import { bodyWidth, framedPage, pageFrame, type PrintPaper } from './page-frame.ts';
import { panelParts } from './panel-parts.ts';
import { pieceCard } from './piece-cards.ts';
import { pieceTable, stripTable } from './kind-tables.ts';
import type { PrintContext } from './print-context.ts';
import { recordParts } from './record-card.ts';
import { buyingParts } from './buying-parts.ts';
import { kitSections } from './kit-parts.ts';
import { stepTables } from './step-tables.ts';
import { blankSections } from './blank-parts.ts';
import { sensitivityParts } from './sensitivity-parts.ts';
import { stepOfStock } from '../../shop/steps/job-steps.ts';
import { lengthFigures } from '../../words/figures.ts';
import { writeWords } from '../../words/write-words.ts';
import { closingParts, objectParts } from './object-parts.ts';
import { priceParts } from './price-parts.ts';
import { stepParts } from './step-parts.ts';
import { sheetSections } from './sheet-parts.ts';
import { stickParts } from './stick-parts.ts';
import { stripCard } from './strip-cards.ts';
import { labelParts, pieceLabel, stripLabel } from './tray-labels.ts';

/** The pages of a plan. `drawn` is the design that the plan was made from; pieces are drawn from it at full size. */
export function printSheet(plan: ShopPlan, drawn: DrawnDesign, paper: PrintPaper, typefaces: Typefaces): PageFile {
  const { units } = drawn.design;
  const context: PrintContext = {
    plan,
    drawn,
    typefaces,
    width: bodyWidth(paper),
    figures: lengthFigures(units),
    say: (said) => writeWords(said, units),
  };
  const frame = pageFrame(paper, context);
  const bodies = pourSections(sections(context, frame.body.height), frame.body.height);
  const pages = bodies.map((body, index) => {
    const items = movedItems(body.items, frame.body.left, frame.body.top);
    return framedPage(frame, body, items, index + 1, bodies.length, context);
  });
  const title = `${plan.title ?? 'Shop plan'}: shop sheet`;
  const summary = `${plan.source}, text ${plan.revision}, ${pages.length} pages`;
  return { title, summary, palette: blackAndWhite, pages };
}

function sections(context: PrintContext, height: number): Section[] {
  const { plan, drawn } = context;
  const { strips, pieces } = drawn.kinds;
  const stepsOf = (sheet: string): FlowPart[] =>
    plan.steps
      .filter((step) => step.sheet === sheet)
      .flatMap((step) => stepParts(step, stepTables(step.title, context), context));
  return [
    { title: 'Shop sheet', part: 1, parts: coverParts(context) },
    ...drawn.panels.map((laid): Section => ({
      title: `Panel ${laid.panel.name}`,
      part: 1,
      parts: panelParts(laid, height, context),
    })),
    ...blankSections(height, context),
    {
      title: 'Buy and mill',
      part: 1,
      parts: [
        ...buyingParts(context),
        ...stocksOf('cut to length', plan).flatMap((stock) => stickParts(stock, context)),
      ],
    },
    { title: 'Steps', part: 1, parts: stepsOf('to the lattice') },
    {
      title: 'Strips',
      part: 1,
      parts:
        strips.length === 0
          ? []
          : [stripTable(context), ...strips.flatMap((strip) => stripCard(strip, context)).map(asPart)],
    },
    {
      title: 'Labels for the strips',
      part: 1,
      parts: labelParts(
        plan.strips.map((strip) => stripLabel(strip, context)),
        context,
      ),
    },
    { title: 'Record card', part: 1, parts: [...recordParts(context), ...closingParts(context)] },
    { title: 'Record card, what measuring changes', part: 2, parts: sensitivityParts(context) },
    { title: 'Steps', part: 2, parts: stepsOf('after measuring') },
    ...stickSections(context),
    {
      title: 'Pieces',
      part: 2,
      parts:
        pieces.length === 0 ? [] : [pieceTable(context), ...pieces.map((piece) => asPart(pieceCard(piece, context)))],
    },
    {
      title: 'Labels for the pieces',
      part: 2,
      parts: labelParts(
        plan.pieces.map((piece) => pieceLabel(piece, context)),
        context,
      ),
    },
    ...sheetSections(height, context),
    { title: 'Work and price', part: 2, parts: [...objectParts(context), ...priceParts(context)] },
    ...kitSections(context),
  ];
}

/** The sticks of every step, a section a step, in the order of the job. */
function stickSections(context: PrintContext): Section[] {
  const { plan } = context;
  return plan.steps.flatMap(({ title, order }): Section[] => {
    const stocks = title === 'cut to length' ? [] : stocksOf(title, plan);
    if (stocks.length === 0) return [];
    const parts = stocks.flatMap((stock) => stickParts(stock, context));
    return [{ title: `Sticks for step ${order}, ${title}`, part: 2, parts }];
  });
}

const stocksOf = (step: string, plan: ShopPlan): ShopPlan['stock'] =>
  plan.stock.filter(({ stock }) => stepOfStock(stock, plan) === step);
