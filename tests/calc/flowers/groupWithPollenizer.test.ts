import fc from 'fast-check';
import { expect, test } from 'vitest';
import { chanceOfNoPollenizer } from '../../../src/calc/flowers/chanceOfNoPollenizer';
import { groupWithPollenizer } from '../../../src/calc/flowers/groupWithPollenizer';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

test.each([
  [0.1, 0.95, 29, '0.9^28 = 0.0523, 0.9^29 = 0.0471'],
  [0.1, undefined, 29, 'the default is 0.95'],
  [0.15, 0.95, 19, '0.85^18 = 0.0536, 0.85^19 = 0.0456'],
  [0.5, 0.75, 2, '0.5^2, exactly enough'],
  [0.1, 0.19, 2, '0.9^2 = 0.81, exactly enough where binary fractions say 0.18999999999999995'],
  [0.1, 0.271, 3, '0.9^3 = 0.729, exactly enough'],
  [1, 0.999, 1, 'all are pollenizers'],
] as const)('%d, assurance %s: %d (hand computed: %s)', (share, assurance, plants, _why) => {
  expect(groupWithPollenizer(share, assurance)).toBe(plants);
});

test('the logarithm, away from whole numbers: ln(1 - assurance) / ln(1 - share), rounded up', () => {
  for (const share of [0.01, 0.07, 0.1, 0.15, 0.33]) {
    for (const assurance of [0.5, 0.9, 0.95, 0.99, 0.9999]) {
      const exact = Math.log(1 - assurance) / Math.log(1 - share);
      expect(Math.abs(exact - Math.round(exact))).toBeGreaterThan(1e-6);
      expect(groupWithPollenizer(share, assurance)).toBe(Math.ceil(exact));
    }
  }
});

test('the least group whose chance of none is within what the assurance allows', () => {
  const percent = fc.integer({ min: 1, max: 99 }).map((one) => one / 100);
  fc.assert(
    fc.property(percent, percent, (share, assurance) => {
      const plants = groupWithPollenizer(share, assurance);
      const allowed = 1 - assurance;
      expect(chanceOfNoPollenizer(plants, share)).toBeLessThanOrEqual(allowed * (1 + 1e-9) + 1e-15);
      if (plants > 1) expect(chanceOfNoPollenizer(plants - 1, share)).toBeGreaterThan(allowed);
    }),
    seeded,
  );
});

test('bounds', () => {
  for (const bad of [0, -0.1, NaN]) {
    expect(refusalOf(() => groupWithPollenizer(bad, 0.95))).toMatchObject({ name: 'share', above: 0 });
  }
  expect(refusalOf(() => groupWithPollenizer(10, 0.95))).toMatchObject({ code: 'percentForShare' });
  expect(refusalOf(() => groupWithPollenizer(0.1, 1))).toEqual({ code: 'assuranceOfOne' });
  expect(refusalOf(() => groupWithPollenizer(0.1, 0))).toMatchObject({ name: 'assurance', above: 0 });
  expect(refusalOf(() => groupWithPollenizer(1e-12, 0.95))).toEqual({
    code: 'tooManyForAssurance',
    most: 1e8,
  });
});

test('working: the last step is the value; the default is named', () => {
  const { value, steps, assumptions } = recording((record) => groupWithPollenizer(0.1, undefined, record));
  expect(steps.at(-1)?.result).toBe(value);
  expect(value).toBe(groupWithPollenizer(0.1));
  // Hand computed: 1 - 0.9^29 and 1 - 0.9^28.
  expect(steps.at(-1)?.inputs).toMatchObject({
    chanceOfThese: expect.closeTo(1 - 0.9 ** 29, 9),
    chanceOfOneFewer: expect.closeTo(1 - 0.9 ** 28, 9),
  });
  const one = recording((record) => groupWithPollenizer(1, 0.999, record)).steps.at(-1);
  expect(one?.inputs).toMatchObject({ chanceOfThese: 1, chanceOfOneFewer: 0 });
  expect(assumptions).toEqual([{ assumed: 'assurance', value: 0.95, unit: 'share', ground: 'judgement' }]);
});
