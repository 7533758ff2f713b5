import gammaln from '@stdlib/math-base-special-gammaln';

/** ln(sqrt(2 pi)). */
const lnRootTwoPi = 0.9189385332046727;

/** ln Gamma(z + 1) less Stirling's approximation of it; the series from 16 on is good to 1e-16. */
function stirlingError(z: number): number {
  if (z < 16) return gammaln(z + 1) - (z + 0.5) * Math.log(z) + z - lnRootTwoPi;
  const zz = z * z;
  return (1 / 12 - (1 / 360 - (1 / 1260 - (1 / 1680 - 1 / 1188 / zz) / zz) / zz) / zz) / z;
}

/** x ln(x / m) + m - x, without the cancellation where x is near m: with v = (x - m)/(x + m), ln(x/m) = 2 artanh v. */
function deviance(x: number, m: number): number {
  if (Math.abs(x - m) >= 0.1 * (x + m)) return x * Math.log(x / m) + m - x;
  const v = (x - m) / (x + m);
  let sum = (x - m) * v;
  let term = 2 * x * v;
  for (let j = 3; ; j += 2) {
    term *= v * v;
    const next = sum + term / j;
    if (next === sum) return sum;
    sum = next;
  }
}

/**
 * The binomial probability, with Gamma functions for factorials, so that neither count need be whole.
 *
 * Gamma(n + 1) / (Gamma(x + 1) Gamma(n - x + 1)) p^x (1 - p)^(n - x), by the saddle-point expansion, which keeps
 * its relative precision where logarithms of Gamma functions lose it (n of millions)
 *
 * @param x successes, above or equal 0, at most n
 * @param n trials
 * @param p chance of a success, above 0 and below 1
 * @returns probability (density)
 * Source: Loader, C., 2000, Fast and Accurate Computation of Binomial Probabilities.
 * @example binomialDensity(3, 5, 0.8) // 0.2048
 */
export function binomialDensity(x: number, n: number, p: number): number {
  if (x === 0) return Math.exp(n * Math.log1p(-p));
  if (x === n) return Math.exp(n * Math.log(p));
  const exponent =
    stirlingError(n) -
    stirlingError(x) -
    stirlingError(n - x) -
    deviance(x, n * p) -
    deviance(n - x, n * (1 - p));
  return Math.exp(exponent) * Math.sqrt(n / (2 * Math.PI * x * (n - x)));
}
