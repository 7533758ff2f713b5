import quantile from '@stdlib/stats-base-dists-beta-quantile';
import { checkCount, checkShare } from '../limits/limits';
import { orAssume, type Recorder } from '../working';

/** Nobody counts more seeds, and the library's limits are checked up to here. */
const mostTested = 1e6;

export interface TestedGermination {
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
}

/**
 * What a germination test says of a lot: the share that germinated, and limits that hold the lot's own
 * germination with at least the given confidence.
 *
 * low: the a/2 quantile of Beta(x, n - x + 1), 0 when x = 0; high: the 1 - a/2 quantile of Beta(x + 1, n - x),
 * 1 when x = n; x of n germinated, a = 1 - confidence
 *
 * @param germinated x, whole, 0 to `tested`
 * @param tested n, seeds in the test, whole, 1 to 1,000,000
 * @param confidence [share], above 0 and below 1; 0.95 when left out
 * @returns three shares
 * @throws outOfRange, notWhole, percentForShare
 * Source: Clopper and Pearson, 1934, Biometrika 26:404-413.
 * @example testedGermination(320, 400) // 0.8, 0.7574, 0.8381
 */
export function testedGermination(
  germinated: number,
  tested: number,
  confidence?: number,
  record?: Recorder,
): TestedGermination {
  const n = checkCount('tested', tested, 'seeds', { atLeast: 1, atMost: mostTested });
  const x = checkCount('germinated', germinated, 'seeds', { atLeast: 0, atMost: n });
  if (confidence !== undefined) checkShare('confidence', confidence, { above: 0, below: 1 });
  const sure = orAssume(confidence, 0.95, 'confidence', 'share', 'common practice, no source', record);

  const estimate = x / n;
  const counts = { germinated: x, tested: n };
  record?.({ step: 'testedShare', inputs: counts, result: estimate, unit: 'share' });
  const tail = (1 - sure) / 2;
  const low = x === 0 ? 0 : quantile(tail, x, n - x + 1);
  const high = x === n ? 1 : quantile(1 - tail, x + 1, n - x);
  const inputs = { ...counts, confidence: sure };
  record?.({ step: 'testedLow', inputs, result: low, unit: 'share' });
  record?.({ step: 'testedHigh', inputs, result: high, unit: 'share' });
  record?.({ source: 'clopper-pearson-1934' });
  record?.({ remark: 'testIsOneSample' });
  return { estimate, low, high };
}
