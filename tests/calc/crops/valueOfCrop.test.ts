import { expect, test } from 'vitest';
import { valueOfCrop } from '../../../src/calc/crops/valueOfCrop';
import { unitSystems } from '../../../src/calc/units/units';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;

test('a number, or words whatever the bound (Illinois guide; Florida CV268)', () => {
  expect(valueOfCrop('zucchini', 'Row spacing', 'low', us)).toBe(3);
  expect(valueOfCrop('zucchini', 'row spacing', 'low', metric)).toBeCloseTo(0.9144, 12);
  expect(valueOfCrop('English cucumber', 'flower type', 'high', metric)).toBe('parthenocarpic');
});

test('the middle is the default, and the working says so', () => {
  const { value, assumptions } = recording((record) =>
    valueOfCrop('cucumber', 'days to maturity', undefined, us, record),
  );
  expect(value).toBe(60);
  expect(assumptions[0]).toEqual({ assumed: 'bound', value: 'mid', unit: 'none', ground: 'judgement' });
});

test('unknown crop, unknown trait, absent figure', () => {
  expect(refusalOf(() => valueOfCrop('tomato', 'row spacing', 'low', us))).toMatchObject({ kind: 'crop' });
  expect(refusalOf(() => valueOfCrop('gourd', 'colour', 'low', us))).toMatchObject({ kind: 'figure' });
  expect(refusalOf(() => valueOfCrop('gourd', 'yield per 100', 'low', us))).toMatchObject({
    code: 'noFigure',
  });
});
