import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { spreadPollenizers } from '../../../src/calc/flowers/spreadPollenizers';
import { seeded } from '../dates/calendar';
import { refusalOf } from '../refusal';

describe('spreadPollenizers', () => {
  test('one to three: every fourth plant (University of Delaware tells it so; which of the four: judgement)', () => {
    const places = spreadPollenizers(400, 100);
    expect(places).toHaveLength(100);
    expect(places.slice(0, 3)).toEqual([2, 6, 10]);
    places.slice(1).forEach((place, i) => expect(place - (places[i] ?? 0)).toBe(4));
  });

  test('by hand: 118 of 400 stand 3 or 4 apart, 3 of 10 in the middle of each third', () => {
    const gaps = new Set(
      spreadPollenizers(400, 118).map((place, i, all) => place - (all[i - 1] ?? place - 3)),
    );
    expect([...gaps].sort()).toEqual([3, 4]);
    expect(spreadPollenizers(10, 3)).toEqual([1, 5, 8]);
  });

  test('as many as asked for, each another plant of the plot, never two more than one plant off even', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 3000 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (plants, share) => {
          const count = Math.round(plants * share);
          const places = spreadPollenizers(plants, count);
          expect(places).toHaveLength(count);
          expect(new Set(places).size).toBe(count);
          for (const place of places)
            expect(place >= 0 && place < plants && Number.isInteger(place)).toBe(true);
          const gaps = places.slice(1).map((place, i) => place - (places[i] ?? 0));
          if (gaps.length > 0) expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThanOrEqual(1);
        },
      ),
      seeded,
    );
  });

  test('none, all, and more than there are plants', () => {
    expect(spreadPollenizers(5, 0)).toEqual([]);
    expect(spreadPollenizers(5, 5)).toEqual([0, 1, 2, 3, 4]);
    expect(refusalOf(() => spreadPollenizers(5, 6))).toMatchObject({
      code: 'outOfRange',
      name: 'pollenizers',
      atMost: 5,
    });
    expect(refusalOf(() => spreadPollenizers(5, 1.5))).toMatchObject({ code: 'notWhole' });
  });
});
