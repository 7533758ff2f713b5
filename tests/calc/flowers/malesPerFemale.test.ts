import fc from 'fast-check';
import { expect, test } from 'vitest';
import { malesPerFemale } from '../../../src/calc/flowers/malesPerFemale';
import { ratioAsShare } from '../../../src/calc/flowers/ratioAsShare';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

test.each([
  [0.5, 1],
  [0.0625, 15],
  [0.04, 24],
  [1, 0],
])('female share %d: %d males a female (hand computed)', (share, males) => {
  expect(malesPerFemale(share)).toBeCloseTo(males, 12);
});

test('10 and 25 males a female are shares of 1 in 11 and 1 in 26 (Robinson and Decker-Walters, from memory)', () => {
  expect(malesPerFemale(1 / 11)).toBeCloseTo(10, 12);
  expect(malesPerFemale(1 / 26)).toBeCloseTo(25, 12);
});

test('undoes a ratio of females to males', () => {
  const count = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
  fc.assert(
    fc.property(count, count, (females, males) => {
      const ratio = malesPerFemale(ratioAsShare(females, males));
      expect(ratio / (males / females)).toBeCloseTo(1, 6);
    }),
    seeded,
  );
});

test('bounds', () => {
  for (const bad of [0, -0.1, NaN]) {
    expect(refusalOf(() => malesPerFemale(bad))).toMatchObject({
      code: 'outOfRange',
      name: 'female_share',
      above: 0,
      atMost: 1,
    });
  }
  expect(refusalOf(() => malesPerFemale(50))).toMatchObject({ code: 'percentForShare' });
});

test('working: the last step is the value', () => {
  const { value, steps } = recording((record) => malesPerFemale(0.2, record));
  expect(steps.at(-1)?.result).toBe(value);
  expect(value).toBe(malesPerFemale(0.2));
});
