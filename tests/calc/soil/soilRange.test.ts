import { expect, test } from 'vitest';
import { soilRange } from '../../../src/calc/soil/soilRange';
import { unitSystems } from '../../../src/calc/units/units';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

test.each([
  ['cucumber', [60, 60, 95, 105, 64]],
  ['muskmelon', [60, 75, 95, 100, 68]],
  ['watermelon', [60, 70, 95, 105, 72]],
  ['pumpkin', [60, 70, 90, 100, 75]],
])(
  '%s: Harrington’s minimum, optimum and maximum (Oregon State), Georgia’s planting temperature',
  (crop, range) => {
    expect(soilRange(crop, unitSystems.us)).toEqual(range);
    soilRange(crop, unitSystems.metric).forEach((celsius, i) =>
      expect(celsius).toBeCloseTo((((range[i] ?? NaN) - 32) * 5) / 9, 9),
    );
  },
);

test('rises from the minimum to the maximum; the grounds are in the working; an unknown crop is refused', () => {
  const { value, steps } = recording((record) => soilRange('zucchini', unitSystems.us, record));
  const [minimum = 0, low = 0, high = 0, maximum = 0, planting = 0] = value;
  expect([minimum, low, high, maximum]).toEqual([minimum, low, high, maximum].sort((a, b) => a - b));
  expect(planting).toBeGreaterThanOrEqual(minimum);
  expect(steps).toHaveLength(5);
  expect(refusalOf(() => soilRange('gurken', unitSystems.us))).toMatchObject({ code: 'unknownName' });
});
