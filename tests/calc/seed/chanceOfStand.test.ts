import fc from 'fast-check';
import { jStat } from 'jstat';
import { pbinom } from 'lib-r-math.js';
import { describe, expect, test } from 'vitest';
import { chanceOfStand } from '../../../src/calc/seed/chanceOfStand';
import { seedsNeeded } from '../../../src/calc/seed/seedsNeeded';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';
import { exactShortfall, ratioShortfall } from '../stand/oracles';

describe('chanceOfStand', () => {
  test.each([
    [5, 3, 0.8, undefined, 0.94208, '1 - 0.05792'],
    [4, 3, 0.8, undefined, 0.8192, '0.8^4 + 4 0.2 0.8^3'],
    [2, 2, 0.5, 0.5, 0.0625, '(0.5 x 0.5)^2'],
    [10, 1, 0.1, undefined, 0.6513215599, '1 - 0.9^10'],
    [7, 7, 1, 1, 1, 'no seed fails'],
    [2, 3, 0.9, undefined, 0, 'two seeds give no three plants'],
    [0, 1, 0.9, undefined, 0, 'nothing sown'],
  ] as const)(
    '%d seeds, %d plants at %d, %s: %d (hand computed: %s)',
    (seeds, plants, g, e, chance, _why) => {
      expect(chanceOfStand(seeds, plants, g, e)).toBeCloseTo(chance, 12);
    },
  );

  test('125 seeds for 100 plants at 80 %: 0.5533 (exact sum in whole numbers)', () => {
    expect(chanceOfStand(125, 100, 0.8)).toBeCloseTo(1 - exactShortfall(100, 125, 80, 100), 12);
    expect(chanceOfStand(125, 100, 0.8)).toBeCloseTo(0.5533, 4);
  });

  test('lib-r-math.js 2.0.3, and jstat 1.9.6, whose fraction stops at 3e-7', () => {
    for (const g of [0.11, 0.52, 0.72, 0.93]) {
      for (const [seeds, plants] of [
        [3, 1],
        [29, 20],
        [60, 50],
      ] as const) {
        const ofR = 1 - (pbinom(plants - 1, seeds, g) as number);
        expect(chanceOfStand(seeds, plants, g)).toBeCloseTo(ofR, 10);
        const ofJstat = jStat.ibeta(g, plants, seeds - plants + 1);
        expect(chanceOfStand(seeds, plants, g)).toBeCloseTo(ofJstat, 7);
      }
    }
  });

  test('a small chance keeps its digits: 30 of 30 at 10 % is 1e-30, 12 of 15 at 1 % is 4.417e-22', () => {
    expect(chanceOfStand(30, 30, 0.1) / 1e-30).toBeCloseTo(1, 10);
    // 455 0.99^3 1e-24 + 105 0.99^2 1e-26 + 15 0.99 1e-28 + 1e-30, hand computed.
    const terms = 455 * 0.99 ** 3 * 1e-24 + 105 * 0.99 ** 2 * 1e-26 + 15 * 0.99 * 1e-28 + 1e-30;
    expect(chanceOfStand(15, 12, 0.01) / terms).toBeCloseTo(1, 10);
  });

  test('large counts, up to 100 million seeds (ratios of terms)', () => {
    for (const seeds of [12_500, 1_250_000, 100_000_000]) {
      const plants = Math.round(seeds * 0.8);
      expect(chanceOfStand(seeds, plants, 0.8)).toBeCloseTo(1 - ratioShortfall(plants, seeds, 0.8), 7);
    }
  });

  test('what SEED.NEEDED asks for reaches its assurance, and one seed fewer does not', () => {
    const share = fc.integer({ min: 5, max: 99 }).map((percent) => percent / 100);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3000 }), share, share, (plants, g, assurance) => {
        const seeds = seedsNeeded(plants, g, 0.9, assurance);
        expect(chanceOfStand(seeds, plants, g, 0.9)).toBeGreaterThanOrEqual(assurance - 1e-9);
        expect(chanceOfStand(seeds - 1, plants, g, 0.9)).toBeLessThan(assurance);
        expect(chanceOfStand(seeds + 1, plants, g)).toBeGreaterThan(chanceOfStand(seeds, plants, g) - 1e-12);
      }),
      seeded,
    );
  });

  test('bounds, just in and just out', () => {
    expect(refusalOf(() => chanceOfStand(5.5, 3, 0.8))).toMatchObject({ code: 'notWhole', name: 'seeds' });
    expect(refusalOf(() => chanceOfStand(-1, 3, 0.8))).toMatchObject({ name: 'seeds', atLeast: 0 });
    expect(refusalOf(() => chanceOfStand(100_000_001, 3, 0.8))).toMatchObject({ atMost: 100_000_000 });
    expect(refusalOf(() => chanceOfStand(5, 0, 0.8))).toMatchObject({ name: 'plants', atLeast: 1 });
    expect(refusalOf(() => chanceOfStand(NaN, 3, 0.8))).toMatchObject({ code: 'outOfRange', name: 'seeds' });
    expect(refusalOf(() => chanceOfStand(5, 3, 0))).toMatchObject({ name: 'germination', above: 0 });
    expect(refusalOf(() => chanceOfStand(5, 3, 80))).toMatchObject({ code: 'percentForShare' });
    expect(refusalOf(() => chanceOfStand(5, 3, 0.8, 0))).toMatchObject({ name: 'field_emergence' });
  });

  test('the working ends in the chance and names the default', () => {
    const { value, steps, assumptions, remarks } = recording((record) =>
      chanceOfStand(5, 3, 0.8, undefined, record),
    );
    expect(value).toBe(chanceOfStand(5, 3, 0.8));
    expect(steps.map(({ step, result }) => [step, result])).toEqual([
      ['standChance', 0.8],
      ['chanceOfStand', value],
    ]);
    expect(assumptions.map(({ assumed }) => assumed)).toEqual(['field_emergence']);
    expect(remarks).toEqual(['noFieldLossAssumed']);
  });
});
