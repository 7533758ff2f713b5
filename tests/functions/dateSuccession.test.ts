import { expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { run } from './run';

/** 2026-05-09, by the spreadsheet's own count: 46023 is 2026-01-01, plus 128 days. */
const first = 46_151;

test('a column of dates, the first among them, none after the last (calendar)', () => {
  expect(functions.get('DATE.SUCCESSION')?.run(['2026-05-09', '2026-06-09', 14])).toEqual({
    value: [[first], [first + 14], [first + 28]],
    pattern: 'yyyy-mm-dd',
  });
  expect(run('DATE.SUCCESSION', [[first]], first + 28, '14')).toEqual([[first], [first + 14], [first + 28]]);
});

test('a part of a day: the first sowing rounds up, the last down', () => {
  expect(run('DATE.SUCCESSION', first + 0.5, first + 14.9, 7)).toEqual([[first + 1], [first + 8]]);
});

test('refusals say what to do', () => {
  expect(run('DATE.SUCCESSION', '2026-06-09', '2026-05-09', 14)).toBe(
    '#VALUE! The last date (2026-05-09) comes before the first date (2026-06-09). Check the year of each.',
  );
  expect(run('DATE.SUCCESSION', '2026-05-09', '2062-06-09', 14)).toMatch(
    /^#VALUE! These are 942 dates, and at most 366 are given\. Check the year/,
  );
  expect(run('DATE.SUCCESSION', '2026-05-09', '2026-06-09', 3.5)).toMatch(
    /number of days between is 3\.5\. Give a whole number/,
  );
  expect(run('DATE.SUCCESSION', '2026-05-09', '2026-06-09', 0)).toMatch(
    /at least 1 day and at most 365 days/,
  );
  expect(run('DATE.SUCCESSION', '2026-05-09', 'fall', 14)).toMatch(
    /last date is "fall", which is not a date/,
  );
  expect(run('DATE.SUCCESSION', null, '2026-06-09', 14)).toMatch(/first date is missing/);
  expect(run('DATE.SUCCESSION', '2026-05-09', { error: '#N/A' }, 14)).toMatch(/Mend that cell first/);
});
