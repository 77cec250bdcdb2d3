/** The words for materials, the bench's figures and prices, each with its one-line meaning. */
import { constant, declaration, link, property } from './word-entry.ts';
import type { WordEntry } from './word-entry.ts';

export const materialWords = {
  wood: declaration('Figures of a wood; in a strip, its species.'),
  sheet: declaration('Ply or another sheet, for boards.'),
  resin: declaration('A casting resin of two parts.'),
  finish: declaration('Oil, lacquer or wax; in the work, the one it gets.'),

  density: property('Mass in its volume: kg/m³ of wood and sheets, g/mL of resin.'),
  rupture: property('Modulus of rupture, MPa.'),
  elasticity: property('Modulus of elasticity, GPa.'),
  shrinkage: property('Lost in size from green to ovendry.'),
  radial: link('Across the growth rings.'),
  tangential: link('Along the growth rings.'),
  porous: property('With pores so wide that colour and resin run into them: seal first.'),
  closed: property('With pores so fine that colour stays where it is put.'),

  from_kerf: constant('As wide as the notching blade cuts, less the fit.'),
  on_hand: property('Sticks that lie in the rack already.'),
  end_trim: property('Cut off each end of a stick before anything else.'),
  breath: property('Left unused at each cut and in each stick, for a saw that wanders.'),
  keep_offcuts: property('Off-cuts at least this long go back into the rack.'),
  rip: property('The board strips are ripped from: thickness, width, length.'),
  thickness: link('The board’s thickness, planed to the size that follows.'),
  is: link('Says which size of the strip it is.'),
  rejoint: link('Taken off the board’s edge by the jointer.'),
  breakage: property('Part of the pieces that break.'),
  confidence: link('How sure it must be that the good ones suffice.'),

  ripping_kerf: property('Width of the cut of the ripping blade.'),
  shortest: property('The shortest piece that the jigs hold.'),
  gang: property('Strips notched in one pass.'),
  fixed_stop: property('Every notch is set from one end, not from the one before.'),
  pitch_error: property('What two settings of the pitch differ by.'),
  pitch_scatter: property('Scatter of one step of the pitch, one standard deviation.'),
  cuts: link('Width of the blade’s cut.'),

  thick: property('Thickness of a sheet.'),
  size: property('A size the sheet is sold in.'),
  margin: property('Not used along each edge; in the work, part of the price that is gain.'),

  mix: property('Parts of resin and hardener.'),
  volume: constant('Measured in cups.'),
  mass: constant('Weighed on scales.'),
  part: property('With densities: of the resin and of the hardener, before mixing.'),
  densities: link('Of the resin and of the hardener, g/mL.'),
  deepest: property('The deepest layer that may be poured at once.'),
  pot_life: property('Time the mix can be poured.'),
  recoat: property('When the next layer may follow: after the first time, before the second.'),
  cure: property('Time until it can be worked.'),
  mix_size: property('The most that is mixed at once.'),

  coverage: property('Square metres one litre covers, one coat.'),
  coats: property('How many coats.'),
  loss: property('Part of the finish that stays on brush and rag.'),
  price: property('What it costs.'),
  per: link('What the figure before is for.'),
} as const satisfies Record<string, WordEntry>;
