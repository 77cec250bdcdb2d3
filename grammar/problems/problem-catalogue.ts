/** Every diagnostic's stable code, written once. A code is never reused for another meaning. */
import type { Problem, RelatedPlace, Severity } from './problem.ts';
import type { SourceRange } from '../tree/source-range.ts';
import type { Words } from '../words.ts';

interface CatalogueEntry {
  readonly code: string;
  readonly severity: Severity;
}

const entry = (code: string, severity: Severity): CatalogueEntry => ({ code, severity });

/** 01xx text and syntax, 02xx names, 03xx quantities, 04xx grid and strips, 05xx motifs, 06xx outlines, 07xx panels, 08xx materials and money, 09xx the work, 10xx objects made of panels. */
export const problemCatalogue = {
  unreadableCharacter: entry('LAP0101', 'error'),
  unexpectedWord: entry('LAP0102', 'error'),
  unclosedBlock: entry('LAP0103', 'error'),
  unknownDeclaration: entry('LAP0104', 'error'),
  unknownProperty: entry('LAP0105', 'error'),
  missingProperty: entry('LAP0106', 'error'),
  repeatedProperty: entry('LAP0107', 'error'),
  unknownName: entry('LAP0201', 'error'),
  repeatedName: entry('LAP0202', 'error'),
  cyclicName: entry('LAP0203', 'error'),
  wrongKindOfName: entry('LAP0204', 'error'),
  cannotUseFile: entry('LAP0205', 'error'),
  cyclicUse: entry('LAP0206', 'error'),
  usedFileHasErrors: entry('LAP0207', 'error'),
  ambiguousName: entry('LAP0209', 'warning'),
  wrongDimension: entry('LAP0301', 'error'),
  notPositive: entry('LAP0302', 'error'),
  outOfRange: entry('LAP0303', 'error'),
  notANumber: entry('LAP0304', 'error'),
  lengthWithoutUnit: entry('LAP0305', 'error'),
  gridFinerThanStrips: entry('LAP0401', 'error'),
  unequalDepths: entry('LAP0402', 'error'),
  kerfWiderThanNotch: entry('LAP0403', 'error'),
  tooManyAtNode: entry('LAP0404', 'error'),
  stripsOverlap: entry('LAP0405', 'error'),
  notchAtEnd: entry('LAP0406', 'warning'),
  notchesMeet: entry('LAP0407', 'error'),
  thinWall: entry('LAP0408', 'warning'),
  stripMissesPanel: entry('LAP0409', 'warning'),
  stripsCollide: entry('LAP0410', 'warning'),
  motifDoesNotFitCell: entry('LAP0501', 'error'),
  pieceWithoutLength: entry('LAP0502', 'error'),
  tipOutOfRange: entry('LAP0503', 'error'),
  pieceLosesWood: entry('LAP0504', 'warning'),
  piecesOverlap: entry('LAP0505', 'error'),
  tooManyLevels: entry('LAP0506', 'error'),
  bevelNotOnBench: entry('LAP0507', 'warning'),
  dividerDoesNotCross: entry('LAP0508', 'error'),
  impossibleLap: entry('LAP0509', 'error'),
  pieceTooShort: entry('LAP0510', 'warning'),
  hingeDoesNotFold: entry('LAP0511', 'error'),
  outlineNotClosed: entry('LAP0601', 'error'),
  outlineCrossesItself: entry('LAP0602', 'error'),
  impossibleArc: entry('LAP0603', 'error'),
  badPathData: entry('LAP0604', 'error'),
  cornerCannotBeRounded: entry('LAP0605', 'error'),
  repeatedPoint: entry('LAP0606', 'error'),
  outlineLeavesNothing: entry('LAP0607', 'error'),
  outlineInPieces: entry('LAP0608', 'error'),
  badSvgFile: entry('LAP0609', 'error'),
  tooManyPieces: entry('LAP0701', 'error'),
  emptyPanel: entry('LAP0702', 'error'),
  nothingToFill: entry('LAP0703', 'warning'),
  mapDoesNotFit: entry('LAP0704', 'error'),
  sliverLeft: entry('LAP0705', 'information'),
  fitLeavesOver: entry('LAP0706', 'warning'),
  fitTooLarge: entry('LAP0707', 'error'),
  frameNotStraight: entry('LAP0708', 'warning'),
  infillOverGroove: entry('LAP0709', 'warning'),
  nothingTakesTurns: entry('LAP0710', 'warning'),
  memberWiderThanStrip: entry('LAP0711', 'error'),
  notACurrency: entry('LAP0801', 'error'),
  secondCurrency: entry('LAP0802', 'error'),
  faceFromKerfUnclear: entry('LAP0803', 'error'),
  layerTooDeep: entry('LAP0804', 'error'),
  woodNotKnown: entry('LAP0805', 'warning'),
  sticksTooShort: entry('LAP0806', 'error'),
  secondWork: entry('LAP0901', 'error'),
  countDiffersFromCopies: entry('LAP0902', 'warning'),
  notPlaced: entry('LAP0903', 'error'),
  unknownStep: entry('LAP0904', 'error'),
  cutOutWithoutPlace: entry('LAP0905', 'error'),
  stepHasNoUnit: entry('LAP0906', 'warning'),
  bandWillNotBend: entry('LAP1001', 'warning'),
  bandWithoutRoom: entry('LAP1002', 'warning'),
  bandTooNarrow: entry('LAP1003', 'warning'),
  insertOutsideMould: entry('LAP1004', 'error'),
  insertAbovePour: entry('LAP1005', 'warning'),
  boardLargerThanSheet: entry('LAP1006', 'error'),
  pivotOutsideBoard: entry('LAP1007', 'warning'),
  partsOverlap: entry('LAP1008', 'warning'),
  partBesideBoard: entry('LAP1009', 'warning'),
} as const satisfies Record<string, CatalogueEntry>;

export type ProblemName = keyof typeof problemCatalogue;

/** A problem of the catalogue at a place. */
export function problemAt(
  name: ProblemName,
  range: SourceRange,
  message: Words,
  related: readonly RelatedPlace[] = [],
): Problem {
  const { code, severity } = problemCatalogue[name];
  return related.length > 0 ? { code, severity, range, message, related } : { code, severity, range, message };
}
