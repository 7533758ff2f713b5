import { expect, test } from 'vitest';
import { roundingOf } from '../../../src/calc/whole/roundingOf';

test('names the way of a rounding, and none where the value was whole up to rounding error', () => {
  expect(roundingOf(20575.5, 20576)).toEqual({ rounded: 'up' });
  expect(roundingOf(20575.5, 20575)).toEqual({ rounded: 'down' });
  expect(roundingOf(20575, 20575)).toEqual({});
  expect(roundingOf(0.1 + 0.2 + 0.7, 1)).toEqual({});
});
