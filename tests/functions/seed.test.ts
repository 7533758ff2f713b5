import { describe, expect, test } from 'vitest';
import { leftOut, run } from './run';

describe('SEED.NEEDED', () => {
  test('every way to leave out an argument, and to say a number', () => {
    for (const nothing of leftOut) {
      expect(run('SEED.NEEDED', 100, 0.8, nothing, nothing, nothing)).toBe(125);
      expect(run('SEED.NEEDED', 100, 0.8, nothing, 0.95, nothing)).toBe(135);
    }
    expect(run('SEED.NEEDED', ' 100 ', '80%', [['0.9']], { type: 'Double', basicValue: 0.95 }, '4e2')).toBe(
      153,
    );
  });

  test('refusals in full', () => {
    expect(run('SEED.NEEDED', 100, 0.8, null, 1)).toBe(
      '#VALUE! The assurance is 1 (100%). Nothing that grows is certain: give an assurance below 100%, such as 95%.',
    );
    expect(run('SEED.NEEDED', 300_000, 0.8, null, 0.95, 400)).toBe(
      '#VALUE! The number of plants is 300000. With a number of seeds tested it can be at most 200000 at this field emergence. Split the planting, or leave the number of seeds tested out.',
    );
    expect(run('SEED.NEEDED', 1000, 0.01, null, 0.99999, 1)).toBe(
      '#VALUE! A test of 1 seed says too little for an assurance of 0.99999: even 1,000,000,000 seeds might not be enough. Test more seeds (400 is usual) or give a lower assurance.',
    );
    expect(run('SEED.NEEDED', 100, 0)).toBe(
      '#VALUE! The germination is 0. It must be above 0 and at most 1.',
    );
    expect(run('SEED.NEEDED', 0, 0.8)).toBe(
      '#VALUE! The number of plants is 0. It must be at least 1 plant.',
    );
    expect(run('SEED.NEEDED', 100, 0.8, 0.9, 0.95, 12.5)).toMatch(
      /number of seeds tested is 12\.5\. Give a whole/,
    );
    expect(run('SEED.NEEDED', 1, 1e-200)).toBe(1e200);
    const limit =
      '#VALUE! This assurance takes a number above 100000000, the largest that is reckoned here. Check each figure for a slip, or split the planting.';
    expect(run('SEED.NEEDED', 1, 1e-200, null, 0.95)).toBe(limit);
    expect(run('SEED.NEEDED', 1e8, 0.8, 0.9, 0.95)).toBe(limit);
    expect(run('SEED.PERHILL', 1e9, 0.8)).toBe(limit);
    expect(run('TRAY.CELLS', 1e9, 0.8, 1, 0.05, 0.9)).toBe(limit);
  });
});

describe('SEED.PERHILL', () => {
  test('6 for 3 plants at 80 % and 0.95; 5 at the usual 0.9 (hand computed in seedsPerHill.test)', () => {
    expect(run('SEED.PERHILL', 3, 0.8, null, 0.95)).toBe(6);
    for (const nothing of leftOut) expect(run('SEED.PERHILL', 3, 0.8, nothing, nothing)).toBe(5);
    expect(run('SEED.PERHILL', '3', '80 %', [[1]], 0.9)).toBe(5);
  });

  test('refusals', () => {
    expect(run('SEED.PERHILL', 2.5, 0.8)).toBe(
      '#VALUE! The number of plants per hill is 2.5. Give a whole number.',
    );
    expect(run('SEED.PERHILL', 3, 85)).toBe(
      '#VALUE! The germination is 85: write 85 percent as 85% or 0.85.',
    );
    // A cell that shows 150% holds 1.5.
    expect(run('SEED.PERHILL', 3, '150%')).toMatch(/is 1\.5, which is 150%: give at most 100%/);
    expect(run('SEED.PERHILL', 3, 'good')).toMatch(/not a number\. Type digits/);
    expect(run('SEED.PERHILL', 3, { error: '#REF!' })).toMatch(/Mend that cell first/);
    expect(run('SEED.PERHILL', 3)).toBe('#VALUE! The germination is missing. Fill it in.');
  });
});

describe('SEED.CHANCE', () => {
  test('0.9421 for 3 of 5 (hand computed in chanceOfStand.test), in every way to give it', () => {
    for (const nothing of leftOut) expect(run('SEED.CHANCE', 5, 3, 0.8, nothing)).toBeCloseTo(0.94208, 12);
    expect(run('SEED.CHANCE', ' 5 ', [['3']], '80%', 1)).toBeCloseTo(0.94208, 12);
    expect(run('SEED.CHANCE', 0, 3, 0.8)).toBe(0);
  });

  test('refusals', () => {
    expect(run('SEED.CHANCE', 200_000_000, 3, 0.8)).toBe(
      '#VALUE! The number of seeds is 200000000. It must be at least 0 seeds and at most 100000000 seeds.',
    );
    expect(run('SEED.CHANCE', 5, 0, 0.8)).toBe(
      '#VALUE! The number of plants is 0. It must be at least 1 plant.',
    );
    expect(run('SEED.CHANCE', 5, 3, 80)).toMatch(/write 80 percent as 80%/);
    expect(run('SEED.CHANCE', 5, 3)).toBe('#VALUE! The germination is missing. Fill it in.');
    expect(run('SEED.CHANCE', 5, { error: '#N/A' }, 0.8)).toMatch(/Mend that cell first/);
  });
});

describe('SEED.WEIGHT', () => {
  test('half an ounce; grams under metric (hand computed)', () => {
    for (const units of [...leftOut, 'us', ' US ']) expect(run('SEED.WEIGHT', 500, 1000, units)).toBe(0.5);
    expect(run('SEED.WEIGHT', 353, [['35.3']], 'metric')).toBeCloseTo(10, 12);
    expect(run('SEED.WEIGHT', 0, 1000)).toBe(0);
  });

  test('refusals name the unit of the system', () => {
    expect(run('SEED.WEIGHT', 500, 0)).toBe(
      '#VALUE! The number of seeds per unit of weight is 0. It must be above 0 seeds/oz.',
    );
    expect(run('SEED.WEIGHT', 500, 0, 'metric')).toMatch(/above 0 seeds\/g/);
    expect(run('SEED.WEIGHT', 500, 1000, 'imperial')).toBe(
      '#VALUE! The unit system is "imperial". Choose one of: us, metric.',
    );
    expect(run('SEED.WEIGHT', null, 1000)).toBe('#VALUE! The number of seeds is missing. Fill it in.');
    expect(run('SEED.WEIGHT', 1e300, 1e-300)).toMatch(/^#NUM! /);
  });
});
