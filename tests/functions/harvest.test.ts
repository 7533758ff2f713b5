import { describe, expect, test } from 'vitest';
import { leftOut, run } from './run';

describe('HARVEST.YIELD', () => {
  test('250 ft at 150 lb per 100 ft, all and four fifths of it (hand computed)', () => {
    expect(run('HARVEST.YIELD', 250, 150)).toBe(375);
    expect(run('HARVEST.YIELD', '250', [[150]], '80%')).toBeCloseTo(300, 10);
    for (const nothing of leftOut) expect(run('HARVEST.YIELD', 250, 150, nothing)).toBe(375);
  });

  test('is the same proportion for metres and kilograms (UF/IFAS, summer squash: 15 lb of 10 ft)', () => {
    const poundsPer100Feet = 150;
    const kgPer100Metres = (poundsPer100Feet * 0.45359237) / 0.3048;
    expect(run('HARVEST.YIELD', 3.048, kgPer100Metres)).toBeCloseTo(15 * 0.45359237, 10);
  });

  test('refusals say what to do', () => {
    expect(run('HARVEST.YIELD', -1, 150)).toBe('#VALUE! The row length is -1. It must be at least 0.');
    expect(run('HARVEST.YIELD', 250, 150, 80)).toBe(
      '#VALUE! The marketable share is 80: write 80 percent as 80% or 0.8.',
    );
    expect(run('HARVEST.YIELD', '', 150)).toBe('#VALUE! The row length is missing. Fill it in.');
    expect(run('HARVEST.YIELD', 250, 'much')).toBe(
      '#VALUE! The yield per 100 of row is "much", which is not a number. Type digits with a decimal point and no unit.',
    );
    expect(run('HARVEST.YIELD', 250, { error: '#N/A' })).toMatch(/Mend that cell first/);
    expect(run('HARVEST.YIELD', 1e300, 1e300)).toMatch(/^#NUM! /);
  });
});
