import { checkNumber } from '../limits/limits';
import { ceilWhole } from '../whole/wholeNumbers';
import { orAssume, type Recorder } from '../working';
import { checkDay, checkDays } from './dayLimits';
import { roundingOf } from '../whole/roundingOf';

export const startMethods = ['seed', 'transplant'] as const;
export type StartMethod = (typeof startMethods)[number];

export const customaryGainDays = 10;

/**
 * The day of the first pick.
 *
 * first pick = start + days to maturity + fall days, less the transplant gain when transplants are set out and the
 * packet counts from seed, plus it when seed is sown and the packet counts from transplants; rounded up
 *
 * @param start day of sowing or of setting out, as `method` says [whole day number]
 * @param daysToMaturity as the packet has it [days], above 0 to 365
 * @param method what `start` is; "seed" when undefined
 * @param basis what the packet counts from; "seed" when undefined
 * @param transplantGain days that a transplant is ahead of seed sown on the same day [days], 0 to 60 and below the
 *   days to maturity where it is taken off them, 10 when undefined
 * @param fallDays slower growth in shortening days [days], 0 to 90, 0 when undefined
 * @returns the day of the first pick [whole day number]
 * @throws notADate, outOfRange
 * Source: common practice, no source: packets count cucumbers from direct seeding, transplants come about 10 days
 * sooner. Fall days: see lastSowingDate.
 * @example firstPickDate(20589, 60, 'transplant', 'seed', 10, 0) // 20639: 2026-05-16 gives 2026-07-05
 */
export function firstPickDate(
  start: number,
  daysToMaturity: number,
  method: StartMethod | undefined,
  basis: StartMethod | undefined,
  transplantGain: number | undefined,
  fallDays: number | undefined,
  record?: Recorder,
): number {
  checkDay('start', start);
  checkDays('days_to_maturity', daysToMaturity);
  const startsAs = orAssume(method, 'seed', 'method', 'none', 'judgement', record);
  const countsFrom = orAssume(basis, 'seed', 'basis', 'none', 'common practice, no source', record);
  if (transplantGain !== undefined) checkDays('transplant_gain', transplantGain);
  const fall = orAssume(fallDays, 0, 'fall_days', 'days', 'judgement', record);
  checkDays('fall_days', fall);

  let growing = daysToMaturity;
  if (startsAs !== countsFrom) {
    const gain = orAssume(
      transplantGain,
      customaryGainDays,
      'transplant_gain',
      'days',
      'common practice, no source',
      record,
    );
    const isAhead = startsAs === 'transplant';
    if (isAhead) checkNumber('transplant_gain', gain, 'days', { atLeast: 0, below: daysToMaturity });
    growing = isAhead ? daysToMaturity - gain : daysToMaturity + gain;
    record?.({
      step: isAhead ? 'daysFromSettingOut' : 'daysFromSowing',
      inputs: { days_to_maturity: daysToMaturity, transplant_gain: gain },
      result: growing,
      unit: 'days',
    });
  }
  const exact = start + growing + fall;
  const firstPick = ceilWhole(exact);
  record?.({
    step: 'firstPick',
    inputs: { start, growingDays: growing, fall_days: fall },
    result: firstPick,
    unit: 'date',
    ...roundingOf(exact, firstPick),
  });
  return firstPick;
}
