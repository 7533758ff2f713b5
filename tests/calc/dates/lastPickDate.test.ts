import { UTCDate } from '@date-fns/utc';
import { addDays, min, subDays } from 'date-fns';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lastPickDate } from '../../../src/calc/dates/lastPickDate';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { anyDay, dayNumber, isoDate, seeded } from './calendar';

const firstPick = dayNumber('2026-07-05');
const firstFrost = dayNumber('2026-10-10');
const harvests = fc.integer({ min: 0, max: 365 });
const daysToFrost = fc.integer({ min: 1, max: 300 });

describe('lastPickDate', () => {
  test('21 days from 5 July, frost or none (hand computed)', () => {
    expect(isoDate(lastPickDate(firstPick, 21, firstFrost))).toBe('2026-07-26');
    expect(isoDate(lastPickDate(firstPick, 21, undefined))).toBe('2026-07-26');
  });

  test('frost ends the harvest the day before (hand computed)', () => {
    expect(isoDate(lastPickDate(dayNumber('2026-09-25'), 21, firstFrost))).toBe('2026-10-09');
  });

  test('a crop picked once is picked on one day', () => {
    expect(lastPickDate(firstPick, 0, firstFrost)).toBe(firstPick);
    expect(lastPickDate(firstFrost - 1, 0, firstFrost)).toBe(firstFrost - 1);
  });

  test('agrees with date-fns 4.4.0 min, addDays and subDays', () => {
    fc.assert(
      fc.property(anyDay, harvests, daysToFrost, (pick, harvest, toFrost) => {
        const date = (day: number): Date => new UTCDate(`${isoDate(day)}T00:00:00Z`);
        const expected = min([addDays(date(pick), harvest), subDays(date(pick + toFrost), 1)]);
        expect(lastPickDate(pick, harvest, pick + toFrost)).toBe(expected.getTime() / 86400000);
      }),
      seeded,
    );
  });

  test('never before the first pick, never on frost; a later frost or a longer harvest never ends it sooner', () => {
    fc.assert(
      fc.property(
        anyDay,
        fc.double({ min: 0, max: 364, noNaN: true }),
        daysToFrost,
        (pick, harvest, toFrost) => {
          const last = lastPickDate(pick, harvest, pick + toFrost);
          expect(last).toBeGreaterThanOrEqual(pick);
          expect(last).toBeLessThan(pick + toFrost);
          expect(lastPickDate(pick, harvest, pick + toFrost + 1)).toBeGreaterThanOrEqual(last);
          expect(lastPickDate(pick, harvest + 1, pick + toFrost)).toBeGreaterThanOrEqual(last);
        },
      ),
      seeded,
    );
  });

  test('a first pick on the first frost or after it is refused', () => {
    for (const pick of [firstFrost, firstFrost + 20]) {
      expect(refusalOf(() => lastPickDate(pick, 21, firstFrost))).toEqual({
        code: 'frostComesFirst',
        firstPick: pick,
        firstFrost,
      });
    }
  });

  test('bounds of the harvest days, and values that are no day', () => {
    expect(lastPickDate(firstPick, 365, undefined)).toBe(firstPick + 365);
    for (const harvest of [-0.5, 365.5, NaN]) {
      expect(refusalOf(() => lastPickDate(firstPick, harvest, firstFrost))).toMatchObject({
        code: 'outOfRange',
        name: 'harvest_days',
        atLeast: 0,
        atMost: 365,
      });
    }
    expect(refusalOf(() => lastPickDate(NaN, 21, firstFrost))).toMatchObject({
      code: 'notADate',
      name: 'first_pick',
    });
    expect(refusalOf(() => lastPickDate(firstPick, 21, NaN))).toMatchObject({
      code: 'notADate',
      name: 'first_frost',
    });
  });

  test('a fraction of a day rounds down', () => {
    const { value, steps } = recording((record) => lastPickDate(firstPick, 20.9, undefined, record));
    expect(value).toBe(firstPick + 20);
    expect(steps.at(-1)).toMatchObject({ step: 'harvestEnd', result: value, rounded: 'down' });
  });

  test('the working ends in the returned day and tells what frost did', () => {
    const cut = recording((record) => lastPickDate(firstFrost - 5, 21, firstFrost, record));
    expect(cut.value).toBe(lastPickDate(firstFrost - 5, 21, firstFrost));
    expect(cut.steps.at(-1)).toMatchObject({ step: 'lastPick', result: cut.value, unit: 'date' });
    expect(cut.remarks).toEqual(['frostEndsHarvest']);
    expect(recording((record) => lastPickDate(firstPick, 21, firstFrost, record)).remarks).toEqual([]);
    expect(recording((record) => lastPickDate(firstPick, 21, undefined, record)).remarks).toEqual([
      'noFrostGiven',
    ]);
  });
});
