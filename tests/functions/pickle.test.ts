import { expect, test } from 'vitest';
import { explain } from '../../src/functions/explain';
import { jarsOf, poundsOf } from '../../src/functions/pickle';
import { english } from '../../src/texts/english';
import { leftOut, run } from './run';

test('PICKLE.JARS and PICKLE.POUNDS (USDA AIB 539): usual, and the cautious end beside it', () => {
  for (const nothing of leftOut) {
    expect(run('PICKLE.JARS', 14, nothing)).toEqual([[7, 4]]);
    expect(run('PICKLE.POUNDS', 7, nothing)).toEqual([[14, 21]]);
  }
  expect(run('PICKLE.JARS', '9', [[' Pint ']])).toEqual([[9, 6]]);
  expect(run('PICKLE.POUNDS', 9, 'PINT')).toEqual([[9, 13.5]]);
});

test('refusals', () => {
  expect(run('PICKLE.JARS', 0)).toBe('#VALUE! The weight of the fruit is 0. It must be above 0 lb.');
  expect(run('PICKLE.JARS', 14, 'gallon')).toMatch(
    /size of the jar is "gallon"\. Choose one of: quart, pint/,
  );
  expect(run('PICKLE.POUNDS', 7.5)).toMatch(/Give a whole number/);
  expect(run('PICKLE.POUNDS', { error: '#N/A' })).toMatch(/Mend that cell first/);
});

test.each([jarsOf, poundsOf])(
  'the working points to a tested recipe and gives no times: $id',
  (definition) => {
    const said = explain(definition, [14])
      .map((line) => Object.values(line).join(' '))
      .join('\n');
    expect(said).toContain(english.cautions.canning);
    expect(said).toMatch(/current tested recipe/);
    expect(said).toMatch(/Complete Guide to Home Canning/);
    expect(said).not.toMatch(/minute|pressure/i);
    expect(said).not.toMatch(/[{}_]/);
  },
);
