/** From here on the asymptotic series below are exact to about 1e-13. */
const SERIES_FROM = 12;

/**
 * Logarithm of a (a + 1) ... (a + count - 1), that is of gamma(a + count) / gamma(a), without loss where a is large.
 * @param a > 0
 * @param count whole, >= 0
 * @source ABRAMOWITZSTEGUN, 6.1.41
 */
export function logRise(a: number, count: number): number {
  let product = 1;
  let step = 0;
  for (; step < count && a + step < SERIES_FROM; step++) product *= a + step;
  const first = Math.log(product);
  if (step === count) return first;
  const from = a + step;
  const rest = count - step;
  const to = from + rest;
  const main = (from - 0.5) * Math.log1p(rest / from) + rest * Math.log(to) - rest;
  return first + main + logTail(to) - logTail(from);
}

/**
 * 1/a + 1/(a + 1) + ... + 1/(a + count - 1): the slope of `logRise` in a.
 * @param a > 0
 * @param count whole, >= 0
 * @source ABRAMOWITZSTEGUN, 6.3.18
 */
export function slopeOfRise(a: number, count: number): number {
  let sum = 0;
  let step = 0;
  for (; step < count && a + step < SERIES_FROM; step++) sum += 1 / (a + step);
  if (step === count) return sum;
  const from = a + step;
  const rest = count - step;
  return sum + Math.log1p(rest / from) + slopeTail(from + rest) - slopeTail(from);
}

/**
 * Natural logarithm of the gamma function.
 * @param x > 0
 * @source ABRAMOWITZSTEGUN, 6.1.41
 */
export function logGamma(x: number): number {
  let product = 1;
  let at = x;
  for (; at < SERIES_FROM; at++) product *= at;
  return (
    (at - 0.5) * Math.log(at) - at + Math.log(2 * Math.PI) / 2 + logTail(at) - Math.log(product)
  );
}

function logTail(x: number): number {
  const square = x ** 2;
  return (1 / 12 - (1 / 360 - (1 / 1260 - 1 / (1680 * square)) / square) / square) / x;
}

function slopeTail(x: number): number {
  const square = x ** 2;
  return (
    -1 / (2 * x) - (1 / 12 - (1 / 120 - (1 / 252 - 1 / (240 * square)) / square) / square) / square
  );
}
