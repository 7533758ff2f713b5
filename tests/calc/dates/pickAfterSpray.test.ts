import { UTCDate } from '@date-fns/utc';
import { addDays } from 'date-fns';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pickAfterSpray } from '../../../src/calc/dates/pickAfterSpray';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { anyDay, dayNumber, isoDate, seeded } from './calendar';

const sprayed = dayNumber('2026-07-05');

test('three days after 5 July is 8 July (calendar); over the end of February in a leap year', () => {
  expect(isoDate(pickAfterSpray(sprayed, 3))).toBe('2026-07-08');
  expect(isoDate(pickAfterSpray(dayNumber('2028-02-27'), 3))).toBe('2028-03-01');
});

test('agrees with date-fns 4.4.0 addDays on any date', () => {
  fc.assert(
    fc.property(anyDay, fc.integer({ min: 0, max: 365 }), (day, wait) => {
      const expected = addDays(new UTCDate(`${isoDate(day)}T00:00:00Z`), wait);
      expect(pickAfterSpray(day, wait)).toBe(expected.getTime() / 86400000);
    }),
    seeded,
  );
});

test('bounds: 0 days on a label are the same day; a fraction waits for the next; below 0 is refused', () => {
  expect(pickAfterSpray(sprayed, 0)).toBe(sprayed);
  expect(pickAfterSpray(sprayed, 365)).toBe(sprayed + 365);
  expect(pickAfterSpray(sprayed, 0.5)).toBe(sprayed + 1);
  for (const bad of [-1, 366, NaN, Infinity]) {
    expect(refusalOf(() => pickAfterSpray(sprayed, bad))).toMatchObject({
      code: 'outOfRange',
      name: 'label_days',
    });
  }
  expect(refusalOf(() => pickAfterSpray(NaN, 3))).toMatchObject({ code: 'notADate', name: 'spray_date' });
});

test('working: the one step; the days are the label’s', () => {
  const { value, steps, assumptions, remarks } = recording((record) => pickAfterSpray(sprayed, 3, record));
  expect(steps).toEqual([
    {
      step: 'pickAfterSpray',
      inputs: { spray_date: sprayed, label_days: 3 },
      result: value,
      unit: 'date',
    },
  ]);
  expect(assumptions).toEqual([]);
  expect(remarks).toEqual(['countAsTheLabelDoes', 'pesticides']);
});
