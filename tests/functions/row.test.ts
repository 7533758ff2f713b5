import { expect, test } from 'vitest';
import { leftOut, run } from './run';

test('ROW.FORPLANTS: 100 plants at 12 in need 100 ft, 30 at 60 cm 18 m (hand computed)', () => {
  for (const nothing of leftOut) expect(run('ROW.FORPLANTS', 100, 12, nothing)).toBe(100);
  expect(run('ROW.FORPLANTS', [[30]], '60', 'metric')).toBe(18);
});

test('ROW.INAREA: an acre in 8 ft rows is 5,445 ft, a hectare in 2 m rows 5,000 m (hand computed)', () => {
  for (const nothing of leftOut) expect(run('ROW.INAREA', 43_560, 8, nothing)).toBe(5445);
  expect(run('ROW.INAREA', '10000', [[2]], 'metric')).toBe(5000);
});

test('ROW.FORDEMAND: 30 lb a week for 4 weeks at 150 lb per 100 ft need 80 ft (hand computed)', () => {
  expect(run('ROW.FORDEMAND', 30, '150', [[4]])).toBe(80);
});

test('refusals say what to do', () => {
  expect(run('ROW.FORPLANTS', 0, 12)).toBe('#VALUE! The number of plants is 0. It must be at least 1 plant.');
  expect(run('ROW.INAREA', 43_560, -8)).toBe('#VALUE! The row spacing is -8. It must be above 0 ft.');
  expect(run('ROW.FORDEMAND', 30, 150, 60)).toBe(
    '#VALUE! The number of picking weeks is 60. It must be above 0 weeks and at most 52 weeks.',
  );
  expect(run('ROW.FORDEMAND', 30, 150)).toMatch(/number of picking weeks is missing/);
  expect(run('ROW.FORDEMAND', 'some', 150, 4)).toMatch(/demand of a week is "some", which is not a number/);
  expect(run('ROW.FORDEMAND', 30, { error: '#REF!' }, 4)).toMatch(/Mend that cell first/);
});
