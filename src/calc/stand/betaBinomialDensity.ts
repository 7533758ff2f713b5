import { binomialDensity } from './binomialDensity';

/**
 * The chance of x successes in n trials whose common chance is itself drawn from Beta(a, b).
 *
 * Gamma(n + 1)/(Gamma(x + 1) Gamma(n - x + 1)) B(x + a, n - x + b)/B(a, b), each Beta function written as a
 * binomial density with one p, whose powers cancel; p = (x + a)/(n + a + b) keeps all three far from underflow
 *
 * @param x successes, whole, 0 to n
 * @param n trials, whole
 * @param a above 0
 * @param b above 0
 * @returns probability
 * Source: definition of the beta-binomial distribution; the way of computing it: project convention, for its
 * relative precision with millions of trials.
 * @example betaBinomialDensity(1, 2, 1, 1) // 1/3: with a flat prior every count is as likely
 */
export function betaBinomialDensity(x: number, n: number, a: number, b: number): number {
  const total = n + a + b;
  const p = (x + a) / total;
  return (
    (binomialDensity(x, n, p) * binomialDensity(a, a + b, p) * a * b * total) /
    (binomialDensity(x + a, total, p) * (a + b) * (x + a) * (n - x + b))
  );
}
