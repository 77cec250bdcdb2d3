/** The design of an empty file. */
import type { Design } from './design.ts';

export const emptyDesign: Design = {
  title: null,
  units: 'mm',
  woods: [],
  sheets: [],
  resins: [],
  finishes: [],
  strips: [],
  benches: [],
  grids: [],
  motifs: [],
  outlines: [],
  panels: [],
  blanks: [],
  bands: [],
  pours: [],
  boards: [],
  work: null,
  kits: [],
};
