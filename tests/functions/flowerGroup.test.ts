import { describe, expect, test } from 'vitest';
import { leftOut, run } from './run';

describe('FLOWER.NOPOLLENIZER', () => {
  test('two plants of 10 % seed hold none in 0.81 of cases (hand computed)', () => {
    expect(run('FLOWER.NOPOLLENIZER', 2, 0.1)).toBeCloseTo(0.81, 12);
    expect(run('FLOWER.NOPOLLENIZER', '2', [['10%']])).toBeCloseTo(0.81, 12);
    expect(run('FLOWER.NOPOLLENIZER', 2, 0)).toBe(1);
  });

  test('refusals', () => {
    expect(run('FLOWER.NOPOLLENIZER', 0, 0.1)).toBe(
      '#VALUE! The number of plants is 0. It must be at least 1 plant.',
    );
    expect(run('FLOWER.NOPOLLENIZER', 2, 10)).toMatch(/write 10 percent as 10%/);
    expect(run('FLOWER.NOPOLLENIZER', 2.5, 0.1)).toMatch(/Give a whole number/);
    expect(run('FLOWER.NOPOLLENIZER', 2)).toBe('#VALUE! The share of pollenizers is missing. Fill it in.');
    expect(run('FLOWER.NOPOLLENIZER', { error: '#REF!' }, 0.1)).toMatch(/Mend that cell first/);
  });
});

describe('FLOWER.GROUPSIZE', () => {
  test('29 plants of 10 % seed at 0.95 (hand computed: 0.9^29 = 0.0471)', () => {
    for (const nothing of leftOut) expect(run('FLOWER.GROUPSIZE', 0.1, nothing)).toBe(29);
    expect(run('FLOWER.GROUPSIZE', '10%', [['0.95']])).toBe(29);
  });

  test('refusals', () => {
    expect(run('FLOWER.GROUPSIZE', 0.1, 1)).toBe(
      '#VALUE! The assurance is 1 (100%). Nothing that grows is certain: give an assurance below 100%, such as 95%.',
    );
    expect(run('FLOWER.GROUPSIZE', 0)).toBe(
      '#VALUE! The share of pollenizers is 0. It must be above 0 and at most 1.',
    );
    expect(run('FLOWER.GROUPSIZE', 10, 0.95)).toMatch(/write 10 percent as 10%/);
    expect(run('FLOWER.GROUPSIZE', 'few')).toMatch(/Type digits/);
    expect(run('FLOWER.GROUPSIZE', 0.1, { error: '#N/A' })).toMatch(/Mend that cell first/);
    expect(run('FLOWER.GROUPSIZE', 1e-15)).toMatch(/^#VALUE! This assurance takes a number above 100000000/);
  });
});
