/** Sheets that printers take, upright, in millimetres: ISO 216 and ASME Y14.1 (A and B, called letter and tabloid). */

export const paperSizes = {
  A4: { width: 210, height: 297 },
  A3: { width: 297, height: 420 },
  letter: { width: 215.9, height: 279.4 },
  tabloid: { width: 279.4, height: 431.8 },
} as const;

export type PaperName = keyof typeof paperSizes;
