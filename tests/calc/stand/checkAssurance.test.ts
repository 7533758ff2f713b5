import { expect, test } from 'vitest';
import { allowedShortfall } from '../../../src/calc/stand/allowedShortfall';
import { checkAssurance } from '../../../src/calc/stand/checkAssurance';
import { refusalOf } from '../refusal';

test('any chance above 0 and below 1 is an assurance', () => {
  for (const assurance of [1e-9, 0.5, 0.95, 1 - 1e-12]) expect(() => checkAssurance(assurance)).not.toThrow();
});

test('certainty cannot be bought', () => {
  expect(refusalOf(() => checkAssurance(1))).toEqual({ code: 'assuranceOfOne' });
});

test('95 is a per cent, 0, a negative and NaN are out of range', () => {
  expect(refusalOf(() => checkAssurance(95))).toEqual({
    code: 'percentForShare',
    name: 'assurance',
    value: 95,
  });
  for (const assurance of [0, -0.1, 101, NaN, Infinity]) {
    expect(refusalOf(() => checkAssurance(assurance))).toEqual({
      code: 'outOfRange',
      name: 'assurance',
      value: assurance,
      unit: 'share',
      above: 0,
      below: 1,
    });
  }
});

test('the shortfall allowed is what is left, and a rounding error (hand computed)', () => {
  expect(allowedShortfall(0.95)).toBeCloseTo(0.05, 9);
  expect(allowedShortfall(0.91)).toBeGreaterThan(0.09);
  expect(allowedShortfall(1 - 2 ** -52)).toBeLessThan(1e-15);
});
