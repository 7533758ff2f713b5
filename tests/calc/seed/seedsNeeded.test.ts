import fc from 'fast-check';
import { qnbinom } from 'lib-r-math.js';
import { describe, expect, test } from 'vitest';
import { seedsNeeded } from '../../../src/calc/seed/seedsNeeded';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { exactShortfall } from '../stand/oracles';

describe('seedsNeeded', () => {
  test.each([
    [100, 0.8, undefined, 125, '100/0.8'],
    [100, 0.8, 0.9, 139, '100/0.72 = 138.9'],
    [21, 0.7, undefined, 30, '21/0.7, which is 30.000000000000004 in binary fractions'],
    [56, 0.7, 0.8, 100, '56/0.56, which is 100.00000000000001'],
    [1, 1, 1, 1, 'one sure seed'],
    [1, 0.001, undefined, 1000, '1/0.001'],
  ] as const)('%d plants at %d and %s: %d on average (hand computed: %s)', (plants, g, e, expected, _why) => {
    expect(seedsNeeded(plants, g, e)).toBe(expected);
  });

  test('an IRRI seed rate: 40 of 80 % seed takes 50 (Rice Knowledge Bank, 40/0.80)', () => {
    expect(seedsNeeded(40, 0.8)).toBe(50);
  });

  test.each([
    [100, 0.8, undefined, 0.95, 135],
    [100, 0.8, undefined, 0.99, 139],
    [100, 0.8, 0.9, 0.95, 151],
    [100, 0.75, undefined, 0.9, 142],
    [20, 0.8, undefined, 0.95, 29],
    [2, 0.8, undefined, 0.99, 5],
  ])(
    '%d plants at %d, %s, assurance %d: %d (exact sums in whole numbers; negative binomial of lib-r-math.js 2.0.3)',
    (plants, g, e, assurance, expected) => {
      expect(seedsNeeded(plants, g, e, assurance)).toBe(expected);
      const percents = Math.round(g * (e ?? 1) * 1000);
      expect(exactShortfall(plants, expected, percents, 1000)).toBeLessThanOrEqual(1 - assurance + 1e-12);
      expect(exactShortfall(plants, expected - 1, percents, 1000)).toBeGreaterThan(1 - assurance);
      expect(plants + qnbinom(assurance, plants, g * (e ?? 1))).toBe(expected);
    },
  );

  test.each([
    [400, undefined, 136],
    [50, undefined, 147],
    [10, undefined, 184],
    [400, 0.9, 153],
  ])(
    '100 plants at 0.8 of %d tested, emergence %s, 0.95: %d (integrated in leastSeedsOfTested.test)',
    (tested, e, expected) => {
      expect(seedsNeeded(100, 0.8, e, 0.95, tested)).toBe(expected);
    },
  );

  test('doubt about the germination costs seed, less the larger the test', () => {
    const plain = seedsNeeded(100, 0.8, 0.9, 0.95);
    const tested = [10, 50, 200, 400, 4000].map((seeds) => seedsNeeded(100, 0.8, 0.9, 0.95, seeds));
    expect([...tested].sort((a, b) => b - a)).toEqual(tested);
    for (const seeds of tested) expect(seeds).toBeGreaterThanOrEqual(plain);
  });

  test('on average: enough, and one seed fewer is not; more plants, more seed', () => {
    const share = fc.integer({ min: 1, max: 100 }).map((percent) => percent / 100);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), share, share, (plants, g, e) => {
        const seeds = seedsNeeded(plants, g, e);
        expect(seeds * g * e).toBeGreaterThanOrEqual(plants * (1 - 1e-9));
        expect((seeds - 1) * g * e).toBeLessThan(plants);
        expect(seedsNeeded(plants + 1, g, e)).toBeGreaterThan(seeds);
        expect(seedsNeeded(plants, e, g)).toBe(seeds);
      }),
      seeded,
    );
  });

  test('every bound, just in and just out', () => {
    expect(refusalOf(() => seedsNeeded(2.5, 0.8))).toEqual({ code: 'notWhole', name: 'plants', value: 2.5 });
    for (const bad of [0, -3, NaN, Infinity]) {
      expect(refusalOf(() => seedsNeeded(bad, 0.8))).toMatchObject({
        code: 'outOfRange',
        name: 'plants',
        atLeast: 1,
      });
    }
    const above0To1 = { code: 'outOfRange', above: 0, atMost: 1 };
    for (const bad of [0, -0.1, NaN, 101]) {
      expect(refusalOf(() => seedsNeeded(100, bad))).toEqual({
        ...above0To1,
        name: 'germination',
        unit: 'share',
        value: bad,
      });
      expect(refusalOf(() => seedsNeeded(100, 0.8, bad))).toMatchObject({
        ...above0To1,
        name: 'field_emergence',
      });
    }
    expect(refusalOf(() => seedsNeeded(100, 80))).toEqual({
      code: 'percentForShare',
      name: 'germination',
      value: 80,
    });
    expect(refusalOf(() => seedsNeeded(100, 0.8, 0.9, 1))).toEqual({ code: 'assuranceOfOne' });
    expect(refusalOf(() => seedsNeeded(100, 0.8, 0.9, 0))).toMatchObject({
      code: 'outOfRange',
      name: 'assurance',
    });
    expect(refusalOf(() => seedsNeeded(100, 0.8, 0.9, 0.95, 0))).toMatchObject({
      code: 'outOfRange',
      name: 'tested',
    });
    expect(refusalOf(() => seedsNeeded(100, 0.8, 0.9, 0.95, 50.5))).toMatchObject({
      code: 'notWhole',
      name: 'tested',
    });
    // Beta(3/2, 1/2): no plant of 4 seeds 1/4 x 1.5/3 x 2.5/4 x 3.5/5 = 0.0547, of 5 x 4.5/6 = 0.0410.
    expect(seedsNeeded(1, 1, 1, 0.95, 1)).toBe(5);
  });

  test('tested without an assurance', () => {
    expect(refusalOf(() => seedsNeeded(100, 0.8, undefined, undefined, 400))).toEqual({
      code: 'testedWithoutAssurance',
    });
  });

  test('the working ends in the returned seeds, whichever way they are counted', () => {
    const average = recording((record) => seedsNeeded(100, 0.8, undefined, undefined, undefined, record));
    expect(average.value).toBe(125);
    expect(average.steps.map(({ step, result, rounded }) => [step, result, rounded])).toEqual([
      ['standChance', 0.8, undefined],
      ['seedsOnAverage', 125, undefined],
    ]);
    expect(average.assumptions).toEqual([
      { assumed: 'field_emergence', value: 1, unit: 'share', ground: 'judgement' },
    ]);
    expect(average.remarks).toEqual(['noFieldLossAssumed', 'averageFallsShort']);

    const sure = recording((record) => seedsNeeded(100, 0.8, 0.9, 0.95, undefined, record));
    expect(sure.steps.at(-1)).toMatchObject({ step: 'seedsForAssurance', result: sure.value });
    expect([sure.value, sure.assumptions, sure.remarks]).toEqual([151, [], []]);
    expect(sure.steps.at(-1)?.inputs).toMatchObject({
      chanceOfThese: expect.closeTo(1 - exactShortfall(100, 151, 72, 100), 8),
      chanceOfOneFewer: expect.closeTo(1 - exactShortfall(100, 150, 72, 100), 8),
    });

    const doubted = recording((record) => seedsNeeded(100, 0.8, 0.9, 0.95, 400, record));
    expect(doubted.steps.at(-1)).toMatchObject({ step: 'seedsForAssuranceTested', result: doubted.value });
    expect(doubted.value).toBe(153);
    const { chanceOfThese, chanceOfOneFewer } = doubted.steps.at(-1)?.inputs ?? {};
    expect(chanceOfThese).toBeGreaterThanOrEqual(0.95);
    expect(chanceOfOneFewer).toBeLessThan(0.95);

    const rounded = recording((record) => seedsNeeded(100, 0.8, 0.9, undefined, undefined, record));
    expect(rounded.steps.at(-1)).toMatchObject({ result: 139, rounded: 'up' });
  });
});
