/** That the tests of dates really run in the zone that their project names. */
import { expect, test } from 'vitest';

/** Minutes from local time to universal time on 1 January 2026, by the IANA time zone database. */
const offsets: Readonly<Record<string, number>> = {
  UTC: 0,
  'Pacific/Apia': -13 * 60,
  'America/St_Johns': 3.5 * 60,
};

test(`runs in ${process.env.TZ}`, () => {
  expect(new Date(2026, 0, 1).getTimezoneOffset()).toBe(offsets[process.env.TZ ?? '']);
});
