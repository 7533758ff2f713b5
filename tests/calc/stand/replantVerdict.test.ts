import fc from 'fast-check';
import { expect, test } from 'vitest';
import { replantVerdict } from '../../../src/calc/stand/replantVerdict';
import { anyDay, dayNumber, seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const lastPlanting = dayNumber('2026-07-07');

// Three quarters are judgement: no publication with a figure for cucurbits was found.
test.each([
  [0.75, 0, 'keep'],
  [1.1, 30, 'keep'],
  [0.74, -1, 'fill gaps'],
  [0, 0, 'fill gaps'],
  [0.74, 1, 'too late'],
] as const)('a stand of %d, %d days after the last planting: %s (by the rule)', (stand, days, verdict) => {
  expect(replantVerdict(stand, lastPlanting + days, lastPlanting, undefined)).toBe(verdict);
});

test('a thicker stand and a lower demand never turn "keep" into another word; an earlier day never is too late', () => {
  const shares = fc.double({ min: 0.01, max: 1, noNaN: true });
  fc.assert(
    fc.property(shares, shares, anyDay, fc.integer({ min: -60, max: 60 }), (stand, least, last, days) => {
      const verdict = replantVerdict(stand, last + days, last, least);
      expect(replantVerdict(stand + 0.5, last + days, last, least)).toBe(
        stand + 0.5 >= least ? 'keep' : verdict,
      );
      expect(replantVerdict(least, last + days, last, least)).toBe('keep');
      if (verdict === 'fill gaps') expect(replantVerdict(stand, last + days - 1, last, least)).toBe(verdict);
      if (verdict === 'too late') expect(days).toBeGreaterThan(0);
    }),
    seeded,
  );
});

test('bounds and refusals', () => {
  expect(replantVerdict(2, lastPlanting, lastPlanting, 1)).toBe('keep');
  expect(replantVerdict(0.99, lastPlanting, lastPlanting, 1)).toBe('fill gaps');
  expect(refusalOf(() => replantVerdict(85, lastPlanting, lastPlanting, undefined))).toEqual({
    code: 'percentForShare',
    name: 'stand',
    value: 85,
  });
  for (const bad of [-0.1, 101, NaN, Infinity]) {
    expect(refusalOf(() => replantVerdict(bad, lastPlanting, lastPlanting, undefined))).toMatchObject({
      code: 'outOfRange',
      name: 'stand',
      atLeast: 0,
      atMost: 2,
    });
  }
  expect(refusalOf(() => replantVerdict(0.5, lastPlanting, lastPlanting, 75))).toMatchObject({
    code: 'percentForShare',
    name: 'least_stand',
  });
  expect(refusalOf(() => replantVerdict(0.5, lastPlanting, lastPlanting, 0))).toMatchObject({
    code: 'outOfRange',
    name: 'least_stand',
    above: 0,
  });
  expect(refusalOf(() => replantVerdict(0.5, NaN, lastPlanting, 0.5))).toMatchObject({
    code: 'notADate',
    name: 'today',
  });
  expect(refusalOf(() => replantVerdict(0.5, lastPlanting, 0.5, 0.5))).toMatchObject({
    name: 'last_planting',
  });
});

test('the working says what was assumed, and to look for the cause where plants are missing', () => {
  const { value, steps, assumptions, remarks } = recording((record) =>
    replantVerdict(0.5, lastPlanting, lastPlanting, undefined, record),
  );
  expect(steps.at(-1)).toMatchObject({ step: 'replantVerdict', result: value });
  expect(assumptions).toEqual([{ assumed: 'least_stand', value: 0.75, unit: 'share', ground: 'judgement' }]);
  expect(remarks).toEqual(['whyPlantsAreMissing']);
  expect(recording((record) => replantVerdict(0.9, lastPlanting, lastPlanting, 0.8, record))).toMatchObject({
    value: 'keep',
    assumptions: [],
    remarks: [],
  });
});
