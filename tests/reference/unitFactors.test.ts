import { expect, test } from 'vitest';
import * as units from '../../src/calc/units/units';
import { unitFactors } from '../../src/reference/unitFactors';

// The definitions: yard and pound agreement of 1959, 1 yd = 0.9144 m, 1 lb = 0.45359237 kg of 16 oz and of 7,000 grains
// of 64.79891 mg; an acre is a furlong of 660 ft by a chain of 66 ft; a US gallon is 3.785411784 L. From memory.
test('the factors agree with the definitions and with one another', () => {
  const all = unitFactors;
  expect(all.metresPerFoot).toBeCloseTo(0.9144 / 3, 12);
  expect(all.cmPerInch * all.inchesPerFoot).toBeCloseTo(all.metresPerFoot * all.cmPerMetre, 12);
  expect(all.squareMetresPerSquareFoot).toBeCloseTo(all.metresPerFoot ** 2, 14);
  expect(all.squareFeetPerAcre).toBe(660 * 66);
  expect(all.kgPerPound).toBeCloseTo((7000 * 64.79891) / 1e6, 14);
  expect(all.gramsPerOunce).toBeCloseTo((all.kgPerPound * 1000) / 16, 12);
  expect((all.cubicInchesPerGallon * all.cmPerInch ** 3) / all.mlPerLitre).toBeCloseTo(3.785411784, 12);
  // Water boils at 212 °F and 100 °C; a hectare is 100 m by 100 m.
  expect(all.freezingF + 100 * all.fahrenheitPerCelsius).toBe(212);
  expect(all.squareMetresPerHectare).toBe(all.cmPerMetre ** 2);
  expect(all.pintsPerQuart).toBe(2);
});

test('frozen, and the calculations have them', () => {
  expect(Object.isFrozen(unitFactors)).toBe(true);
  expect(units).toMatchObject(unitFactors);
});
