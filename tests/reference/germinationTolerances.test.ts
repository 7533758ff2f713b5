import { expect, test } from 'vitest';
import {
  germinationTolerances,
  germinationToleranceSource,
  replicateCounts,
} from '../../src/reference/germinationTolerances';
import { sources } from '../../src/reference/sources';

test('the ranges of 7 CFR 201.55, read off once more from 99 % down', () => {
  const listed = (count: '4' | '2', from: number) =>
    Object.entries(germinationTolerances[count])
      .map(([mean, range]) => [Number(mean), range] as const)
      .sort(([a], [b]) => b - a)
      .map(([mean, range], i) => {
        expect(mean).toBe(from - i);
        return range;
      })
      .join(' ');
  expect(listed('4', 99)).toBe(
    '5 6 7 8 9 10 10 11 11 12 12 13 13 14 14 14 15 15 15 16 16 16 17 17 17 17 17 18 18 18',
  );
  expect(listed('2', 97)).toBe('6 6 7 8 8 9 9 9 10 10 11 11 11 11 12 12 12 13 13 13 13 13 14 14 14 14 14');
});

test('the range is some 3.6 and 2.8 standard deviations of a replicate, as binomial theory has it', () => {
  // Factors of the range of four and two normal deviates at 5 %: 3.63 and 2.77 (Pearson and Hartley, from memory,
  // check); the regulation adds about one for whole seeds.
  const factor = { '4': 3.63, '2': 2.77 };
  for (const count of replicateCounts) {
    for (const [mean, range] of Object.entries(germinationTolerances[count])) {
      const deviation = Math.sqrt((Number(mean) * (100 - Number(mean))) / 100);
      expect((range ?? 0) - factor[count] * deviation, `${mean} %, ${count}`).toBeGreaterThan(0);
      expect((range ?? 0) - factor[count] * deviation, `${mean} %, ${count}`).toBeLessThan(2.1);
    }
  }
});

test('frozen, and the source is in the bibliography', () => {
  expect(Object.isFrozen(germinationTolerances)).toBe(true);
  for (const count of replicateCounts) expect(Object.isFrozen(germinationTolerances[count])).toBe(true);
  expect(Object.keys(sources)).toContain(germinationToleranceSource);
});
