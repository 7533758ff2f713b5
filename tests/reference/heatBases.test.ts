import { describe, expect, test } from 'vitest';
import { heatFormula, heatMethods } from '../../src/calc/heat/heatFormula';
import { fahrenheitPerCelsius, freezingF } from '../../src/calc/units/units';
import { crops } from '../../src/reference/crops';
import { heatBases } from '../../src/reference/heatBases';
import { sources } from '../../src/reference/sources';

describe('base temperatures', () => {
  test('are of crops of the reference, with a method that counts with them and a source', () => {
    for (const { crop, base, ceiling, method, ground } of heatBases) {
      expect(crops.map(({ name }) => name)).toContain(crop);
      const known = heatMethods.find((one) => one === method);
      if (known === undefined) throw new Error(method);
      expect(() => heatFormula(base.F, ceiling?.F, known)).not.toThrow();
      expect(Object.keys(sources)).toContain(ground);
    }
  });

  test('say the same in both scales, to the half degree that Perry and Wehner round to', () => {
    for (const { F, C } of heatBases.flatMap(({ base, ceiling }) => [base, ...(ceiling ? [ceiling] : [])])) {
      expect(Math.abs((F - freezingF) / fahrenheitPerCelsius - C)).toBeLessThan(0.25);
    }
  });

  test('cucumber first as Perry and Wehner 1996 have it: 60 F (15.5 C), 90 F (32 C) reducing', () => {
    expect(heatBases.find(({ crop }) => crop === 'pickling cucumber')).toMatchObject({
      base: { F: 60, C: 15.5 },
      ceiling: { F: 90, C: 32 },
      method: 'reduced',
    });
  });

  test('are frozen', () => {
    expect(Object.isFrozen(heatBases)).toBe(true);
    for (const row of heatBases) expect(Object.isFrozen(row) && Object.isFrozen(row.base)).toBe(true);
  });
});
