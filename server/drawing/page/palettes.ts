/** How lines, areas and letters are inked: in colour for drawings on a screen, in black and white for the printed sheet. */
import type { Look, Palette } from './page-model.ts';

export const ink = '#33281d';
const accent = '#0f5257';
const paper = '#ffffff';
const wood = '#f3e8d0';

const lined = (stroke: string, width: number, dash: readonly number[] = []): Look => ({
  fill: null,
  stroke,
  width,
  dash,
});
const filled = (fill: string): Look => ({ fill, stroke: null, width: 0, dash: [] });
const both = (fill: string, stroke: string, width: number, dash: readonly number[] = []): Look => ({
  fill,
  stroke,
  width,
  dash,
});

const shortDashes = [1.2, 0.6];
const axisDashes = [5, 1, 0.6, 1];

/** Widths of ISO 128's 0.35 group: visible edges wide, all else narrow. */
export const coloured: Palette = {
  looks: {
    edge: lined(ink, 0.35),
    hidden: lined(ink, 0.18, shortDashes),
    axis: lined(ink, 0.18, axisDashes),
    thin: lined(accent, 0.18),
    guide: lined('#b5c8c8', 0.18),
    outline: lined(accent, 0.45),
    rule: lined(ink, 0.25),
    fold: lined(ink, 0.18, shortDashes),
    wood: both(wood, ink, 0.35),
    bare: filled(wood),
    cut: both(paper, ink, 0.35),
    box: both(paper, ink, 0.3),
    arrow: filled(accent),
    cutCell: both(wood, ink, 0.35, shortDashes),
    waste: both('#d9d4c8', ink, 0.18),
    panel: filled('#ece6d8'),
  },
  letters: { plain: ink, quiet: '#6b5d4d', accent, reversed: paper },
};

const black = '#000000';

/** For any printer: no colour means anything, and grey only fills. */
export const blackAndWhite: Palette = {
  looks: {
    edge: lined(black, 0.35),
    hidden: lined(black, 0.2, shortDashes),
    axis: lined(black, 0.15, axisDashes),
    thin: lined(black, 0.18),
    guide: lined('#808080', 0.15),
    outline: lined(black, 0.6),
    rule: lined(black, 0.3),
    fold: lined(black, 0.2, [2, 1.5]),
    wood: both(paper, black, 0.35),
    bare: filled(paper),
    cut: both(paper, black, 0.35),
    box: both(paper, black, 0.35),
    arrow: filled(black),
    cutCell: both(paper, black, 0.35, shortDashes),
    waste: both('#c8c8c8', black, 0.2),
    panel: filled('#e6e6e6'),
  },
  letters: { plain: black, quiet: '#404040', accent: black, reversed: paper },
};
