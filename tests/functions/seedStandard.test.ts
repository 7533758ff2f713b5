import { expect, test } from 'vitest';
import { explain } from '../../src/functions/explain';
import { standard } from '../../src/functions/seedStandard';
import { functions } from '../../src/functions';

const run = (crop: unknown) => functions.get('SEED.STANDARD')?.run([crop]);

test.each([
  ['cucumber', 0.8],
  [' CANTALOUPE ', 0.75],
  [[['watermelon']], 0.7],
])('%j: %d (7 CFR 201.31)', (crop, share) => {
  expect(run(crop)).toEqual({ value: share });
});

test('gourd: none listed, and what to go by', () => {
  expect(run('gourd')).toEqual({
    error: '#N/A',
    message:
      'The federal rules list no germination standard for gourd. Go by the packet, or test your own seed.',
  });
});

test('bad input is said with what to do', () => {
  expect(run('tomato')).toMatchObject({
    error: '#N/A',
    message: expect.stringContaining('Crops sheet') as unknown,
  });
  for (const empty of [null, undefined, '', '  ']) {
    expect(run(empty)).toMatchObject({
      error: '#VALUE!',
      message: expect.stringContaining('Fill it in') as unknown,
    });
  }
  expect(run({ error: '#REF!' })).toMatchObject({
    error: '#VALUE!',
    message: expect.stringContaining('#REF!') as unknown,
  });
  expect(run([['gourd', 'pumpkin']])).toMatchObject({ error: '#VALUE!' });
});

test('the working never calls seed below the standard unlawful: it may be sold, so marked', () => {
  const said = explain(standard, ['cucumber'])
    .map(({ title }) => title)
    .join(' ');
  expect(said).toContain('may be sold, marked "Below Standard"');
  expect(said).toContain('7 CFR 201.29');
  expect(said).not.toMatch(/illegal|unlawful/i);
});
