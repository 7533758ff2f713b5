import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { femaleShare } from '../../../src/calc/flowers/femaleShare';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const seeded = { seed: 20261125, numRuns: 300 };
const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('femaleShare', () => {
  test('10 % pollenizers at half female: 0.95 (hand computed: 0.1 x 0.5 + 0.9 x 1)', () => {
    expect(femaleShare(0.1, 0.5, undefined)).toBeCloseTo(0.95, 12);
  });

  test('10 % pollenizers with 15 males a female: 0.90625 (hand computed: 0.1 / 16 + 0.9)', () => {
    expect(femaleShare(0.1, 1 / 16, undefined)).toBeCloseTo(0.90625, 12);
  });

  test('agrees with counting flowers: 1,000 plants of 100 flowers each', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1000 }),
        fc.integer({ min: 0, max: 100 }),
        fc.integer({ min: 0, max: 100 }),
        (pollenizers, ofMonoecious, ofGynoecious) => {
          let female = 0;
          for (let plant = 0; plant < 1000; plant++)
            female += plant < pollenizers ? ofMonoecious : ofGynoecious;
          expect(femaleShare(pollenizers / 1000, ofMonoecious / 100, ofGynoecious / 100)).toBeCloseTo(
            female / 100000,
            10,
          );
        },
      ),
      seeded,
    );
  });

  test('lies between the two kinds of plants', () => {
    fc.assert(
      fc.property(share, share, share, (p, m, g) => {
        const mixed = femaleShare(p, m, g);
        expect(mixed).toBeGreaterThanOrEqual(Math.min(m, g) - 1e-12);
        expect(mixed).toBeLessThanOrEqual(Math.max(m, g) + 1e-12);
      }),
      seeded,
    );
  });

  test('bounds: 0 and 1 are in, beyond them is refused, per cent is named, NaN is refused', () => {
    expect(femaleShare(0, 0, 1)).toBe(1);
    expect(femaleShare(1, 0, 1)).toBe(0);
    expect(refusalOf(() => femaleShare(-0.01, 0.5, 1))).toMatchObject({
      code: 'outOfRange',
      name: 'pollenizer_share',
    });
    expect(refusalOf(() => femaleShare(10, 0.5, 1))).toMatchObject({ code: 'percentForShare', value: 10 });
    expect(refusalOf(() => femaleShare(0.1, 50, 1))).toMatchObject({ name: 'monoecious_female' });
    expect(refusalOf(() => femaleShare(0.1, 0.5, 101))).toMatchObject({
      code: 'outOfRange',
      name: 'gynoecious_female',
    });
    expect(refusalOf(() => femaleShare(NaN, 0.5, 1))).toMatchObject({ code: 'outOfRange' });
  });

  test('working: the last step is the value, the default is noted, recording changes nothing', () => {
    const { value, steps, assumptions } = recording((record) => femaleShare(0.1, 0.5, undefined, record));
    expect(steps.at(-1)?.result).toBe(value);
    expect(value).toBe(femaleShare(0.1, 0.5, undefined));
    expect(assumptions).toEqual([
      { assumed: 'gynoecious_female', value: 1, unit: 'share', ground: 'judgement' },
    ]);
  });
});
