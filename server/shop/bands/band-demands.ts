/** The strips that a design's bands are cut from. */
import type { Design } from '../../design/design.ts';
import type { StockDemand } from '../stock/cut-every-stock.ts';
import { bandQuantity } from './band-quantity.ts';
import { measureBand } from './measure-band.ts';

/** One demand for each piece of each band, for the whole edition. */
export const bandDemands = (design: Design): StockDemand[] =>
  design.bands.flatMap((band) => {
    const total = bandQuantity(band, design);
    return measureBand(band, design.woods).runs.flatMap(({ pieces }) =>
      pieces.map(({ mark, cutLength }) => ({ stock: band.stock, mark, lengthMm: cutLength, total })),
    );
  });
