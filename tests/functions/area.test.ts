import { expect, test } from 'vitest';
import { leftOut, run } from './run';

test('AREA.FORPLANTS: 132 plants at 5 ft x 12 in need 660 sq ft, 10 at 1.5 m x 60 cm 9 sq m (hand computed)', () => {
  for (const nothing of leftOut) expect(run('AREA.FORPLANTS', 132, 5, 12, nothing)).toBe(660);
  expect(run('AREA.FORPLANTS', '10', [[1.5]], 60, 'metric')).toBeCloseTo(9, 12);
});

test('AREA.FROM: half an acre is 21,780 sq ft, 4,046.86 sq m an acre (NIST Handbook 44, appendix C)', () => {
  for (const nothing of leftOut) expect(run('AREA.FROM', 0.5, 'acre', nothing)).toBe(21_780);
  expect(run('AREA.FROM', '1', [['Acres']], 'metric')).toBeCloseTo(4046.8564224, 6);
  expect(run('AREA.FROM', 2, 'ha', 'metric')).toBe(20_000);
});

test('refusals say what to do', () => {
  expect(run('AREA.FROM', 1, 'rod')).toBe(
    '#VALUE! The unit of area is "rod". Choose one of: sq in, sq ft, sq yd, acre, sq mi, sq m, are, hectare, sq km.',
  );
  expect(run('AREA.FROM', 0, 'acre')).toBe('#VALUE! The area in its own unit is 0. It must be above 0.');
  expect(run('AREA.FROM', 1)).toBe('#VALUE! The unit of area is missing. Fill it in.');
  expect(run('AREA.FROM', 1, 'acre', 'imperial')).toMatch(/Choose one of: us, metric/);
  expect(run('AREA.FORPLANTS', 13.5, 5, 12)).toMatch(/number of plants is 13\.5\. Give a whole number/);
  expect(run('AREA.FORPLANTS', 132, 0, 12)).toMatch(/row spacing is 0\. It must be above 0 ft/);
  expect(run('AREA.FORPLANTS', 132, 5, { error: '#N/A' })).toMatch(/Mend that cell first/);
});
