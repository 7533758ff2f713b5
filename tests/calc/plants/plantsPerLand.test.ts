import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plantsPerLand } from '../../../src/calc/plants/plantsPerLand';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { measured } from './placing';

const { us, metric } = unitSystems;

describe('plantsPerLand', () => {
  test('2 ft x 3 ft: 7,260 an acre (Farm and Garden Rule-Book, table of plants to the acre)', () => {
    expect(plantsPerLand(2, 36, us)).toBe(7260);
  });

  test.each([
    [5, 12, 8712],
    [6, 12, 7260],
    [8, 36, 1815],
    [8, 60, 1089],
    [7, 24, 43560 / 14],
    [2.5, 30, 6969.6],
  ])('%d ft x %d in: %d an acre (hand computed: 43,560/area)', (row, plant, expected) => {
    expect(plantsPerLand(row, plant, us)).toBeCloseTo(expected, 9);
  });

  test('1.5 m x 30 cm: 22,222.2 a hectare, fraction kept (hand computed: 10,000/0.45)', () => {
    expect(plantsPerLand(1.5, 30, metric)).toBeCloseTo(22222.2222222, 6);
  });

  test('an acre and a hectare agree: 2.47105 acres (NIST Handbook 44, appendix C)', () => {
    const acre = plantsPerLand(5, 12, us);
    const hectare = plantsPerLand(5 * 0.3048, 30.48, metric);
    expect(hectare / acre).toBeCloseTo(2.4710538, 6);
  });

  test('half the spacing, twice the plants; rows and plants change places', () => {
    fc.assert(
      fc.property(measured(0.5, 20), measured(1, 100), (row, plant) => {
        const plants = plantsPerLand(row, plant, us);
        expect(plantsPerLand(row / 2, plant, us)).toBeCloseTo(2 * plants, 4);
        expect(plantsPerLand(row, plant / 2, us)).toBeCloseTo(2 * plants, 4);
        expect(plantsPerLand(plant / 12, row * 12, us)).toBeCloseTo(plants, 4);
      }),
      seeded,
    );
  });

  test('zero, a negative, NaN and infinity name the argument and its unit', () => {
    for (const bad of [0, -1, NaN, Infinity]) {
      const refused = { code: 'outOfRange', value: bad, above: 0 };
      expect(refusalOf(() => plantsPerLand(bad, 12, us))).toEqual({
        ...refused,
        name: 'row_spacing',
        unit: 'ft',
      });
      expect(refusalOf(() => plantsPerLand(2, bad, metric))).toEqual({
        ...refused,
        name: 'plant_spacing',
        unit: 'cm',
      });
    }
    expect(plantsPerLand(1e-6, 12, us)).toBeCloseTo(43560e6, 0);
  });

  test('the working ends in the returned density and changes nothing', () => {
    const { value, steps } = recording((record) => plantsPerLand(5, 12, us, record));
    expect(value).toBe(plantsPerLand(5, 12, us));
    expect(steps.map(({ step, result }) => [step, result])).toEqual([
      ['areaPerPlant', 5],
      ['plantsPerLand', value],
    ]);
  });
});
