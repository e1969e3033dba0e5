/** Places and weights of the eight-point rule on 0 to 1; the other half by symmetry. */
const PLACES = [0.01985507175123188, 0.10166676129318664, 0.2372337950418355, 0.4082826787521751];
const WEIGHTS = [0.05061426814518813, 0.11119051722668724, 0.15685332293894363, 0.181341891689181];

/**
 * Time a body takes between two temperatures on its way to an end, at a rate that is nearly in proportion to what is left.
 *
 * t = integral of dT / rate(T), in u = ln[(T_end - T_from) / (T_end - T)], where the integrand is nearly flat: Gauss and
 * Legendre's rule of eight points.
 *
 * @param rate - of change [K/s], 0 at the end only
 * @returns [s]
 * @source ABRAMOWITZ, table 25.4
 */
export function timeBetween(
  rate: (temperature: number) => number,
  { from, to, end }: { readonly from: number; readonly to: number; readonly end: number },
): number {
  const whole = end - from;
  const span = Math.log(whole / (end - to));
  const at = (share: number) => {
    const left = whole * Math.exp(-share * span);
    return left / rate(end - left);
  };
  const sum = PLACES.reduce(
    (total, place, index) => total + (WEIGHTS[index] ?? 0) * (at(place) + at(1 - place)),
    0,
  );
  return span * sum;
}
