import { describe, expect, test } from 'vitest';
import { explain } from '../../src/functions/explain';
import { functions } from '../../src/functions';
import { leftOut, run } from './run';

describe('the money (results as in tests/calc/budget)', () => {
  test('as cells hand it over', () => {
    for (const nothing of leftOut) {
      expect(run('BUDGET.BREAKEVENYIELD', 1144, 5.72, nothing)).toBeCloseTo(200, 9);
      expect(run('BUDGET.SENSITIVITY', [[2, '', 3]], [[100], [null], ['200']], 250, nothing)).toEqual([
        ['yield \\ price', 2, 3],
        [100, -50, 50],
        [200, 150, 350],
      ]);
    }
    expect(run('BUDGET.RETURN', '1087.50', [[1062.81]])).toBeCloseTo(24.69, 9);
    expect(run('BUDGET.RETURN', 100, 250)).toBe(-150);
    expect(run('BUDGET.BREAKEVENPRICE', 1209.47, 150)).toBeCloseTo(8.063, 3);
    expect(run('BUDGET.PICKHOURS', 400, 11, 200)).toBe(22);
  });

  test('a yield of 0, a harvest as dear as the price, a loss of everything: said, never infinite', () => {
    expect(run('BUDGET.BREAKEVENPRICE', 1000, 0)).toBe('#VALUE! The yield is 0. It must be above 0.');
    expect(run('BUDGET.BREAKEVENYIELD', 1000, 4, 4)).toBe(
      '#N/A No yield breaks even: a unit brings 4 and costs 4 to harvest and sell. Find a better price or a cheaper harvest, or leave the crop out.',
    );
    expect(run('BUDGET.BREAKEVENYIELD', 1000, 0)).toBe('#VALUE! The price is 0. It must be above 0.');
    expect(run('BUDGET.PICKHOURS', 400, 11, 0)).toBe('#VALUE! The rate is 0. It must be above 0.');
    expect(run('BUDGET.PICKHOURS', -400, 11, 200)).toBe(
      '#VALUE! The row length is -400. It must be above 0.',
    );
    expect(run('BUDGET.RETURN', -1, 10)).toBe('#VALUE! The income is -1. It must be at least 0.');
    expect(run('BUDGET.BREAKEVENPRICE', 1e300, 1e-300)).toMatch(/^#NUM! /);
  });

  test('a currency sign or a comma typed into a number', () => {
    expect(run('BUDGET.RETURN', '$1,087.50', 1000)).toBe(
      '#VALUE! The income is "$1,087.50". Take the currency sign out; write thousands without a mark (1000) and decimals with a point (4.50), and nothing else.',
    );
    expect(run('BUDGET.RETURN', 1087.5, '1,000')).toBe(
      '#VALUE! The sum of the costs is "1,000", and the comma is in the way. Write thousands without a mark (1000) and decimals with a point (0.85).',
    );
    expect(run('BUDGET.SENSITIVITY', [[2], ['€3']], [[100]], 250)).toMatch(/range of prices, row 2, is "€3"/);
  });

  test('empty, broken and overlong', () => {
    expect(run('BUDGET.RETURN', '', 10)).toBe('#VALUE! The income is missing. Fill it in.');
    expect(run('BUDGET.SENSITIVITY', [['']], [[100]], 250)).toBe(
      '#VALUE! The range of prices is missing. Fill it in.',
    );
    const many = [Array.from({ length: 101 }, () => 1)];
    expect(run('BUDGET.SENSITIVITY', many, [[100]], 250)).toBe(
      '#VALUE! The range of prices has 101 numbers. Give at most 100.',
    );
    expect(run('BUDGET.SENSITIVITY', [[2]], [[{ error: '#REF!' }]], 250)).toMatch(/Mend that cell first/);
  });
});

test.each([
  ['BUDGET.RETURN', [1087.5, 1062.81], /your own hours, land and machinery/],
  ['BUDGET.BREAKEVENPRICE', [1209.47, 150], /Only what is sold/],
  ['BUDGET.BREAKEVENYIELD', [1144, 9.77], /No harvest cost of a unit was given/],
  ['BUDGET.SENSITIVITY', [[[2, 3]], [[100]], 250, 0.5], /The other cells likewise/],
  ['BUDGET.PICKHOURS', [400, 11, 200], /Time an hour of your own/],
])('the working of %s', (id, args, says) => {
  const definition = functions.get(id);
  if (definition === undefined) throw new Error(`no function ${id}`);
  const said = explain(definition, args)
    .map((line) => Object.values(line).join(' '))
    .join('\n');
  expect(said).toMatch(says);
  expect(said).not.toMatch(/[{}_]/);
});
