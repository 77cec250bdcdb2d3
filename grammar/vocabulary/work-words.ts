/** The words of the work. */
import { constant, declaration, link, property, unit } from './word-entry.ts';
import type { WordTable } from './word-entry.ts';

export const workWords = {
  beginning: {
    work: {
      copies: property('How many of this work are made.'),
      place: property('Where a panel, a board or a pour is in the work.'),
      hang: property('How the work hangs.'),
      finish: declaration('The finish it gets, or none.'),
      moisture: property('Of the wood where it is made and where it will hang.'),
      hourly: property('What an hour of work costs.'),
      minutes: property('Time one unit of a step takes.'),
      margin: property('Part of the price that is gain.'),
      markup: property('Gain as a part of the cost.'),
      commission: property('Part of the price that the seller keeps.'),
      tax: property('On top of the price.'),
      packing: property('Cost of packing one copy.'),
      losses: property('Part of the copies lost before they are sold.'),
    },
  },
  within: {
    placement: {
      at: link('The point where its own origin is.'),
      turned: link('Turned counter-clockwise about its own origin.'),
      mirrored: link('As seen in a mirror, top to bottom, before it is turned.'),
      in: unit('With front of: nearer to the viewer.'),
      front: link('Nearer to the viewer than what follows.'),
      of: property('What it is in front of.'),
    },
    hang: {
      cleat: constant('A bevelled rail on the wall and one on the work.'),
      screws: link('How many fixings carry it.'),
      each: link('What the maker of one fixing states it holds.'),
      safety: link('How many times the load the fixings must hold.'),
      height: link('Of the cleat, above the middle of the work.'),
    },
    finishUse: { none: constant('Left bare.') },
    moisture: { to: link('Where it will hang.') },
    commission: {
      of: property('The price that it is a part of.'),
      before_tax: constant('The price before tax.'),
      buyer_price: constant('What the buyer pays, tax in it.'),
    },
    labourUnit: {
      per: link('The unit that takes this time.'),
      setting: constant('Setting up a jig, a fence or a stop.'),
      pass: constant('One pass over the blade.'),
      piece: property('One piece of infill.'),
      strip: declaration('One strip.'),
      cell: constant('One cell.'),
      mix: property('One mix of resin.'),
      metre: constant('A metre of length.'),
      copy: property('One copy of the work.'),
    },
    minutes: {
      once: constant('One time for the whole job.'),
      for: link('The step of the job.'),
      wait: link('Time that must pass after the step.'),
    },
  },
} as const satisfies WordTable;
