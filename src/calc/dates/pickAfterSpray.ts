import { roundingOf } from '../whole/roundingOf';
import { ceilWhole } from '../whole/wholeNumbers';
import type { Recorder } from '../working';
import { checkDay, checkDays } from './dayLimits';

/**
 * The earliest day to pick after a spraying. The days to harvest are the label's; none is supplied here.
 *
 * earliest pick = day of spraying + days of the label, a fraction of a day rounded up
 *
 * @param sprayDate day of the last spraying [whole day number]
 * @param labelDays days to harvest on the label [days], 0 to 365
 * @returns the earliest day to pick [whole day number]
 * @throws notADate, outOfRange
 * Source: arithmetic on the label.
 * @example pickAfterSpray(20639, 3) // 20642: 2026-07-05 gives 2026-07-08
 */
export function pickAfterSpray(sprayDate: number, labelDays: number, record?: Recorder): number {
  checkDay('spray_date', sprayDate);
  checkDays('label_days', labelDays);
  const exact = sprayDate + labelDays;
  const pick = ceilWhole(exact);
  record?.({
    step: 'pickAfterSpray',
    inputs: { spray_date: sprayDate, label_days: labelDays },
    result: pick,
    unit: 'date',
    ...roundingOf(exact, pick),
  });
  record?.({ remark: 'countAsTheLabelDoes' });
  record?.({ remark: 'pesticides' });
  return pick;
}
