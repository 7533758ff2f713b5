import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rowCoverOffDate } from '../../../src/calc/dates/rowCoverOffDate';
import { crops } from '../../../src/reference/crops';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { anyDay, dayNumber, isoDate, seeded } from './calendar';

const firstPick = dayNumber('2026-07-15');
const covered = crops.filter(
  (crop) =>
    crop.figures['flower type']?.text !== 'parthenocarpic' && crop.figures['flower to pick'] !== undefined,
);

describe('rowCoverOffDate', () => {
  test('North Carolina AG-552: 8 to 10 days before the first pick of cucumbers, so 9 (hand computed date)', () => {
    expect(isoDate(rowCoverOffDate(firstPick, 'cucumber', undefined, undefined))).toBe('2026-07-06');
    expect(isoDate(rowCoverOffDate(firstPick, 'Pickling Cucumber', undefined, undefined))).toBe('2026-07-06');
  });

  test('one given counts before the crop’s own (hand computed)', () => {
    expect(isoDate(rowCoverOffDate(firstPick, 'cucumber', 12, undefined))).toBe('2026-07-03');
    expect(rowCoverOffDate(firstPick, 'cucumber', 0, undefined)).toBe(firstPick);
  });

  test('every crop that needs bees: inside its published range', () => {
    expect(covered.length).toBeGreaterThan(5);
    for (const { name, figures } of covered) {
      const days = firstPick - rowCoverOffDate(firstPick, name, undefined, undefined);
      expect(days).toBeGreaterThanOrEqual(figures['flower to pick']?.low ?? NaN);
      expect(days).toBeLessThanOrEqual(figures['flower to pick']?.high ?? NaN);
    }
  });

  test('parthenocarpic types may stay covered, by their own nature or when told so', () => {
    expect(refusalOf(() => rowCoverOffDate(firstPick, 'English cucumber', undefined, undefined))).toEqual({
      code: 'mayStayCovered',
    });
    expect(refusalOf(() => rowCoverOffDate(firstPick, 'slicing cucumber', 9, 'parthenocarpic'))).toEqual({
      code: 'mayStayCovered',
    });
    expect(rowCoverOffDate(firstPick, 'English cucumber', 9, 'gynoecious')).toBe(firstPick - 9);
  });

  test('a later pick never uncovers earlier, more days from flower to pick never later', () => {
    fc.assert(
      fc.property(
        anyDay,
        fc.double({ min: 0, max: 119, noNaN: true }),
        fc.constantFrom(...covered),
        (pick, days, crop) => {
          const off = rowCoverOffDate(pick, crop.name, days, undefined);
          expect(rowCoverOffDate(pick + 1, crop.name, days, undefined)).toBe(off + 1);
          expect(rowCoverOffDate(pick, crop.name, days + 1, undefined)).toBeLessThanOrEqual(off);
          expect(off).toBeLessThanOrEqual(pick);
        },
      ),
      seeded,
    );
  });

  test('bounds, NaN, no such crop', () => {
    expect(rowCoverOffDate(firstPick, 'cucumber', 120, undefined)).toBe(firstPick - 120);
    for (const days of [-0.5, 120.5, NaN]) {
      expect(refusalOf(() => rowCoverOffDate(firstPick, 'cucumber', days, undefined))).toMatchObject({
        code: 'outOfRange',
        name: 'flower_to_pick',
      });
    }
    expect(refusalOf(() => rowCoverOffDate(NaN, 'cucumber', 9, undefined))).toMatchObject({
      code: 'notADate',
      name: 'first_pick',
    });
    expect(refusalOf(() => rowCoverOffDate(firstPick, 'cucmber', 9, undefined))).toMatchObject({
      code: 'unknownName',
      nearest: expect.arrayContaining(['cucumber']),
    });
  });

  test('a fraction of a day rounds down: early rather than late', () => {
    const { value, steps } = recording((record) =>
      rowCoverOffDate(firstPick, 'cucumber', 8.5, undefined, record),
    );
    expect(value).toBe(firstPick - 9);
    expect(steps.at(-1)).toMatchObject({ step: 'coverOff', result: value, rounded: 'down' });
  });

  test('the working ends in the returned day, then sends to the flowers', () => {
    const { value, steps, remarks } = recording((record) =>
      rowCoverOffDate(firstPick, 'cucumber', undefined, undefined, record),
    );
    expect(value).toBe(rowCoverOffDate(firstPick, 'cucumber', undefined, undefined));
    expect(steps.at(-1)).toMatchObject({
      step: 'coverOff',
      inputs: { first_pick: firstPick, flower_to_pick: 9 },
      result: value,
      unit: 'date',
    });
    expect(remarks.at(-1)).toBe('goByFlowers');
  });
});
