import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pollenizersNeeded } from '../../../src/calc/flowers/pollenizersNeeded';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const seeded = { seed: 20261125, numRuns: 400 };
/** Per cents, so that a count by hand is exact. */
const percent = (max: number): fc.Arbitrary<number> => fc.integer({ min: 0, max });

/** The least number by trying one after the other, in whole numbers so that no fraction is rounded. */
function byCounting(plants: number, sharePercent: number, lossPercent: number, isBetween: boolean): number {
  for (let pollenizers = 0; pollenizers <= plants * 100; pollenizers++) {
    const standing = pollenizers * (100 - lossPercent);
    const others = (isBetween ? plants : plants - pollenizers) * 100;
    if (standing * 100 >= sharePercent * (standing + others)) return pollenizers;
  }
  throw new Error('not reached');
}

describe('pollenizersNeeded', () => {
  test('400 places, a quarter, a fifth lost: 118 of them; 167 between 400 (hand computed: 117.65, 166.67)', () => {
    expect(pollenizersNeeded(400, 0.25, 0.2, 'dedicated')).toBe(118);
    expect(pollenizersNeeded(400, 0.25, 0.2, 'between')).toBe(167);
  });

  test('1,742 places of an acre at 1:3: 436 (hand computed: 435.5)', () => {
    expect(pollenizersNeeded(1742, 0.25, undefined, undefined)).toBe(436);
  });

  test('1:4 with a fifth lost stands as 1:5, so a fifth is had by setting 1:3.2 (Delaware, Johnson, turned round)', () => {
    expect(pollenizersNeeded(4200, 0.2, 0.2, 'dedicated')).toBe(1000);
  });

  test('is the least number with which the share holds after losses, by counting', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 300 }),
        percent(80),
        percent(60),
        fc.boolean(),
        (plants, share, losses, isBetween) => {
          expect(
            pollenizersNeeded(plants, share / 100, losses / 100, isBetween ? 'between' : 'dedicated'),
          ).toBe(byCounting(plants, share, losses, isBetween));
        },
      ),
      seeded,
    );
  });

  test('dedicated never takes more places than there are; more losses or share never need fewer', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e5 }), percent(99), percent(98), (plants, share, losses) => {
        const needed = pollenizersNeeded(plants, share / 100, losses / 100, 'dedicated');
        expect(needed).toBeLessThanOrEqual(plants);
        expect(
          pollenizersNeeded(plants, share / 100, (losses + 1) / 100, 'dedicated'),
        ).toBeGreaterThanOrEqual(needed);
        expect(
          pollenizersNeeded(plants, (share + 1) / 100, losses / 100, 'dedicated'),
        ).toBeGreaterThanOrEqual(needed);
      }),
      seeded,
    );
  });

  test('bounds: none wanted is 0, all dedicated is all; between everything is refused', () => {
    expect(pollenizersNeeded(400, 0, 0.2, 'dedicated')).toBe(0);
    expect(pollenizersNeeded(400, 0, 0.2, 'between')).toBe(0);
    expect(pollenizersNeeded(400, 1, 0.2, 'dedicated')).toBe(400);
    expect(refusalOf(() => pollenizersNeeded(400, 1, 0, 'between'))).toMatchObject({
      name: 'share',
      below: 1,
    });
    expect(refusalOf(() => pollenizersNeeded(400, 0.25, 1, 'dedicated'))).toMatchObject({
      name: 'losses',
      below: 1,
    });
    expect(refusalOf(() => pollenizersNeeded(400, 25, 0, 'dedicated'))).toMatchObject({
      code: 'percentForShare',
    });
    expect(refusalOf(() => pollenizersNeeded(400, 0.25, 20, 'dedicated'))).toMatchObject({ name: 'losses' });
    expect(refusalOf(() => pollenizersNeeded(0, 0.25, 0, 'dedicated'))).toMatchObject({
      name: 'plants',
      atLeast: 1,
    });
    expect(refusalOf(() => pollenizersNeeded(4.5, 0.25, 0, 'dedicated'))).toMatchObject({ code: 'notWhole' });
    expect(refusalOf(() => pollenizersNeeded(NaN, 0.25, 0, 'dedicated'))).toMatchObject({
      code: 'outOfRange',
    });
  });

  test.each(['dedicated', 'between', undefined] as const)(
    'working, %s: last step, defaults, no change',
    (layout) => {
      const { value, steps, assumptions } = recording((record) =>
        pollenizersNeeded(401, 0.25, undefined, layout, record),
      );
      expect(steps.at(-1)).toMatchObject({ result: value, rounded: 'up' });
      expect(value).toBe(pollenizersNeeded(401, 0.25, undefined, layout));
      expect(assumptions.map(({ assumed }) => assumed)).toEqual(
        layout === undefined ? ['losses', 'layout'] : ['losses'],
      );
    },
  );
});
