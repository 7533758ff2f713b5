import { describe, expect, test } from 'vitest';
import { checkCount, checkNumber, checkPositive, checkShare } from '../../../src/calc/limits/limits';
import { refusalOf } from '../refusal';

describe('checkNumber', () => {
  test('closed bounds are in, open ones out', () => {
    for (const value of [2, 3, 5]) {
      expect(() => checkNumber('depth', value, 'in', { atLeast: 2, atMost: 5 })).not.toThrow();
    }
    for (const value of [2, 5, 1.999, 5.001]) {
      expect(refusalOf(() => checkNumber('depth', value, 'in', { above: 2, below: 5 }))).toEqual({
        code: 'outOfRange',
        name: 'depth',
        value,
        unit: 'in',
        above: 2,
        below: 5,
      });
    }
  });

  test('a limit that does not apply is absent; NaN and infinity are never in', () => {
    for (const value of [NaN, Infinity, -Infinity]) {
      expect(refusalOf(() => checkNumber('depth', value, 'in', {}))).toEqual({
        code: 'outOfRange',
        name: 'depth',
        value,
        unit: 'in',
      });
    }
    expect(() => checkNumber('depth', -1e300, 'in', {})).not.toThrow();
  });
});

test('checkPositive: above 0', () => {
  expect(() => checkPositive('length', Number.MIN_VALUE, 'ft')).not.toThrow();
  for (const bad of [0, -0, -1, NaN]) {
    expect(refusalOf(() => checkPositive('length', bad, 'ft'))).toMatchObject({
      code: 'outOfRange',
      above: 0,
    });
  }
});

describe('checkShare', () => {
  test('0 to 1 unless said otherwise, a tighter end in place of the usual one', () => {
    for (const value of [0, 0.5, 1]) expect(() => checkShare('culls', value)).not.toThrow();
    expect(refusalOf(() => checkShare('culls', -0.1))).toEqual({
      code: 'outOfRange',
      name: 'culls',
      value: -0.1,
      unit: 'share',
      atLeast: 0,
      atMost: 1,
    });
    expect(refusalOf(() => checkShare('culls', 0, { above: 0 }))).toEqual({
      code: 'outOfRange',
      name: 'culls',
      value: 0,
      unit: 'share',
      above: 0,
      atMost: 1,
    });
    expect(refusalOf(() => checkShare('culls', 1, { below: 1 }))).toEqual({
      code: 'outOfRange',
      name: 'culls',
      value: 1,
      unit: 'share',
      atLeast: 0,
      below: 1,
    });
  });

  test('over 1 and up to 100 is a per cent, more is out of range', () => {
    for (const value of [1.0001, 85, 100]) {
      expect(refusalOf(() => checkShare('culls', value))).toEqual({
        code: 'percentForShare',
        name: 'culls',
        value,
      });
    }
    expect(refusalOf(() => checkShare('culls', 100.1))).toMatchObject({ code: 'outOfRange' });
    expect(refusalOf(() => checkShare('culls', NaN))).toMatchObject({ code: 'outOfRange' });
  });
});

describe('checkCount', () => {
  test('gives the whole number that the value is up to rounding error', () => {
    expect(checkCount('plants', 3, 'plants', { atLeast: 1 })).toBe(3);
    expect(checkCount('plants', (0.1 + 0.2) * 10, 'plants', { atLeast: 1 })).toBe(3);
  });

  test('fractions are not whole, limits come first', () => {
    expect(refusalOf(() => checkCount('plants', 2.5, 'plants', { atLeast: 1 }))).toEqual({
      code: 'notWhole',
      name: 'plants',
      value: 2.5,
    });
    expect(refusalOf(() => checkCount('plants', 0.5, 'plants', { atLeast: 1 }))).toMatchObject({
      code: 'outOfRange',
    });
    expect(refusalOf(() => checkCount('plants', NaN, 'plants', {}))).toMatchObject({ code: 'outOfRange' });
  });
});
