import { checkCount, checkNumber, checkShare } from '../limits/limits';
import { ceilWhole } from '../whole/wholeNumbers';
import { orAssume, type Recorder } from '../working';

export const pollenizerLayouts = ['dedicated', 'between'] as const;
export type PollenizerLayout = (typeof pollenizerLayouts)[number];

/**
 * Pollenizers to set so that their share of the standing plants holds after some are lost.
 *
 * dedicated: of N plants in all, P (1 - l) / (P (1 - l) + N - P) = s, so P = N s / (s + (1 - l)(1 - s))
 * between N other plants: P (1 - l) / (P (1 - l) + N) = s, so P = N s / (1 - s) / (1 - l); both rounded up
 *
 * @param plants N, all plants when dedicated, the others when between [plants], whole, 1 or more
 * @param share s wanted of the standing plants [share], 0 to 1, below 1 for "between"
 * @param losses l, share of the pollenizers that are lost [share], 0 to below 1, 0 when undefined
 * @param layout "dedicated" places, or "between" the others without taking a place; "dedicated" when undefined
 * @returns pollenizers [plants]
 * @throws outOfRange, notWhole, percentForShare
 * Source: University of Delaware Weekly Crop Update (Johnson): a fifth of the pollenizers lost turns 1 to 4 into
 * 1 to 5; plants set between displace no seedless ones. The algebra is ours.
 * @example pollenizersNeeded(400, 0.25, 0.2, 'dedicated') // 118
 */
export function pollenizersNeeded(
  plants: number,
  share: number,
  losses: number | undefined,
  layout: PollenizerLayout | undefined,
  record?: Recorder,
): number {
  const stand = checkCount('plants', plants, 'plants', { atLeast: 1 });
  checkShare('share', share);
  const lost = orAssume(losses, 0, 'losses', 'share', 'judgement', record);
  checkShare('losses', lost);
  checkNumber('losses', lost, 'share', { atLeast: 0, below: 1 });
  const placed = orAssume(layout, 'dedicated', 'layout', 'none', 'judgement', record);
  const isBetween = placed === 'between';
  if (isBetween) checkNumber('share', share, 'share', { atLeast: 0, below: 1 });
  const exact = isBetween
    ? (stand * share) / (1 - share) / (1 - lost)
    : (stand * share) / (share + (1 - lost) * (1 - share));
  const pollenizers = ceilWhole(exact);
  record?.({
    step: isBetween ? 'pollenizersBetween' : 'pollenizersOfTotal',
    inputs: { plants: stand, share, losses: lost },
    result: pollenizers,
    unit: 'plants',
    ...(pollenizers > exact ? { rounded: 'up' } : {}),
  });
  record?.({ remark: isBetween ? 'betweenDisplacesNone' : 'lossesFallOnPollenizers' });
  record?.({ source: isBetween ? 'ud-pollenizers-between' : 'ud-pollenizers' });
  return pollenizers;
}
