/** Templates of panels, outlines and boards. */
import { figure, joined, measure, words, type Words } from '../../../grammar/words.ts';
import type { Outline, Panel } from '../../design/design-model.ts';
import type { Design } from '../../design/design.ts';
import { flattenContour } from '../../geometry/flatten-path.ts';
import { grownRings } from '../../geometry/grow-rings.ts';
import type { Contour } from '../../geometry/path.ts';
import { distance, type Point } from '../../geometry/point.ts';
import { boundsOf } from '../../geometry/polygons.ts';
import { regionOf } from '../../geometry/region.ts';
import type { LineFamily } from '../../lattice/grid/grid-lines.ts';
import { measuredGrid } from '../../lattice/grid/measured-grid.ts';
import { panelRegion } from '../../lattice/grid/panel-region.ts';
import { registerNodes } from '../../lattice/grid/register-nodes.ts';
import { stripAxes } from '../../lattice/strips/strip-axes.ts';
import { facedParts } from '../../shop/lines/faced-parts.ts';
import { contoursOf } from '../../shop/lines/part-contours.ts';
import { tightestCut, tightHollows } from '../../shop/lines/tight-hollows.ts';
import { bandThickness, sawAllowance, type ThreeLines, threeLines } from '../../shop/lines/three-lines.ts';
import { writeWords } from '../../words/write-words.ts';
import { type DrawnDesign, sheetFacts } from '../sheet-facts.ts';
import { caulTemplate } from './caul-template.ts';
import { drillingTemplate } from './drilling-template.ts';
import type { RegisterMark, Template, TemplateLine, TemplateSpot } from './template.ts';
import { type PartSubject, type TemplateSubject } from './template-subject.ts';

/** Centre lines run on so far beyond the outermost line, to be laid on strips that stand out there. */
const axesBeyond = 8;

/**
 * The template of a subject, seen from the front; null where there is nothing to make one of. `source` names the file and
 * the state of its text.
 */
export function buildTemplate(drawn: DrawnDesign, subject: TemplateSubject, source: string): Template | null {
  if (subject.kind === 'band') return caulTemplate(drawn, subject.band, source);
  if (subject.kind === 'work') return drillingTemplate(drawn, subject.work, source);
  const broken = subject.kind === 'panel' && !drawn.panels.some(({ panel }) => panel === subject.panel);
  return broken ? null : partTemplate(drawn, subject, source);
}

/** An outline that one panel alone has is drawn with that panel's lattice. */
function partTemplate(drawn: DrawnDesign, subject: PartSubject, source: string): Template {
  const { design } = drawn;
  const panel = panelUnder(design, subject);
  const lines = subject.kind === 'panel' && subject.panel.edge === 'framed' ? null : linesOf(design, subject);
  const finished = lines?.finished ?? contoursOf(measuredPart(subject));
  const shown = lines ? shownLines(lines) : [{ kind: 'finished' as const, contours: finished }];
  const ground = (shown[0]?.contours ?? finished).map(flattenContour);
  const families = panel ? panelRegion(measured(panel)).families : [];
  const marks = marksOf(subject, families, finished);
  const facts = sheetFacts(
    drawn,
    drawn.panels.filter((laid) => laid.panel === panel),
    source,
  );
  const say = (said: Words): string => writeWords(said, design.units);
  const bounds = boundsOf(ground.flat());
  return {
    name: subject.name,
    heading: `${subject.kind} ${subject.name}`,
    seenFrom: 'front',
    units: design.units,
    lines: shown,
    scribe: lines?.scribe ?? [],
    axes: stripAxes(families, grownRings(ground, axesBeyond, 'round')),
    marks,
    spots: lines ? tightSpots(design, lines, say) : [],
    ground,
    bounds,
    origin: facts.origin,
    assumptions: [
      ...facts.assumptions,
      ...(lines ? [say(distanceWords(lines))] : []),
      ...(panel ? [...scribeWords(panel, lines).map(say), ...handText(design, panel)] : []),
    ],
    use:
      marks.length > 2
        ? 'Prick the numbered crosses through and lay each on the middle of its node; the thin lines run along the middles of the strips.'
        : null,
    check: say(checkWords(marks, finished)),
  };
}

const finishedPart = (subject: PartSubject): Panel | Outline => {
  if (subject.kind === 'panel') return subject.panel;
  return subject.kind === 'outline' ? subject.outline : subject.board.outline;
};

