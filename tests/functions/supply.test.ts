import { describe, expect, test } from 'vitest';
import { explain } from '../../src/functions/explain';
import { functions } from '../../src/functions';
import { leftOut, run } from './run';

describe('the materials (results as in tests/calc/supply)', () => {
  test('as cells hand them over', () => {
    for (const nothing of leftOut) {
      expect(run('SUPPLY.HILLSOIL', 1, 24, 6, nothing, nothing)).toBeCloseTo(0.851, 3);
      expect(run('SUPPLY.TRELLIS', 100, 8, nothing, nothing)).toBe(14);
      expect(run('SUPPLY.DRIPRUNTIME', 1, 30, 27, nothing, nothing)).toBeCloseTo(5.77, 2);
      expect(run('SUPPLY.WATERNEED', 0.25, '1.00', 7, nothing)).toBe(1.75);
    }
    expect(run('SUPPLY.HILLSOIL', '1', [[24]], 6, ' Disc ', 'US')).toBeCloseTo(1.571, 3);
    expect(run('SUPPLY.FERTILIZER', 43560, 50, '5%')).toBeCloseTo(1000, 9);
    expect(run('SUPPLY.WATER', 10_000, 25, 'metric')).toBe(250_000);
    expect(run('SUPPLY.COVER', 4, 100, '3')).toBe(424);
    expect(run('SUPPLY.TRELLIS', 30, 2.5, 2, 'metric')).toBe(26);
    // Rain enough: no water to give, and no hours to run.
    expect(run('SUPPLY.DRIPRUNTIME', run('SUPPLY.WATERNEED', 0.25, 1, 7, 2), 30, 27)).toBe(0);
  });

  test('refusals say what to do', () => {
    expect(run('SUPPLY.HILLSOIL', 1, 24, 30)).toBe(
      '#VALUE! A hill 30 in high is more than half its diameter of 24 in, and soil does not stand so steep. Give a lower or a wider hill.',
    );
    expect(run('SUPPLY.HILLSOIL', 1, 24, 6, 'cone')).toMatch(
      /shape of a hill is "cone"\. Choose one of: mound, disc/,
    );
    expect(run('SUPPLY.FERTILIZER', 0.5, 50, 0.05)).toMatch(/1 acre is 43560 sq ft\.$/);
    expect(run('SUPPLY.FERTILIZER', 43560, 50, '10-10-10')).toMatch(/not a number/);
    expect(run('SUPPLY.FERTILIZER', 43560, 50, 5)).toMatch(/write 5 percent as 5% or 0\.05/);
    expect(run('SUPPLY.WATER', 0, 1)).toBe('#VALUE! The area of the field is 0. It must be above 0 sq ft.');
    expect(run('SUPPLY.WATERNEED', 0.25, 85)).toBe(
      '#VALUE! The crop coefficient is 85. It must be above 0 and at most 2.',
    );
    expect(run('SUPPLY.DRIPRUNTIME', 1, 30, 0.45)).toBe(
      '#VALUE! The flow is 0.45 gal an hour per 100 ft, less than drip tape gives. Was it told by the minute? Then it is 27.',
    );
    expect(run('SUPPLY.COVER', 0, 100, 3)).toBe(
      '#VALUE! The number of rows is 0. It must be at least 1 row.',
    );
    expect(run('SUPPLY.TRELLIS', 100, '$8')).toMatch(/currency sign/);
    expect(run('SUPPLY.TRELLIS', { error: '#REF!' }, 8)).toMatch(/Mend that cell first/);
  });
});

test.each([
  ['SUPPLY.HILLSOIL', [38, 24, 6], /drawn up/],
  ['SUPPLY.FERTILIZER', [43560, 50, 0.05], /Test the soil first/],
  ['SUPPLY.WATER', [43560, 1], /27154/],
  ['SUPPLY.WATERNEED', [0.25, 1, 7, 0.5], /\(1998\)[^]*Paper 56, revision 1 \(2025\)/],
  ['SUPPLY.DRIPRUNTIME', [1, 30, 13.2], /More than 6 hours[^]*Penn State/],
  ['SUPPLY.COVER', [4, 100, 3], /width/],
  ['SUPPLY.TRELLIS', [100, 8], /posts in a row 14/],
])('the working of %s', (id, args, says) => {
  const definition = functions.get(id);
  if (definition === undefined) throw new Error(`no function ${id}`);
  const said = explain(definition, args)
    .map((line) => Object.values(line).join(' '))
    .join('\n');
  expect(said).toMatch(says);
  expect(said).not.toMatch(/[{}_]/);
});
