import { expect, test } from 'vitest';
import { explain } from '../../src/functions/explain';
import { left } from '../../src/functions/seedStorage';
import { run } from './run';

test('years left, by the shorter of published lives (old manual, list of 2023)', () => {
  expect(run('SEED.STORAGELEFT', 'cucumber', 2023, 2026)).toBe(2);
  expect(run('SEED.STORAGELEFT', ' Zucchini ', '2024', [[2026]])).toBe(1);
  expect(run('SEED.STORAGELEFT', 'melon', 2010, 2026)).toBe(0);
});

test('refusals', () => {
  expect(run('SEED.STORAGELEFT', 'cucumber', 2027, 2026)).toBe(
    '#VALUE! The year of packing (2027) comes after the year of sowing (2026). Check both years.',
  );
  expect(run('SEED.STORAGELEFT', 'gourd', 2024, 2026)).toBe(
    '#N/A The lists give no storage life for seed of gourd. Test a few seeds before you sow it.',
  );
  expect(run('SEED.STORAGELEFT', 'pumkin', 2024, 2026)).toMatch(/^#N\/A .*Near it: pumpkin/);
  expect(run('SEED.STORAGELEFT', 'pumpkin', 24, 2026)).toBe(
    '#VALUE! The year of packing is 24. It must be at least 1900 and at most 9999.',
  );
  expect(run('SEED.STORAGELEFT', 'pumpkin', 2024)).toBe('#VALUE! The year is missing. Fill it in.');
  expect(run('SEED.STORAGELEFT', 'pumpkin', 'last', 2026)).toMatch(/Type digits/);
  expect(run('SEED.STORAGELEFT', { error: '#N/A' }, 2024, 2026)).toMatch(/Mend that cell first/);
});

test('the working says to test before use, with its sources', () => {
  for (const [packed, sentence] of [
    [2024, /no promise: test some seeds before use/],
    [2010, /outlived.*test some seeds before use/],
  ] as const) {
    const said = explain(left, ['zucchini', packed, 2026])
      .map(({ title, formula }) => `${title} ${formula}`)
      .join('\n');
    expect(said).toMatch(sentence);
    expect(said).toMatch(/longevity of seeds/);
    expect(said).toMatch(/AG-552/);
    expect(said).not.toMatch(/[{}_]/);
  }
});