/** The panel as its lattice came out. */
const measured = (panel: Panel): Panel => ({ ...panel, grid: measuredGrid(panel.grid) });

const measuredPart = (subject: PartSubject): Panel | Outline =>
  subject.kind === 'panel' ? measured(subject.panel) : finishedPart(subject);

function panelUnder(design: Design, subject: PartSubject): Panel | null {
  if (subject.kind === 'panel') return subject.panel;
  if (subject.kind === 'board') return null;
  const having = design.panels.filter(({ shape }) => shape.kind === 'outline' && shape.outline === subject.outline);
  return having.length === 1 ? (having[0] ?? null) : null;
}

function linesOf(design: Design, subject: PartSubject): ThreeLines {
  const part = finishedPart(subject);
  const panel = panelUnder(design, subject);
  const edge = panel ?? part;
  return threeLines(
    contoursOf(measuredPart(subject)),
    bandThickness(design, edge),
    sawAllowance(design, edge),
    panel ? facedParts(panel, design) : [],
  );
}

/** The finished line is the outermost where bands are thicker than what the saw leaves. */
function shownLines({ finished, sand, saw, bandMm, allowanceMm }: ThreeLines): TemplateLine[] {
  const [edge, cut, inner] = [
    { kind: 'finished', contours: finished },
    { kind: 'saw', contours: saw },
    { kind: 'sand', contours: sand },
  ] as const;
  if (bandMm === 0) return [cut, edge];
  return bandMm > allowanceMm ? [edge, cut, inner] : [cut, edge, inner];
}

function marksOf(subject: PartSubject, families: readonly LineFamily[], finished: readonly Contour[]): RegisterMark[] {
  if (subject.kind === 'board') {
    const { pivot } = subject.board;
    return pivot ? [{ label: 'pivot', at: pivot }] : [];
  }
  if (families.length === 0) return [];
  return registerNodes(families, regionOf(finished.map(flattenContour))).map((at, index) => ({
    label: String(index + 1),
    at,
  }));
}

/** Hollows that the bench's blade does not turn through: sawn in from both sides, or drilled. */
function tightSpots(
  { benches }: Design,
  { finished, bandMm, allowanceMm }: ThreeLines,
  say: (said: Words) => string,
): TemplateSpot[] {
  const tightest = tightestCut(benches);
  if (tightest === null) return [];
  return tightHollows(finished, allowanceMm - bandMm, tightest).map(({ at, radius }) => ({
    at,
    text: say(
      words`${radius === 0 ? 'inside corner' : words`hollow of ${figure.length(radius)}`}: the blade turns no tighter than ${figure.length(tightest)}`,
    ),
  }));
}

function distanceWords({ bandMm, allowanceMm }: ThreeLines): Words {
  const saw = words`saw line ${figure.length(allowanceMm)} outside`;
  if (bandMm === 0) return words`no band: sand to the finished line; ${saw} it`;
  return words`sand line ${figure.length(bandMm)} inside the finished line, for the bands; ${saw} the sand line`;
}

/** How much the saw leaves for fitting, and to what. */
function scribeWords({ meets }: Panel, lines: ThreeLines | null): Words[] {
  if (!lines || lines.scribe.length === 0) return [];
  const parts = meets.map(({ other, leave }) => words`${figure.length(leave)} towards ${other.name}`);
  return [words`scribe line: so much is left outside it, ${joined(parts, ', ')}; trim to it while fitting`];
}

/** Mirrored places of the panel in the work: a cut-out for them is turned over. */
function handText({ work }: Design, panel: Panel): string[] {
  const places = (work?.placements ?? []).filter(({ part }) => part.kind === 'panel' && part.panel === panel);
  const mirrored = places.filter((place) => place.mirrored).length;
  if (mirrored === 0) return [];
  return [
    `hand: ${mirrored} of ${places.length} in the work ${mirrored === 1 ? 'is' : 'are'} mirrored and cut by the template seen from the back`,
  ];
}

function checkWords(marks: readonly RegisterMark[], finished: readonly Contour[]): Words {
  const [first, second] = marks;
  if (first && second)
    return words`Check: from node ${first.label} to node ${second.label} is ${measure.length(distance(first.at, second.at))}`;
  const { left, right } = boundsOf(finished.flatMap((contour): Point[] => flattenContour(contour)));
  return words`Check: the finished line is ${measure.length(right - left)} wide`;
}
