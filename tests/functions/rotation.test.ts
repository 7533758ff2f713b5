import { expect, test } from 'vitest';
import { explain } from '../../src/functions/explain';
import { yearsFree } from '../../src/functions/rotation';
import { run } from './run';

test('ROTATION.YEARS: 2 full seasons after 2023 (counted out), or none on record', () => {
  expect(run('ROTATION.YEARS', 2026, 2023)).toBe(2);
  expect(
    run('ROTATION.YEARS', '2026', [
      [2019, ''],
      ['2023', null],
    ]),
  ).toBe(2);
  for (const nothing of ['', null, [['', null]]]) {
    expect(run('ROTATION.YEARS', 2026, nothing)).toBe('none on record');
  }
});

test('refusals', () => {
  expect(run('ROTATION.YEARS', 2026, [[2023], [2026]])).toBe(
    '#VALUE! The past year 2026 does not come before the year of planting, 2026. Take it out of the range, or mend the year.',
  );
  expect(run('ROTATION.YEARS', 2026, [[23]])).toMatch(/past year is 23\. It must be at least 1900/);
  expect(run('ROTATION.YEARS', '', [[2023]])).toMatch(/year is missing/);
  expect(run('ROTATION.YEARS', 2026, [['squash']])).toMatch(/range of past years, row 1, is "squash"/);
});

test('the working names the rests and who advises them', () => {
  const said = explain(yearsFree, [2026, [[2023]]])
    .map((line) => Object.values(line).join(' '))
    .join('\n');
  expect(said).toMatch(
    /2 years for slicing cucumbers and pumpkins, 3 for squash[^]*North Carolina[^]*Cornell/,
  );
  expect(said).not.toMatch(/[{}_]/);
});
