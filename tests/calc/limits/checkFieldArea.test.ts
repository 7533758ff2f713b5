import { expect, test } from 'vitest';
import { checkFieldArea } from '../../../src/calc/limits/checkFieldArea';
import { unitSystems } from '../../../src/calc/units/units';
import { refusalOf } from '../refusal';

test('10 sq ft and 1 sq m are fields, anything less is a slip of the unit, 0 is no area', () => {
  checkFieldArea(10, unitSystems.us);
  checkFieldArea(1, unitSystems.metric);
  for (const [area, system] of [
    [9.999, unitSystems.us],
    [2.5, unitSystems.us],
    [0.999, unitSystems.metric],
  ] as const) {
    expect(refusalOf(() => checkFieldArea(area, system))).toMatchObject({ code: 'areaInLandUnits', area });
  }
  expect(refusalOf(() => checkFieldArea(0, unitSystems.us))).toMatchObject({
    code: 'outOfRange',
    unit: 'sqFt',
  });
});
