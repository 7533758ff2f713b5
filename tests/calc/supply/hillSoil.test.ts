import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hillSoil } from '../../../src/calc/supply/hillSoil';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;

test('half a ball of radius 12 in: 2/3 pi r^3 (Archimedes)', () => {
  expect(hillSoil(1, 24, 12, 'mound', us)).toBeCloseTo(((2 / 3) * Math.PI * 12 ** 3) / 1728, 12);
});

test('24 x 6 in: 0.851 cu ft as a mound, 1.571 as a disc; 60 x 15 cm: 23.0 litres (hand computed)', () => {
  expect(hillSoil(1, 24, 6, undefined, us)).toBeCloseTo(0.851, 3);
  expect(hillSoil(1, 24, 6, 'disc', us)).toBeCloseTo(Math.PI / 2, 12);
  expect(hillSoil(1, 60, 15, undefined, metric)).toBeCloseTo(22.97, 2);
});

test('a mound is what slices of the ball sum to', () => {
  const slices = 2000;
  const size = fc.integer({ min: 2, max: 60 });
  fc.assert(
    fc.property(size, fc.integer({ min: 1, max: 100 }), (radius, percent) => {
      const height = (radius * percent) / 100;
      // The ball that a cap of this foot and height is cut from.
      const ball = (radius ** 2 + height ** 2) / (2 * height);
      let volume = 0;
      for (let i = 0; i < slices; i++) {
        const above = ball - height + ((i + 0.5) * height) / slices;
        volume += (Math.PI * (ball ** 2 - above ** 2) * height) / slices;
      }
      expect(hillSoil(1, 2 * radius, height, 'mound', metric) / (volume / 1000)).toBeCloseTo(1, 5);
    }),
    { ...seeded, numRuns: 50 },
  );
});

test('a mound is more than half a disc and less than the whole; hills add up', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 100 }), (count, percent) => {
      const disc = hillSoil(count, 30, (15 * percent) / 100, 'disc', us);
      const mound = hillSoil(count, 30, (15 * percent) / 100, 'mound', us);
      expect(mound).toBeGreaterThan(disc / 2);
      expect(mound).toBeLessThan(disc);
      expect(mound).toBeCloseTo(count * hillSoil(1, 30, (15 * percent) / 100, 'mound', us), 8);
    }),
    seeded,
  );
});

test('refusals: a hill steeper than soil stands, no size, part of a hill', () => {
  expect(refusalOf(() => hillSoil(1, 24, 12.1, 'disc', us))).toEqual({
    code: 'hillTooSteep',
    height: 12.1,
    diameter: 24,
    unit: 'in',
  });
  expect(refusalOf(() => hillSoil(1, 24, 25, undefined, metric))).toMatchObject({ unit: 'cm' });
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => hillSoil(1, bad, 6, undefined, us))).toMatchObject({ name: 'diameter', above: 0 });
    expect(refusalOf(() => hillSoil(1, 24, bad, undefined, us))).toMatchObject({ name: 'height', above: 0 });
    expect(refusalOf(() => hillSoil(bad, 24, 6, undefined, us))).toMatchObject({ name: 'hills' });
  }
  expect(refusalOf(() => hillSoil(1.5, 24, 6, undefined, us))).toMatchObject({ code: 'notWhole' });
});

test('working: the shape assumed, a hill, all hills', () => {
  const { value, steps, assumptions, remarks } = recording((record) =>
    hillSoil(38, 24, 6, undefined, us, record),
  );
  expect(steps.map(({ step }) => step)).toEqual(['hillAsMound', 'hillSoil']);
  expect(steps.at(-1)).toMatchObject({ result: value, unit: 'cuFt' });
  expect(assumptions).toEqual([{ assumed: 'shape', value: 'mound', unit: 'none', ground: 'judgement' }]);
  expect(remarks).toEqual(['soilDrawnUp']);
});
