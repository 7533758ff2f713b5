import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rowForPlants } from '../../../src/calc/row/rowForPlants';
import { standingShare } from '../../../src/calc/stand/standingShare';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;

// Penn State Extension: 17,424 ft of 30 in row an acre, so a thousandth of an acre is 17.424 ft of it. Commercial
// Gardening, vol. 3: 11,616 plants an acre at 30 in x 18 in. 9 plants counted there stand for 9,000 of 11,616.
test('a count on a thousandth of an acre', () => {
  expect(standingShare(9, 17.424, 18, us)).toBeCloseTo(9000 / 11_616, 12);
});

test('66 of 100, all, none, more than all; a mean of counts; 12 of 15 at 40 cm on 6 m (hand computed)', () => {
  expect(standingShare(66, 100, 12, us)).toBe(0.66);
  expect(standingShare(100, 100, 12, us)).toBe(1);
  expect(standingShare(0, 100, 12, us)).toBe(0);
  expect(standingShare(110, 100, 12, us)).toBeCloseTo(1.1, 12);
  expect(standingShare(7.5, 10, 12, us)).toBe(0.75);
  expect(standingShare(12, 6, 40, metric)).toBeCloseTo(0.8, 12);
});

test('all that were meant to stand in a row are the whole stand, and a part is that part', () => {
  const counts = fc.integer({ min: 1, max: 1000 });
  fc.assert(
    fc.property(counts, counts, fc.integer({ min: 1, max: 9600 }), (meant, standing, hundredths) => {
      const spacing = hundredths / 100;
      const row = rowForPlants(meant, spacing, us);
      expect(standingShare(meant, row, spacing, us)).toBeCloseTo(1, 12);
      expect(standingShare(standing, row, spacing, us)).toBeCloseTo(standing / meant, 9);
    }),
    seeded,
  );
});

test('refusals name the argument', () => {
  for (const bad of [-1, NaN, Infinity]) {
    expect(refusalOf(() => standingShare(bad, 100, 12, us))).toMatchObject({
      code: 'outOfRange',
      name: 'plants_standing',
      atLeast: 0,
    });
    expect(refusalOf(() => standingShare(66, bad, 12, us))).toMatchObject({ name: 'row_length', unit: 'ft' });
    expect(refusalOf(() => standingShare(66, 100, bad, metric))).toMatchObject({
      name: 'plant_spacing',
      unit: 'cm',
    });
  }
  expect(refusalOf(() => standingShare(66, 0, 12, us))).toMatchObject({ name: 'row_length', above: 0 });
});

test('the working shows the plants that were meant', () => {
  const { value, steps, remarks } = recording((record) => standingShare(66, 100, 18, us, record));
  expect(steps.map(({ step, result }) => [step, result])).toEqual([
    ['plantsMeant', 1200 / 18],
    ['standingShare', value],
  ]);
  expect(remarks).toEqual(['countInSeveralPlaces']);
});
