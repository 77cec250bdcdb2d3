/** Woods, sheets, resins and finishes: the figures the file states. */
import { counted } from '../../../grammar/words.ts';
import type { Analysis } from '../../analyse.ts';
import type { FinishStock, Money, ResinStock, SheetStock, WoodDeclaration } from '../../design/material-model.ts';
import { heading, type HoverLines } from './hover-text.ts';
import { moneyText, durationText, lengthText, percentText, plain } from '../../words/figures.ts';

export const priceText = ({ amount, currency }: Money): string => moneyText(amount, currency);

/** `text` of a figure that the file states, else nothing. */
const stated = <Figure>(figure: Figure | null, text: (figure: Figure) => string): string =>
  figure === null ? '' : text(figure);

export function woodHover({ design }: Analysis, wood: WoodDeclaration): HoverLines {
  const strips = design.strips.filter((strip) => strip.wood === wood.name).map(({ name }) => `\`${name}\``);
  const shrinkage = [
    stated(wood.radialShrinkage, (share) => `radial ${percentText(share)}`),
    stated(wood.tangentialShrinkage, (share) => `tangential ${percentText(share)}`),
  ].filter(Boolean);
  return [
    heading(
      'wood',
      wood.name,
      stated(wood.porous, (porous) => (porous ? 'porous' : 'closed')),
    ),
    stated(wood.density, (density) => `Density ${plain(density, 0)} kg/m³`),
    stated(wood.rupture, (rupture) => `Modulus of rupture ${plain(rupture, 1)} MPa`),
    stated(wood.elasticity, (elasticity) => `Modulus of elasticity ${plain(elasticity, 2)} GPa`),
    shrinkage.length > 0 ? `Shrinkage ${shrinkage.join(', ')}` : '',
    strips.length > 0 ? `Strips of it: ${strips.join(', ')}` : 'No strip is of it',
  ];
}

export function sheetHover({ design: { units } }: Analysis, sheet: SheetStock): HoverLines {
  return [
    heading('sheet', sheet.name, `${lengthText(sheet.thickness, units)} thick`),
    ...sheet.sizes.map(
      ({ width, height, price }) =>
        `${lengthText(width, units)} x ${lengthText(height, units)}${stated(price, (money) => `, ${priceText(money)}`)}`,
    ),
    stated(sheet.density, (density) => `Density ${plain(density, 0)} kg/m³`),
  ];
}

export function resinHover({ design: { units } }: Analysis, resin: ResinStock): HoverLines {
  const { mix, recoat } = resin;
  return [
    heading('resin', resin.name),
    `${plain(resin.density, 2)} g/mL, ${plain(mix.a, 2)} to ${plain(mix.b, 2)} by ${mix.by}`,
    stated(resin.deepestPour, (depth) => `Deepest layer ${lengthText(depth, units)}`),
    stated(resin.potLife, (life) => `Pot life ${durationText(life)}`),
    stated(
      recoat,
      ({ earliest, latest }) => `Next layer after ${durationText(earliest)}, before ${durationText(latest)}`,
    ),
    stated(resin.price, ({ money, per }) => `${priceText(money)} for ${plain(per, 0)} g`),
  ];
}

export function finishHover(_: Analysis, finish: FinishStock): HoverLines {
  return [
    heading('finish', finish.name),
    `${plain(finish.coverage, 1)} m² a litre, ${counted(finish.coats, 'coat')}`,
    finish.loss > 0 ? `Loss ${percentText(finish.loss)}` : '',
    stated(finish.recoat, (time) => `Next coat after ${durationText(time)}`),
    stated(finish.price, (money) => `${priceText(money)} a litre`),
  ];
}
