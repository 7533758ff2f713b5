import { ceilWhole } from '../whole/wholeNumbers';
import { orAssume, type Recorder } from '../working';
import { checkDay, checkDays } from './dayLimits';
import { roundingOf } from '../whole/roundingOf';

const customaryHardeningDays = 7;

/**
 * The day on which transplants begin to be hardened off.
 *
 * start = set out - days, a fraction of a day rounded up
 *
 * @param setOut day of setting out [whole day number]
 * @param days length of the hardening [days], 0 to 60, 7 when undefined
 * @returns the first day of hardening [whole day number]
 * @throws notADate, outOfRange
 * Source: common practice, no source: 7 to 10 days, not under about 60 F (16 C).
 * @example hardeningStartDate(20589, undefined) // 20582: 2026-05-16 gives 2026-05-09
 */
export function hardeningStartDate(setOut: number, days: number | undefined, record?: Recorder): number {
  checkDay('set_out', setOut);
  const hardening = orAssume(
    days,
    customaryHardeningDays,
    'days',
    'days',
    'common practice, no source',
    record,
  );
  checkDays('days', hardening);
  const exact = setOut - hardening;
  const start = ceilWhole(exact);
  record?.({
    step: 'hardeningStart',
    inputs: { set_out: setOut, days: hardening },
    result: start,
    unit: 'date',
    ...roundingOf(exact, start),
  });
  record?.({ remark: 'hardenNotCold' });
  return start;
}
