/**
 * Other ways to the same chances. None uses the library or the expansion behind src/calc/stand.
 *
 * lib-r-math.js 2.0.3 pbinom is off by 1e-7 relative from about 100 trials on (seen against the exact sum below:
 * P(X <= 99 | 134, 0.8) = 0.0515090130, it gives 0.0515090187), so it judges small stands only.
 */

/** P(Binomial(n, numerator/denominator) < k), exact in whole numbers of any size, to 40 decimals. */
export function exactShortfall(k: number, n: number, numerator: number, denominator: number): number {
  const p = BigInt(numerator);
  const q = BigInt(denominator) - p;
  let choose = 1n;
  let sum = 0n;
  for (let x = 0; x < Math.min(k, n + 1); x++) {
    sum += choose * p ** BigInt(x) * q ** BigInt(n - x);
    choose = (choose * BigInt(n - x)) / BigInt(x + 1);
  }
  return Number((sum * 10n ** 40n) / BigInt(denominator) ** BigInt(n)) / 1e40;
}

/** The same for counts of any size: ratios of neighboring terms from the likeliest count outward, over their sum. */
export function ratioShortfall(k: number, n: number, p: number): number {
  const mode = Math.min(n, Math.floor((n + 1) * p));
  let below = 0;
  let total = 0;
  const take = (x: number, term: number): void => {
    total += term;
    if (x < k) below += term;
  };
  for (let x = mode, term = 1; x <= n && term > 1e-30; x++) {
    take(x, term);
    term *= ((n - x) * p) / ((x + 1) * (1 - p));
  }
  for (let x = mode, term = 1; x > 0; x--) {
    term *= (x * (1 - p)) / ((n - x + 1) * p);
    if (term < 1e-30) break;
    take(x - 1, term);
  }
  return below / total;
}
