import { describe, expect, test } from 'vitest';
import { areaUnitNamed } from '../../../src/calc/area/areaUnitNamed';
import { areaUnits } from '../../../src/calc/units/units';

// Names and symbols by NIST Handbook 44, appendix C; the looser spellings are common practice, no source.
describe('spellings', () => {
  test.each([
    ['sq ft', 'ft2 ft² ft^2 FT2|sqft|Sq. Ft.|square feet|square foot|Square  Feet|sq feet'],
    ['sq yd', 'yd2 yd²|sq yd|sq. yds|square yards|SQUARE YARD'],
    ['sq in', 'in2 in²|sq in|square inches|square inch'],
    ['sq mi', 'mi2|sq mi|square miles|square mile'],
    ['sq m', 'm2 m²|sq m|sqm|square metres|square meters|square metre'],
    ['sq km', 'km2 km²|sq km|square kilometres|square kilometer'],
    ['acre', 'acre acres Acres ac ac.'],
    ['are', 'are ares'],
    ['hectare', 'ha hectare hectares HA'],
  ])('%s', (unit, spelled) => {
    const all = spelled.split('|').flatMap((part) => (/^sq|^Sq|^SQ/.test(part) ? [part] : part.split(' ')));
    for (const spelling of all) expect(areaUnitNamed(spelling), spelling).toBe(unit);
  });

  test('every unit reads its own name', () => {
    for (const unit of Object.keys(areaUnits)) expect(areaUnitNamed(unit)).toBe(unit);
  });
});

test.each([
  '',
  'ft',
  'feet',
  'rod',
  'a',
  'sq',
  'square',
  'm3',
  'acre2',
  'sq acre',
  'constructor',
  'sq toString',
])('"%s" is no unit of area here', (word) => {
  expect(areaUnitNamed(word)).toBeUndefined();
});
