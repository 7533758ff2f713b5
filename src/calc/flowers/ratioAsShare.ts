import { refuse } from '../errors';
import { checkNumber } from '../limits/limits';
import type { Recorder } from '../working';

/**
 * A ratio of pollenizers to other plants as a share of all plants: 1 to 3 is a quarter, not a third.
 *
 * share = pollenizers / (pollenizers + others)
 *
 * @param pollenizers first number of the ratio [plants], 0 or more
 * @param others second number of the ratio [plants], 0 or more, not both 0
 * @returns pollenizers among all plants [share]
 * @throws outOfRange
 * Source: arithmetic; University of Delaware Weekly Crop Update (Johnson) writes pollenizers as such ratios.
 * @example ratioAsShare(1, 3) // 0.25
 */
export function ratioAsShare(pollenizers: number, others: number, record?: Recorder): number {
  checkNumber('pollenizers', pollenizers, 'plants', { atLeast: 0 });
  checkNumber('others', others, 'plants', { atLeast: 0 });
  if (pollenizers === 0 && others === 0) {
    refuse({ code: 'outOfRange', name: 'others', value: others, unit: 'plants', above: 0 });
  }
  const share = pollenizers / (pollenizers + others);
  record?.({ step: 'ratioAsShare', inputs: { pollenizers, others }, result: share, unit: 'share' });
  record?.({ source: 'ud-pollenizers' });
  return share;
}
