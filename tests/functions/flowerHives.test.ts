import { expect, test } from 'vitest';
import { explain } from '../../src/functions/explain';
import { hives } from '../../src/functions/flowerHives';
import { leftOut, run } from './run';

test('an acre of cucumbers takes a hive (North Carolina Beekeeping Note 7B), 100,000 sq ft three', () => {
  for (const nothing of leftOut) {
    expect(run('FLOWER.HIVES', 43_560, nothing, nothing)).toBe(1);
    expect(run('FLOWER.HIVES', 100_000, nothing, 'us')).toBe(3);
  }
  expect(run('FLOWER.HIVES', '43560', [['2']], 'US')).toBe(2);
  expect(run('FLOWER.HIVES', 43_560, 0)).toBe(0);
  expect(run('FLOWER.HIVES', 10_000, null, 'metric')).toBe(3);
  expect(run('FLOWER.HIVES', 10_000, 2, 'metric')).toBe(2);
});

test('an area in acres is caught', () => {
  expect(run('FLOWER.HIVES', 2.5)).toBe(
    '#VALUE! The area of the field is 2.5 sq ft. Was that meant in another unit? 1 acre is 43560 sq ft.',
  );
  expect(run('FLOWER.HIVES', 0.5, null, 'metric')).toMatch(/1 ha is 10000 sq m\.$/);
});

test('refusals', () => {
  expect(run('FLOWER.HIVES', 0)).toBe('#VALUE! The area of the field is 0. It must be above 0 sq ft.');
  expect(run('FLOWER.HIVES', 43_560, -1)).toBe(
    '#VALUE! The density of hives is -1. It must be at least 0 per acre.',
  );
  expect(run('FLOWER.HIVES', null)).toMatch(/Fill it in/);
  expect(run('FLOWER.HIVES', '1 acre')).toMatch(/no unit/);
  expect(run('FLOWER.HIVES', 43_560, 1, 'imperial')).toMatch(/Choose one of: us, metric/);
  expect(run('FLOWER.HIVES', { error: '#REF!' })).toMatch(/Mend that cell first/);
});

test('the working tells what parthenocarpic and triploid crops want', () => {
  const said = explain(hives, [100_000])
    .map(({ title, formula }) => `${title} ${formula}`)
    .join('\n');
  expect(said).toMatch(/Parthenocarpic cucumbers want none: give 0\. Triploid watermelon .*twice/);
  expect(said).toMatch(/Note 7B/);
  expect(said).not.toMatch(/[{}_]/);
});
