import { UTCDate } from '@date-fns/utc';
import { eachDayOfInterval } from 'date-fns';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { successionDates } from '../../../src/calc/dates/successionDates';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { anyDay, dayNumber, isoDate, seeded } from './calendar';

const first = dayNumber('2026-05-09');

test('every 14 days from 9 May to 9 June: 9 May, 23 May, 6 June (calendar)', () => {
  const dates = successionDates(first, dayNumber('2026-06-09'), 14);
  expect(dates.map(isoDate)).toEqual(['2026-05-09', '2026-05-23', '2026-06-06']);
});

test('the last date itself is in; one day is one date', () => {
  expect(successionDates(first, first + 28, 14)).toEqual([first, first + 14, first + 28]);
  expect(successionDates(first, first + 27, 14)).toEqual([first, first + 14]);
  expect(successionDates(first, first, 14)).toEqual([first]);
});

test('agrees with date-fns 4.4.0 eachDayOfInterval', () => {
  const date = (day: number): Date => new UTCDate(`${isoDate(day)}T00:00:00Z`);
  fc.assert(
    fc.property(
      anyDay,
      fc.integer({ min: 0, max: 365 }),
      fc.integer({ min: 1, max: 365 }),
      (from, span, step) => {
        const expected = eachDayOfInterval({ start: date(from), end: date(from + span) }, { step });
        expect(successionDates(from, from + span, step)).toEqual(
          expected.map((one) => one.getTime() / 86400000),
        );
      },
    ),
    seeded,
  );
});

test('bounds: 366 dates are in, 367 are out; the gap is a whole number of days from 1 to 365', () => {
  expect(successionDates(first, first + 365, 1)).toHaveLength(366);
  expect(refusalOf(() => successionDates(first, first + 366, 1))).toEqual({
    code: 'tooManyDates',
    count: 367,
    most: 366,
  });
  for (const gap of [0, -7, 366, NaN, Infinity]) {
    expect(refusalOf(() => successionDates(first, first + 30, gap))).toMatchObject({
      code: 'outOfRange',
      name: 'every_days',
    });
  }
  expect(refusalOf(() => successionDates(first, first + 30, 3.5))).toMatchObject({ code: 'notWhole' });
});

test('dates that are none or in the wrong order are refused', () => {
  expect(refusalOf(() => successionDates(first, first - 1, 14))).toEqual({
    code: 'lastBeforeFirst',
    firstDay: first,
    lastDay: first - 1,
  });
  expect(refusalOf(() => successionDates(NaN, first, 14))).toMatchObject({ code: 'notADate', name: 'first' });
  expect(refusalOf(() => successionDates(first, first + 0.5, 14))).toMatchObject({
    code: 'notADate',
    name: 'last',
  });
});

test('the working counts the sowings and ends in the last of them', () => {
  const { value, steps, remarks } = recording((record) => successionDates(first, first + 31, 14, record));
  expect(steps).toMatchObject([
    { step: 'sowings', result: value.length, rounded: 'down' },
    { step: 'lastOfSuccession', result: value.at(-1), unit: 'date' },
  ]);
  expect(remarks).toEqual(['sowingsDrawTogether', 'soilDecides']);
});
