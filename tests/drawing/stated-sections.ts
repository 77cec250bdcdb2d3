/** Sections of a plan as a file with everything stated would have them, for tests of the printed sheet alone. */
import type { ShopPlan } from '../../server/shop/shop-plan.ts';

/** A class of three; the marks are those of samples/lamp.lap. */
export const statedSections: Partial<ShopPlan> = {
  kit: {
    name: 'coaster_class',
    panel: 'lamp_side',
    students: 3,
    done: ['milled', 'notched', 'cut'],
    bag: [
      { mark: 'S1', n: 3, spare: 0, lengthMm: 257, label: 'S1: 3 × strip, 257.0 mm, notched, cut to length' },
      { mark: 'A1', n: 96, spare: 2, lengthMm: 28.2, label: 'A1: 96 + 2 spare × arm, 28.2 mm, cut to length' },
      { mark: 'D', n: 24, spare: 1, lengthMm: 55.2, label: 'D: 24 + 1 spare × diagonal, 55.2 mm, cut to length' },
    ],
    teacherBox: [
      { mark: 'A1', n: 7 },
      { mark: 'D', n: 3 },
    ],
    spares: [
      { mark: 'A1', needed: 288, perBag: 306, pooled: 299, stated: null },
      { mark: 'D', needed: 72, perBag: 81, pooled: 77, stated: null },
    ],
    confidencePct: 95,
    breakagePct: 3,
    jigs: {
      sets: 2,
      studentsPerSet: 2,
      jigs: [{ jig: 'bevel jig', angle: 22.5, stopMm: 31.8, caliperMm: 30.2, keys: false, flip: false, marks: ['A1'] }],
    },
    card: [
      'Count the bag.',
      'A1: bevel jig 22.5°, stop at 31.8 mm; test one before the rest.',
      'Turn it over and tap it: nothing drops out.',
    ],
    problems: ['3 students build one lamp_side each, and 4 are made; make the panel’s copies 3.'],
  },
  frames: [
    {
      panel: 'lamp_side',
      stock: 'frame_ash',
      corners: 'mitred',
      joint: 'groove',
      jointDepthMm: 4,
      jointWidthMm: 8,
      members: [
        { mark: 'F1', lengthMm: 271, innerMm: 249, widthMm: 11, ends: [45, 45], make: 8 },
        { mark: 'F2', lengthMm: 187, innerMm: 165, widthMm: 11, ends: [45, 45], make: 8 },
      ],
      bearing: null,
      groovePieces: [],
    },
  ],
  hanging: {
    loadG: 4200,
    fixings: 2,
    eachG: 8000,
    safety: 2,
    carriesG: 8000,
    verdict: 'holds',
    fixingsNeeded: 2,
    cleat: { heightMm: 180, fromMm: -120, toMm: 120, lengthMm: 240 },
    spacer: null,
    drill: [
      { xMm: 40, yMm: 172 },
      { xMm: 200, yMm: 172 },
    ],
    notes: ['Ask the maker of the wall what it carries.'],
  },
  labour: {
    hourly: 42,
    currency: 'EUR',
    lines: [{ step: 'cut infill', per: 'piece', minutesEach: 0.5, units: 606, minutes: 303 }],
    handsOnMin: 303,
    waitH: 12,
    elapsedDays: 2,
    hoursPerDay: 8,
    notStated: [],
  },
  cost: {
    currency: 'EUR',
    copies: 2,
    lines: [
      { kind: 'material', what: 'sticks of bass', perCopy: 18.5 },
      { kind: 'labour', what: 'by hand', perCopy: 106.05 },
      { kind: 'gain', what: 'margin 30 %', perCopy: 53.38 },
    ],
    costPerCopy: 124.55,
    pricePerCopy: 177.93,
    taxPerCopy: 33.81,
    buyerPaysPerCopy: 211.74,
    direct: null,
    materials: [],
    editionPrice: 355.86,
    problems: ['frame_ash: no price is stated; it is not in the cost.'],
  },
};
