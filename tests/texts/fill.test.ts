import { describe, expect, test } from 'vitest';
import { fill } from '../../src/texts/fill';

describe('fill', () => {
  test('puts values in and leaves a placeholder without one in sight', () => {
    expect(fill('{width} {unit} of {nothing}', { width: 3, unit: 'ft' })).toBe('3 ft of {nothing}');
  });

  test.each([
    [0, '0 plots are there'],
    [1, '1 plot is there'],
    ['1', '1 plot is there'],
    [2, '2 plots are there'],
    ['1.5', '1.5 plots are there'],
  ])('chooses the words that go with %j', (count, said) => {
    expect(fill('{count} {count|plot is|plots are} there', { count })).toBe(said);
  });

  test('leaves a choice without a number in sight', () => {
    expect(fill('{count|plot|plots}', {})).toBe('{count|plot|plots}');
  });
});
