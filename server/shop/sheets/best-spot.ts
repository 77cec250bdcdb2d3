/** A better place for one piece among all the others: searches along lines through its own place and through others. */
import type { Layout, Spot } from './layout.ts';
import { LineSearch } from './line-search.ts';
import type { Room } from './nest-kind.ts';
import type { Random } from './seeded-random.ts';

/** Lines at random that are looked along, for each turn a piece may take. */
const chances = 3;
/** Line searches from one place. */
const mostLines = 6;

interface Valued {
  readonly spot: Spot;
  readonly overlap: number;
}

/** With where its origin may be moved from there. */
interface Chance extends Valued {
  readonly fit: Room | null;
}

export class SpotSearch {
  private readonly layout: Layout;
  private readonly lines: LineSearch;
  private readonly random: Random;

  constructor(layout: Layout, random: Random) {
    this.layout = layout;
    this.lines = new LineSearch(layout);
    this.random = random;
  }

  /** The spot with the least weighted overlap that was found; never worse than the piece's own. */
  best(piece: number): Valued {
    const own = this.layout.spot(piece);
    let best: Chance = { spot: own, overlap: this.layout.overlapAt(piece, own, Infinity), fit: null };
    let chance: Chance = { spot: own, overlap: Infinity, fit: null };
    for (const variant of this.layout.choices[this.layout.kinds[piece] ?? 0] ?? []) {
      const fits = this.layout.fits(variant);
      const home = nearestFit(fits, own);
      if (!home) continue;
      best = this.descended(piece, heldIn({ ...own, variant }, home), home, best);
      for (let look = 0; look < chances && best.overlap > 0 && chance.overlap > 0; look++)
        chance = this.better(chance, piece, variant, fits[Math.floor(this.random() * fits.length)] ?? home);
    }
    return best.overlap > 0 && chance.fit ? this.descended(piece, chance.spot, chance.fit, best) : best;
  }

  /** The best place on a line at random, where it is better than what was met before. */
  private better(before: Chance, piece: number, variant: number, fit: Room): Chance {
    const spot = this.alongAxis(piece, this.anywhere(variant, fit), fit, this.random() < 0.5);
    const overlap = this.layout.overlapAt(piece, spot, before.overlap);
    return overlap < before.overlap ? { spot, overlap, fit } : before;
  }

  private anywhere(variant: number, { left, right, bottom, top }: Room): Spot {
    return { variant, x: left + this.random() * (right - left), y: bottom + this.random() * (top - bottom) };
  }

  /** Along x and along y in turn, until neither helps. */
  private descended(piece: number, start: Spot, fit: Room, best: Chance): Chance {
    let here: Chance = { spot: start, overlap: Infinity, fit };
    let isAlongX = this.random() < 0.5;
    let idle = 0;
    for (let line = 0; line < mostLines && idle < 2; line++) {
      const spot = this.alongAxis(piece, here.spot, fit, isAlongX);
      const overlap = this.layout.overlapAt(piece, spot, here.overlap);
      idle = overlap < here.overlap ? 0 : idle + 1;
      if (overlap < here.overlap) here = { spot, overlap, fit };
      if (here.overlap === 0) break;
      isAlongX = !isAlongX;
    }
    return here.overlap < best.overlap ? here : best;
  }

  private alongAxis(piece: number, { variant, x, y }: Spot, fit: Room, isAlongX: boolean): Spot {
    if (isAlongX) {
      const line = { x: 0, y, alongX: 1, alongY: 0, low: fit.left, high: fit.right };
      return { variant, x: this.lines.best(piece, variant, line), y };
    }
    const line = { x, y: 0, alongX: 0, alongY: 1, low: fit.bottom, high: fit.top };
    return { variant, x, y: this.lines.best(piece, variant, line) };
  }
}

/** Of places to be in, the one that a spot lies in or nearest to. */
function nearestFit(fits: readonly Room[], spot: Spot): Room | null {
  const away = (fit: Room): number => {
    const held = heldIn(spot, fit);
    return Math.abs(held.x - spot.x) + Math.abs(held.y - spot.y);
  };
  return fits.reduce<Room | null>((best, fit) => (best && away(best) <= away(fit) ? best : fit), null);
}

/** The nearest place in a room. */
export const heldIn = (spot: Spot, { left, right, bottom, top }: Room): Spot => ({
  ...spot,
  x: Math.min(right, Math.max(left, spot.x)),
  y: Math.min(top, Math.max(bottom, spot.y)),
});
