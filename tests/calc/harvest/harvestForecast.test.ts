import fc from 'fast-check';
import { expect, test } from 'vitest';
import { harvestForecast } from '../../../src/calc/harvest/harvestForecast';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

// North Carolina AG-552, table 11: fruit per plant and thousands of fruit an acre of three picking schemes. The
// plants an acre are not printed: 31,500 for all three is ours, and each row then stands to its three digits.
test.each([
  [9.84, 311],
  [6.25, 197],
  [3.6, 113],
])('AG-552, table 11: %d fruit on each of 31,500 plants are some %d thousand', (perPlant, thousands) => {
  expect(Math.abs(harvestForecast(perPlant, 31_500, 1) / 1000 - thousands)).toBeLessThan(1.1);
});

test('3.5 fruit of half a pound on 200 plants: 350 lb (hand computed); none yet is none', () => {
  expect(harvestForecast(3.5, 200, 0.5)).toBe(350);
  expect(harvestForecast(0, 200, 0.5)).toBe(0);
});

test('counting plant by plant gives the same', () => {
  const counts = fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 1, maxLength: 200 });
  fc.assert(
    fc.property(counts, fc.integer({ min: 1, max: 100 }), (fruit, weight) => {
      const all = fruit.reduce((sum, one) => sum + one, 0);
      expect(harvestForecast(all / fruit.length, fruit.length, weight)).toBeCloseTo(all * weight, 6);
    }),
    seeded,
  );
});

test('refusals', () => {
  for (const bad of [-1, NaN, Infinity]) {
    expect(refusalOf(() => harvestForecast(bad, 200, 0.5))).toMatchObject({ name: 'fruit_per_plant' });
    expect(refusalOf(() => harvestForecast(3, bad, 0.5))).toMatchObject({ name: 'plants' });
    expect(refusalOf(() => harvestForecast(3, 200, bad))).toMatchObject({ name: 'fruit_weight' });
  }
  expect(refusalOf(() => harvestForecast(3, 0, 0.5))).toMatchObject({ name: 'plants', atLeast: 1 });
  expect(refusalOf(() => harvestForecast(3, 2.5, 0.5))).toMatchObject({ code: 'notWhole' });
  expect(refusalOf(() => harvestForecast(3, 200, 0))).toMatchObject({ name: 'fruit_weight', above: 0 });
});

test('the working has the one step and says what is not in it', () => {
  const { value, steps, remarks } = recording((record) => harvestForecast(3.5, 200, 0.5, record));
  expect(steps).toMatchObject([{ step: 'harvestForecast', result: value }]);
  expect(remarks).toEqual(['countedFruitOnly']);
});
