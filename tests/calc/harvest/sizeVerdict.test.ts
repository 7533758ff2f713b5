import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sizeVerdict } from '../../../src/calc/harvest/sizeVerdict';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;

// Bounds as in pickingSizeOf.test, each with its origin there.
const bounds = [
  ['gherkin', 1.5, 4],
  ['cucumber', 6, 8],
  ['English cucumber', 12, 14],
  ['zucchini', 6, 8],
  ['scallop squash', 3, 4],
  ['pumpkin', 9.3, 14],
] as const;

test.each(bounds)('%s: ready from %d to %d in, both included, and in centimetres', (crop, low, high) => {
  for (const [units, scale] of [
    [us, 1],
    [metric, 2.54],
  ] as const) {
    const judge = (inches: number) =>
      sizeVerdict(Number((inches * scale).toFixed(6)), crop, undefined, units);
    expect([low - 0.1, low, high, high + 0.1].map(judge)).toEqual(['under', 'ready', 'ready', 'over']);
  }
});

test('a fruit that grows goes from under to ready to over and never back', () => {
  const order = ['under', 'ready', 'over'];
  const sizes = fc.double({ min: 0.1, max: 30, noNaN: true });
  fc.assert(
    fc.property(fc.constantFrom(...bounds), sizes, sizes, ([crop], size, growth) => {
      const before = order.indexOf(sizeVerdict(size, crop, undefined, us));
      expect(order.indexOf(sizeVerdict(size + growth, crop, undefined, us))).toBeGreaterThanOrEqual(before);
    }),
    seeded,
  );
});

test('refusals', () => {
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => sizeVerdict(bad, 'cucumber', undefined, us))).toMatchObject({
      name: 'size',
      unit: 'in',
    });
  }
  expect(refusalOf(() => sizeVerdict(7, 'tomato', undefined, us))).toMatchObject({ code: 'unknownName' });
  expect(refusalOf(() => sizeVerdict(7, 'muskmelon', undefined, us))).toMatchObject({
    code: 'judgedByRipeness',
  });
});

test('working: both ends, the verdict; a pumpkin’s size is not its ripeness', () => {
  const cucumber = recording((record) => sizeVerdict(20, 'cucumber', undefined, metric, record));
  expect(cucumber.steps).toMatchObject([
    { step: 'pickingSizeLow', unit: 'cm' },
    { step: 'pickingSizeHigh', unit: 'cm' },
    { step: 'sizeVerdict', result: 'ready' },
  ]);
  expect(cucumber.value).toBe('ready');
  expect(cucumber.remarks).toEqual(['cucumbersByThickness']);
  expect(recording((record) => sizeVerdict(12, 'pumpkin', undefined, us, record)).remarks).toEqual([
    'sizeIsNotRipeness',
  ]);
});
