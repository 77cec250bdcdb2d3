/** The moisture wood comes to in air of one temperature and humidity. */

/**
 * Equilibrium moisture content in percent of the ovendry mass, in air of `celsius` degrees and relative humidity
 * `humidity` (0 to 1). Wood Handbook FPL-GTR-190 (2010), eq. 4-5 and Table 4-2: made for −1 to 130 °C, the same for
 * every wood. A humidity outside 0 to 1 (a percentage, say) is a RangeError.
 */
export function equilibriumMoisture(celsius: number, humidity: number): number {
  if (!(humidity >= 0 && humidity <= 1)) throw new RangeError(`relative humidity ${humidity} is not within 0 to 1`);
  const weight = 349 + 1.29 * celsius + 0.0135 * celsius ** 2;
  const bound = (0.805 + 0.000736 * celsius - 0.00000273 * celsius ** 2) * humidity;
  const first = (6.27 - 0.00938 * celsius - 0.000303 * celsius ** 2) * bound;
  const second = (1.91 + 0.0407 * celsius - 0.000293 * celsius ** 2) * first * bound;
  return (1800 / weight) * (bound / (1 - bound) + (first + 2 * second) / (1 + first + second));
}

/** Each halving of 0 to 1 adds a binary digit; these are all that a humidity in whole percent can want. */
const halvings = 30;

/** The relative humidity, 0 to 1, in which wood comes to `moisture` percent at `celsius`: the equation solved by halving. */
export function humidityFor(celsius: number, moisture: number): number {
  let [low, high] = [0, 1];
  for (let step = 0; step < halvings; step++) {
    const middle = (low + high) / 2;
    if (equilibriumMoisture(celsius, middle) < moisture) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
