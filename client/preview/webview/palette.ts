/** The colours of the drawing: tints of wood for each theme, and accents taken from the page's style sheet. */
import type { DrawingLayer } from '../../../server/drawing/drawing.ts';

export type Theme = 'light' | 'dark' | 'highContrast' | 'highContrastLight';

export interface Paint {
  readonly fill: string;
  readonly line: string;
}

export interface Palette {
  readonly paper: string;
  /** The ground inside the outline, seen through the openings. */
  readonly ground: string;
  readonly outline: string;
  readonly text: string;
  /** Resin that is coloured, and clear resin. */
  readonly resin: Paint;
  readonly clear: Paint;
  readonly marked: Paint;
  readonly error: string;
  readonly warning: string;
  readonly font: string;
  paintOf(layer: DrawingLayer): Paint;
}

/** Hue (degrees), saturation and lightness (percent) of planed wood by daylight. */
type Tint = readonly [hue: number, saturation: number, lightness: number];

const plainWood: Tint = [36, 40, 74];
const woodTints: Readonly<Record<string, Tint>> = {
  ash: [38, 38, 78],
  basswood: [44, 52, 87],
  beech: [26, 42, 70],
  birch: [42, 44, 83],
  cedar: [19, 46, 62],
  cherry: [18, 48, 57],
  cypress: [40, 56, 80],
  maple: [41, 46, 85],
  oak: [34, 36, 64],
  pine: [43, 58, 80],
  poplar: [56, 28, 77],
  spruce: [45, 46, 84],
  walnut: [24, 32, 38],
};

/** The tint of `wood` by its last word that is known ("white_ash" is ash); other wood is plain. */
function tintOf(wood: string | null): Tint {
  const words = (wood ?? '').split('_').reverse();
  return words.map((word) => woodTints[word]).find((tint) => tint !== undefined) ?? plainWood;
}

const hsl = (hue: number, saturation: number, lightness: number): string =>
  `hsl(${hue} ${saturation}% ${Math.min(Math.max(lightness, 4), 96)}%)`;

/** Lightness gained by each strip layer nearer to the viewer. */
const layerStep = 4;

function woodPaint(theme: Theme, wood: string | null, lift: number): Paint {
  const [hue, saturation, lightness] = tintOf(wood);
  if (theme === 'dark') {
    const shade = lightness * 0.78 + lift;
    return { fill: hsl(hue, saturation * 0.72, shade), line: hsl(hue, saturation * 0.6, shade * 0.3) };
  }
  const shade = lightness - 9 + lift;
  return { fill: hsl(hue, saturation, shade), line: hsl(hue, saturation * 0.8, shade * 0.34) };
}

/** Reads the theme VS Code set on `body`, and the accents its style sheet gives for it. */
export function readPalette(body: HTMLElement): Palette {
  const theme = themeOf(body.classList);
  const style = getComputedStyle(body);
  const token = (name: string): string => style.getPropertyValue(`--halflap-${name}`).trim();
  const isHighContrast = theme === 'highContrast' || theme === 'highContrastLight';
  const paintNamed = (name: string): Paint => ({ fill: token(name), line: token(`${name}-line`) });
  return {
    paper: style.backgroundColor,
    ground: token('ground'),
    outline: token('outline'),
    text: style.color,
    resin: paintNamed('resin'),
    clear: paintNamed('clear'),
    marked: paintNamed('marked'),
    error: token('error'),
    warning: token('warning'),
    font: style.fontFamily,
    paintOf({ kind, level, wood }) {
      switch (kind) {
        case 'trimmed':
        case 'offcut':
          return paintNamed(kind);
        case 'board':
          return isHighContrast ? paintNamed('offcut') : woodPaint(theme, wood, -layerStep);
        case 'strip':
          return isHighContrast ? paintNamed('strip') : woodPaint(theme, wood, (level - 1) * layerStep);
        case 'piece':
        case 'region':
        case 'outline':
        case 'note':
        case 'resin':
          return isHighContrast ? paintNamed('piece') : woodPaint(theme, wood, layerStep);
      }
    },
  };
}

function themeOf(classes: DOMTokenList): Theme {
  if (classes.contains('vscode-high-contrast-light')) return 'highContrastLight';
  if (classes.contains('vscode-high-contrast')) return 'highContrast';
  return classes.contains('vscode-dark') ? 'dark' : 'light';
}
